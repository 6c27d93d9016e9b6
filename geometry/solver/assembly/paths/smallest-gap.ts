/** The smallest gap on a way, where it occurs and what it is to: branch and bound over the certified motions. */
import FlatQueue from 'flatqueue';
import { type Motion, poseOfMotion, radiusAbout } from '../../../space/motion';
import { cornersOfBox, transformBox } from '../../../space/oriented-box';
import { BOUNDS_STRIDE } from '../../../space/packed-boxes';
import { createSeparationResult, separatePacked, signedDistanceWithin } from '../../../space/separation';
import { compose, identityTransform, type RigidTransform } from '../../../space/transform';
import { boundsOfTurn } from '../../../space/turn-travel';
import { length, type Vector3 } from '../../../space/vector';
import type { AssemblyBodies } from '../assembly-bodies';

export interface SmallestGap {
  /** mm. */
  readonly gap: number;
  /** Which motion of the way out, and the share of it done. */
  readonly motion: number;
  readonly share: number;
  /** Box numbers. */
  readonly mover: number;
  readonly obstacle: number;
  /** The two ends of the gap, in the world. */
  readonly points: readonly [Vector3, Vector3];
}

/** Gaps are found to within this, mm. */
const GAP_TOLERANCE_MM = 0.01;
/** Boxes this near at the seat touch there on purpose: their gap says nothing about the way, mm. */
const TOUCH_MM = 0.05;

/** A gap counts as one of the way when it is smaller there than at the seat by this, mm. */
const NEARER_MM = 0.05;

interface Span {
  readonly mover: number;
  readonly obstacle: number;
  readonly motion: number;
  readonly from: number;
  readonly to: number;
  /** Gaps from here on are of no interest: what the pair has at the seat, or as far as one looks. */
  readonly below: number;
}

/**
 * Smallest gap between the boxes of a unit and obstacles anywhere on a way out, up to `within` mm; undefined when
 * nothing comes so near. Pairs that touch at the seat are left out. On a span of a motion no point of a box moves
 * further than its length (arc of its outermost corner), so half of that bounds how much smaller a gap can get there.
 * With `pieceOf`, which names what an obstacle is a piece of, only gaps count that are smaller on the way than any to
 * that piece at the seat: the others are clearances of the finished machine.
 */
export function smallestGap(
  bodies: AssemblyBodies,
  boxes: readonly number[],
  obstacles: readonly number[],
  motions: readonly Motion[],
  within = 60,
  pieceOf?: (obstacle: number) => string,
): SmallestGap | undefined {
  const starts: RigidTransform[] = [];
  motions.reduce((pose, motion) => {
    starts.push(pose);
    return compose(poseOfMotion(motion, 1), pose);
  }, identityTransform);
  const open = new FlatQueue<Span>();
  const speed = (span: Span): number =>
    speedOf(bodies, span.mover, motions[span.motion], starts[span.motion]);
  let best: (Span & { readonly gap: number; readonly at: number }) | undefined;
  const push = (span: Span): void => {
    const at = (span.from + span.to) / 2;
    const limit = Math.min(span.below, best?.gap ?? within);
    const reach = (speed(span) * (span.to - span.from)) / 2;
    const gap = gapAt(bodies, span, motions, starts, at, limit + reach);
    if (gap > limit + reach) return;
    if (gap < limit) best = { ...span, gap, at };
    if (gap - reach < Math.min(span.below, best?.gap ?? within) - GAP_TOLERANCE_MM)
      open.push(span, gap - reach);
  };
  const atSeat = pieceOf && gapsAtSeat(bodies, obstacles, within, pieceOf);
  for (const { span, lower } of candidates(bodies, boxes, obstacles, motions, starts, within)) {
    if (lower >= (best?.gap ?? within)) break;
    const below =
      atSeat === undefined ? within : Math.min(within, atSeat(span.mover, span.obstacle) - NEARER_MM);
    push({ ...span, below });
  }
  for (let lower = open.peekValue(); lower !== undefined; lower = open.peekValue()) {
    if (best && lower >= best.gap - GAP_TOLERANCE_MM) break;
    const span = open.pop();
    if (!span) break;
    const middle = (span.from + span.to) / 2;
    push({ ...span, to: middle });
    push({ ...span, from: middle });
  }
  return best && found(bodies, best, motions, starts);
}

/** Gap of a box at its seat to the nearest box of the piece an obstacle belongs to; each piece is measured once. */
function gapsAtSeat(
  bodies: AssemblyBodies,
  obstacles: readonly number[],
  within: number,
  pieceOf: (obstacle: number) => string,
): (mover: number, obstacle: number) => number {
  const pieces = new Map<string, number[]>();
  for (const obstacle of obstacles) {
    const piece = pieceOf(obstacle);
    pieces.set(piece, [...(pieces.get(piece) ?? []), obstacle]);
  }
  const known = new Map<string, number>();
  return (mover, obstacle) => {
    const piece = pieceOf(obstacle);
    const key = `${mover} ${piece}`;
    let gap = known.get(key);
    if (gap === undefined) {
      gap = within;
      for (const other of pieces.get(piece) ?? [])
        gap = Math.min(gap, signedDistanceWithin(bodies.packed, mover, other, gap));
      known.set(key, gap);
    }
    return gap;
  };
}

/** Pairs and motions that may come near, the nearest first by the ranges they sweep. */
function candidates(
  bodies: AssemblyBodies,
  boxes: readonly number[],
  obstacles: readonly number[],
  motions: readonly Motion[],
  starts: readonly RigidTransform[],
  within: number,
): readonly { readonly span: Omit<Span, 'below'>; readonly lower: number }[] {
  const found: { span: Omit<Span, 'below'>; lower: number }[] = [];
  const { packed } = bodies;
  for (const mover of boxes) {
    for (const motion of motions.keys()) {
      const range = sweptRange(bodies, mover, motions[motion], starts[motion]);
      for (const obstacle of obstacles) {
        const lower = rangeGap(range, packed.bounds, obstacle * BOUNDS_STRIDE);
        if (lower >= within || bodies.mayMeet(mover, obstacle)) continue;
        if (signedDistanceWithin(packed, mover, obstacle, 2 * TOUCH_MM) <= TOUCH_MM) continue;
        found.push({ span: { mover, obstacle, motion, from: 0, to: 1 }, lower });
      }
    }
  }
  return found.sort((a, b) => a.lower - b.lower);
}

/** World range of a box over a whole motion. */
function sweptRange(
  bodies: AssemblyBodies,
  mover: number,
  motion: Motion | undefined,
  start: RigidTransform | undefined,
): Float64Array {
  const { packed, count } = bodies;
  const range = new Float64Array(BOUNDS_STRIDE);
  packed.setBox(count, transformBox(start ?? identityTransform, packed.boxAt(mover)));
  if (motion?.kind === 'turn') {
    boundsOfTurn(packed, count, motion.point, motion.axis, motion.degrees * (Math.PI / 180), range);
    return range;
  }
  for (let axis = 0; axis < 3; axis++) {
    const by = motion?.by[axis] ?? 0;
    range[axis] = (packed.bounds[count * BOUNDS_STRIDE + axis] ?? 0) + Math.min(0, by);
    range[3 + axis] = (packed.bounds[count * BOUNDS_STRIDE + 3 + axis] ?? 0) + Math.max(0, by);
  }
  return range;
}

/** Distance of two ranges, 0 when they meet. */
function rangeGap(a: Float64Array, bounds: Float64Array, at: number): number {
  let sum = 0;
  for (let axis = 0; axis < 3; axis++) {
    const gap = Math.max(
      (bounds[at + axis] ?? 0) - (a[3 + axis] ?? 0),
      (a[axis] ?? 0) - (bounds[at + 3 + axis] ?? 0),
      0,
    );
    sum += gap * gap;
  }
  return Math.sqrt(sum);
}

function gapAt(
  bodies: AssemblyBodies,
  span: Span,
  motions: readonly Motion[],
  starts: readonly RigidTransform[],
  share: number,
  limit: number,
): number {
  place(bodies, span, motions, starts, share);
  return signedDistanceWithin(bodies.packed, bodies.count, span.obstacle, limit);
}

function place(
  bodies: AssemblyBodies,
  { mover, motion }: Span,
  motions: readonly Motion[],
  starts: readonly RigidTransform[],
  share: number,
): void {
  const moved = motions[motion];
  const start = starts[motion] ?? identityTransform;
  const pose = moved ? compose(poseOfMotion(moved, share), start) : start;
  bodies.packed.setBox(bodies.count, transformBox(pose, bodies.packed.boxAt(mover)));
}

/** Furthest any point of a box moves during a whole motion, mm. */
function speedOf(
  bodies: AssemblyBodies,
  mover: number,
  motion: Motion | undefined,
  start: RigidTransform | undefined,
): number {
  if (!motion) return 0;
  if (motion.kind === 'slide') return length(motion.by);
  const box = transformBox(start ?? identityTransform, bodies.packed.boxAt(mover));
  const reach = Math.max(...cornersOfBox(box).map((corner) => radiusAbout(motion, corner)));
  return reach * Math.abs(motion.degrees) * (Math.PI / 180);
}

function found(
  bodies: AssemblyBodies,
  best: Span & { readonly gap: number; readonly at: number },
  motions: readonly Motion[],
  starts: readonly RigidTransform[],
): SmallestGap {
  place(bodies, best, motions, starts, best.at);
  const out = createSeparationResult();
  separatePacked(bodies.packed, bodies.count, best.obstacle, out);
  const point = (p: Float64Array): Vector3 => [p[0] ?? 0, p[1] ?? 0, p[2] ?? 0];
  return {
    gap: best.gap,
    motion: best.motion,
    share: best.at,
    mover: best.mover,
    obstacle: best.obstacle,
    points: [point(out.pointA), point(out.pointB)],
  };
}
