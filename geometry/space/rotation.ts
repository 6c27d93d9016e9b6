import type { Vector3 } from './vector';

/** Proper rotation matrix, row-major: entry (row r, column c) is at 3 r + c. Columns are the images of x, y, z. */
export type Rotation = readonly [number, number, number, number, number, number, number, number, number];

export type AxisName = 'x' | 'y' | 'z';

export const identityRotation: Rotation = [1, 0, 0, 0, 1, 0, 0, 0, 1];

const RADIANS_PER_DEGREE = Math.PI / 180;

/** Sine and cosine of an angle in degrees, exact for every multiple of 30 that has a rational value. */
function sineAndCosine(degrees: number): readonly [number, number] {
  const turn = ((degrees % 360) + 360) % 360;
  const quarter = Math.floor(turn / 90) % 4;
  const rest = turn - 90 * quarter;
  let sine = Math.sin(rest * RADIANS_PER_DEGREE);
  let cosine = Math.cos(rest * RADIANS_PER_DEGREE);
  if (rest === 30) sine = 0.5;
  if (rest === 60) cosine = 0.5;
  if (quarter === 0) return [sine, cosine];
  if (quarter === 1) return [cosine, 0 - sine];
  if (quarter === 2) return [0 - sine, 0 - cosine];
  return [0 - cosine, sine];
}

/**
 * Right-handed turn about a coordinate axis, degrees. Multiples of 90 give entries that are exactly 0, 1 or -1,
 * so a part turned by quarters stays axis-aligned to the last bit.
 */
export function rotationAbout(axis: AxisName, degrees: number): Rotation {
  const [s, c] = sineAndCosine(degrees);
  const minus = 0 - s;
  if (axis === 'x') return [1, 0, 0, 0, c, minus, 0, s, c];
  if (axis === 'y') return [c, 0, s, 0, 1, 0, minus, 0, c];
  return [c, minus, 0, s, c, 0, 0, 0, 1];
}

/**
 * The rotation whose columns are the given unit axes: it takes x to `x`, y to `y`, z to `z`.
 * Throws a RangeError when the axes are not orthonormal and right-handed (to 1e-9).
 */
export function rotationFromAxes(x: Vector3, y: Vector3, z: Vector3): Rotation {
  const rotation: Rotation = [x[0], y[0], z[0], x[1], y[1], z[1], x[2], y[2], z[2]];
  if (!isProperRotation(rotation)) throw new RangeError('axes must be orthonormal and right-handed');
  return rotation;
}

/** Whether the matrix is orthonormal and right-handed, each entry of R^T R to within 1e-9. */
export function isProperRotation(r: Rotation): boolean {
  const tolerance = 1e-9;
  const product = multiplyRotations(transposeRotation(r), r);
  for (let entry = 0; entry < 9; entry++) {
    const error = (product[entry] ?? Number.NaN) - (identityRotation[entry] ?? 0);
    if (!(Math.abs(error) <= tolerance)) return false;
  }
  const determinant =
    r[0] * (r[4] * r[8] - r[5] * r[7]) -
    r[1] * (r[3] * r[8] - r[5] * r[6]) +
    r[2] * (r[3] * r[7] - r[4] * r[6]);
  return determinant > 0;
}

/** The product `a b`: `b` turns first, then `a`. */
export function multiplyRotations(a: Rotation, b: Rotation): Rotation {
  return [
    a[0] * b[0] + a[1] * b[3] + a[2] * b[6],
    a[0] * b[1] + a[1] * b[4] + a[2] * b[7],
    a[0] * b[2] + a[1] * b[5] + a[2] * b[8],
    a[3] * b[0] + a[4] * b[3] + a[5] * b[6],
    a[3] * b[1] + a[4] * b[4] + a[5] * b[7],
    a[3] * b[2] + a[4] * b[5] + a[5] * b[8],
    a[6] * b[0] + a[7] * b[3] + a[8] * b[6],
    a[6] * b[1] + a[7] * b[4] + a[8] * b[7],
    a[6] * b[2] + a[7] * b[5] + a[8] * b[8],
  ];
}

/** The inverse turn. */
export function transposeRotation(r: Rotation): Rotation {
  return [r[0], r[3], r[6], r[1], r[4], r[7], r[2], r[5], r[8]];
}

export function rotateVector(r: Rotation, v: Vector3): Vector3 {
  return [
    r[0] * v[0] + r[1] * v[1] + r[2] * v[2],
    r[3] * v[0] + r[4] * v[1] + r[5] * v[2],
    r[6] * v[0] + r[7] * v[1] + r[8] * v[2],
  ];
}

/** The image of a coordinate axis: column 0, 1 or 2 of the matrix. */
export function axisOfRotation(r: Rotation, axis: AxisName): Vector3 {
  if (axis === 'x') return [r[0], r[3], r[6]];
  if (axis === 'y') return [r[1], r[4], r[7]];
  return [r[2], r[5], r[8]];
}

/**
 * Rotation from three angles in degrees about the fixed axes, applied in the order x, then y, then z
 * (R = Rz Ry Rx). Exact when all three are multiples of 90.
 */
export function rotationFromDegrees(degrees: Vector3): Rotation {
  const aboutX = rotationAbout('x', degrees[0]);
  const aboutY = rotationAbout('y', degrees[1]);
  const aboutZ = rotationAbout('z', degrees[2]);
  return multiplyRotations(aboutZ, multiplyRotations(aboutY, aboutX));
}

/** Rounds away float64 noise (1e-9 degrees moves a point 1 m off by 2e-8 mm), so 30 in reads 30 out. */
function tidyDegrees(radians: number): number {
  return Math.round((radians / RADIANS_PER_DEGREE) * 1e9) / 1e9 + 0;
}

/**
 * Inverse of `rotationFromDegrees`: x and z in (-180, 180], y in [-90, 90], rounded to 1e-9 degrees.
 * With y at plus or minus 90 only one sum of x and z is determined; x is then given as 0.
 */
export function degreesOfRotation(r: Rotation): Vector3 {
  const sineY = Math.max(-1, Math.min(1, 0 - r[6]));
  const cosineY = Math.hypot(r[0], r[3]);
  if (cosineY < 1e-12) return [0, tidyDegrees(Math.asin(sineY)), tidyDegrees(Math.atan2(0 - r[1], r[4]))];
  return [
    tidyDegrees(Math.atan2(r[7], r[8])),
    tidyDegrees(Math.atan2(sineY, cosineY)),
    tidyDegrees(Math.atan2(r[3], r[0])),
  ];
}
