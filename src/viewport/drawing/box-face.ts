/** One face of a box as a sheet to draw on: a corner, two directions and a size, in mm of the part's frame. */
import { add, cross, type OrientedBox, scale, subtract, type Vector3 } from '../../../geometry';

/** Number of a face: twice the axis across it, plus one when it looks along the positive axis. */
export type FaceNumber = 0 | 1 | 2 | 3 | 4 | 5;
export const faceNumbers: readonly FaceNumber[] = [0, 1, 2, 3, 4, 5];

export interface BoxFace {
  readonly number: FaceNumber;
  /** Outward unit normal. */
  readonly normal: Vector3;
  readonly centre: Vector3;
  /** Unit directions in the face: along x cross y = normal. */
  readonly along: Vector3;
  readonly across: Vector3;
  /** Half sizes along those, mm. */
  readonly halfAlong: number;
  readonly halfAcross: number;
}

export function axisOf(box: OrientedBox, axis: 0 | 1 | 2): Vector3 {
  const r = box.rotation;
  if (axis === 0) return [r[0], r[3], r[6]];
  return axis === 1 ? [r[1], r[4], r[7]] : [r[2], r[5], r[8]];
}

export function halfOf(box: OrientedBox, axis: 0 | 1 | 2): number {
  return axis === 0 ? box.half[0] : axis === 1 ? box.half[1] : box.half[2];
}

export function boxFace(box: OrientedBox, number: FaceNumber): BoxFace {
  const axis = (number >> 1) as 0 | 1 | 2;
  const sense = number & 1 ? 1 : -1;
  const normal = scale(axisOf(box, axis), sense);
  const first = axis === 0 ? 1 : 0;
  const second = axis === 2 ? 1 : 2;
  const along = axisOf(box, first);
  return {
    number,
    normal,
    centre: add(box.centre, scale(normal, halfOf(box, axis))),
    along,
    across: cross(normal, along),
    halfAlong: halfOf(box, first),
    halfAcross: halfOf(box, second),
  };
}

/** The axis along which the box is thinnest. */
export function thinnestAxis({ half }: OrientedBox): 0 | 1 | 2 {
  if (half[0] <= half[1] && half[0] <= half[2]) return 0;
  return half[1] <= half[2] ? 1 : 2;
}

/** The axis along which the box is longest. */
export function longestAxis({ half }: OrientedBox): 0 | 1 | 2 {
  if (half[0] >= half[1] && half[0] >= half[2]) return 0;
  return half[1] >= half[2] ? 1 : 2;
}

/** Both large faces of a plate. */
export function largeFaces(box: OrientedBox): readonly BoxFace[] {
  const axis = thinnestAxis(box);
  return [boxFace(box, (2 * axis) as FaceNumber), boxFace(box, (2 * axis + 1) as FaceNumber)];
}

/** The face with the given outward normal, if the box has one that way. */
export function faceTowards(box: OrientedBox, normal: Vector3): BoxFace | undefined {
  return faceNumbers
    .map((number) => boxFace(box, number))
    .find((face) => Math.hypot(...subtract(face.normal, normal)) < 1e-6);
}

/** A point of the face, mm from its centre. */
export function pointOn(face: BoxFace, along: number, across: number): Vector3 {
  return add(face.centre, add(scale(face.along, along), scale(face.across, across)));
}

/** The same sheet, reduced to a rectangle about a place on it. */
export function partOfFace(
  face: BoxFace,
  along: number,
  across: number,
  halfAlong: number,
  halfAcross: number,
): BoxFace {
  return { ...face, centre: pointOn(face, along, across), halfAlong, halfAcross };
}

/** The same sheet with its two directions exchanged so that the first is the longer. */
export function longFirst(face: BoxFace): BoxFace {
  if (face.halfAlong >= face.halfAcross) return face;
  return {
    ...face,
    along: face.across,
    across: scale(face.along, -1),
    halfAlong: face.halfAcross,
    halfAcross: face.halfAlong,
  };
}
