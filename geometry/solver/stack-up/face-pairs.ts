/**
 * The pairs of faces that may set a clearance while dimensions wander through their bands.
 *
 * The clearance is the least gap over many pairs of boxes, each measured along those of its directions in which the
 * two face each other. For boxes that lie along the world axes every gap, and every distance that decides whether two
 * boxes face each other, is a sum of a value and one share for each dimension. For turned boxes the gap is taken to
 * be such a sum, and facing is looked at with one dimension off at a time.
 */
import { facingGap } from '../../space/facing-gap';
import { BOUNDS_STRIDE, type PackedBoxes } from '../../space/packed-boxes';
import { CONTACT_TOLERANCE_MM } from '../../space/tolerance';
import type { Vector3 } from '../../space/vector';

/** The boxes of one leg with each of the dimensions at either end of its band. */
export interface LegAtEnds {
  readonly standing: PackedBoxes;
  /** By dimension; undefined where the dimension does not touch the leg. */
  readonly upper: readonly (PackedBoxes | undefined)[];
  readonly lower: readonly (PackedBoxes | undefined)[];
  readonly fromCount: number;
}

/** A value that wanders: where it stands, and by how much each dimension moves it at either end of its band, mm. */
export interface Wandering {
  readonly standing: number;
  readonly upper: Float64Array;
  readonly lower: Float64Array;
}

/** One pair of boxes along one direction. */
export interface FacePair {
  /** Box numbers within the leg. */
  readonly from: number;
  readonly to: number;
  readonly direction: number;
  readonly gap: Wandering;
  /** They face each other as things stand. */
  readonly facesNow: boolean;
  /** They face each other whatever the pieces. */
  readonly facesAlways: boolean;
}

export function leastOf({ standing, upper, lower }: Wandering): number {
  let least = standing;
  for (let k = 0; k < upper.length; k++) least += Math.min(0, upper[k] ?? 0, lower[k] ?? 0);
  return least;
}

export function mostOf({ standing, upper, lower }: Wandering): number {
  let most = standing;
  for (let k = 0; k < upper.length; k++) most += Math.max(0, upper[k] ?? 0, lower[k] ?? 0);
  return most;
}

/** How far boxes may wander against each other along each world axis, mm. */
export type Reach = Vector3;

/**
 * Whether two boxes may come to face each other along one of the directions with a gap of at most `within`. Turned
 * boxes are let through.
 */
export function mayFace(
  packed: PackedBoxes,
  from: number,
  to: number,
  directions: readonly Vector3[],
  reaches: readonly [from: Reach, to: Reach],
  within: number,
): boolean {
  if (packed.aligned[from] !== 1 || packed.aligned[to] !== 1) return true;
  return directions.some((direction) => {
    const world = worldDirection(direction);
    return world === undefined || isNear(packed, from, to, world, reaches, within);
  });
}

function isNear(
  packed: PackedBoxes,
  from: number,
  to: number,
  { axis, forward }: WorldDirection,
  [reachFrom, reachTo]: readonly [Reach, Reach],
  within: number,
): boolean {
  if (distance(packed, from, to, axis, forward) > within) return false;
  for (const across of AXES) {
    for (const up of SENSES) {
      if (across === axis && up === forward) continue;
      if (distance(packed, from, to, across, up) >= reachFrom[across] + reachTo[across]) return false;
    }
  }
  return true;
}

const AXES = [0, 1, 2] as const;
const SENSES = [true, false] as const;

/** All pairs of a leg that face each other, or may. */
export function facePairsOf(
  leg: LegAtEnds,
  directions: readonly Vector3[],
  reachBetween: (from: number, to: number) => Reach,
): readonly FacePair[] {
  const { standing, fromCount } = leg;
  const pairs: FacePair[] = [];
  for (let from = 0; from < fromCount; from++) {
    for (let to = fromCount; to < standing.count; to++) {
      const reach = reachBetween(from, to);
      directions.forEach((direction, index) => {
        const world = worldDirection(direction);
        const pair =
          world !== undefined && standing.aligned[from] === 1 && standing.aligned[to] === 1
            ? alignedPair(leg, from, to, world, reach)
            : turnedPair(leg, from, to, direction);
        if (pair) pairs.push({ from, to, direction: index, ...pair });
      });
    }
  }
  return pairs;
}

type Measured = Pick<FacePair, 'gap' | 'facesNow' | 'facesAlways'>;

/** Axis and sense of a direction along a world axis. */
interface WorldDirection {
  readonly axis: 0 | 1 | 2;
  readonly forward: boolean;
}

function worldDirection([x, y, z]: Vector3): WorldDirection | undefined {
  if (y === 0 && z === 0) return { axis: 0, forward: x > 0 };
  if (x === 0 && z === 0) return { axis: 1, forward: y > 0 };
  return x === 0 && y === 0 ? { axis: 2, forward: z > 0 } : undefined;
}

/** From the far face of the first box to the near face of the second, going up (or down) the axis. */
function distance(packed: PackedBoxes, from: number, to: number, axis: number, forward: boolean): number {
  const { bounds } = packed;
  const a = from * BOUNDS_STRIDE + axis;
  const b = to * BOUNDS_STRIDE + axis;
  return forward ? (bounds[b] ?? 0) - (bounds[a + 3] ?? 0) : (bounds[a] ?? 0) - (bounds[b + 3] ?? 0);
}

function alignedPair(
  leg: LegAtEnds,
  from: number,
  to: number,
  { axis, forward }: WorldDirection,
  reach: Reach,
): Measured | undefined {
  const { standing } = leg;
  let facesNow = true;
  let facesAlways = true;
  // The second box must not lie wholly behind the first, nor wholly beside it.
  for (const across of AXES) {
    for (const up of SENSES) {
      if (across === axis && up === forward) continue;
      const apart = distance(standing, from, to, across, up);
      if (apart >= reach[across]) return undefined;
      if (apart >= -CONTACT_TOLERANCE_MM) facesNow = false;
      if (apart < -reach[across] - CONTACT_TOLERANCE_MM) continue;
      const beside = wander(leg, (packed) => distance(packed, from, to, across, up));
      if (leastOf(beside) >= -CONTACT_TOLERANCE_MM) return undefined;
      if (mostOf(beside) >= -CONTACT_TOLERANCE_MM) facesAlways = false;
    }
  }
  const gap = wander(leg, (packed) => distance(packed, from, to, axis, forward));
  return { gap, facesNow, facesAlways };
}

function turnedPair(leg: LegAtEnds, from: number, to: number, direction: Vector3): Measured | undefined {
  const measure = (packed: PackedBoxes): number => facingGap(packed, from, to, direction);
  const standing = measure(leg.standing);
  let facesAlways = standing !== Number.NEGATIVE_INFINITY;
  let stand = standing;
  const shares = [leg.upper, leg.lower].map((ends) =>
    Float64Array.from(ends, (packed) => {
      if (!packed) return 0;
      const gap = measure(packed);
      if (gap === Number.NEGATIVE_INFINITY) {
        facesAlways = false;
        return 0;
      }
      if (stand === Number.NEGATIVE_INFINITY) stand = gap;
      return gap - stand;
    }),
  );
  const [upper, lower] = shares;
  if (stand === Number.NEGATIVE_INFINITY || !upper || !lower) return undefined;
  return {
    gap: { standing: stand, upper, lower },
    facesNow: standing !== Number.NEGATIVE_INFINITY,
    facesAlways,
  };
}

/** A value measured as things stand and with each dimension at either end of its band. */
export function wander(
  { standing, upper, lower }: LegAtEnds,
  measure: (packed: PackedBoxes) => number,
): Wandering {
  const value = measure(standing);
  const share = (packed: PackedBoxes | undefined): number => (packed ? measure(packed) - value : 0);
  return { standing: value, upper: Float64Array.from(upper, share), lower: Float64Array.from(lower, share) };
}
