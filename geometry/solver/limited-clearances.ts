/** Shown clearances with the limits they put on the dimensions they depend on. */
import type { ExaminedPart } from './examined-part';
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
    const parts = clearance.parts.map((part): ExaminedPart | undefined => partOf(part));
    return memory.recall(clearance.id, [clearance, behind, ...parts], () => {
      const limit = dimensionLimit(clearance, behind, partOf);
      const said = limit && sayLimit(limit);
      return said === undefined ? clearance : { ...clearance, limit: said };
    });
  });
}
