/** How far a unit comes along ways that are blocked: the pose nearest to its seat, and what it meets there. */
import { lengthOfMotion, type Motion, poseAfter, poseOfMotion, reversedMotions } from '../../space/motion';
import { compose, type RigidTransform } from '../../space/transform';
import { length, type Vector3 } from '../../space/vector';
import type { Machine } from './machine/machine';
import { nearestPoints, type PathPlace, placeOf } from './path-places';
import { freeAlong, placeMover } from './paths/test-way';

export interface FurthestPose extends PathPlace {
  /** Share of playback at which it stops. */
  readonly t: number;
  /** What is left of the way to the seat, mm (turns by what they move a point `reach` from their axis). */
  readonly left: number;
  /** Nearest points of the two that meet. */
  readonly points: readonly [Vector3, Vector3];
}

export interface BlockedWay {
  /** Into the seat. */
  readonly motions: readonly Motion[];
  readonly furthest: FurthestPose;
}

/** Of ways out of the seat, each run inwards, the one that comes nearest to the seat; the first of equals. */
export function furthestWay(
  machine: Machine,
  boxes: readonly number[],
  obstacles: readonly number[],
  ways: readonly (readonly Motion[])[],
  reach: number,
): BlockedWay | undefined {
  let best: BlockedWay | undefined;
  for (const out of ways) {
    const furthest = comeIn(machine, boxes, obstacles, out, reach);
    if (furthest && (best === undefined || furthest.left < best.furthest.left - 1e-6))
      best = { motions: reversedMotions(out), furthest };
  }
  return best;
}

/** Runs one way inwards until something is met; undefined when nothing is. */
function comeIn(
  machine: Machine,
  boxes: readonly number[],
  obstacles: readonly number[],
  out: readonly Motion[],
  reach: number,
): FurthestPose | undefined {
  const motions = reversedMotions(out);
  const sizes = motions.map((motion) => lengthOfMotion(motion, reach));
  const total = sizes.reduce((sum, size) => sum + size, 0);
  let pose: RigidTransform = poseAfter(out);
  let done = 0;
  for (const [k, motion] of motions.entries()) {
    placeMover(machine.bodies, boxes, pose);
    const met = freeAlong(machine.bodies, boxes, obstacles, motion);
    if (met.obstacle >= 0) {
      const whole = motion.kind === 'slide' ? length(motion.by) : Math.abs(motion.degrees);
      const share = whole > 0 ? met.free / whole : 0;
      done += share * (sizes[k] ?? 0);
      placeMover(machine.bodies, boxes, compose(poseOfMotion(motion, share), pose));
      const placed = machine.bodies.count + boxes.indexOf(met.mover);
      return {
        ...placeOf(machine, met.mover, met.obstacle),
        t: total > 0 ? done / total : 0,
        left: total - done,
        points: nearestPoints(machine, placed, met.obstacle),
      };
    }
    done += sizes[k] ?? 0;
    pose = compose(poseOfMotion(motion, 1), pose);
  }
  return undefined;
}
