import { assume, practice } from '../assumption';

/**
 * How they were chosen: coefficients of openings from the published range for sharp edges (0.6 to 0.65), open shares
 * and pressure drops from sheets of perforated plate, fin stacks and cores, remembered; none was fitted to a plan.
 */
export const airAssumptions = {
  sheetFlow: assume('free flows on sheets are met', [0.95, 0.8, 1], 'times the sheet'),
  sheetPressure: assume('shut-off pressures on sheets are met', [0.95, 0.75, 1.05], 'times the sheet'),
  openingCoefficient: assume(
    'a hole lets through, against its open area,',
    [0.6, 0.57, 0.65],
    'times',
    'multizone airflow library documentation: 0.6 for large openings, about 0.65 for cracks',
  ),
  grilleOpen: assume('a fan grille is open to', [0.6, 0.45, 0.78], 'of its face'),
  meshOpen: assume('a mesh panel is open to', [0.45, 0.3, 0.6], 'of its face'),
  seamGap: assume('panels meet with a gap of', [0.25, 0.1, 0.6], 'mm'),
  slotCoverArea: assume('a slot cover or bracket leaks through', [3, 1, 7], 'cm2'),
  finLoss: assume('a fin stack 50 mm deep takes, at 1 m/s before it,', [4, 2, 7], 'Pa'),
  coreLoss: assume('a radiator core 27 mm thick takes, at 1 m/s before it,', [8, 4, 13], 'Pa'),
  cardFlowPerArea: assume(
    'a card fan at top speed moves, through its fins, a mean of',
    [1.4, 0.9, 2],
    'm/s over its disc',
  ),
  cardPressure: assume('a card fan at top speed gives, shut off,', [60, 35, 100], 'Pa'),
  cardExhaustBack: assume('of the warm air of a card, towards the board goes', [0.4, 0.2, 0.6], 'share'),
  supplyFlowPerArea: assume('a supply fan at top speed moves a mean of', [1.6, 1, 2.4], 'm/s over its disc'),
  supplyPressure: assume('a supply fan at top speed gives, shut off,', [35, 20, 60], 'Pa'),
  stoppedFan: assume('a fan that stands still is open to', [0.3, 0.15, 0.45], 'of its frame'),
  eddies: assume('neighbouring air mixes as if exchanged at', [0.03, 0.005, 0.1], 'm/s'),
  wallLoss: assume('a wall loses', [5, 3, 7], 'W/(m2 K)'),
  roomRebreathing: assume(
    'of the air drawn in from the room, air just blown out makes',
    [0.04, 0, 0.12],
    'share',
    practice,
  ),
} as const;
