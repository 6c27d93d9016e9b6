/** Two solids in one place: one finding a pair of parts. */
import type { PartKind } from '../parts/part-spec';
import type { Scene } from '../plan/scene';
import { escapeTravel } from '../space/escape-travel';
import { FACE_NAMES } from '../space/face-names';
import { type FaceName, faceNormal } from '../space/oriented-box';
import { overlapVolumePacked } from '../space/overlap-volume';
import { createSeparationResult, faceTowards, separatePacked } from '../space/separation';
import { dot, negate, type Vector3 } from '../space/vector';
import type { ExaminedPart } from './examined-part';
import type { FaceRef, Finding } from './finding';
import { atStart, millimetresInWords, nameOfBox, within } from './part-names';

/** Which of two parts a builder changes first; the enclosure last. */
const MOVED_FIRST: readonly PartKind[] = [
  'card',
  'cooler',
  'radiator',
  'supply',
  'drive',
  'fan',
  'memory',
  'adapter',
  'processor',
  'board',
  'enclosure',
];

const separation = createSeparationResult();

interface DeepestPair {
  readonly mover: number;
  readonly obstacle: number;
  readonly distance: number;
  /** From mover to obstacle. */
  readonly direction: Vector3;
}

/** `overlaps` holds two box numbers a pair: of `first`, of `second`. */
export function interferenceOf(
  scene: Scene,
  first: ExaminedPart,
  second: ExaminedPart,
  overlaps: readonly number[],
): Finding | undefined {
  if (overlaps.length === 0) return undefined;
  const firstMoves = rank(first) <= rank(second);
  const [mover, obstacle] = firstMoves ? [first, second] : [second, first];
  const pairs: (readonly [number, number])[] = [];
  const directions: Vector3[] = [];
  let volume = 0;
  let deepest: DeepestPair | undefined;
  for (let k = 0; k < overlaps.length; k += 2) {
    const a = overlaps[firstMoves ? k : k + 1] ?? 0;
    const b = overlaps[firstMoves ? k + 1 : k] ?? 0;
    pairs.push([a, b]);
    volume += overlapVolumePacked(scene.packed, a, b);
    const distance = separatePacked(scene.packed, a, b, separation);
    const [x = 0, y = 0, z = 0] = separation.direction;
    const direction: Vector3 = [x, y, z];
    directions.push(negate(direction));
    if (deepest === undefined || distance < deepest.distance)
      deepest = { mover: a, obstacle: b, distance, direction };
  }
  if (deepest === undefined) return undefined;
  const wayOut = shortestEscape(scene, mover, obstacle, directions);
  return findingOf(scene, mover, obstacle, deepest, { pairs, volume, escape: wayOut });
}

function rank(part: ExaminedPart): number {
  return MOVED_FIRST.indexOf(part.placed.kind);
}

function findingOf(
  scene: Scene,
  mover: ExaminedPart,
  obstacle: ExaminedPart,
  deepest: DeepestPair,
  rest: {
    pairs: readonly (readonly [number, number])[];
    volume: number;
    escape: NonNullable<Finding['escape']>;
  },
): Finding {
  const a = scene.boxes[deepest.mover];
  const b = scene.boxes[deepest.obstacle];
  if (!a || !b) throw new RangeError('a box of the pair is not in the scene');
  const subject = nameOfBox(mover.placed.kind, mover.name, a.body);
  const object = nameOfBox(obstacle.placed.kind, obstacle.name, b.body);
  const faces: FaceRef[] = [
    { part: mover.placed.id, box: a.body.name, face: faceTowards(a.box, deepest.direction, 1) },
    { part: obstacle.placed.id, box: b.body.name, face: faceTowards(b.box, deepest.direction, -1) },
  ];
  return {
    id: `interference/${mover.placed.id}/${obstacle.placed.id}`,
    kind: 'interference',
    weight: 'fault',
    parts: [mover.placed.id, obstacle.placed.id],
    faces,
    millimetres: deepest.distance,
    volume: rest.volume,
    escape: rest.escape,
    overlaps: rest.pairs,
    sentence: `${atStart(subject)} overlaps ${within(object)} by ${millimetresInWords(deepest.distance)}.`,
    waysOut: [],
  };
}

/**
 * The shortest straight move of the mover, mm, after which it no longer overlaps the obstacle, among the directions
 * that part the overlapping pairs and the axes of both parts.
 */
function shortestEscape(
  scene: Scene,
  mover: ExaminedPart,
  obstacle: ExaminedPart,
  partings: readonly Vector3[],
): NonNullable<Finding['escape']> {
  const link = mover.chain[0];
  const back = obstacle.chain[0];
  const seated = link?.carrier === obstacle.index || back?.carrier === mover.index;
  const ignored = (a: number, b: number): boolean => seated && isSeating(scene, mover, obstacle, a, b);
  let shortest = { direction: partings[0] ?? ([1, 0, 0] as const), distance: Number.POSITIVE_INFINITY };
  for (const direction of distinct([...partings, ...axesOf(mover), ...axesOf(obstacle)])) {
    const distance = escapeTravel(scene.packed, mover.solids, obstacle.solids, direction, ignored);
    if (distance < shortest.distance - 1e-9) shortest = { direction, distance };
  }
  return shortest;
}

function isSeating(scene: Scene, mover: ExaminedPart, obstacle: ExaminedPart, a: number, b: number): boolean {
  const first = scene.boxes[a]?.body;
  const second = scene.boxes[b]?.body;
  const down = mover.chain[0];
  if (down?.carrier === obstacle.index)
    return first?.engages === true && second?.receives?.includes(down.mount.id) === true;
  const up = obstacle.chain[0];
  return (
    up?.carrier === mover.index && second?.engages === true && first?.receives?.includes(up.mount.id) === true
  );
}

function axesOf(part: ExaminedPart): readonly Vector3[] {
  const frame = { centre: [0, 0, 0], half: [1, 1, 1], rotation: part.placed.pose.rotation } as const;
  return FACE_NAMES.map((face: FaceName) => faceNormal(frame, face));
}

/** Cosine above which two directions count as one. */
const SAME_DIRECTION = 1 - 1e-12;

function distinct(directions: readonly Vector3[]): readonly Vector3[] {
  const kept: Vector3[] = [];
  for (const direction of directions) {
    if (!kept.some((other) => dot(other, direction) > SAME_DIRECTION)) kept.push(direction);
  }
  return kept;
}
