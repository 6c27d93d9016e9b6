import type { BodySet } from './body-set';
import { BOUNDS_STRIDE, type PackedBoxes } from './packed-boxes';
import { CONTACT_TOLERANCE_MM } from './tolerance';
import { createTravelInterval, rangesMayMeet, travelIntervalPacked } from './travel';

/** Reusable result of `travelOfBody`: box numbers in the set, -1 when nothing stops the body within the limit. */
export interface BodyTravel {
  /** Free travel, mm (times the length of the direction). */
  distance: number;
  box: number;
  otherBox: number;
}

/**
 * Free travel of a body in the six axis directions, in the order of `FACE_NAMES` (-x, +x, -y, +y, -z, +z); box
 * numbers of what meets, -1 for nothing within the limit.
 */
export interface SixWayTravel {
  readonly distance: Float64Array;
  readonly box: Int32Array;
  readonly otherBox: Int32Array;
}

export function createBodyTravel(): BodyTravel {
  return { distance: 0, box: -1, otherBox: -1 };
}

export function createSixWayTravel(): SixWayTravel {
  return { distance: new Float64Array(6), box: new Int32Array(6), otherBox: new Int32Array(6) };
}

const interval = createTravelInterval();

/** How far one body of a set can go along (x, y, z) before it meets another, up to `limit`; as `freeTravel`. */
export function travelOfBody(
  bodies: BodySet,
  body: number,
  x: number,
  y: number,
  z: number,
  limit: number,
  out: BodyTravel,
): void {
  const { bounds, starts, packed, count } = bodies;
  out.distance = limit;
  out.box = -1;
  out.otherBox = -1;
  for (let other = 0; other < count; other++) {
    if (other === body || !rangesMayMeet(bounds, body, other, x, y, z, out.distance)) continue;
    for (let i = starts[body]!; i < starts[body + 1]!; i++) {
      for (let j = starts[other]!; j < starts[other + 1]!; j++) {
        if (!travelIntervalPacked(packed, i, j, x, y, z, interval) || !interval.ahead) continue;
        const enter = Math.max(0, interval.enter);
        if (enter > out.distance || (enter === out.distance && out.box >= 0)) continue;
        out.distance = enter;
        out.box = i;
        out.otherBox = j;
      }
    }
  }
}

/** Free travel of one body in all six axis directions, each up to `limit` mm; as `travelOfBody`, sooner. */
export function sixWayTravel(bodies: BodySet, body: number, limit: number, out: SixWayTravel): void {
  const { bounds, packed, starts, count } = bodies;
  const boxBounds = packed.bounds;
  out.distance.fill(limit);
  out.box.fill(-1);
  out.otherBox.fill(-1);
  for (let other = 0; other < count; other++) {
    if (other === body || axesToTry(bounds, body, other, out) === 0) continue;
    for (let i = starts[body]!; i < starts[body + 1]!; i++) {
      for (let j = starts[other]!; j < starts[other + 1]!; j++) {
        const axes = axesToTry(boxBounds, i, j, out);
        if (axes !== 0) narrowTravel(packed, i, j, axes, out);
      }
    }
  }
}

/**
 * The axes, as bits 1, 2 and 4, along which two ranges could meet sooner than known: they overlap on the two other
 * axes by more than the contact tolerance, and the way to the other one is shorter than the travel so far.
 */
function axesToTry(bounds: Float64Array, i: number, j: number, out: SixWayTravel): number {
  const a = i * BOUNDS_STRIDE;
  const b = j * BOUNDS_STRIDE;
  const afterX = bounds[b]! - bounds[a + 3]!;
  const beforeX = bounds[a]! - bounds[b + 3]!;
  const afterY = bounds[b + 1]! - bounds[a + 4]!;
  const beforeY = bounds[a + 1]! - bounds[b + 4]!;
  const apartX = afterX >= -CONTACT_TOLERANCE_MM || beforeX >= -CONTACT_TOLERANCE_MM;
  const apartY = afterY >= -CONTACT_TOLERANCE_MM || beforeY >= -CONTACT_TOLERANCE_MM;
  if (apartX && apartY) return 0;
  const afterZ = bounds[b + 2]! - bounds[a + 5]!;
  const beforeZ = bounds[a + 2]! - bounds[b + 5]!;
  const apartZ = afterZ >= -CONTACT_TOLERANCE_MM || beforeZ >= -CONTACT_TOLERANCE_MM;
  const travel = out.distance;
  let axes = 0;
  if (!apartY && !apartZ && mayShorten(beforeX, afterX, travel[0]!, travel[1]!)) axes |= 1;
  if (!apartX && !apartZ && mayShorten(beforeY, afterY, travel[2]!, travel[3]!)) axes |= 2;
  if (!apartX && !apartY && mayShorten(beforeZ, afterZ, travel[4]!, travel[5]!)) axes |= 4;
  return axes;
}

/** Whether a gap on the low side or one on the high side, of two ranges in one lane, is within the travel known. */
function mayShorten(before: number, after: number, low: number, high: number): boolean {
  return (
    (after < -CONTACT_TOLERANCE_MM && before <= low) || (before < -CONTACT_TOLERANCE_MM && after <= high)
  );
}

/** Lets one pair of boxes shorten the travel along the given axes, both ways at once. */
function narrowTravel(packed: PackedBoxes, i: number, j: number, axes: number, out: SixWayTravel): void {
  const { bounds, aligned } = packed;
  const straight = aligned[i] === 1 && aligned[j] === 1;
  const a = i * BOUNDS_STRIDE;
  const b = j * BOUNDS_STRIDE;
  for (let axis = 0; axis < 3; axis++) {
    if ((axes & (1 << axis)) === 0) continue;
    if (straight) {
      interval.enter = bounds[b + axis]! - bounds[a + 3 + axis]!;
      interval.leave = bounds[b + 3 + axis]! - bounds[a + axis]!;
      interval.ahead = interval.leave > CONTACT_TOLERANCE_MM;
      interval.behind = interval.enter < -CONTACT_TOLERANCE_MM;
    } else {
      const x = axis === 0 ? 1 : 0;
      const y = axis === 1 ? 1 : 0;
      if (!travelIntervalPacked(packed, i, j, x, y, axis === 2 ? 1 : 0, interval)) continue;
    }
    // The way back meets the same pair from minus leave to minus enter.
    if (interval.ahead) shorten(out, 2 * axis + 1, interval.enter, i, j);
    if (interval.behind) shorten(out, 2 * axis, -interval.leave, i, j);
  }
}

function shorten(out: SixWayTravel, face: number, enter: number, i: number, j: number): void {
  const distance = Math.max(0, enter);
  const known = out.distance[face]!;
  if (distance > known || (distance === known && out.box[face]! >= 0)) return;
  out.distance[face] = distance;
  out.box[face] = i;
  out.otherBox[face] = j;
}
