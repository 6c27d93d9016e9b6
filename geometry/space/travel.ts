import type { FaceName } from './face-names';
import type { OrientedBox } from './oriented-box';
import { BOUNDS_STRIDE, PackedBoxes, SHAPE_STRIDE } from './packed-boxes';
import { loadPair, PAIR_A, PAIR_ABS, PAIR_B, PAIR_D, PAIR_R, pair } from './separating-axes';
import { faceTowards } from './separation';
import { CONTACT_TOLERANCE_MM, ROUNDOFF } from './tolerance';
import type { Vector3 } from './vector';

/**
 * When a moves to a + t direction, the interiors overlap for enter < t < leave (t in mm for a unit direction).
 * `normal` is the unit direction, from a to b, of the faces or edges that meet at `enter`.
 */
export interface TravelInterval {
  enter: number;
  leave: number;
  /** Whether an overlap deeper than the contact tolerance lies ahead (at some t > 0) or is there already. */
  ahead: boolean;
  /** The same for travel backwards (at some t < 0). */
  behind: boolean;
  readonly normal: Float64Array;
}

export function createTravelInterval(): TravelInterval {
  return { enter: 0, leave: 0, ahead: false, behind: false, normal: new Float64Array(3) };
}

/** How far a body can go before it meets something. */
export interface FreeTravel {
  /** mm (times the length of the direction); at most the limit; 0 when it is blocked at once or overlaps already. */
  readonly distance: number;
  /** What stops it, absent when it goes the whole way. */
  readonly contact?: TravelContact;
}

/** The pair of boxes that meet, by their index in the two lists, and the faces that meet. */
export interface TravelContact {
  readonly mover: number;
  readonly obstacle: number;
  readonly moverFace: FaceName;
  readonly obstacleFace: FaceName;
}

/** The least gap between two bodies along a direction. */
export interface DirectedGap {
  /** mm along the direction (times its length); negative is an overlap. */
  readonly gap: number;
  readonly a: number;
  readonly b: number;
  readonly faceA: FaceName;
  readonly faceB: FaceName;
}

/** Component of a unit direction below which it runs along a face: 1 m of travel then moves 1e-9 mm across it. */
const ALONG_FACE = 1e-12;

const twoBoxes = new PackedBoxes(2);
const interval = createTravelInterval();
/** The interval being narrowed, at the offsets below. */
const span = new Float64Array(5);
const ENTER = 0;
const LEAVE = 1;
/** The same for an overlap deeper than the contact tolerance. */
const DEEP_ENTER = 2;
const DEEP_LEAVE = 3;
/** The axis that set `ENTER`. */
const AXIS = 4;
const along = new Float64Array(3);

/**
 * The travel t for which the interiors of a + t direction and b overlap, over all t from minus to plus infinity.
 * False when they never do by more than the contact tolerance: passing by, or sliding flush along a face.
 */
export function travelInterval(
  a: OrientedBox,
  b: OrientedBox,
  direction: Vector3,
  out: TravelInterval,
): boolean {
  twoBoxes.setBox(0, a);
  twoBoxes.setBox(1, b);
  return travelIntervalPacked(twoBoxes, 0, 1, direction[0], direction[1], direction[2], out);
}

/** `travelInterval` for boxes i and j of a packed set; allocates nothing. */
export function travelIntervalPacked(
  packed: PackedBoxes,
  i: number,
  j: number,
  x: number,
  y: number,
  z: number,
  out: TravelInterval,
): boolean {
  const shapes = packed.shapes;
  if (!boundsMeet(packed.bounds, i, j, x, y, z)) return false;
  if (packed.aligned[i] === 1 && packed.aligned[j] === 1) {
    const axis = span[AXIS]!;
    const sense = (axis === 0 ? x : axis === 1 ? y : z) < 0 ? -1 : 1;
    for (let k = 0; k < 3; k++) out.normal[k] = k === axis ? sense : 0;
  } else {
    const oa = i * SHAPE_STRIDE;
    loadPair(shapes, oa, j * SHAPE_STRIDE);
    for (let k = 0; k < 3; k++) {
      along[k] = shapes[oa + 6 + k]! * x + shapes[oa + 9 + k]! * y + shapes[oa + 12 + k]! * z;
    }
    const still = ALONG_FACE * Math.sqrt(x * x + y * y + z * z);
    startInterval();
    if (!faceAxesMeet(still) || !edgeAxesMeet(still)) return false;
    writeMeetingNormal(shapes, oa, out.normal);
  }
  out.enter = span[ENTER]!;
  out.leave = span[LEAVE]!;
  out.ahead = span[DEEP_LEAVE]! > 0;
  out.behind = span[DEEP_ENTER]! < 0;
  return true;
}

/**
 * Whether two world ranges of a bounds array meet when the first moves along (x, y, z): the answer itself for boxes
 * along the axes, a necessary condition for others.
 */
function boundsMeet(bounds: Float64Array, i: number, j: number, x: number, y: number, z: number): boolean {
  const still = ALONG_FACE * Math.sqrt(x * x + y * y + z * z);
  const a = i * BOUNDS_STRIDE;
  const b = j * BOUNDS_STRIDE;
  startInterval();
  for (let k = 0; k < 3; k++) {
    const a0 = bounds[a + k]!;
    const a1 = bounds[a + 3 + k]!;
    const b0 = bounds[b + k]!;
    const b1 = bounds[b + 3 + k]!;
    const speed = k === 0 ? x : k === 1 ? y : z;
    if (!narrow((b0 + b1 - a0 - a1) / 2, (a1 - a0 + b1 - b0) / 2, speed, 1, still, k)) return false;
  }
  return true;
}

/**
 * Whether something in the first world range may meet something in the second after more than nothing and less than
 * `limit` of travel along (x, y, z); false only when it cannot.
 */
export function rangesMayMeet(
  bounds: Float64Array,
  i: number,
  j: number,
  x: number,
  y: number,
  z: number,
  limit: number,
): boolean {
  return boundsMeet(bounds, i, j, x, y, z) && span[DEEP_LEAVE]! > 0 && span[ENTER]! <= limit;
}

function startInterval(): void {
  span[ENTER] = -Infinity;
  span[LEAVE] = Infinity;
  span[DEEP_ENTER] = -Infinity;
  span[DEEP_LEAVE] = Infinity;
  span[AXIS] = 0;
}

function faceAxesMeet(still: number): boolean {
  for (let k = 0; k < 3; k++) {
    const reach =
      pair[PAIR_A + k]! +
      pair[PAIR_B]! * pair[PAIR_ABS + 3 * k]! +
      pair[PAIR_B + 1]! * pair[PAIR_ABS + 3 * k + 1]! +
      pair[PAIR_B + 2]! * pair[PAIR_ABS + 3 * k + 2]!;
    if (!narrow(pair[PAIR_D + k]!, reach, along[k]!, 1, still, k)) return false;
  }
  for (let k = 0; k < 3; k++) {
    const r0 = pair[PAIR_R + k]!;
    const r1 = pair[PAIR_R + 3 + k]!;
    const r2 = pair[PAIR_R + 6 + k]!;
    const reach =
      pair[PAIR_B + k]! +
      pair[PAIR_A]! * Math.abs(r0) +
      pair[PAIR_A + 1]! * Math.abs(r1) +
      pair[PAIR_A + 2]! * Math.abs(r2);
    const centre = pair[PAIR_D]! * r0 + pair[PAIR_D + 1]! * r1 + pair[PAIR_D + 2]! * r2;
    const speed = along[0]! * r0 + along[1]! * r1 + along[2]! * r2;
    if (!narrow(centre, reach, speed, 1, still, 3 + k)) return false;
  }
  return true;
}

function edgeAxesMeet(still: number): boolean {
  for (let i = 0; i < 3; i++) {
    const i1 = (i + 1) % 3;
    const i2 = (i + 2) % 3;
    for (let j = 0; j < 3; j++) {
      const r1 = pair[PAIR_R + 3 * i1 + j]!;
      const r2 = pair[PAIR_R + 3 * i2 + j]!;
      const sine = Math.sqrt(r1 * r1 + r2 * r2);
      if (sine < 1e-14) continue;
      const centre = pair[PAIR_D + i2]! * r1 - pair[PAIR_D + i1]! * r2;
      const speed = along[i2]! * r1 - along[i1]! * r2;
      let reach = pair[PAIR_A + i1]! * Math.abs(r2) + pair[PAIR_A + i2]! * Math.abs(r1);
      for (let k = 0; k < 3; k++) {
        if (k === j) continue;
        const across = r1 * pair[PAIR_R + 3 * i2 + k]! - r2 * pair[PAIR_R + 3 * i1 + k]!;
        reach += pair[PAIR_B + k]! * Math.abs(across);
      }
      if (!narrow(centre, reach, speed, sine, still, 6 + 3 * i + j)) return false;
    }
  }
  return true;
}

/**
 * Narrows the interval by one axis of length `size`: the centre of b lies `centre` along it, the boxes reach
 * `reach` together, a moves at `speed`. False when the axis keeps them apart all the way.
 */
function narrow(
  centre: number,
  reach: number,
  speed: number,
  size: number,
  still: number,
  axis: number,
): boolean {
  const tolerance = CONTACT_TOLERANCE_MM * size;
  if (Math.abs(speed) <= still * size) return Math.abs(centre) < reach - tolerance;
  const middle = centre / speed;
  const half = reach / Math.abs(speed);
  const margin = tolerance / Math.abs(speed);
  // An edge axis must beat the faces by more than roundoff, so that flush contacts name their faces.
  const enter = middle - half;
  if (enter > span[ENTER]! + (axis < 6 ? 0 : ROUNDOFF * (Math.abs(middle) + half))) {
    span[ENTER] = enter;
    span[AXIS] = axis;
  }
  if (middle + half < span[LEAVE]!) span[LEAVE] = middle + half;
  if (enter + margin > span[DEEP_ENTER]!) span[DEEP_ENTER] = enter + margin;
  if (middle + half - margin < span[DEEP_LEAVE]!) span[DEEP_LEAVE] = middle + half - margin;
  return span[DEEP_ENTER]! < span[DEEP_LEAVE]!;
}

/** The unit normal of the axis that met last, in the world, in the sense of travel. */
function writeMeetingNormal(shapes: Float64Array, oa: number, normal: Float64Array): void {
  const axis = span[AXIS]!;
  let n0 = axis === 0 ? 1 : 0;
  let n1 = axis === 1 ? 1 : 0;
  let n2 = axis === 2 ? 1 : 0;
  if (axis >= 3) {
    const j = axis < 6 ? axis - 3 : (axis - 6) % 3;
    const b0 = pair[PAIR_R + j]!;
    const b1 = pair[PAIR_R + 3 + j]!;
    const b2 = pair[PAIR_R + 6 + j]!;
    const i = axis < 6 ? -1 : Math.floor((axis - 6) / 3);
    n0 = i < 0 ? b0 : i === 1 ? b2 : i === 2 ? -b1 : 0;
    n1 = i < 0 ? b1 : i === 0 ? -b2 : i === 2 ? b0 : 0;
    n2 = i < 0 ? b2 : i === 0 ? b1 : i === 1 ? -b0 : 0;
  }
  const size = Math.sqrt(n0 * n0 + n1 * n1 + n2 * n2);
  const sense = n0 * along[0]! + n1 * along[1]! + n2 * along[2]! < 0 ? -1 / size : 1 / size;
  for (let row = 0; row < 3; row++) {
    const at = oa + 6 + 3 * row;
    normal[row] = sense * (shapes[at]! * n0 + shapes[at + 1]! * n1 + shapes[at + 2]! * n2);
  }
}

/**
 * How far all of `movers` can go together along `direction` before one of them meets an obstacle, exact for
 * oriented boxes. Starting in contact and moving into it gives 0; moving away from it, or sliding flush along
 * it, is free. Boxes that already overlap cannot move at all.
 */
export function freeTravel(
  movers: readonly OrientedBox[],
  obstacles: readonly OrientedBox[],
  direction: Vector3,
  limit: number,
): FreeTravel {
  let least = limit;
  let contact: TravelContact | undefined;
  eachMeeting(movers, obstacles, direction, (mover, obstacle, a, b) => {
    const enter = Math.max(0, interval.enter);
    if (enter > least || (enter === least && contact !== undefined)) return;
    least = enter;
    contact = { mover, obstacle, moverFace: meetingFace(a, 1), obstacleFace: meetingFace(b, -1) };
  });
  return contact === undefined ? { distance: least } : { distance: least, contact };
}

/**
 * The least gap between two bodies along `direction`, which points from a to b: how far a could go before it
 * meets b, negative by how far it would have to go back when they overlap. Undefined when no box of a has a box
 * of b in front of it.
 */
export function signedGapAlong(
  a: readonly OrientedBox[],
  b: readonly OrientedBox[],
  direction: Vector3,
): DirectedGap | undefined {
  let least: DirectedGap | undefined;
  eachMeeting(a, b, direction, (indexA, indexB, boxA, boxB) => {
    if (least !== undefined && interval.enter >= least.gap) return;
    const faceA = meetingFace(boxA, 1);
    const faceB = meetingFace(boxB, -1);
    least = { gap: interval.enter, a: indexA, b: indexB, faceA, faceB };
  });
  return least;
}

/** Calls back, with the interval in `interval`, for every pair that overlaps at some t > 0. */
function eachMeeting(
  movers: readonly OrientedBox[],
  obstacles: readonly OrientedBox[],
  direction: Vector3,
  meet: (mover: number, obstacle: number, a: OrientedBox, b: OrientedBox) => void,
): void {
  movers.forEach((a, mover) => {
    obstacles.forEach((b, obstacle) => {
      if (travelInterval(a, b, direction, interval) && interval.ahead) meet(mover, obstacle, a, b);
    });
  });
}

function meetingFace(box: OrientedBox, sense: 1 | -1): FaceName {
  const { normal } = interval;
  return faceTowards(box, [normal[0]!, normal[1]!, normal[2]!], sense);
}
