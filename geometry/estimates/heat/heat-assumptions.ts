import { assume, practice } from '../assumption';

/**
 * How they were chosen: each resistance from its own physics or from sheets remembered, never from a plan. Dies grow
 * with their class, so the rise from lid to die at the power of the class is taken as one number for all (0.24 K/W at
 * 105 W). A cooler's rating is read as the heat at which its foot stands `coolerRise` over the air with fans at top
 * speed, which gives big towers the 0.12 to 0.18 K/W they are known for.
 */
export const heatAssumptions = {
  idleProcessor: assume('a processor at rest draws', [0.2, 0.1, 0.35], 'of its sustained power'),
  gameProcessor: assume('a processor in games draws', [0.6, 0.45, 0.8], 'of its sustained power'),
  idleCard: assume('a card at rest draws', [0.07, 0.03, 0.12], 'of its sustained power'),
  renderCard: assume('a card while the processor renders draws', [0.15, 0.07, 0.3], 'of its sustained power'),
  idleOthers: assume('everything else at rest draws', [0.5, 0.3, 0.7], 'of its rating'),
  idleDrive: assume('a drive at rest draws', [0.15, 0.05, 0.5], 'of its rating'),
  busyDrive: assume('a drive in games and renders draws', [0.4, 0.2, 0.8], 'of its rating'),
  dieRise: assume('at the power of its class a die stands above its lid by', [25, 17, 35], 'K'),
  lidToFoot: assume('from the lid through the paste to the cooler', [0.05, 0.03, 0.1], 'K/W'),
  coolerRise: assume(
    'at the heat it is made for, the foot of a cooler stands above its air by',
    [34, 27, 44],
    'K',
  ),
  fixedShare: assume("of a cooler's resistance, base and pipes make", [0.35, 0.2, 0.5], 'share'),
  flowExponent: assume('the rest falls with the flow to the power', [0.6, 0.45, 0.8], ''),
  stillCap: assume('without a fan a cooler has at most', [4, 2.5, 7], 'times its resistance'),
  cardRise: assume(
    'at its sustained power and top fan speed a card stands above its air by',
    [30, 23, 40],
    'K',
  ),
  cardTarget: assume('a card turns its fans up to stay at', [72, 65, 80], 'deg C', practice),
  cardLeastSpeed: assume('card fans turn at no less than', [0.3, 0.2, 0.4], 'of top speed', practice),
  coolerSlowAt: assume('cooler fans turn slowest up to', [50, 40, 60], 'deg C', practice),
  coolerFullAt: assume('cooler fans turn fastest from', [88, 80, 95], 'deg C', practice),
  coolerLeastSpeed: assume('cooler fans turn at no less than', [0.3, 0.2, 0.4], 'of top speed', practice),
  supplyLeastSpeed: assume('the fan of a supply turns at no less than', [0.3, 0, 0.45], 'of top speed'),
  blockToLiquid: assume('from the foot of a liquid block to the liquid', [0.05, 0.03, 0.08], 'K/W'),
  radiatorPerSeat: assume(
    'a radiator 27 mm thick gives off, for each 120 x 120 mm at 1 m/s,',
    [7, 5, 10],
    'W/K',
  ),
  moduleDrive: assume('an M.2 drive without a sink stands above its air by', [6, 4, 9], 'K/W'),
  sunkModuleDrive: assume('an M.2 drive under a sink stands above its air by', [4, 2.5, 6], 'K/W'),
  boxedDrive: assume('a drive in a case of its own stands above its air by', [3, 1.5, 5], 'K/W'),
  memoryRise: assume('a memory module stands above its air by', [4, 2.5, 6], 'K/W'),
  roomTemperature: assume('the room, where the brief is silent, has', [22, 18, 27], 'deg C', practice),
  processorLimit: assume('a processor should stay below', [90, 85, 95], 'deg C', practice),
  cardLimit: assume('a card should stay below', [85, 80, 90], 'deg C', practice),
  driveLimit: assume('an M.2 drive should stay below', [70, 65, 80], 'deg C', practice),
} as const;
