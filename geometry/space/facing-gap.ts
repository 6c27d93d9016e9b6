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
 * widest: for pairs that overlap, the shortest way back. Undefined when no pair faces each other, or none nearer than
 * `limit`.
 */
export function leastFacingGap(
  packed: PackedBoxes,
  first: readonly number[],
  second: readonly number[],
  directions: readonly Vector3[],
  limit = Number.POSITIVE_INFINITY,
): FacingGap | undefined {
  if (first.length === 0 || second.length === 0) return undefined;
  const { bounds } = packed;
  const axes = directions.map(signedAxisOf);
  boundAll(bounds, second);
  let least = limit;
  let leastA = -1;
  let leastB = -1;
  let leastAlong = -1;
  for (const a of first) {
    if (!mayFace(bounds, a * BOUNDS_STRIDE, axes, least)) continue;
    for (const b of second) {
      widestAlong = -1;
      const widest = widestGap(packed, a, b, directions, axes);
      if (widestAlong < 0 || widest >= least) continue;
      least = widest;
      leastA = a;
      leastB = b;
      leastAlong = widestAlong;
    }
  }
  return leastAlong < 0 ? undefined : { gap: least, a: leastA, b: leastB, direction: leastAlong };
}

/** Which of the directions the last `widestGap` runs along. */
let widestAlong = -1;

function widestGap(
  packed: PackedBoxes,
  a: number,
  b: number,
  directions: readonly Vector3[],
  axes: readonly SignedAxis[],
): number {
  const aligned = packed.aligned[a] === 1 && packed.aligned[b] === 1;
  let widest = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < directions.length; k++) {
    const axis = axes[k]!;
    const gap =
      aligned && axis !== 0
        ? alignedGap(packed.bounds, a * BOUNDS_STRIDE, b * BOUNDS_STRIDE, Math.abs(axis) - 1, axis > 0)
        : turnedGap(packed, a, b, directions[k]!);
    if (gap <= widest) continue;
    widest = gap;
    widestAlong = k;
  }
  return widest;
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
function mayFace(bounds: Float64Array, a: number, axes: readonly SignedAxis[], least: number): boolean {
  for (const axis of axes) {
    if (axis === 0) return true;
    const along = Math.abs(axis) - 1;
    if (isBeside(bounds, a, along)) continue;
    const gap = axis > 0 ? around[along]! - bounds[a + 3 + along]! : bounds[a + along]! - around[3 + along]!;
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
  return widestGap(packed, a, b, [direction], [signedAxisOf(direction)]);
}

function turnedGap(packed: PackedBoxes, a: number, b: number, [x, y, z]: Vector3): number {
  if (!travelIntervalPacked(packed, a, b, x, y, z, interval)) return Number.NEGATIVE_INFINITY;
  if (interval.leave <= CONTACT_TOLERANCE_MM) return Number.NEGATIVE_INFINITY;
  return Math.abs(interval.enter) <= CONTACT_TOLERANCE_MM ? 0 : interval.enter;
}

/** 1, 2 or 3 for a direction along a world axis, negative against it; 0 for any other. */
type SignedAxis = -3 | -2 | -1 | 0 | 1 | 2 | 3;

function signedAxisOf([x, y, z]: Vector3): SignedAxis {
  if (y === 0 && z === 0) return x > 0 ? 1 : -1;
  if (x === 0 && z === 0) return y > 0 ? 2 : -2;
  if (x === 0 && y === 0) return z > 0 ? 3 : -3;
  return 0;
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
