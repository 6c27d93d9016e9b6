/**
 * The first value of a dimension at which two boxes break a constraint, exact as long as their faces move in straight
 * proportion to it. All distances in mm; `t` is how far the dimension has gone from where it stands.
 */
import { BOUNDS_STRIDE, type PackedBoxes } from '../../space/packed-boxes';
import { CONTACT_TOLERANCE_MM } from '../../space/tolerance';
import type { Vector3 } from '../../space/vector';
import type { PlanStudy } from '../stack-up/plan-study';
import { type Constraint, wantedOf } from './constraints';
import { RESIZED, STILL, type StraightMotion } from './motion';

export interface Violation {
  readonly constraint: Constraint;
  /** Numbers into `Scene.boxes`. */
  readonly from: number;
  readonly to: number;
  /** Where it begins; below zero when it holds already and would end there. */
  readonly t: number;
  readonly wanted: number;
  /** The faces that meet there: from the first box up (or down) a world axis to the second. */
  readonly axis: 0 | 1 | 2;
  readonly up: boolean;
  /** mm of distance between those faces for each mm of t. */
  readonly slope: number;
}

const AXES = [0, 1, 2] as const;
const SENSES = [true, false] as const;

/** Closer than this to where it stands, a violation begins there. */
const HERE_MM = 1e-7;

/** Two boxes that stand past each other by less than `BESIDE_MM`: with some pieces they may come to face each other. */
export interface Beside {
  readonly constraint: Constraint;
  readonly boxes: readonly [from: number, to: number];
  readonly direction: Vector3;
}

/** Boxes further past each other never come to face each other, mm: bands of a small machine. */
const BESIDE_MM = 2;

/**
 * All violations of a constraint that begin ahead of where the dimension stands, or hold there. Boxes of a gap that
 * pass each other by little are noted in `beside`.
 */
export function violationsOf(
  study: PlanStudy,
  constraint: Constraint,
  motion: StraightMotion,
  movesLike: Int32Array,
  beside: Beside[],
): readonly Violation[] {
  const { standing } = motion;
  const found: Violation[] = [];
  for (const from of constraint.fromBoxes) {
    for (const to of constraint.toBoxes) {
      if (movesLike[from] === movesLike[to] && movesLike[from] !== RESIZED) continue;
      if (standing.aligned[from] !== 1 || standing.aligned[to] !== 1) continue;
      for (const direction of constraint.gap?.directions ?? ANY_DIRECTION) {
        const violation = violationAlong(study, constraint, motion, [from, to], direction, 0);
        if (violation === 'beside' && direction) beside.push({ constraint, boxes: [from, to], direction });
        else if (typeof violation === 'object') found.push(violation);
      }
    }
  }
  return found;
}

/** The violation as if two boxes that stand beside each other faced each other. */
export function violationBeside(
  study: PlanStudy,
  { constraint, boxes, direction }: Beside,
  motion: StraightMotion,
): Violation | undefined {
  const violation = violationAlong(study, constraint, motion, boxes, direction, BESIDE_MM);
  return typeof violation === 'object' ? violation : undefined;
}

const ANY_DIRECTION = [undefined] as const;

interface Interval {
  from: number;
  to: number;
  axis: 0 | 1 | 2;
  up: boolean;
  slope: number;
}

function violationAlong(
  study: PlanStudy,
  constraint: Constraint,
  motion: StraightMotion,
  [from, to]: readonly [number, number],
  direction: Vector3 | undefined,
  slack: number,
): Violation | 'beside' | undefined {
  const along = direction && worldAxis(direction);
  // Gaps along a slanted direction are looked at with the turned boxes.
  if (direction && !along) return undefined;
  const wanted = wantedOf(study, constraint, to);
  const interval: Interval = {
    from: Number.NEGATIVE_INFINITY,
    to: Number.POSITIVE_INFINITY,
    axis: 0,
    up: true,
    slope: 0,
  };
  for (const axis of AXES) {
    for (const up of SENSES) {
      const isGap = along !== undefined && along.axis === axis && along.up === up;
      const now = faceDistance(motion.standing, from, to, axis, up);
      const slope = (faceDistance(motion.stepped, from, to, axis, up) - now) / motion.step;
      // A named gap is the limit of a dimension only where the dimension changes that gap.
      if (isGap && Math.abs(slope) < STILL) return undefined;
      const isAcross = along !== undefined && along.axis !== axis;
      const least = isGap ? wanted : (isAcross ? slack : 0) - CONTACT_TOLERANCE_MM;
      if (narrow(interval, now, slope, least, axis, up)) continue;
      return isAcross && Math.abs(slope) < STILL && now < BESIDE_MM ? 'beside' : undefined;
    }
  }
  if (interval.to <= HERE_MM || interval.from === Number.NEGATIVE_INFINITY) return undefined;
  const { axis, up, slope } = interval;
  const t = Math.abs(interval.from) <= HERE_MM ? 0 : interval.from;
  return { constraint, from, to, t, wanted: along ? wanted : 0, axis, up, slope };
}

/** Keeps of the interval where the distance, now + slope t, lies below the threshold; false when nothing is left. */
function narrow(
  interval: Interval,
  now: number,
  slope: number,
  threshold: number,
  axis: 0 | 1 | 2,
  up: boolean,
): boolean {
  if (Math.abs(slope) < STILL) return now < threshold;
  const t = (threshold - now) / slope;
  if (slope > 0) interval.to = Math.min(interval.to, t);
  else if (t > interval.from) {
    interval.from = t;
    interval.axis = axis;
    interval.up = up;
    interval.slope = slope;
  }
  return interval.from < interval.to;
}

/** From the far face of the first box to the near face of the second, going up (or down) a world axis. */
export function faceDistance(
  packed: PackedBoxes,
  from: number,
  to: number,
  axis: number,
  up: boolean,
): number {
  const { bounds } = packed;
  const a = from * BOUNDS_STRIDE + axis;
  const b = to * BOUNDS_STRIDE + axis;
  return up ? (bounds[b] ?? 0) - (bounds[a + 3] ?? 0) : (bounds[a] ?? 0) - (bounds[b + 3] ?? 0);
}

function worldAxis([x, y, z]: Vector3): { axis: 0 | 1 | 2; up: boolean } | undefined {
  if (y === 0 && z === 0) return { axis: 0, up: x > 0 };
  if (x === 0 && z === 0) return { axis: 1, up: y > 0 };
  return x === 0 && y === 0 ? { axis: 2, up: z > 0 } : undefined;
}
