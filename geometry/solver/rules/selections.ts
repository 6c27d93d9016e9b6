/** Boxes and directions that several rules mean. */
import type { Element } from '../../parts/body';
import type { PartKind } from '../../parts/part-spec';
import type { Direction } from '../finding';

export const all: readonly Direction[] = ['-x', '+x', '-y', '+y', '-z', '+z'];
export const walls: readonly Element[] = [
  'side panel',
  'back panel',
  'front wall',
  'rear wall',
  'top wall',
  'floor',
  'vent',
];
/** What is not an enclosure and may stand in a part's way. */
export const loose: readonly PartKind[] = [
  'cooler',
  'memory',
  'drive',
  'card',
  'supply',
  'fan',
  'radiator',
  'adapter',
];

/** Neighbours further apart than this are no neighbours: half a 120 mm fan. A matter of taste. */
export const WORTH_A_ROW_MM = 60;
