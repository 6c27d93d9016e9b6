import { ROUNDOFF } from './tolerance';

/*
 * The pair of boxes in hand, in the frame of box a: written by `loadPair`, read by the routines of this folder.
 * A flat module-level array and not an object a call, so that the hot paths allocate nothing.
 */
export const pair = new Float64Array(32);

/** R, entry 3 i + j: axis i of a dot axis j of b. */
export const PAIR_R = 0;
/** |R|, same order. */
export const PAIR_ABS = 9;
/** Centre of b minus centre of a, along the axes of a. */
export const PAIR_D = 18;
/** Half extents of a. */
export const PAIR_A = 21;
/** Half extents of b. */
export const PAIR_B = 24;
/** Unit normal of the axis `bestAxis` chose, along the axes of a, pointing from a to b. */
export const PAIR_N = 27;
/** Number of that axis: 0 to 2 faces of a, 3 to 5 faces of b, 6 + 3 i + j edge i of a across edge j of b. */
export const PAIR_AXIS = 30;

/** Below this squared sine two edges count as parallel: their common normal would move the result by 1e-14 of their length. */
const PARALLEL_SINE_SQUARED = 1e-28;
/** Below this squared sine the reach of b is taken from the axis itself, so that roundoff in R is not blown up. */
const NEARLY_PARALLEL_SINE_SQUARED = 1e-2;

/** Puts the boxes at offsets `oa` and `ob` of a packed shape array into `pair`. */
export function loadPair(shapes: Float64Array, oa: number, ob: number): void {
  const dx = shapes[ob]! - shapes[oa]!;
  const dy = shapes[ob + 1]! - shapes[oa + 1]!;
  const dz = shapes[ob + 2]! - shapes[oa + 2]!;
  for (let i = 0; i < 3; i++) {
    const ax = shapes[oa + 6 + i]!;
    const ay = shapes[oa + 9 + i]!;
    const az = shapes[oa + 12 + i]!;
    for (let j = 0; j < 3; j++) {
      const r = ax * shapes[ob + 6 + j]! + ay * shapes[ob + 9 + j]! + az * shapes[ob + 12 + j]!;
      pair[PAIR_R + 3 * i + j] = r;
      pair[PAIR_ABS + 3 * i + j] = Math.abs(r);
    }
    pair[PAIR_D + i] = ax * dx + ay * dy + az * dz;
    pair[PAIR_A + i] = shapes[oa + 3 + i]!;
    pair[PAIR_B + i] = shapes[ob + 3 + i]!;
  }
}

/** A length the roundoff of the loaded pair is measured against, mm. */
export function pairScale(): number {
  let sum = 0;
  for (let k = PAIR_D; k < PAIR_N; k++) sum += Math.abs(pair[k]!);
  return sum;
}

/**
 * The largest separation of the loaded pair over the 15 axes, mm: minus the penetration depth when negative,
 * a lower bound of the distance when positive. An edge axis must beat the face axes by more than roundoff.
 */
export function bestAxis(): number {
  let best = -Infinity;
  let axis = 0;
  for (let k = 0; k < 3; k++) {
    const separation =
      Math.abs(pair[PAIR_D + k]!) -
      pair[PAIR_A + k]! -
      pair[PAIR_B]! * pair[PAIR_ABS + 3 * k]! -
      pair[PAIR_B + 1]! * pair[PAIR_ABS + 3 * k + 1]! -
      pair[PAIR_B + 2]! * pair[PAIR_ABS + 3 * k + 2]!;
    if (separation > best) {
      best = separation;
      axis = k;
    }
  }
  for (let k = 0; k < 3; k++) {
    const along = distanceAlongB(k);
    const separation =
      Math.abs(along) -
      pair[PAIR_B + k]! -
      pair[PAIR_A]! * pair[PAIR_ABS + k]! -
      pair[PAIR_A + 1]! * pair[PAIR_ABS + 3 + k]! -
      pair[PAIR_A + 2]! * pair[PAIR_ABS + 6 + k]!;
    if (separation > best + ROUNDOFF * Math.abs(best)) {
      best = separation;
      axis = 3 + k;
    }
  }
  const slack = ROUNDOFF * pairScale();
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) {
      const separation = edgeSeparation(i, j);
      if (separation > best + slack) {
        best = separation;
        axis = 6 + 3 * i + j;
      }
    }
  }
  pair[PAIR_AXIS] = axis;
  writeNormal(axis);
  return best;
}

/** Centre distance along axis k of b. */
function distanceAlongB(k: number): number {
  return (
    pair[PAIR_D]! * pair[PAIR_R + k]! +
    pair[PAIR_D + 1]! * pair[PAIR_R + 3 + k]! +
    pair[PAIR_D + 2]! * pair[PAIR_R + 6 + k]!
  );
}

/** Separation along the common normal of edge i of a and edge j of b; -Infinity when they are parallel. */
export function edgeSeparation(i: number, j: number): number {
  const i1 = (i + 1) % 3;
  const i2 = (i + 2) % 3;
  const j1 = (j + 1) % 3;
  const j2 = (j + 2) % 3;
  const r1 = pair[PAIR_R + 3 * i1 + j]!;
  const r2 = pair[PAIR_R + 3 * i2 + j]!;
  const sineSquared = r1 * r1 + r2 * r2;
  if (sineSquared < PARALLEL_SINE_SQUARED) return -Infinity;
  const along = pair[PAIR_D + i2]! * r1 - pair[PAIR_D + i1]! * r2;
  let reach = pair[PAIR_A + i1]! * Math.abs(r2) + pair[PAIR_A + i2]! * Math.abs(r1);
  if (sineSquared < NEARLY_PARALLEL_SINE_SQUARED) {
    const n1 = r1 * pair[PAIR_R + 3 * i2 + j1]! - r2 * pair[PAIR_R + 3 * i1 + j1]!;
    const n2 = r1 * pair[PAIR_R + 3 * i2 + j2]! - r2 * pair[PAIR_R + 3 * i1 + j2]!;
    reach += pair[PAIR_B + j1]! * Math.abs(n1) + pair[PAIR_B + j2]! * Math.abs(n2);
  } else {
    reach +=
      pair[PAIR_B + j1]! * pair[PAIR_ABS + 3 * i + j2]! + pair[PAIR_B + j2]! * pair[PAIR_ABS + 3 * i + j1]!;
  }
  return (Math.abs(along) - reach) / Math.sqrt(sineSquared);
}

/** Writes the unit normal of an axis into `pair`, pointing from a to b. */
function writeNormal(axis: number): void {
  let x = 0;
  let y = 0;
  let z = 0;
  if (axis < 3) {
    x = axis === 0 ? 1 : 0;
    y = axis === 1 ? 1 : 0;
    z = axis === 2 ? 1 : 0;
  } else if (axis < 6) {
    x = pair[PAIR_R + axis - 3]!;
    y = pair[PAIR_R + axis]!;
    z = pair[PAIR_R + axis + 3]!;
  } else {
    const i = Math.floor((axis - 6) / 3);
    const j = (axis - 6) % 3;
    const bx = pair[PAIR_R + j]!;
    const by = pair[PAIR_R + 3 + j]!;
    const bz = pair[PAIR_R + 6 + j]!;
    if (i === 0) {
      y = -bz;
      z = by;
    } else if (i === 1) {
      x = bz;
      z = -bx;
    } else {
      x = -by;
      y = bx;
    }
  }
  const size = Math.sqrt(x * x + y * y + z * z);
  const sign = x * pair[PAIR_D]! + y * pair[PAIR_D + 1]! + z * pair[PAIR_D + 2]! < 0 ? -1 / size : 1 / size;
  pair[PAIR_N] = x * sign;
  pair[PAIR_N + 1] = y * sign;
  pair[PAIR_N + 2] = z * sign;
}
