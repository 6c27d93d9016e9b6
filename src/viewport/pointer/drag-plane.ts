/** Where a hand that moves on the screen moves in the world. */
import { add, dot, scale, subtract, type Vector3 } from '../../../geometry';
import { type PictureAxes, type Pixel, pictureAxes, type Ray, type Sight } from '../camera/sight';

export interface DragPlane {
  readonly through: Vector3;
  /** Unit normal. */
  readonly normal: Vector3;
}

/** Rays nearer to the plane than this (as a sine) meet it too far away to mean anything. */
const GRAZING = 0.02;

/** The plane through a point that faces the eye: what is dragged on it keeps under the pointer. */
export function facingPlane(sight: Sight, through: Vector3): DragPlane {
  return { through, normal: pictureAxes(sight).towardsEye };
}

/**
 * The plane across a world axis that faces the eye most: what is dragged on it keeps one coordinate exactly, which a
 * slanted plane would not.
 */
export function axisPlane(sight: Sight, through: Vector3): DragPlane {
  return { through, normal: mainAxis(pictureAxes(sight)) };
}

function mainAxis({ towardsEye: [x, y, z] }: PictureAxes): Vector3 {
  if (Math.abs(z) >= Math.abs(x) && Math.abs(z) >= Math.abs(y)) return [0, 0, 1];
  return Math.abs(x) >= Math.abs(y) ? [1, 0, 0] : [0, 1, 0];
}

/** Where the ray meets the plane; undefined when it runs along it or away from it. */
export function meetPlane({ origin, direction }: Ray, { through, normal }: DragPlane): Vector3 | undefined {
  const slope = dot(direction, normal);
  if (Math.abs(slope) < GRAZING) return undefined;
  const distance = dot(subtract(through, origin), normal) / slope;
  return distance > 0 ? add(origin, scale(direction, distance)) : undefined;
}

/** Whole millimetres, or tenths when a tenth can be seen. */
export function stepFor(millimetresPerPixel: number): number {
  return millimetresPerPixel < 0.15 ? 0.1 : 1;
}

/** Rounds the coordinates a drag on the plane changes to whole steps, and leaves the third as it is. */
export function roundOnPlane(point: Vector3, { normal }: DragPlane, step: number): Vector3 {
  const round = (value: number, across: number) =>
    Math.abs(across) > 0.5 ? value : Number((Math.round(value / step) * step).toFixed(6));
  return [round(point[0], normal[0]), round(point[1], normal[1]), round(point[2], normal[2])];
}

/** Movement on the screen before a press becomes a drag, CSS pixels. */
export const DRAG_THRESHOLD_PX = 4;

export function isDragged(from: Pixel, to: Pixel): boolean {
  return Math.hypot(to[0] - from[0], to[1] - from[1]) >= DRAG_THRESHOLD_PX;
}
