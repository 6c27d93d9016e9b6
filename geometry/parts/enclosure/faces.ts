/** Places on the flat faces of an enclosure, in the enclosure frame (`fields.ts`), mm. */
import type { Bounds } from '../../space/oriented-box';
import { multiplyRotations, type Rotation, rotationAbout, rotationFromAxes } from '../../space/rotation';
import type { RigidTransform } from '../../space/transform';
import { cross, negate, type Vector3 } from '../../space/vector';
import { type Dimension, nominal, nominalOr } from '../dimension';
import type { Face } from './fields';
import type { EnclosureLayout } from './layout';

export type Axis = 0 | 1 | 2;

/** A face: the plane it lies in and the way into the enclosure. `first` and `second` are the axes of a place on it. */
export interface FacePlane {
  readonly axis: Axis;
  /** +1 when the inside lies at larger coordinates. */
  readonly inwards: 1 | -1;
  /** Coordinate of the inner face along `axis`. */
  readonly at: number;
  /** Thickness of the sheet behind the face. */
  readonly thickness: number;
  readonly first: Axis;
  readonly second: Axis;
}

const otherAxes: Readonly<Record<Axis, readonly [Axis, Axis]>> = { 0: [1, 2], 1: [0, 2], 2: [0, 1] };

export function unitAlong(axis: Axis): Vector3 {
  return axis === 0 ? [1, 0, 0] : axis === 1 ? [0, 1, 0] : [0, 0, 1];
}

/** The two axes of a plate that stands across `axis`, in world order. */
export function axesAcross(axis: Axis): readonly [Axis, Axis] {
  return otherAxes[axis];
}

export function facePlaneOf(layout: EnclosureLayout, face: Face): FacePlane {
  const { interior, thickness, tray } = layout;
  const plane = (axis: Axis, inwards: 1 | -1, at: number, sheet: number): FacePlane => {
    const [first, second] = otherAxes[axis];
    return { axis, inwards, at, thickness: sheet, first, second };
  };
  switch (face) {
    case 'rear':
      return plane(0, 1, interior.min[0], thickness.rear);
    case 'front':
      return plane(0, -1, interior.max[0], thickness.front);
    case 'floor':
      return plane(1, 1, interior.min[1], thickness.floor);
    case 'top':
      return plane(1, -1, interior.max[1], thickness.top);
    case 'back':
      return plane(2, 1, interior.min[2], thickness.back);
    case 'side':
      return plane(2, -1, interior.max[2], thickness.side);
    case 'tray':
      return plane(tray.axis, tray.sense, tray.at, tray.thickness);
    case 'tray back': {
      const behind = tray.at - tray.sense * tray.thickness;
      return plane(tray.axis, tray.sense === 1 ? -1 : 1, behind, tray.thickness);
    }
  }
}

export interface SeatPlace {
  readonly face: Face;
  readonly at: readonly [Dimension, Dimension];
  readonly inset?: Dimension | undefined;
  readonly turn?: number | undefined;
}

/**
 * Frame of a seat: z into the enclosure, x along the face's first coordinate at turn 0. For a seat on the outside the
 * origin lies on the outer surface and z points out.
 */
export function seatFrame(layout: EnclosureLayout, place: SeatPlace, outside = false): RigidTransform {
  const plane = facePlaneOf(layout, place.face);
  const depth = outside ? -plane.thickness : nominalOr(place.inset, 0);
  const origin = pointOnFace(plane, nominal(place.at[0]), nominal(place.at[1]), depth);
  const inwards = outside ? plane.inwards === -1 : plane.inwards === 1;
  return { rotation: seatRotation(plane.axis, inwards, place.turn ?? 0), translation: origin };
}

const seatRotations = new Map<string, Rotation>();

/** z along the axis (or against it), x along the first of the two others, then turned about z. */
function seatRotation(axis: Axis, forward: boolean, turn: number): Rotation {
  const key = `${axis} ${forward} ${turn}`;
  const known = seatRotations.get(key);
  if (known) return known;
  const z = forward ? unitAlong(axis) : negate(unitAlong(axis));
  const x = unitAlong(otherAxes[axis][0]);
  const made = multiplyRotations(rotationFromAxes(x, cross(z, x), z), rotationAbout('z', turn));
  seatRotations.set(key, made);
  return made;
}

/** The point at (first, second) on a face, `depth` inwards from it. */
export function pointOnFace(plane: FacePlane, first: number, second: number, depth: number): Vector3 {
  const point: [number, number, number] = [0, 0, 0];
  point[plane.axis] = plane.at + plane.inwards * depth;
  point[plane.first] = first;
  point[plane.second] = second;
  return point;
}

/** The part of the sheet behind a rectangle on a face, from the inner face to the outer one. */
export function sheetBehind(
  plane: FacePlane,
  from: readonly [number, number],
  to: readonly [number, number],
): Bounds {
  const low = pointOnFace(plane, Math.min(from[0], to[0]), Math.min(from[1], to[1]), 0);
  const high = pointOnFace(plane, Math.max(from[0], to[0]), Math.max(from[1], to[1]), -plane.thickness);
  return {
    min: [Math.min(low[0], high[0]), Math.min(low[1], high[1]), Math.min(low[2], high[2])],
    max: [Math.max(low[0], high[0]), Math.max(low[1], high[1]), Math.max(low[2], high[2])],
  };
}
