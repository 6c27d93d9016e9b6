/** Where the dimension line of a clearance is drawn: between the two faces, inside what they have in common. */

import { translateBox } from '../space/oriented-box';
import { BOUNDS_STRIDE, type PackedBoxes } from '../space/packed-boxes';
import { separateBoxes } from '../space/separation';
import { add, scale, type Vector3 } from '../space/vector';
import { middleOfSharedFace } from './shared-face';

/**
 * Ends of the line in the world, mm: on the face of box `a` and, `gap` along the unit `direction`, on the face of `b`.
 * Lies in the middle of the overlap of the two boxes as seen along the direction.
 */
export function dimensionLine(
  packed: PackedBoxes,
  a: number,
  b: number,
  direction: Vector3,
  gap: number,
): readonly [Vector3, Vector3] {
  const axis = direction.findIndex((component) => Math.abs(component) === 1);
  const start =
    axis >= 0 && packed.aligned[a] === 1 && packed.aligned[b] === 1
      ? alignedStart(packed.bounds, a, b, axis, (direction[axis] ?? 0) > 0)
      : turnedStart(packed, a, b, direction, gap);
  return [start, add(start, scale(direction, gap))];
}

function alignedStart(bounds: Float64Array, a: number, b: number, axis: number, forward: boolean): Vector3 {
  const middle = (k: number): number => {
    const [least, greatest] = [bound(bounds, a, k), bound(bounds, a, 3 + k)];
    if (k === axis) return forward ? greatest : least;
    return (Math.max(least, bound(bounds, b, k)) + Math.min(greatest, bound(bounds, b, 3 + k))) / 2;
  };
  return [middle(0), middle(1), middle(2)];
}

function bound(bounds: Float64Array, box: number, entry: number): number {
  return bounds[box * BOUNDS_STRIDE + entry] ?? 0;
}

/** Where faces square to the direction look at each other, the middle of what they share; else where they will touch. */
function turnedStart(packed: PackedBoxes, a: number, b: number, direction: Vector3, gap: number): Vector3 {
  const first = packed.boxAt(a);
  const second = packed.boxAt(b);
  const shared = middleOfSharedFace(first, second, direction);
  if (shared) return shared;
  const { pointB } = separateBoxes(translateBox(first, scale(direction, gap)), second);
  return add(pointB, scale(direction, -gap));
}
