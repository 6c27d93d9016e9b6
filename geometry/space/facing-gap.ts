import { BOUNDS_STRIDE, type PackedBoxes } from './packed-boxes';
import { CONTACT_TOLERANCE_MM } from './tolerance';
import { createTravelInterval, travelIntervalPacked } from './travel';
import type { Vector3 } from './vector';

/** The pair of boxes that sets a gap: box numbers, signed gap in mm, and which of the directions it runs along. */
export interface FacingGap {
  readonly gap: number;
  readonly a: number;
  readonly b: number;
  readonly direction: number;
}

const interval = createTravelInterval();

/**
 * The least signed gap between some boxes and some others, mm. Each pair is measured along those of the unit
 * `directions` (from the first to the second) in which the second stands in front of the first, and counts with the
 * widest: for pairs that overlap, the shortest way back. Undefined when no pair faces each other.
 */
export function leastFacingGap(
  packed: PackedBoxes,
  first: readonly number[],
  second: readonly number[],
  directions: readonly Vector3[],
): FacingGap | undefined {
  if (second.length === 0) return undefined;
  boundAll(packed.bounds, second);
  let least = Number.POSITIVE_INFINITY;
  let leastA = -1;
  let leastB = -1;
  let leastAlong = -1;
  for (const a of first) {
    if (!mayFace(packed.bounds, a * BOUNDS_STRIDE, directions, least)) continue;
    for (const b of second) {
      let widest = Number.NEGATIVE_INFINITY;
      let along = -1;
      for (let k = 0; k < directions.length; k++) {
        const gap = facingGap(packed, a, b, directions[k]!);
        if (gap > widest) {
          widest = gap;
          along = k;
        }
      }
      if (along < 0 || widest >= least) continue;
      least = widest;
      leastA = a;
      leastB = b;
      leastAlong = along;
    }
  }
  return leastAlong < 0 ? undefined : { gap: least, a: leastA, b: leastB, direction: leastAlong };
}

/** World bounds of all boxes of the second list of the question under way. */
const around = new Float64Array(6);

function boundAll(bounds: Float64Array, boxes: readonly number[]): void {
  around.fill(Infinity, 0, 3);
  around.fill(-Infinity, 3, 6);
  for (const box of boxes) {
    const at = box * BOUNDS_STRIDE;
    for (let axis = 0; axis < 3; axis++) {
      if (bounds[at + axis]! < around[axis]!) around[axis] = bounds[at + axis]!;
      if (bounds[at + 3 + axis]! > around[3 + axis]!) around[3 + axis] = bounds[at + 3 + axis]!;
    }
  }
}

/** Whether the box at `a` could face something in `around`, along one of the directions, nearer than `least`. */
function mayFace(bounds: Float64Array, a: number, directions: readonly Vector3[], least: number): boolean {
  for (const direction of directions) {
    const along = worldAxisOf(direction);
    if (along === -1) return true;
    if (isBeside(bounds, a, along)) continue;
    const gap =
      direction[along] > 0
        ? around[along]! - bounds[a + 3 + along]!
        : bounds[a + along]! - around[3 + along]!;
    if (gap < least) return true;
  }
  return false;
}

/** Whether the box at `a` passes everything in `around` when it goes along the axis. */
function isBeside(bounds: Float64Array, a: number, along: number): boolean {
  for (let axis = 0; axis < 3; axis++) {
    if (axis === along) continue;
    const from = Math.max(bounds[a + axis]!, around[axis]!);
    const to = Math.min(bounds[a + 3 + axis]!, around[3 + axis]!);
    if (to - from <= CONTACT_TOLERANCE_MM) return true;
  }
  return false;
}

/** Signed gap of two boxes along a unit direction from a to b, mm; minus infinity when b is not in front of a. */
export function facingGap(packed: PackedBoxes, a: number, b: number, direction: Vector3): number {
  const axis = worldAxisOf(direction);
  if (axis !== -1 && packed.aligned[a] === 1 && packed.aligned[b] === 1)
    return alignedGap(packed.bounds, a * BOUNDS_STRIDE, b * BOUNDS_STRIDE, axis, direction[axis]! > 0);
  const [x, y, z] = direction;
  if (!travelIntervalPacked(packed, a, b, x, y, z, interval)) return Number.NEGATIVE_INFINITY;
  if (interval.leave <= CONTACT_TOLERANCE_MM) return Number.NEGATIVE_INFINITY;
  return Math.abs(interval.enter) <= CONTACT_TOLERANCE_MM ? 0 : interval.enter;
}

function worldAxisOf(direction: Vector3): 0 | 1 | 2 | -1 {
  if (direction[1] === 0 && direction[2] === 0) return 0;
  if (direction[0] === 0 && direction[2] === 0) return 1;
  return direction[0] === 0 && direction[1] === 0 ? 2 : -1;
}

function alignedGap(bounds: Float64Array, a: number, b: number, along: number, forward: boolean): number {
  for (let axis = 0; axis < 3; axis++) {
    if (axis === along) continue;
    const from = Math.max(bounds[a + axis]!, bounds[b + axis]!);
    const to = Math.min(bounds[a + 3 + axis]!, bounds[b + 3 + axis]!);
    if (to - from <= CONTACT_TOLERANCE_MM) return Number.NEGATIVE_INFINITY;
  }
  const after = bounds[b + along]! - bounds[a + 3 + along]!;
  const before = bounds[a + along]! - bounds[b + 3 + along]!;
  const leave = forward ? -before : -after;
  if (leave <= CONTACT_TOLERANCE_MM) return Number.NEGATIVE_INFINITY;
  const gap = forward ? after : before;
  return Math.abs(gap) <= CONTACT_TOLERANCE_MM ? 0 : gap;
}
