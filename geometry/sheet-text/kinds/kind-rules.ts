import type { PartKind } from '../../parts/part-spec';
import type { KindRules } from '../figure-rules';
import { fanRules, radiatorRules } from './air-rules';
import { cardRules } from './card-rules';
import { coolerRules } from './cooler-rules';
import { boardRules, enclosureRules } from './house-rules';
import { driveRules, memoryRules, processorRules } from './module-rules';
import { supplyRules } from './supply-rules';

export const kindRules: Readonly<Record<PartKind, KindRules>> = {
  card: cardRules,
  cooler: coolerRules,
  supply: supplyRules,
  fan: fanRules,
  radiator: radiatorRules,
  board: boardRules,
  memory: memoryRules,
  drive: driveRules,
  processor: processorRules,
  enclosure: enclosureRules,
  // Sheets of adapters are a drawing and a sentence; there is nothing they state in common.
  adapter: { own: [], figures: [] },
};
