import { closest, crossingEdges } from './closest-features';
import { clipPolygon, polygon } from './polygon-clipping';
import { PAIR_A, PAIR_AXIS, PAIR_B, PAIR_D, PAIR_N, PAIR_R, pair } from './separating-axes';

/** Sine of the angle below which a face counts as square to a direction. */
export const SQUARE_SINE = 1e-9;

/** The direction along the axes of one box, and the centre and axes of the other box seen from it. */
const view = new Float64Array(15);
const DIRECTION = 0;
const CENTRE = 3;
const AXES = 6;

/**
 * Leaves in `closest` the witness of the loaded pair for the direction in `pair`: in the middle of what two faces
 * share, where a face of either box looks squarely at the other; the crossing point of two edges in an overlap; else
 * the closest points as they are. Where two ways out of an overlap are equal to roundoff the boxes may be tilted
 * against each other by so little that the point on b is off its surface by that tilt times the size of the face.
 */
export function placeWitness(distance: number): void {
  const face = squareAxis(pair[PAIR_N]!, pair[PAIR_N + 1]!, pair[PAIR_N + 2]!);
  if (face >= 0) {
    viewFromA();
    meetInFace(face, PAIR_A, PAIR_B);
    const sense = pair[PAIR_N + face]! < 0 ? -1 : 1;
    polygon[face] = sense * pair[PAIR_A + face]!;
    for (let k = 0; k < 3; k++) {
      closest[k] = polygon[k]!;
      closest[3 + k] = polygon[k]! + distance * pair[PAIR_N + k]!;
    }
    return;
  }
  const faceOfB = squareAxis(alongB(0), alongB(1), alongB(2));
  if (faceOfB >= 0) {
    const sense = alongB(faceOfB) < 0 ? 1 : -1;
    viewFromB();
    meetInFace(faceOfB, PAIR_B, PAIR_A);
    polygon[faceOfB] = sense * pair[PAIR_B + faceOfB]!;
    for (let k = 0; k < 3; k++) {
      const row = PAIR_R + 3 * k;
      const inA = pair[row]! * polygon[0]! + pair[row + 1]! * polygon[1]! + pair[row + 2]! * polygon[2]!;
      closest[3 + k] = pair[PAIR_D + k]! + inA;
      closest[k] = closest[3 + k]! - distance * pair[PAIR_N + k]!;
    }
    return;
  }
  const axis = pair[PAIR_AXIS]!;
  if (distance <= 0 && axis >= 6) crossingEdges(Math.floor((axis - 6) / 3), (axis - 6) % 3);
}

/** The axis a unit direction given by its components runs along; -1 for none. */
function squareAxis(x: number, y: number, z: number): number {
  const alongX = Math.abs(x) > SQUARE_SINE;
  const alongY = Math.abs(y) > SQUARE_SINE;
  const alongZ = Math.abs(z) > SQUARE_SINE;
  if (alongX) return alongY || alongZ ? -1 : 0;
  if (alongY) return alongZ ? -1 : 1;
  return 2;
}

/** The normal in `pair` along axis j of b. */
function alongB(j: number): number {
  return (
    pair[PAIR_N]! * pair[PAIR_R + j]! +
    pair[PAIR_N + 1]! * pair[PAIR_R + 3 + j]! +
    pair[PAIR_N + 2]! * pair[PAIR_R + 6 + j]!
  );
}

/** Box b as a sees it, the direction pointing from a to b. */
function viewFromA(): void {
  for (let k = 0; k < 3; k++) {
    view[DIRECTION + k] = pair[PAIR_N + k]!;
    view[CENTRE + k] = pair[PAIR_D + k]!;
    for (let j = 0; j < 3; j++) view[AXES + 3 * k + j] = pair[PAIR_R + 3 * k + j]!;
  }
}

/** Box a as b sees it, the direction pointing from b to a. */
function viewFromB(): void {
  for (let k = 0; k < 3; k++) {
    view[DIRECTION + k] = -alongB(k);
    view[CENTRE + k] = -(
      pair[PAIR_D]! * pair[PAIR_R + k]! +
      pair[PAIR_D + 1]! * pair[PAIR_R + 3 + k]! +
      pair[PAIR_D + 2]! * pair[PAIR_R + 6 + k]!
    );
    for (let j = 0; j < 3; j++) view[AXES + 3 * k + j] = pair[PAIR_R + 3 * j + k]!;
  }
}

/**
 * Puts in the first three numbers of `polygon` the middle of what the other box turns towards the face (corner, edge
 * or face), cut to the rectangle of the face.
 */
function meetInFace(face: number, ownHalf: number, otherHalf: number): void {
  faceTurnedHere(otherHalf);
  let count = 4;
  for (let k = 0; k < 3; k++) {
    if (k === face) continue;
    const half = pair[ownHalf + k]!;
    const before = count;
    count = clipPolygon(count, k, 1, half);
    if (count > 0) count = clipPolygon(count, k, -1, half);
    if (count === 0) {
      // Only where roundoff chose between equal ways out: the nearest point of the face stands in.
      count = before;
      for (let v = 0; v < count; v++)
        polygon[3 * v + k] = Math.max(-half, Math.min(half, polygon[3 * v + k]!));
    }
  }
  for (let k = 0; k < 3; k++) {
    let sum = 0;
    for (let v = 0; v < count; v++) sum += polygon[3 * v + k]!;
    polygon[k] = sum / count;
  }
}

/** The corner, edge or face of the other box that lies furthest against the direction, as four corners. */
function faceTurnedHere(otherHalf: number): void {
  for (let v = 0; v < 4; v++) for (let k = 0; k < 3; k++) polygon[3 * v + k] = view[CENTRE + k]!;
  let free = 0;
  for (let j = 0; j < 3; j++) {
    const half = pair[otherHalf + j]!;
    let along = 0;
    for (let k = 0; k < 3; k++) along += view[DIRECTION + k]! * view[AXES + 3 * k + j]!;
    const fixed = Math.abs(along) > SQUARE_SINE;
    for (let v = 0; v < 4; v++) {
      // The corners go round: the first free axis is + - - +, the second + + - -.
      const plus = fixed ? along < 0 : free === 0 ? v === 0 || v === 3 : v < 2;
      for (let k = 0; k < 3; k++) {
        polygon[3 * v + k] = polygon[3 * v + k]! + view[AXES + 3 * k + j]! * (plus ? half : -half);
      }
    }
    if (!fixed) free++;
  }
}
