import type { FaceName } from './face-names';
import {
  type AxisName,
  axisOfRotation,
  identityRotation,
  multiplyRotations,
  type Rotation,
  rotateVector,
} from './rotation';
import { type RigidTransform, transformPoint } from './transform';
import { add, dot, negate, scale, type Vector3 } from './vector';

export type { FaceName } from './face-names';

/**
 * A box in any orientation. `centre` in mm in the outer frame; `half` the half edge lengths in mm along the
 * box's own axes; the columns of `rotation` are those axes in the outer frame.
 */
export interface OrientedBox {
  readonly centre: Vector3;
  readonly half: Vector3;
  readonly rotation: Rotation;
}

/** An axis-aligned range of space, mm. */
export interface Bounds {
  readonly min: Vector3;
  readonly max: Vector3;
}

/** A plane { p : normal . p = offset }, normal of unit length pointing out of the box. */
export interface Plane {
  readonly normal: Vector3;
  readonly offset: number;
}

/** Axis-aligned box between two corners, in either order on each axis; mm. */
export function boxFromCorners(first: Vector3, second: Vector3): OrientedBox {
  return {
    centre: [(first[0] + second[0]) / 2, (first[1] + second[1]) / 2, (first[2] + second[2]) / 2],
    half: [
      Math.abs(second[0] - first[0]) / 2,
      Math.abs(second[1] - first[1]) / 2,
      Math.abs(second[2] - first[2]) / 2,
    ],
    rotation: identityRotation,
  };
}

export function transformBox(t: RigidTransform, box: OrientedBox): OrientedBox {
  return {
    centre: transformPoint(t, box.centre),
    half: box.half,
    rotation: multiplyRotations(t.rotation, box.rotation),
  };
}

/** The same box shifted by `offset` mm. */
export function translateBox(box: OrientedBox, offset: Vector3): OrientedBox {
  return { centre: add(box.centre, offset), half: box.half, rotation: box.rotation };
}

/** The box grown by `margin` mm on all six sides (shrunk when negative, never below a point). */
export function growBox(box: OrientedBox, margin: number): OrientedBox {
  const [x, y, z] = box.half;
  return { ...box, half: [Math.max(0, x + margin), Math.max(0, y + margin), Math.max(0, z + margin)] };
}

/** The smallest axis-aligned range that holds the box. */
export function boundsOfBox(box: OrientedBox): Bounds {
  const r = box.rotation;
  const [hx, hy, hz] = box.half;
  const reach: Vector3 = [
    Math.abs(r[0]) * hx + Math.abs(r[1]) * hy + Math.abs(r[2]) * hz,
    Math.abs(r[3]) * hx + Math.abs(r[4]) * hy + Math.abs(r[5]) * hz,
    Math.abs(r[6]) * hx + Math.abs(r[7]) * hy + Math.abs(r[8]) * hz,
  ];
  return { min: add(box.centre, negate(reach)), max: add(box.centre, reach) };
}

/** The smallest axis-aligned range that holds all boxes; undefined for none. */
export function boundsOfBoxes(boxes: readonly OrientedBox[]): Bounds | undefined {
  if (boxes.length === 0) return undefined;
  const min: [number, number, number] = [Infinity, Infinity, Infinity];
  const max: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const box of boxes) {
    const bounds = boundsOfBox(box);
    for (const axis of [0, 1, 2] as const) {
      min[axis] = Math.min(min[axis], bounds.min[axis]);
      max[axis] = Math.max(max[axis], bounds.max[axis]);
    }
  }
  return { min, max };
}

/** The eight corners; corner k has +x where bit 0 of k is set, +y for bit 1, +z for bit 2. */
export function cornersOfBox(box: OrientedBox): readonly Vector3[] {
  const corners: Vector3[] = [];
  const [hx, hy, hz] = box.half;
  for (let k = 0; k < 8; k++) {
    const local: Vector3 = [k & 1 ? hx : -hx, k & 2 ? hy : -hy, k & 4 ? hz : -hz];
    corners.push(add(box.centre, rotateVector(box.rotation, local)));
  }
  return corners;
}

/** Volume in cubic mm. */
export function volumeOfBox(box: OrientedBox): number {
  return 8 * box.half[0] * box.half[1] * box.half[2];
}

/** The outward unit normal of a face, in the outer frame. */
export function faceNormal(box: OrientedBox, face: FaceName): Vector3 {
  const axis = axisOfRotation(box.rotation, axisOfFace(face));
  return face.startsWith('-') ? negate(axis) : axis;
}

/** The centre point of a face, in the outer frame. */
export function faceCentre(box: OrientedBox, face: FaceName): Vector3 {
  return add(box.centre, scale(faceNormal(box, face), halfAcrossFace(box, face)));
}

/** The plane of a face, with the box on its negative side. */
export function facePlane(box: OrientedBox, face: FaceName): Plane {
  const normal = faceNormal(box, face);
  return { normal, offset: dot(normal, box.centre) + halfAcrossFace(box, face) };
}

/** The box axis a face stands across. */
export function axisOfFace(face: FaceName): AxisName {
  return face.endsWith('x') ? 'x' : face.endsWith('y') ? 'y' : 'z';
}

function halfAcrossFace(box: OrientedBox, face: FaceName): number {
  const axis = axisOfFace(face);
  return axis === 'x' ? box.half[0] : axis === 'y' ? box.half[1] : box.half[2];
}
