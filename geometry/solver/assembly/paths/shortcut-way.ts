/** Fewer, longer motions for a way found by searching: every displacement in a plane is one slide or one turn. */
import { type Motion, poseAfter, poseOfMotion } from '../../../space/motion';
import { compose, identityTransform, type RigidTransform } from '../../../space/transform';
import { add, cross, dot, normalise, scale, type Vector3 } from '../../../space/vector';
import type { Search } from './straight-moves';
import { freeAlong, placeMover } from './test-way';

/** Turns smaller than this count as none, degrees. */
const NO_TURN = 1e-9;

/**
 * Replaces runs of motions by a single one where that is certified free, the longest runs first; the end stays where
 * it is. Motions whose turns have no common direction are left alone.
 */
export function shortcutWay(search: Search, motions: readonly Motion[]): readonly Motion[] {
  const axis = commonAxis(motions);
  if (motions.length < 3 || axis === 'none') return motions;
  const kept: Motion[] = [];
  let pose = identityTransform;
  let at = 0;
  while (at < motions.length) {
    const { motion, next } = longestFrom(search, motions, at, pose, axis);
    kept.push(motion);
    pose = compose(poseOfMotion(motion, 1), pose);
    at = next;
  }
  return kept;
}

function longestFrom(
  search: Search,
  motions: readonly Motion[],
  at: number,
  pose: RigidTransform,
  axis: Vector3 | undefined,
): { readonly motion: Motion; readonly next: number } {
  for (let next = motions.length; next > at + 1; next--) {
    const motion = asOneMotion(motions.slice(at, next), axis);
    if (!motion) continue;
    placeMover(search.bodies, search.boxes, pose);
    if (freeAlong(search.bodies, search.boxes, search.obstacles, motion).obstacle < 0)
      return { motion, next };
  }
  return { motion: motions[at] ?? { kind: 'slide', by: [0, 0, 0] }, next: at + 1 };
}

/** The direction all turns share, up to sign; undefined without turns. */
function commonAxis(motions: readonly Motion[]): Vector3 | undefined | 'none' {
  let axis: Vector3 | undefined;
  for (const motion of motions) {
    if (motion.kind === 'slide') continue;
    if (axis && Math.abs(dot(axis, motion.axis)) < 1 - 1e-12) return 'none';
    axis ??= motion.axis;
  }
  return axis;
}

/** What a run of motions does, as one; undefined when it also moves along the axis while it turns. */
export function asOneMotion(motions: readonly Motion[], axis: Vector3 | undefined): Motion | undefined {
  const degrees = motions.reduce(
    (sum, motion) =>
      motion.kind === 'turn' && axis ? sum + motion.degrees * Math.sign(dot(motion.axis, axis)) : sum,
    0,
  );
  const whole = poseAfter(motions);
  if (!axis || Math.abs(degrees) < NO_TURN) return { kind: 'slide', by: whole.translation };
  const along = dot(whole.translation, axis);
  if (Math.abs(along) > 1e-6 || Math.abs(degrees) >= 180) return undefined;
  return { kind: 'turn', axis, degrees, point: poleOf(whole.translation, axis, degrees) };
}

/** The point in the plane across `axis` that stays where it is: t = (1 - R) p, solved in that plane. */
function poleOf(translation: Vector3, axis: Vector3, degrees: number): Vector3 {
  const u = normalise(Math.abs(axis[0]) < 0.9 ? cross(axis, [1, 0, 0]) : cross(axis, [0, 1, 0]));
  const v = cross(axis, u);
  const [a, b] = [dot(translation, u), dot(translation, v)];
  // (1 - R)^-1 = (1 / 2) [[1, -cot(h)], [cot(h), 1]] with h half the angle.
  const cot = 1 / Math.tan((degrees * Math.PI) / 360);
  return add(scale(u, (a - cot * b) / 2), scale(v, (cot * a + b) / 2));
}
