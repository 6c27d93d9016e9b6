import { assume, practice } from '../assumption';

/**
 * How they were chosen: shares of load from what machines of this class draw at the wall, remembered; typical powers
 * from the range of sheets; none was fitted to a plan.
 */
export const powerAssumptions = {
  sheetPower: assume('powers on sheets are met', [1, 0.93, 1.05], 'times the sheet'),
  heatOverClass: assume(
    'a processor whose sheet gives only a class runs for long at',
    [1.35, 1, 1.9],
    'times its class',
  ),
  peakOverSustained: assume(
    'the short peak of a card without one on its sheet is',
    [1.8, 1.4, 2.3],
    'times its sustained power',
  ),
  peakShareAt100ms: assume(
    'a peak has fallen, after 100 ms, to this share of what it rose',
    [0.25, 0.1, 0.5],
    'share',
  ),
  peakShareAt10ms: assume(
    "a card's peak has fallen, after 10 ms, to this share of what it rose",
    [0.6, 0.35, 1],
    'share',
  ),
  cardOfConnectors: assume(
    'a card without a rating draws, of what its connectors allow,',
    [0.7, 0.3, 1],
    'share',
  ),
  memoryWatts: assume('a memory module without a rating draws', [4, 2, 7], 'W'),
  driveWatts: assume('a drive without a rating draws', [7, 3, 11], 'W'),
  boardWatts: assume('a board without a rating draws', [22, 12, 40], 'W'),
  fanWatts: assume('a fan at top speed draws', [2, 1, 4], 'W'),
  pumpWatts: assume('a pump draws', [5, 3, 10], 'W'),
  extrasWatts: assume('what is plugged into the ports draws', [5, 0, 20], 'W'),
  supplyReserve: assume(
    'a supply is best loaded for long to no more than',
    [0.8, 0.7, 0.9],
    'of its rating',
    practice,
  ),
  lossOverCertified: assume(
    'the loss of a supply against the certified one is',
    [0.95, 0.75, 1.05],
    'times',
    'the levels are least efficiencies; how far a supply is better: from memory',
  ),
  lossWithoutLevel: assume(
    'a supply of no stated level loses, against the base level,',
    [1, 0.55, 1.2],
    'times',
  ),
  powerFactor: assume(
    'the power factor at the wall is',
    [0.95, 0.9, 0.99],
    'W per VA',
    'least 0.9 by the efficiency levels',
  ),
  leadLength: assume('a lead from supply to plug is', [0.5, 0.3, 0.7], 'm', practice),
  leadContact: assume('a plugged contact has', [5, 2, 10], 'mohm'),
} as const;
