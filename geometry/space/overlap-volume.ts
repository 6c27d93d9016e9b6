import type { OrientedBox } from './oriented-box';
import { BOUNDS_STRIDE, PackedBoxes, SHAPE_STRIDE } from './packed-boxes';
import { clipPolygon, integralAbove, polygon } from './polygon-clipping';
import { bestAxis, loadPair, PAIR_A, PAIR_ABS, PAIR_B, PAIR_D, PAIR_R, pair } from './separating-axes';
import { CONTACT_TOLERANCE_MM } from './tolerance';

const twoBoxes = new PackedBoxes(2);
const low = new Float64Array(3);
const size = new Float64Array(3);

/** Exact volume of the overlap of two boxes, cubic mm; 0 when they only touch or are apart. */
export function overlapVolume(a: OrientedBox, b: OrientedBox): number {
  twoBoxes.setBox(0, a);
  twoBoxes.setBox(1, b);
  return overlapVolumePacked(twoBoxes, 0, 1);
}

/** `overlapVolume` of boxes i and j of a packed set; allocates nothing. */
export function overlapVolumePacked(packed: PackedBoxes, i: number, j: number): number {
  if (packed.aligned[i] === 1 && packed.aligned[j] === 1) return alignedVolume(packed.bounds, i, j);
  loadPair(packed.shapes, i * SHAPE_STRIDE, j * SHAPE_STRIDE);
  if (bestAxis() >= -CONTACT_TOLERANCE_MM || !reduceToCommonRange()) return 0;
  return Math.max(0, volumeUnderFaces());
}

function alignedVolume(bounds: Float64Array, i: number, j: number): number {
  const a = i * BOUNDS_STRIDE;
  const b = j * BOUNDS_STRIDE;
  let volume = 1;
  for (let axis = 0; axis < 3; axis++) {
    const from = Math.max(bounds[a + axis]!, bounds[b + axis]!);
    const to = Math.min(bounds[a + 3 + axis]!, bounds[b + 3 + axis]!);
    if (to - from <= CONTACT_TOLERANCE_MM) return 0;
    volume *= to - from;
  }
  return volume;
}

/** Cuts box a down to the range b can reach along the axes of a: the smaller the numbers, the less roundoff. */
function reduceToCommonRange(): boolean {
  for (let k = 0; k < 3; k++) {
    let reach = 0;
    for (let j = 0; j < 3; j++) reach += pair[PAIR_ABS + 3 * k + j]! * pair[PAIR_B + j]!;
    const from = Math.max(-pair[PAIR_A + k]!, pair[PAIR_D + k]! - reach);
    const to = Math.min(pair[PAIR_A + k]!, pair[PAIR_D + k]! + reach);
    if (to <= from) return false;
    low[k] = from;
    size[k] = to - from;
  }
  return true;
}

/**
 * The overlap as an integral over the y-z rectangle of a: above each point stand the upper faces of b, below it
 * the lower faces, each cut off at the two x faces of a. Only the faces of b are walked, and every term changes
 * continuously with the boxes, so coplanar faces need no special case and no face can be counted twice.
 */
function volumeUnderFaces(): number {
  let volume = 0;
  for (let j = 0; j < 3; j++) {
    if (pair[PAIR_R + j] === 0) continue;
    volume += integralUnderFace(j, 1) - integralUnderFace(j, -1);
  }
  return volume;
}

/** Integral of x, held between 0 and the width of a, over the part of one face of b inside the y-z rectangle. */
function integralUnderFace(j: number, side: number): number {
  const j1 = (j + 1) % 3;
  const j2 = (j + 2) % 3;
  const b1 = pair[PAIR_B + j1]!;
  const b2 = pair[PAIR_B + j2]!;
  for (let k = 0; k < 3; k++) {
    const row = PAIR_R + 3 * k;
    const centre = pair[PAIR_D + k]! + side * pair[PAIR_B + j]! * pair[row + j]! - low[k]!;
    const u = b1 * pair[row + j1]!;
    const v = b2 * pair[row + j2]!;
    polygon[k] = centre + u + v;
    polygon[3 + k] = centre - u + v;
    polygon[6 + k] = centre - u - v;
    polygon[9 + k] = centre + u - v;
  }
  let count = clipPolygon(4, 1, 1, 0);
  if (count > 2) count = clipPolygon(count, 1, -1, size[1]!);
  if (count > 2) count = clipPolygon(count, 2, 1, 0);
  if (count > 2) count = clipPolygon(count, 2, -1, size[2]!);
  if (count < 3) return 0;
  return integralAbove(count, 0) - integralAbove(count, size[0]!);
}
