/** The outside of everything that stands in the way, and how far a body has to go to be clear of it. */
import { BOUNDS_STRIDE } from '../../../space/packed-boxes';
import { length, type Vector3 } from '../../../space/vector';
import type { AssemblyBodies } from '../assembly-bodies';

/** Least x, y, z, greatest x, y, z of some boxes (world bounds), mm. */
export function rangeOf(bodies: AssemblyBodies, boxes: Iterable<number>, offset = 0): Float64Array {
  const range = Float64Array.of(Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity);
  for (const box of boxes) {
    const at = (box + offset) * BOUNDS_STRIDE;
    for (let axis = 0; axis < 3; axis++) {
      range[axis] = Math.min(range[axis] ?? 0, bodies.packed.bounds[at + axis] ?? 0);
      range[3 + axis] = Math.max(range[3 + axis] ?? 0, bodies.packed.bounds[at + 3 + axis] ?? 0);
    }
  }
  return range;
}

/** Beyond the last face, so that nothing is left to meet, mm. */
export const CLEAR_OF_HULL_MM = 10;

/** Travel along a unit direction after which `mover` lies wholly beyond `around`, on the first axis that gets there. */
export function travelToClear(mover: Float64Array, around: Float64Array, direction: Vector3): number {
  let least = Infinity;
  for (let axis = 0; axis < 3; axis++) {
    const speed = direction[axis] ?? 0;
    if (Math.abs(speed) < 1e-9) continue;
    const way =
      speed > 0 ? (around[3 + axis] ?? 0) - (mover[axis] ?? 0) : (mover[3 + axis] ?? 0) - (around[axis] ?? 0);
    least = Math.min(least, Math.max(0, way) / Math.abs(speed));
  }
  return Number.isFinite(least) ? least + CLEAR_OF_HULL_MM : 0;
}

/** The 26 directions to the neighbours of a cell: six along the axes first, then edges, then corners; unit length. */
export const directions26: readonly Vector3[] = allDirections();

function allDirections(): Vector3[] {
  const steps = [-1, 0, 1] as const;
  const found: Vector3[] = [];
  for (const x of steps)
    for (const y of steps) for (const z of steps) if (x !== 0 || y !== 0 || z !== 0) found.push([x, y, z]);
  return found
    .sort((a, b) => length(a) - length(b))
    .map((v): Vector3 => [v[0] / length(v), v[1] / length(v), v[2] / length(v)]);
}
