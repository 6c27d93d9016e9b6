/** Straight moves and turns about a stated edge, and the pose a body has part of the way along a list of them. */
import type { Rotation } from './rotation';
import { compose, identityTransform, type RigidTransform, translationBy } from './transform';
import { add, dot, length, scale, subtract, type Vector3 } from './vector';

/** A straight move; `by` in mm, in the world. */
export interface Slide {
  readonly kind: 'slide';
  readonly by: Vector3;
}

/** A right-handed turn about the line through `point` (mm) along the unit vector `axis`, both in the world. */
export interface Turn {
  readonly kind: 'turn';
  readonly point: Vector3;
  readonly axis: Vector3;
  readonly degrees: number;
}

/** One certified piece of a way: never an interpolation between far poses. */
export type Motion = Slide | Turn;

const RADIANS_PER_DEGREE = Math.PI / 180;

/** Right-handed turn by `radians` about a unit axis through the origin (Rodrigues' formula). */
export function rotationAboutAxis(axis: Vector3, radians: number): Rotation {
  const [x, y, z] = axis;
  const c = Math.cos(radians);
  const s = Math.sin(radians);
  const k = 1 - c;
  return [
    c + x * x * k,
    x * y * k - z * s,
    x * z * k + y * s,
    y * x * k + z * s,
    c + y * y * k,
    y * z * k - x * s,
    z * x * k - y * s,
    z * y * k + x * s,
    c + z * z * k,
  ];
}

/** The rigid motion that turns the world about a line. */
export function turnAbout(point: Vector3, axis: Vector3, degrees: number): RigidTransform {
  const rotation = rotationAboutAxis(axis, degrees * RADIANS_PER_DEGREE);
  return compose(
    translationBy(point),
    compose({ rotation, translation: [0, 0, 0] }, translationBy(scale(point, -1))),
  );
}

/** What a motion has done to the world after the share `t` (0 to 1) of it. */
export function poseOfMotion(motion: Motion, t: number): RigidTransform {
  return motion.kind === 'slide'
    ? translationBy(scale(motion.by, t))
    : turnAbout(motion.point, motion.axis, motion.degrees * t);
}

/** The same motion run backwards, from where it ends. */
export function reversedMotion(motion: Motion): Motion {
  return motion.kind === 'slide'
    ? { kind: 'slide', by: scale(motion.by, -1) }
    : { ...motion, degrees: -motion.degrees };
}

/** The motions in reverse order, each backwards: the way in for a way out. */
export function reversedMotions(motions: readonly Motion[]): readonly Motion[] {
  return [...motions].reverse().map(reversedMotion);
}

/** The pose after all motions, one after the other (each stated in the world). */
export function poseAfter(motions: readonly Motion[]): RigidTransform {
  return motions.reduce((pose, motion) => compose(poseOfMotion(motion, 1), pose), identityTransform);
}

/** How far a body of the given reach (mm, from the axis of each turn) travels: what playback shares its time by. */
export function lengthOfMotion(motion: Motion, reach: number): number {
  return motion.kind === 'slide' ? length(motion.by) : Math.abs(motion.degrees) * RADIANS_PER_DEGREE * reach;
}

/**
 * The pose the share `t` (0 to 1) of the way along a list of motions; every motion takes time by the length it moves
 * a point `reach` mm from its axis.
 */
export function poseAlong(motions: readonly Motion[], t: number, reach: number): RigidTransform {
  const lengths = motions.map((motion) => lengthOfMotion(motion, reach));
  const total = lengths.reduce((sum, part) => sum + part, 0);
  let left = Math.min(Math.max(t, 0), 1) * total;
  let pose = identityTransform;
  for (const [index, motion] of motions.entries()) {
    const part = lengths[index] ?? 0;
    if (left >= part) {
      pose = compose(poseOfMotion(motion, 1), pose);
      left -= part;
      continue;
    }
    return compose(poseOfMotion(motion, part > 0 ? left / part : 1), pose);
  }
  return pose;
}

/** Distance of a point from the axis of a turn, mm. */
export function radiusAbout(turn: Pick<Turn, 'point' | 'axis'>, p: Vector3): number {
  const from = subtract(p, turn.point);
  return length(add(from, scale(turn.axis, -dot(from, turn.axis))));
}
