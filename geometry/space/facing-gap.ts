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
 * nearest of them; when it overlaps, with the shortest way back. So a larger box never has a larger gap. Undefined when
 * no pair faces each other, or none nearer than `limit`.
 */
export function leastFacingGap(
  packed: PackedBoxes,
  first: readonly number[],
  second: readonly number[],
  directions: readonly Vector3[],
  limit = Number.POSITIVE_INFINITY,
): FacingGap | undefined {
  if (first.length === 0 || second.length === 0) return undefined;
  const { bounds, aligned } = packed;
  const axes = directions.map(signedAxisOf);
  const alongAxes = !axes.includes(0);
  listFaces(axes);
  boundAll(bounds, second);
  let least = limit;
  let leastA = -1;
  let leastB = -1;
  let leastAlong = -1;
  for (let p = 0; p < first.length; p++) {
    const a = first[p]!;
    if (!mayFace(bounds, a * BOUNDS_STRIDE, axes, least)) continue;
    const isAligned = alongAxes && aligned[a] === 1;
    for (let q = 0; q < second.length; q++) {
      const b = second[q]!;
      pairAlong = -1;
      const gap =
        isAligned && aligned[b] === 1
          ? alignedPairGap(bounds, a * BOUNDS_STRIDE, b * BOUNDS_STRIDE)
          : turnedPairGap(packed, a, b, directions);
      if (pairAlong < 0 || gap >= least) continue;
      least = gap;
      leastA = a;
      leastB = b;
      leastAlong = pairAlong;
    }
  }
  return leastAlong < 0 ? undefined : { gap: least, a: leastA, b: leastB, direction: leastAlong };
}

/** Which of the directions the gap of the last pair runs along. */
let pairAlong = -1;

/** Place in the list of directions of -x, +x, -y, +y, -z, +z; -1 for those that are not in it. */
const placeOf = new Int32Array(6);

function listFaces(axes: readonly SignedAxis[]): void {
  placeOf.fill(-1);
  axes.forEach((axis, place) => {
    if (axis !== 0) placeOf[2 * (Math.abs(axis) - 1) + (axis > 0 ? 1 : 0)] = place;
  });
}

/** For boxes along the world axes: what is apart on one axis faces along it, what overlaps faces every way. */
function alignedPairGap(bounds: Float64Array, a: number, b: number): number {
  let apart = -1;
  for (let axis = 0; axis < 3; axis++) {
    const after = bounds[b + axis]! - bounds[a + 3 + axis]!;
    const before = bounds[a + axis]! - bounds[b + 3 + axis]!;
    if (Math.max(after, before) < -CONTACT_TOLERANCE_MM) continue;
    if (apart >= 0) return Number.NEGATIVE_INFINITY;
    apart = axis;
  }
  if (apart < 0) return shortestWayBack(bounds, a, b);
  const after = bounds[b + apart]! - bounds[a + 3 + apart]!;
  const before = bounds[a + apart]! - bounds[b + 3 + apart]!;
  pairAlong = placeOf[2 * apart + (after >= before ? 1 : 0)]!;
  const gap = Math.max(after, before);
  return gap <= CONTACT_TOLERANCE_MM ? 0 : gap;
}

function shortestWayBack(bounds: Float64Array, a: number, b: number): number {
  let widest = Number.NEGATIVE_INFINITY;
  for (let face = 0; face < 6; face++) {
    const place = placeOf[face]!;
    if (place < 0) continue;
    const axis = face >> 1;
    const gap =
      face % 2 === 1 ? bounds[b + axis]! - bounds[a + 3 + axis]! : bounds[a + axis]! - bounds[b + 3 + axis]!;
    if (gap < widest || (gap === widest && place > pairAlong)) continue;
    widest = gap;
    pairAlong = place;
  }
  return widest;
}

function turnedPairGap(packed: PackedBoxes, a: number, b: number, directions: readonly Vector3[]): number {
  let chosen = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < directions.length; k++) {
    const gap = turnedGap(packed, a, b, directions[k]!);
    if (gap === Number.NEGATIVE_INFINITY) continue;
    // A pair that is apart is apart in every direction it faces in, one that overlaps overlaps in all of them.
    const isBetter = pairAlong < 0 || (gap < 0 ? gap > chosen : gap < chosen);
    if (!isBetter) continue;
    chosen = gap;
    pairAlong = k;
  }
  return chosen;
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
  const axis = signedAxisOf(direction);
  if (axis === 0 || packed.aligned[a] !== 1 || packed.aligned[b] !== 1)
    return turnedGap(packed, a, b, direction);
  listFaces([axis]);
  pairAlong = -1;
  const gap = alignedPairGap(packed.bounds, a * BOUNDS_STRIDE, b * BOUNDS_STRIDE);
  return pairAlong < 0 ? Number.NEGATIVE_INFINITY : gap;
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
