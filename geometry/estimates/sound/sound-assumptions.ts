import { assume, practice } from '../assumption';

/** How they were chosen: from sheets remembered and the published working band of the speed law; not from a plan. */
export const soundAssumptions = {
  speedLaw: assume(
    'the level of a fan changes with',
    [55, 50, 60],
    'dB a decade of speed',
    'fan makers: 50; working band 50 to 60',
  ),
  sheetSound: assume('fans in place are louder than on their sheets by', [1, 0, 4], 'dB', practice),
  cardFanSound: assume('each card fan at top speed makes', [39, 34, 43], 'dB at 1 m'),
  supplySound: assume('a supply fan at top speed makes', [34, 28, 40], 'dB at 1 m'),
  pumpSound: assume('a pump makes', [24, 19, 30], 'dB at 1 m'),
  diskSound: assume('a 3.5 inch drive makes', [24, 20, 29], 'dB at 1 m'),
  panelLoss: assume('closed panels take from what sounds inside', [2, 0, 5], 'dB', practice),
  roomGain: assume('the room adds by reflection', [1, 0, 3], 'dB', practice),
  starvedFan: assume('a fan with less than half the gap it wants is louder by', [3, 1, 6], 'dB', practice),
  earDistance: assume('the ear, where the brief is silent, is away', [0.8, 0.6, 1.2], 'm', practice),
} as const;
