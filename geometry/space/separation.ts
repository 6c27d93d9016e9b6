import { closest, loadedDistance } from './closest-features';
import { type FaceName, facesOfFeature } from './face-names';
import type { OrientedBox } from './oriented-box';
import { BOUNDS_STRIDE, PackedBoxes, SHAPE_STRIDE } from './packed-boxes';
import { bestAxis, interiorsMeet, loadPair, PAIR_N, pair } from './separating-axes';
import { CONTACT_TOLERANCE_MM } from './tolerance';
import type { Vector3 } from './vector';
import { placeWitness, SQUARE_SINE } from './witness-points';

/** Signed separation of two boxes a and b with the places that set it; lengths in mm, world frame. */
export interface Separation {
  /**
   * Euclidean distance when apart; minus the penetration depth (the least shift that separates the interiors)
   * when they overlap; exactly 0 when they touch within the contact tolerance.
   */
  readonly distance: number;
  /** Unit vector from a to b. Moving b along it by minus `distance` ends an overlap. */
  readonly direction: Vector3;
  /** Witness point on the surface of a; `pointB` is it plus `distance` times `direction`. */
  readonly pointA: Vector3;
  readonly pointB: Vector3;
  /** The faces that meet at the witness: one for a face, two for an edge, three for a corner. */
  readonly featureA: readonly FaceName[];
  readonly featureB: readonly FaceName[];
  /** The face of each box that looks most squarely at the other. */
  readonly faceA: FaceName;
  readonly faceB: FaceName;
}

/** Reusable result of `separatePacked`; the vectors as in `Separation`. */
export interface SeparationResult {
  distance: number;
  readonly direction: Float64Array;
  readonly pointA: Float64Array;
  readonly pointB: Float64Array;
}

export function createSeparationResult(): SeparationResult {
  return {
    distance: 0,
    direction: new Float64Array(3),
    pointA: new Float64Array(3),
    pointB: new Float64Array(3),
  };
}

const twoBoxes = new PackedBoxes(2);
const scratch = createSeparationResult();

export function separateBoxes(a: OrientedBox, b: OrientedBox): Separation {
  twoBoxes.setBox(0, a);
  twoBoxes.setBox(1, b);
  const distance = separatePacked(twoBoxes, 0, 1, scratch);
  const { direction } = scratch;
  return {
    distance,
    direction: vectorOf(direction),
    pointA: vectorOf(scratch.pointA),
    pointB: vectorOf(scratch.pointB),
    featureA: facesOfFeature(featureTowards(twoBoxes, 0, direction, 1)),
    featureB: facesOfFeature(featureTowards(twoBoxes, 1, direction, -1)),
    faceA: faceTowards(a, vectorOf(direction), 1),
    faceB: faceTowards(b, vectorOf(direction), -1),
  };
}

/** Signed separation of boxes i and j of a packed set, mm; allocates nothing. */
export function separatePacked(packed: PackedBoxes, i: number, j: number, out: SeparationResult): number {
  if (packed.aligned[i] === 1 && packed.aligned[j] === 1) return separateAligned(packed.bounds, i, j, out);
  const shapes = packed.shapes;
  const oa = i * SHAPE_STRIDE;
  loadPair(shapes, oa, j * SHAPE_STRIDE);
  const distance = loadedDistance(Infinity);
  if (distance > CONTACT_TOLERANCE_MM) {
    for (let k = 0; k < 3; k++) pair[PAIR_N + k] = (closest[3 + k]! - closest[k]!) / distance;
  } else if (distance > 0) {
    bestAxis();
  }
  placeWitness(distance);
  toWorld(shapes, oa, out);
  out.distance = Math.abs(distance) <= CONTACT_TOLERANCE_MM ? 0 : distance;
  return out.distance;
}

/** Signed separation alone, without its witness: the same number as `separatePacked`, sooner. */
export function signedDistance(packed: PackedBoxes, i: number, j: number): number {
  let distance: number;
  if (packed.aligned[i] === 1 && packed.aligned[j] === 1) {
    distance = alignedDistance(packed.bounds, i * BOUNDS_STRIDE, j * BOUNDS_STRIDE);
  } else {
    loadPair(packed.shapes, i * SHAPE_STRIDE, j * SHAPE_STRIDE);
    distance = loadedDistance(Infinity);
  }
  return Math.abs(distance) <= CONTACT_TOLERANCE_MM ? 0 : distance;
}

/** `signedDistance` of two boxes in any orientation, or some number above `limit` as soon as it must be above. */
export function signedDistanceWithin(packed: PackedBoxes, i: number, j: number, limit: number): number {
  loadPair(packed.shapes, i * SHAPE_STRIDE, j * SHAPE_STRIDE);
  const distance = loadedDistance(limit);
  return Math.abs(distance) <= CONTACT_TOLERANCE_MM ? 0 : distance;
}

/** Whether the interiors of boxes i and j overlap by more than the contact tolerance. */
export function interiorsOverlap(packed: PackedBoxes, i: number, j: number): boolean {
  if (packed.aligned[i] === 1 && packed.aligned[j] === 1) {
    return alignedDistance(packed.bounds, i * BOUNDS_STRIDE, j * BOUNDS_STRIDE) < -CONTACT_TOLERANCE_MM;
  }
  loadPair(packed.shapes, i * SHAPE_STRIDE, j * SHAPE_STRIDE);
  return interiorsMeet();
}

/**
 * The feature of a box that lies furthest along a world direction (times `sense`, 1 or -1), as a mask of faces
 * (bit k is face k of `FACE_NAMES`).
 */
export function featureTowards(
  packed: PackedBoxes,
  index: number,
  direction: Float64Array,
  sense: 1 | -1,
): number {
  const shapes = packed.shapes;
  const at = index * SHAPE_STRIDE + 6;
  let mask = 0;
  for (let axis = 0; axis < 3; axis++) {
    const along =
      sense *
      (shapes[at + axis]! * direction[0]! +
        shapes[at + 3 + axis]! * direction[1]! +
        shapes[at + 6 + axis]! * direction[2]!);
    if (along > SQUARE_SINE) mask |= 2 << (2 * axis);
    else if (along < -SQUARE_SINE) mask |= 1 << (2 * axis);
  }
  return mask;
}

/** The face of a box whose outward normal is nearest to a direction (times `sense`). */
export function faceTowards(box: OrientedBox, direction: Vector3, sense: 1 | -1): FaceName {
  const r = box.rotation;
  const x = sense * (r[0] * direction[0] + r[3] * direction[1] + r[6] * direction[2]);
  const y = sense * (r[1] * direction[0] + r[4] * direction[1] + r[7] * direction[2]);
  const z = sense * (r[2] * direction[0] + r[5] * direction[1] + r[8] * direction[2]);
  if (Math.abs(x) >= Math.abs(y) && Math.abs(x) >= Math.abs(z)) return x < 0 ? '-x' : '+x';
  if (Math.abs(y) >= Math.abs(z)) return y < 0 ? '-y' : '+y';
  return z < 0 ? '-z' : '+z';
}

/** Distance of two axis-aligned boxes from their bounds: the greatest gap when negative, else Euclidean. */
function alignedDistance(bounds: Float64Array, a: number, b: number): number {
  const x = Math.max(bounds[b]! - bounds[a + 3]!, bounds[a]! - bounds[b + 3]!);
  const y = Math.max(bounds[b + 1]! - bounds[a + 4]!, bounds[a + 1]! - bounds[b + 4]!);
  const z = Math.max(bounds[b + 2]! - bounds[a + 5]!, bounds[a + 2]! - bounds[b + 5]!);
  const most = x > y ? Math.max(x, z) : Math.max(y, z);
  if (most <= 0) return most;
  const gx = Math.max(x, 0);
  const gy = Math.max(y, 0);
  const gz = Math.max(z, 0);
  return Math.sqrt(gx * gx + gy * gy + gz * gz);
}

function separateAligned(bounds: Float64Array, i: number, j: number, out: SeparationResult): number {
  const a = i * BOUNDS_STRIDE;
  const b = j * BOUNDS_STRIDE;
  const { direction, pointA, pointB } = out;
  const distance = alignedDistance(bounds, a, b);
  let widest = 0;
  let most = -Infinity;
  for (let axis = 0; axis < 3; axis++) {
    const after = bounds[b + axis]! - bounds[a + 3 + axis]!;
    const before = bounds[a + axis]! - bounds[b + 3 + axis]!;
    const gap = Math.max(after, before);
    if (gap > most) {
      most = gap;
      widest = axis;
    }
    direction[axis] =
      distance > CONTACT_TOLERANCE_MM && gap > 0 ? (after >= before ? gap : -gap) / distance : 0;
    if (gap > 0) {
      pointA[axis] = after >= before ? bounds[a + 3 + axis]! : bounds[a + axis]!;
      pointB[axis] = after >= before ? bounds[b + axis]! : bounds[b + 3 + axis]!;
    } else {
      const low = Math.max(bounds[a + axis]!, bounds[b + axis]!);
      const high = Math.min(bounds[a + 3 + axis]!, bounds[b + 3 + axis]!);
      pointA[axis] = (low + high) / 2;
      pointB[axis] = pointA[axis]!;
    }
  }
  if (distance <= CONTACT_TOLERANCE_MM) {
    const after =
      bounds[b + widest]! - bounds[a + 3 + widest]! >= bounds[a + widest]! - bounds[b + 3 + widest]!;
    direction[widest] = after ? 1 : -1;
    pointA[widest] = after ? bounds[a + 3 + widest]! : bounds[a + widest]!;
    pointB[widest] = after ? bounds[b + widest]! : bounds[b + 3 + widest]!;
  }
  out.distance = Math.abs(distance) <= CONTACT_TOLERANCE_MM ? 0 : distance;
  return out.distance;
}

/** Turns the normal and the closest points from the frame of a into the world. */
function toWorld(shapes: Float64Array, oa: number, out: SeparationResult): void {
  const { direction, pointA, pointB } = out;
  for (let row = 0; row < 3; row++) {
    const r0 = shapes[oa + 6 + 3 * row]!;
    const r1 = shapes[oa + 7 + 3 * row]!;
    const r2 = shapes[oa + 8 + 3 * row]!;
    direction[row] = r0 * pair[PAIR_N]! + r1 * pair[PAIR_N + 1]! + r2 * pair[PAIR_N + 2]!;
    pointA[row] = shapes[oa + row]! + r0 * closest[0]! + r1 * closest[1]! + r2 * closest[2]!;
    pointB[row] = shapes[oa + row]! + r0 * closest[3]! + r1 * closest[4]! + r2 * closest[5]!;
  }
}

function vectorOf(array: Float64Array): Vector3 {
  return [array[0]!, array[1]!, array[2]!];
}
