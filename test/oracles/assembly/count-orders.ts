/** How many orders there are, by dynamic programming over the sets that can be gone. */
import { allUnits, bitOf } from '../../../geometry/solver/assembly/assembly-bodies';
import { type BlockingSystem, canGo } from '../../../geometry/solver/assembly/order/blocking-system';

/** Number of complete removal orders; undefined when more than `most` different sets would have to be kept. */
export function countOrders(system: BlockingSystem, most = 2_000_000): bigint | undefined {
  let level = new Map<bigint, bigint>([[0n, 1n]]);
  let kept = 1;
  for (let step = 0; step < system.count; step++) {
    const next = new Map<bigint, bigint>();
    for (const [removed, ways] of level) {
      for (let unit = 0; unit < system.count; unit++) {
        const bit = bitOf(unit);
        if ((removed & bit) !== 0n || !canGo(system, unit, removed)) continue;
        next.set(removed | bit, (next.get(removed | bit) ?? 0n) + ways);
      }
    }
    kept += next.size;
    if (kept > most) return undefined;
    level = next;
  }
  return level.get(allUnits(system.count)) ?? 0n;
}
