import { CONTACT_TOLERANCE_MM, ROUNDOFF } from './tolerance';

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
/** Largest separation found so far. */
const PAIR_BEST = 31;

/** Below this squared sine two edges count as parallel: their common normal would move the result by 1e-14 of their length. */
const PARALLEL_SINE_SQUARED = 1e-28;
/** Below this squared sine the reach of b is taken from the axis itself, so that roundoff in R is not blown up. */
const NEARLY_PARALLEL_SINE_SQUARED = 1e-2;

/** Puts the boxes at offsets `oa` and `ob` of a packed shape array into `pair`. */
export function loadPair(shapes: Float64Array, oa: number, ob: number): void {
  const dx = shapes[ob]! - shapes[oa]!;
  const dy = shapes[ob + 1]! - shapes[oa + 1]!;
  const dz = shapes[ob + 2]! - shapes[oa + 2]!;
  const b0 = shapes[ob + 6]!;
  const b1 = shapes[ob + 7]!;
  const b2 = shapes[ob + 8]!;
  const b3 = shapes[ob + 9]!;
  const b4 = shapes[ob + 10]!;
  const b5 = shapes[ob + 11]!;
  const b6 = shapes[ob + 12]!;
  const b7 = shapes[ob + 13]!;
  const b8 = shapes[ob + 14]!;
  for (let i = 0; i < 3; i++) {
    const x = shapes[oa + 6 + i]!;
    const y = shapes[oa + 9 + i]!;
    const z = shapes[oa + 12 + i]!;
    const row = 3 * i;
    const r0 = x * b0 + y * b3 + z * b6;
    const r1 = x * b1 + y * b4 + z * b7;
    const r2 = x * b2 + y * b5 + z * b8;
    pair[row] = r0;
    pair[row + 1] = r1;
    pair[row + 2] = r2;
    pair[PAIR_ABS + row] = Math.abs(r0);
    pair[PAIR_ABS + row + 1] = Math.abs(r1);
    pair[PAIR_ABS + row + 2] = Math.abs(r2);
    pair[PAIR_D + i] = x * dx + y * dy + z * dz;
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
  bestFaceAxis();
  return bestAxisWithEdges();
}

/** The largest separation over the six face axes alone, mm. */
export function bestFaceAxis(): number {
  pair[PAIR_BEST] = -Infinity;
  tryFaces(-Infinity);
  return pair[PAIR_BEST]!;
}

/** Completes `bestFaceAxis` by the nine edge axes: the same answer as `bestAxis`. */
export function bestAxisWithEdges(): number {
  const slack = ROUNDOFF * pairScale();
  pair[PAIR_BEST] = pair[PAIR_BEST]! + slack;
  const faceAxis = pair[PAIR_AXIS];
  tryEdges(Infinity);
  if (pair[PAIR_AXIS] === faceAxis) pair[PAIR_BEST] = pair[PAIR_BEST]! - slack;
  writeNormal(pair[PAIR_AXIS]!);
  return pair[PAIR_BEST]!;
}

/** Whether the loaded pair overlaps by more than the contact tolerance on all 15 axes; stops at the first it does not. */
export function interiorsMeet(): boolean {
  pair[PAIR_BEST] = -CONTACT_TOLERANCE_MM;
  return !tryFaces(-CONTACT_TOLERANCE_MM) && !tryEdges(-CONTACT_TOLERANCE_MM);
}

/** Raises `PAIR_BEST` to the largest separation over the six face axes; stops, true, above `enough` if that is finite. */
function tryFaces(enough: number): boolean {
  const stop = enough > -Infinity;
  const b0 = pair[PAIR_B]!;
  const b1 = pair[PAIR_B + 1]!;
  const b2 = pair[PAIR_B + 2]!;
  for (let k = 0; k < 3; k++) {
    const row = PAIR_ABS + 3 * k;
    const separation =
      Math.abs(pair[PAIR_D + k]!) -
      pair[PAIR_A + k]! -
      b0 * pair[row]! -
      b1 * pair[row + 1]! -
      b2 * pair[row + 2]!;
    if (separation > pair[PAIR_BEST]!) {
      pair[PAIR_BEST] = separation;
      pair[PAIR_AXIS] = k;
      if (stop) return true;
    }
  }
  const a0 = pair[PAIR_A]!;
  const a1 = pair[PAIR_A + 1]!;
  const a2 = pair[PAIR_A + 2]!;
  const d0 = pair[PAIR_D]!;
  const d1 = pair[PAIR_D + 1]!;
  const d2 = pair[PAIR_D + 2]!;
  for (let k = 0; k < 3; k++) {
    const along = d0 * pair[k]! + d1 * pair[3 + k]! + d2 * pair[6 + k]!;
    const separation =
      Math.abs(along) -
      pair[PAIR_B + k]! -
      a0 * pair[PAIR_ABS + k]! -
      a1 * pair[PAIR_ABS + 3 + k]! -
      a2 * pair[PAIR_ABS + 6 + k]!;
    const best = pair[PAIR_BEST]!;
    if (separation > best + ROUNDOFF * Math.abs(best)) {
      pair[PAIR_BEST] = separation;
      pair[PAIR_AXIS] = 3 + k;
      if (stop) return true;
    }
  }
  return false;
}

/** Raises `PAIR_BEST` by the nine edge axes; stops, true, at the first above `enough`. */
function tryEdges(enough: number): boolean {
  const b0 = pair[PAIR_B]!;
  const b1 = pair[PAIR_B + 1]!;
  const b2 = pair[PAIR_B + 2]!;
  for (let i = 0; i < 3; i++) {
    const i1 = i === 2 ? 0 : i + 1;
    const i2 = i === 0 ? 2 : i - 1;
    const a1 = pair[PAIR_A + i1]!;
    const a2 = pair[PAIR_A + i2]!;
    const d1 = pair[PAIR_D + i1]!;
    const d2 = pair[PAIR_D + i2]!;
    const p0 = pair[3 * i1]!;
    const p1 = pair[3 * i1 + 1]!;
    const p2 = pair[3 * i1 + 2]!;
    const q0 = pair[3 * i2]!;
    const q1 = pair[3 * i2 + 1]!;
    const q2 = pair[3 * i2 + 2]!;
    const s0 = pair[PAIR_ABS + 3 * i]!;
    const s1 = pair[PAIR_ABS + 3 * i + 1]!;
    const s2 = pair[PAIR_ABS + 3 * i + 2]!;
    const e0 = Math.abs(d2 * p0 - d1 * q0) - a1 * Math.abs(q0) - a2 * Math.abs(p0) - b1 * s2 - b2 * s1;
    const e1 = Math.abs(d2 * p1 - d1 * q1) - a1 * Math.abs(q1) - a2 * Math.abs(p1) - b2 * s0 - b0 * s2;
    const e2 = Math.abs(d2 * p2 - d1 * q2) - a1 * Math.abs(q2) - a2 * Math.abs(p2) - b0 * s1 - b1 * s0;
    if (tryEdge(i, 0, e0, p0 * p0 + q0 * q0) > enough) return true;
    if (tryEdge(i, 1, e1, p1 * p1 + q1 * q1) > enough) return true;
    if (tryEdge(i, 2, e2, p2 * p2 + q2 * q2) > enough) return true;
  }
  return false;
}

/** Raises `PAIR_BEST` to a separation given times the sine of the angle between the edges; returns the better one. */
function tryEdge(i: number, j: number, timesSine: number, sineSquared: number): number {
  const best = pair[PAIR_BEST]!;
  let separation: number;
  if (sineSquared < NEARLY_PARALLEL_SINE_SQUARED) {
    separation = edgeSeparation(i, j);
  } else {
    // The sine is at most 1, so these two leave the division out where it cannot win.
    if (timesSine <= 0 && timesSine <= best) return best;
    if (timesSine > 0 && best > 0 && timesSine * timesSine <= best * best * sineSquared) return best;
    separation = timesSine / Math.sqrt(sineSquared);
  }
  if (separation <= best) return best;
  pair[PAIR_BEST] = separation;
  pair[PAIR_AXIS] = 6 + 3 * i + j;
  return separation;
}

/** Separation along the common normal of edge i of a and edge j of b; -Infinity when they are parallel. */
function edgeSeparation(i: number, j: number): number {
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
