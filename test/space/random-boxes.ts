import {
  boxFromCorners,
  type OrientedBox,
  transformBox,
  translateBox,
} from '../../geometry/space/oriented-box';
import {
  identityRotation,
  multiplyRotations,
  type Rotation,
  rotationFromDegrees,
} from '../../geometry/space/rotation';
import { separateBoxes } from '../../geometry/space/separation';
import { scale, type Vector3 } from '../../geometry/space/vector';

/** Uniform numbers in [0, 1), the same for the same seed on every machine. */
export type RandomSource = () => number;

/** The generator mulberry32 (public domain, T. Ettinger): 32 bits of state, enough for test data. */
export function seededRandom(seed: number): RandomSource {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

export function between(random: RandomSource, low: number, high: number): number {
  return low + (high - low) * random();
}

/** A whole number from 0 to count - 1. */
export function below(random: RandomSource, count: number): number {
  return Math.floor(random() * count);
}

/** A rotation spread evenly over all rotations (K. Shoemake, Graphics Gems III, 1992). */
export function randomRotation(random: RandomSource): Rotation {
  const u = random();
  const v = 2 * Math.PI * random();
  const w = 2 * Math.PI * random();
  const x = Math.sqrt(1 - u) * Math.sin(v);
  const y = Math.sqrt(1 - u) * Math.cos(v);
  const z = Math.sqrt(u) * Math.sin(w);
  const s = Math.sqrt(u) * Math.cos(w);
  return [
    1 - 2 * (y * y + z * z),
    2 * (x * y - z * s),
    2 * (x * z + y * s),
    2 * (x * y + z * s),
    1 - 2 * (x * x + z * z),
    2 * (y * z - x * s),
    2 * (x * z - y * s),
    2 * (y * z + x * s),
    1 - 2 * (x * x + y * y),
  ];
}

/** One of the 24 turns by quarters. */
export function randomQuarterTurn(random: RandomSource): Rotation {
  const quarter = () => 90 * below(random, 4);
  return rotationFromDegrees([quarter(), quarter(), quarter()]);
}

/** A turn about one axis only, as parts in an enclosure are mostly turned. */
export function randomSingleTurn(random: RandomSource): Rotation {
  const degrees: [number, number, number] = [0, 0, 0];
  degrees[below(random, 3)] = between(random, -180, 180);
  return rotationFromDegrees(degrees);
}

/** Half extents from thin plates to large blocks, 0.5 to 60 mm, evenly on a logarithmic scale. */
export function randomHalf(random: RandomSource): Vector3 {
  const side = () => 0.5 * 120 ** random();
  return [side(), side(), side()];
}

export function randomPoint(random: RandomSource, reach: number): Vector3 {
  return [between(random, -reach, reach), between(random, -reach, reach), between(random, -reach, reach)];
}

export type PairClass = 'generic' | 'axis-aligned' | 'mixed' | 'touching';

export interface BoxPair {
  readonly kind: PairClass;
  readonly a: OrientedBox;
  readonly b: OrientedBox;
}

const CENTRE_REACH_MM = 24;

function randomBox(random: RandomSource, rotation: Rotation): OrientedBox {
  return { centre: randomPoint(random, CENTRE_REACH_MM), half: randomHalf(random), rotation };
}

/**
 * The n-th pair of a seeded sequence: of ten, four in any orientation, two along the axes, two mixed (one along
 * the axes, or both turned about one axis only), two exactly touching.
 */
export function randomPair(random: RandomSource, n: number): BoxPair {
  const slot = n % 10;
  if (slot < 4) {
    const a = randomBox(random, randomRotation(random));
    return { kind: 'generic', a, b: randomBox(random, randomRotation(random)) };
  }
  if (slot < 6) {
    const a = randomBox(random, randomQuarterTurn(random));
    return { kind: 'axis-aligned', a, b: randomBox(random, randomQuarterTurn(random)) };
  }
  if (slot === 6) {
    const a = randomBox(random, randomQuarterTurn(random));
    return { kind: 'mixed', a, b: randomBox(random, randomRotation(random)) };
  }
  if (slot === 7) {
    const a = randomBox(random, randomSingleTurn(random));
    return { kind: 'mixed', a, b: randomBox(random, randomSingleTurn(random)) };
  }
  return slot === 8 ? flushPair(random) : contactPair(random);
}

/** Two boxes on a half-millimetre grid that share a face, edge or corner exactly; half of them turned together. */
function flushPair(random: RandomSource): BoxPair {
  const grid = (low: number, high: number) => Math.round(between(random, low, high) * 2) / 2;
  const max: Vector3 = [grid(1, 40), grid(1, 40), grid(1, 40)];
  const first = boxFromCorners([0, 0, 0], max);
  const contacts = 1 + below(random, 3);
  const low: [number, number, number] = [0, 0, 0];
  const high: [number, number, number] = [0, 0, 0];
  for (const axis of [0, 1, 2] as const) {
    low[axis] = axis < contacts ? max[axis] : grid(-20, max[axis] - 0.5);
    high[axis] = axis < contacts ? max[axis] + grid(1, 30) : max[axis] + grid(1, 20);
  }
  const second = boxFromCorners(low, high);
  const rotation = random() < 0.5 ? identityRotation : randomRotation(random);
  const motion = { rotation, translation: randomPoint(random, rotation === identityRotation ? 0 : 30) };
  return { kind: 'touching', a: transformBox(motion, first), b: transformBox(motion, second) };
}

/** Two turned boxes brought together until they meet at a corner, an edge or a face. */
function contactPair(random: RandomSource): BoxPair {
  const rotation = randomRotation(random);
  const a = randomBox(random, rotation);
  const turned =
    random() < 0.5 ? randomRotation(random) : multiplyRotations(rotation, randomSingleTurn(random));
  const start = randomBox(random, turned);
  let b = start;
  for (let step = 0; step < 4; step++) {
    const gap = separateBoxes(a, b);
    if (Math.abs(gap.distance) < 1e-9) break;
    b = translateBox(b, scale(gap.direction, -gap.distance));
  }
  return { kind: 'touching', a, b };
}
