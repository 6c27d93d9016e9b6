/**
 * How far one box turns about a line before it meets another. Exact for oriented boxes.
 *
 * Conservative advancement by separating planes: at an angle where the boxes are apart some plane parts them, standing
 * still in the world or turning with the mover; on such a plane every corner of the other box runs as
 * h + a cos + b sin, so the angle to which the plane holds has a closed form. The next plane is taken there, until one
 * holds to the end (the certificate that the turn is free) or none holds any further (contact). A point at distance d
 * moves no faster than on an arc, so a step is never shorter than the one the distance alone allows; flush faces, at
 * which distance-based steps stall, cost one step.
 */
import { BOUNDS_STRIDE, type PackedBoxes, SHAPE_STRIDE } from './packed-boxes';
import { CONTACT_TOLERANCE_MM } from './tolerance';
import type { Vector3 } from './vector';

/** Outcome of a turn of one box past another; angles in radians from the start. */
export interface TurnTravel {
  /** Angle to which the turn is certified free, at most the limit. */
  free: number;
  /** Whether the boxes meet there (else the limit was reached). */
  meets: boolean;
  /** Unit normal of the plane that parted them last, from the mover to the other box, world axes at that angle. */
  readonly normal: Float64Array;
}

export function createTurnTravel(): TurnTravel {
  return { free: 0, meets: false, normal: new Float64Array(3) };
}

/** More planes than this in one turn do not occur; reaching it counts as contact, which errs to the safe side. */
const MOST_PLANES = 4096;
/** A step that moves nothing by more than this, mm, is contact. */
const LEAST_STEP_MM = 1e-7;

const moverCorners = new Float64Array(24);
const otherCorners = new Float64Array(24);
const moverAxes = new Float64Array(9);
const turned = new Float64Array(9);

/**
 * Turns box i of a packed set about the line through `point` along unit `axis` by up to `limit` radians (either sign).
 * Boxes that already overlap by more than the contact tolerance meet at 0; moving away from a face that is touched is
 * free.
 */
export function turnTravelPacked(
  packed: PackedBoxes,
  i: number,
  j: number,
  point: Vector3,
  axis: Vector3,
  limit: number,
  out: TurnTravel,
): void {
  out.free = 0;
  out.meets = true;
  const sense = limit < 0 ? -1 : 1;
  const end = Math.abs(limit);
  writeCorners(packed.shapes, i, point, moverCorners);
  writeCorners(packed.shapes, j, point, otherCorners);
  const reach = Math.max(1, reachOf(moverCorners, axis));
  writeAxes(packed.shapes, i, moverAxes);
  const other = j * SHAPE_STRIDE + 6;
  const shapes = packed.shapes;
  let angle = 0;
  for (let plane = 0; plane < MOST_PLANES; plane++) {
    const best = furthestPlane(shapes, other, axis, sense, angle, end, out.normal);
    if (best >= end) {
      out.free = end;
      out.meets = false;
      return;
    }
    if (!(best > angle + LEAST_STEP_MM / reach)) break;
    angle = best;
  }
  out.free = Math.min(Math.max(angle, 0), end);
}

/** The greatest angle to which one of the fifteen planes at `angle` keeps holding; -1 when the boxes overlap. */
function furthestPlane(
  shapes: Float64Array,
  other: number,
  axis: Vector3,
  sense: number,
  angle: number,
  end: number,
  normal: Float64Array,
): number {
  turnAxes(axis, sense * angle);
  let best = -1;
  for (let k = 0; k < 15; k++) {
    let x: number;
    let y: number;
    let z: number;
    if (k < 3) {
      x = shapes[other + k]!;
      y = shapes[other + 3 + k]!;
      z = shapes[other + 6 + k]!;
    } else if (k < 6) {
      x = turned[k - 3]!;
      y = turned[k]!;
      z = turned[k + 3]!;
    } else {
      const m = Math.floor((k - 6) / 3);
      const o = (k - 6) % 3;
      const [ax, ay, az] = [turned[m]!, turned[m + 3]!, turned[m + 6]!];
      const [bx, by, bz] = [shapes[other + o]!, shapes[other + 3 + o]!, shapes[other + 6 + o]!];
      x = ay * bz - az * by;
      y = az * bx - ax * bz;
      z = ax * by - ay * bx;
      const size = Math.sqrt(x * x + y * y + z * z);
      if (size < 1e-9) continue;
      x /= size;
      y /= size;
      z /= size;
    }
    for (let side = -1; side <= 1; side += 2) {
      const holds = planeHolds(axis, sense, angle, side * x, side * y, side * z, end);
      if (holds <= best) continue;
      best = holds;
      normal[0] = side * x;
      normal[1] = side * y;
      normal[2] = side * z;
      if (best >= end) return best;
    }
  }
  return best;
}

/** To which angle a plane with this normal (at `angle`, mover behind it) holds, still or turning; -1 when it does not. */
function planeHolds(
  axis: Vector3,
  sense: number,
  angle: number,
  x: number,
  y: number,
  z: number,
  end: number,
): number {
  // The plane stands still on the nearest corner of the other box; the corners of the mover turn up to it.
  const still = holdsTo(moverCorners, axis, sense, angle, x, y, z, leastAlong(otherCorners, x, y, z), end);
  if (still < 0 || still >= end) return still;
  // The plane turns with the mover: seen from the mover, the corners of the other box turn back.
  const c = Math.cos(-sense * angle);
  const s = Math.sin(-sense * angle);
  const k = (1 - c) * (axis[0] * x + axis[1] * y + axis[2] * z);
  const bx = c * x + s * (axis[1] * z - axis[2] * y) + k * axis[0];
  const by = c * y + s * (axis[2] * x - axis[0] * z) + k * axis[1];
  const bz = c * z + s * (axis[0] * y - axis[1] * x) + k * axis[2];
  const most = -leastAlong(moverCorners, -bx, -by, -bz);
  const turning = holdsTo(otherCorners, axis, -sense, angle, -bx, -by, -bz, -most, end);
  return Math.max(still, turning);
}

function leastAlong(corners: Float64Array, x: number, y: number, z: number): number {
  let least = Infinity;
  for (let k = 0; k < 24; k += 3) {
    const along = corners[k]! * x + corners[k + 1]! * y + corners[k + 2]! * z;
    if (along < least) least = along;
  }
  return least;
}

/**
 * To which angle, from `from` on, all corners turning about `axis` stay behind the plane n . p = limit (by no more than
 * the contact tolerance in front of it); -1 when one is in front already.
 */
function holdsTo(
  corners: Float64Array,
  axis: Vector3,
  sense: number,
  from: number,
  x: number,
  y: number,
  z: number,
  limit: number,
  end: number,
): number {
  const level = limit + CONTACT_TOLERANCE_MM;
  const alongAxis = axis[0] * x + axis[1] * y + axis[2] * z;
  let least = end;
  for (let k = 0; k < 24; k += 3) {
    const px = corners[k]!;
    const py = corners[k + 1]!;
    const pz = corners[k + 2]!;
    const up = axis[0] * px + axis[1] * py + axis[2] * pz;
    const fixed = up * alongAxis;
    const a = px * x + py * y + pz * z - fixed;
    const b =
      sense *
      ((axis[1] * pz - axis[2] * py) * x +
        (axis[2] * px - axis[0] * pz) * y +
        (axis[0] * py - axis[1] * px) * z);
    const size = Math.sqrt(a * a + b * b);
    if (fixed + size <= level) continue;
    if (fixed + a * Math.cos(from) + b * Math.sin(from) > level) return -1;
    const half = Math.acos(Math.max(-1, (level - fixed) / size));
    let crossing = Math.atan2(b, a) - half;
    while (crossing < from - 1e-12) crossing += 2 * Math.PI;
    while (crossing - 2 * Math.PI >= from - 1e-12) crossing -= 2 * Math.PI;
    if (crossing < least) least = crossing;
    if (least <= from) return from;
  }
  return least;
}

function writeCorners(shapes: Float64Array, box: number, origin: Vector3, out: Float64Array): void {
  const at = box * SHAPE_STRIDE;
  for (let corner = 0; corner < 8; corner++) {
    const u = corner & 1 ? shapes[at + 3]! : -shapes[at + 3]!;
    const v = corner & 2 ? shapes[at + 4]! : -shapes[at + 4]!;
    const w = corner & 4 ? shapes[at + 5]! : -shapes[at + 5]!;
    for (let row = 0; row < 3; row++) {
      const r = at + 6 + 3 * row;
      out[3 * corner + row] =
        shapes[at + row]! + shapes[r]! * u + shapes[r + 1]! * v + shapes[r + 2]! * w - origin[row]!;
    }
  }
}

function writeAxes(shapes: Float64Array, box: number, out: Float64Array): void {
  for (let k = 0; k < 9; k++) out[k] = shapes[box * SHAPE_STRIDE + 6 + k]!;
}

/** Columns of `moverAxes` turned by `radians`, row-major in `turned`. */
function turnAxes(axis: Vector3, radians: number): void {
  const c = Math.cos(radians);
  const s = Math.sin(radians);
  for (let column = 0; column < 3; column++) {
    const x = moverAxes[column]!;
    const y = moverAxes[column + 3]!;
    const z = moverAxes[column + 6]!;
    const k = (1 - c) * (axis[0] * x + axis[1] * y + axis[2] * z);
    turned[column] = c * x + s * (axis[1] * z - axis[2] * y) + k * axis[0];
    turned[column + 3] = c * y + s * (axis[2] * x - axis[0] * z) + k * axis[1];
    turned[column + 6] = c * z + s * (axis[0] * y - axis[1] * x) + k * axis[2];
  }
}

/** Greatest distance of a corner from the axis. */
function reachOf(corners: Float64Array, axis: Vector3): number {
  let most = 0;
  for (let k = 0; k < 24; k += 3) {
    const x = corners[k]!;
    const y = corners[k + 1]!;
    const z = corners[k + 2]!;
    const up = x * axis[0] + y * axis[1] + z * axis[2];
    most = Math.max(most, Math.sqrt(Math.max(0, x * x + y * y + z * z - up * up)));
  }
  return most;
}

/**
 * World range of box i over the whole turn, exact for its corners: least x, y, z at 0, greatest at 3 of `out`.
 */
export function boundsOfTurn(
  packed: PackedBoxes,
  i: number,
  point: Vector3,
  axis: Vector3,
  limit: number,
  out: Float64Array,
): void {
  writeCorners(packed.shapes, i, point, moverCorners);
  out.fill(Infinity, 0, 3);
  out.fill(-Infinity, 3, BOUNDS_STRIDE);
  for (let k = 0; k < 24; k += 3) {
    const p: Vector3 = [moverCorners[k]!, moverCorners[k + 1]!, moverCorners[k + 2]!];
    const up = p[0] * axis[0] + p[1] * axis[1] + p[2] * axis[2];
    for (let w = 0; w < 3; w++) {
      const fixed = up * axis[w]!;
      const a = p[w]! - fixed;
      const n = (w + 1) % 3;
      const m = (w + 2) % 3;
      const b = (axis[n]! * p[m]! - axis[m]! * p[n]!) * (limit < 0 ? -1 : 1);
      const end = Math.abs(limit);
      const last = fixed + a * Math.cos(end) + b * Math.sin(end);
      const size = Math.sqrt(a * a + b * b);
      const peak = Math.atan2(b, a);
      const high = within(peak, end) ? fixed + size : Math.max(fixed + a, last);
      const low = within(peak + Math.PI, end) ? fixed - size : Math.min(fixed + a, last);
      out[w] = Math.min(out[w]!, low + point[w]!);
      out[3 + w] = Math.max(out[3 + w]!, high + point[w]!);
    }
  }
}

/** Whether an angle lies between 0 and `end`, full turns aside. */
function within(angle: number, end: number): boolean {
  const turn = 2 * Math.PI;
  return ((angle % turn) + turn) % turn <= end;
}
