import { assume, practice } from '../assumption';

/** How they were chosen: typical masses and stiffnesses from memory; not from a plan. */
export const massAssumptions = {
  sheetMass: assume('masses on sheets are met', [1, 0.98, 1.02], 'times the sheet'),
  processorMass: assume('a processor without a mass weighs', [50, 30, 90], 'g'),
  boardMass: assume('a board without a mass weighs, a square decimetre of it,', [130, 90, 180], 'g'),
  memoryMass: assume('a memory module without a mass weighs', [30, 18, 60], 'g'),
  cardMass: assume('a card without a mass weighs, a litre of it,', [600, 400, 850], 'g'),
  coolerMass: assume('a cooler without a mass weighs, a litre of it,', [450, 300, 650], 'g'),
  moduleDriveMass: assume('an M.2 drive without a mass weighs', [9, 6, 30], 'g'),
  drive25Mass: assume('a 2.5 inch drive without a mass weighs', [65, 40, 120], 'g'),
  drive35Mass: assume('a 3.5 inch drive without a mass weighs', [650, 450, 750], 'g'),
  supplyMass: assume('a supply without a mass weighs, a litre of it,', [950, 750, 1250], 'g'),
  fanMass: assume('a fan without a mass weighs, a litre of its frame,', [430, 300, 600], 'g'),
  radiatorMass: assume('a radiator without a mass weighs, filled, a litre of it,', [900, 650, 1300], 'g'),
  adapterMass: assume('an adapter without a mass weighs', [80, 30, 160], 'g'),
  leadsMass: assume('leads and screws weigh', [450, 250, 800], 'g'),
  boardStiffness: assume('card boards have a modulus of', [22_000, 18_000, 25_000], 'N/mm2'),
  plateThickness: assume('a card with a backplate is stiffened as by aluminium of', [2, 1.2, 3], 'mm'),
  bracketYield: assume('bracket and slot give, for each N m,', [0.004, 0.001, 0.012], 'rad'),
  liftReach: assume('hands are before the ankles by', [40, 30, 50], 'cm', practice),
  liftTravel: assume('a machine is lifted from the floor by', [75, 55, 100], 'cm', practice),
  coupling: assume('the grip counts', [0.95, 0.9, 1], 'times', 'lifting equation: fair grip 0.95'),
} as const;
