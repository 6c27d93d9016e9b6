/** Shown clearances with the limits they put on the dimensions they depend on. */
import type { Clearance } from './finding';
import type { Memory } from './memory';
import type { ShownClearance } from './select-clearances';
import { dimensionLimit, type PartLookup, sayLimit } from './ways-out/dimension-limit';

export function withLimits(
  shown: readonly ShownClearance[],
  partOf: PartLookup,
  memory: Memory<Clearance>,
): Clearance[] {
  return shown.map(({ clearance, behind }) => {
    // The clearance is another object as soon as one of its parts has changed.
    return memory.recall(clearance.id, [clearance, behind], () => {
      const limit = dimensionLimit(clearance, behind, partOf);
      const said = limit && sayLimit(limit);
      return said === undefined ? clearance : { ...clearance, limit: said };
    });
  });
}
