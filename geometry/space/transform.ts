import {
  identityRotation,
  multiplyRotations,
  type Rotation,
  rotateVector,
  transposeRotation,
} from './rotation';
import { add, negate, type Vector3, zeroVector } from './vector';

/** Rigid motion p -> R p + t, from the inner frame to the outer one; t in mm. */
export interface RigidTransform {
  readonly rotation: Rotation;
  readonly translation: Vector3;
}

export const identityTransform: RigidTransform = { rotation: identityRotation, translation: zeroVector };

export function translationBy(offset: Vector3): RigidTransform {
  return { rotation: identityRotation, translation: offset };
}

/** `inner` first, then `outer`: transformPoint(compose(o, i), p) = transformPoint(o, transformPoint(i, p)). */
export function compose(outer: RigidTransform, inner: RigidTransform): RigidTransform {
  return {
    rotation: multiplyRotations(outer.rotation, inner.rotation),
    translation: transformPoint(outer, inner.translation),
  };
}

export function invert(t: RigidTransform): RigidTransform {
  const rotation = transposeRotation(t.rotation);
  return { rotation, translation: negate(rotateVector(rotation, t.translation)) };
}

export function transformPoint(t: RigidTransform, p: Vector3): Vector3 {
  return add(rotateVector(t.rotation, p), t.translation);
}

/** A direction turns but does not shift. */
export function transformDirection(t: RigidTransform, direction: Vector3): Vector3 {
  return rotateVector(t.rotation, direction);
}
