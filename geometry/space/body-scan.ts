import { BOUNDS_STRIDE, type PackedBoxes } from './packed-boxes';
import { interiorsOverlap } from './separation';
import { CONTACT_TOLERANCE_MM } from './tolerance';
import { createTravelInterval, travelIntervalPacked } from './travel';

/**
 * What one body meets of another: every pair of boxes that overlap, and how far the first body may go in the six
 * world directions (in the order of `FACE_NAMES`) before it meets the second. Infinity and -1 where it never does.
 */
export interface BodyScan {
  readonly distance: Float64Array;
  readonly box: Int32Array;
  readonly otherBox: Int32Array;
  /** Box numbers, two for each overlapping pair: of the first body, of the second. */
  readonly overlaps: number[];
}

const interval = createTravelInterval();

export function createBodyScan(): BodyScan {
  return {
    distance: new Float64Array(6),
    box: new Int32Array(6),
    otherBox: new Int32Array(6),
    overlaps: [],
  };
}

export function clearBodyScan(scan: BodyScan): void {
  scan.distance.fill(Infinity);
  scan.box.fill(-1);
  scan.otherBox.fill(-1);
  scan.overlaps.length = 0;
}

/** World bounds (least x, y, z, greatest x, y, z) of some boxes of a set; least above greatest for none. */
export function boundsOfSome(packed: PackedBoxes, boxes: readonly number[]): Float64Array {
  const bounds = Float64Array.of(Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity);
  for (const box of boxes) {
    const at = box * BOUNDS_STRIDE;
    for (let axis = 0; axis < 3; axis++) {
      bounds[axis] = Math.min(bounds[axis]!, packed.bounds[at + axis]!);
      bounds[3 + axis] = Math.max(bounds[3 + axis]!, packed.bounds[at + 3 + axis]!);
    }
  }
  return bounds;
}

/**
 * Adds to `scan` what the boxes `mine` meet of the boxes `theirs`. `theirBounds` holds all of `theirs`. Exact for
 * oriented boxes; bodies that overlap cannot move at all (distance 0).
 */
export function scanBodies(
  packed: PackedBoxes,
  mine: readonly number[],
  theirs: readonly number[],
  theirBounds: Float64Array,
  scan: BodyScan,
): void {
  const { bounds, aligned } = packed;
  for (let m = 0; m < mine.length; m++) {
    const i = mine[m]!;
    const a = i * BOUNDS_STRIDE;
    if (axesInCommon(bounds, a, theirBounds, 0) < 2) continue;
    const isAligned = aligned[i] === 1;
    const [x0, y0, z0] = [bounds[a]!, bounds[a + 1]!, bounds[a + 2]!];
    const [x1, y1, z1] = [bounds[a + 3]!, bounds[a + 4]!, bounds[a + 5]!];
    for (let t = 0; t < theirs.length; t++) {
      const j = theirs[t]!;
      const b = j * BOUNDS_STRIDE;
      const x = Math.max(bounds[b]! - x1, x0 - bounds[b + 3]!);
      const y = Math.max(bounds[b + 1]! - y1, y0 - bounds[b + 4]!);
      const apartX = x >= TOUCHING;
      const apartY = y >= TOUCHING;
      if (apartX && apartY) continue;
      const z = Math.max(bounds[b + 2]! - z1, z0 - bounds[b + 5]!);
      const apartZ = z >= TOUCHING;
      if (apartZ && (apartX || apartY)) continue;
      if (!isAligned || aligned[j] !== 1) scanTurned(packed, i, j, scan);
      else if (apartX) keepNearest(scan, bounds[b]! - x1 === x ? 1 : 0, x, i, j);
      else if (apartY) keepNearest(scan, bounds[b + 1]! - y1 === y ? 3 : 2, y, i, j);
      else if (apartZ) keepNearest(scan, bounds[b + 2]! - z1 === z ? 5 : 4, z, i, j);
      else keepOverlap(scan, i, j);
    }
  }
}

/** Ranges whose gap is at least this are side by side: touching is not overlap. */
const TOUCHING = -CONTACT_TOLERANCE_MM;

/** Calls back for every box of `mine` and every box of `theirs` whose interiors overlap. */
export function visitOverlaps(
  packed: PackedBoxes,
  mine: readonly number[],
  theirs: readonly number[],
  theirBounds: Float64Array,
  visit: (i: number, j: number) => void,
): void {
  const { bounds, aligned } = packed;
  for (let m = 0; m < mine.length; m++) {
    const i = mine[m]!;
    const a = i * BOUNDS_STRIDE;
    if (axesInCommon(bounds, a, theirBounds, 0) < 3) continue;
    const [x0, y0, z0] = [bounds[a]! - TOUCHING, bounds[a + 1]! - TOUCHING, bounds[a + 2]! - TOUCHING];
    const [x1, y1, z1] = [bounds[a + 3]! + TOUCHING, bounds[a + 4]! + TOUCHING, bounds[a + 5]! + TOUCHING];
    for (let t = 0; t < theirs.length; t++) {
      const j = theirs[t]!;
      const b = j * BOUNDS_STRIDE;
      if (bounds[b]! >= x1 || bounds[b + 3]! <= x0) continue;
      if (bounds[b + 1]! >= y1 || bounds[b + 4]! <= y0) continue;
      if (bounds[b + 2]! >= z1 || bounds[b + 5]! <= z0) continue;
      if ((aligned[i] === 1 && aligned[j] === 1) || interiorsOverlap(packed, i, j)) visit(i, j);
    }
  }
}

/** Over how many world axes two ranges overlap by more than the contact tolerance. */
function axesInCommon(first: Float64Array, a: number, second: Float64Array, b: number): number {
  let count = 0;
  for (let axis = 0; axis < 3; axis++) {
    const from = Math.max(first[a + axis]!, second[b + axis]!);
    const to = Math.min(first[a + 3 + axis]!, second[b + 3 + axis]!);
    if (to - from > CONTACT_TOLERANCE_MM) count++;
  }
  return count;
}

function scanTurned(packed: PackedBoxes, i: number, j: number, scan: BodyScan): void {
  if (interiorsOverlap(packed, i, j)) {
    keepOverlap(scan, i, j);
    return;
  }
  for (let axis = 0; axis < 3; axis++) {
    const x = axis === 0 ? 1 : 0;
    const y = axis === 1 ? 1 : 0;
    const z = axis === 2 ? 1 : 0;
    if (!travelIntervalPacked(packed, i, j, x, y, z, interval)) continue;
    if (interval.leave > CONTACT_TOLERANCE_MM) keepNearest(scan, 2 * axis + 1, interval.enter, i, j);
    else if (interval.enter < -CONTACT_TOLERANCE_MM) keepNearest(scan, 2 * axis, -interval.leave, i, j);
  }
}

function keepOverlap(scan: BodyScan, i: number, j: number): void {
  scan.overlaps.push(i, j);
  for (let face = 0; face < 6; face++) keepNearest(scan, face, 0, i, j);
}

function keepNearest(scan: BodyScan, face: number, travel: number, i: number, j: number): void {
  const distance = travel <= CONTACT_TOLERANCE_MM ? 0 : travel;
  if (distance >= scan.distance[face]!) return;
  scan.distance[face] = distance;
  scan.box[face] = i;
  scan.otherBox[face] = j;
}
