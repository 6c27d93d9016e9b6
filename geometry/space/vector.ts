/** A point or a direction in space, millimetres unless it is a unit direction. */
export type Vector3 = readonly [number, number, number];

export const zeroVector: Vector3 = [0, 0, 0];

export function add(a: Vector3, b: Vector3): Vector3 {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

export function subtract(a: Vector3, b: Vector3): Vector3 {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

export function scale(a: Vector3, factor: number): Vector3 {
  return [a[0] * factor, a[1] * factor, a[2] * factor];
}

/** The opposite vector; a zero component stays +0. */
export function negate(a: Vector3): Vector3 {
  return [0 - a[0], 0 - a[1], 0 - a[2]];
}

export function dot(a: Vector3, b: Vector3): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

export function cross(a: Vector3, b: Vector3): Vector3 {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/** Euclidean length. */
export function length(a: Vector3): number {
  return Math.sqrt(dot(a, a));
}

/** Euclidean distance between two points, mm. */
export function distance(a: Vector3, b: Vector3): number {
  return length(subtract(a, b));
}

/** Unit vector along `a`. Throws a RangeError for a zero or non-finite vector: it has no direction. */
export function normalise(a: Vector3): Vector3 {
  const size = length(a);
  if (!(size > 0) || !Number.isFinite(size))
    throw new RangeError('a zero or non-finite vector has no direction');
  return [a[0] / size, a[1] / size, a[2] / size];
}

/** The point a fraction `t` of the way from `a` to `b`. */
export function interpolate(a: Vector3, b: Vector3, t: number): Vector3 {
  return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, a[2] + (b[2] - a[2]) * t];
}
