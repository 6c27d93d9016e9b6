/** The nearest neighbour of every part in all six world directions. */
import type { Scene } from '../plan/scene';
import { FACE_NAMES, faceNameOf } from '../space/face-names';
import { faceNormal, type OrientedBox } from '../space/oriented-box';
import { identityRotation } from '../space/rotation';
import { faceTowards } from '../space/separation';
import type { Vector3 } from '../space/vector';
import type { ExaminedPart } from './examined-part';
import type { FaceRef, Neighbour } from './finding';
import type { PairFacts } from './pair-facts';

const unit: OrientedBox = { centre: [0, 0, 0], half: [1, 1, 1], rotation: identityRotation };
const directions: readonly Vector3[] = FACE_NAMES.map((face) => faceNormal(unit, face));

/** What a neighbour was made from: as long as both parts stand as they did, so does the gap between them. */
interface Found {
  readonly mine: ExaminedPart;
  readonly theirs: ExaminedPart | undefined;
  readonly neighbour: Neighbour;
}

/** Keeps the answers of the last scene, and makes only those anew that have changed. */
export class NeighbourFinder {
  private found: readonly Found[] = [];

  /** Six entries a part, in the order of the scene and of `FACE_NAMES`. */
  find(scene: Scene, parts: readonly ExaminedPart[], pairs: readonly PairFacts[]): readonly Neighbour[] {
    const nearest = nearestOfAll(parts.length, pairs);
    const before = this.found;
    this.found = nearest.map((entry, place) => {
      const mine = parts[Math.floor(place / FACES)];
      if (!mine) throw new RangeError('more neighbours than parts');
      return settle(scene, mine, entry, place % FACES, before[place]);
    });
    return this.found.map((entry) => entry.neighbour);
  }
}

const FACES = FACE_NAMES.length;

/** The nearest thing met by one part going one way. */
interface Nearest {
  distance: number;
  box: number;
  otherBox: number;
  theirs: ExaminedPart | undefined;
}

function nearestOfAll(parts: number, pairs: readonly PairFacts[]): readonly Nearest[] {
  const nearest = Array.from(
    { length: parts * FACES },
    (): Nearest => ({ distance: Number.POSITIVE_INFINITY, box: -1, otherBox: -1, theirs: undefined }),
  );
  for (const { first, second, travel } of pairs) {
    if (!travel) continue;
    for (let face = 0; face < FACES; face++) {
      const distance = travel.distance[face] ?? Number.POSITIVE_INFINITY;
      const box = travel.box[face] ?? -1;
      const otherBox = travel.otherBox[face] ?? -1;
      if (box < 0) continue;
      keep(nearest[first.index * FACES + face], distance, box, otherBox, second);
      // What the first meets going one way is what the second meets going the other.
      keep(nearest[second.index * FACES + (face ^ 1)], distance, otherBox, box, first);
    }
  }
  return nearest;
}

/** Among equals the part that comes first in the scene. */
function keep(
  entry: Nearest | undefined,
  distance: number,
  box: number,
  otherBox: number,
  theirs: ExaminedPart,
): void {
  if (!entry || distance > entry.distance) return;
  if (distance === entry.distance && entry.theirs && entry.theirs.index < theirs.index) return;
  entry.distance = distance;
  entry.box = box;
  entry.otherBox = otherBox;
  entry.theirs = theirs;
}

function settle(
  scene: Scene,
  mine: ExaminedPart,
  { distance, box, otherBox, theirs }: Nearest,
  face: number,
  before: Found | undefined,
): Found {
  if (before?.mine === mine && before.theirs === theirs) return before;
  return { mine, theirs, neighbour: neighbourOf(scene, mine, face, distance, box, otherBox) };
}

function neighbourOf(
  scene: Scene,
  part: ExaminedPart,
  face: number,
  distance: number,
  box: number,
  otherBox: number,
): Neighbour {
  const direction = faceNameOf(face);
  if (box < 0) return { part: part.placed.id, direction };
  return {
    part: part.placed.id,
    direction,
    millimetres: distance,
    from: faceOf(scene, box, directions[face], 1),
    to: faceOf(scene, otherBox, directions[face], -1),
  };
}

function faceOf(scene: Scene, box: number, direction: Vector3 | undefined, sense: 1 | -1): FaceRef {
  const entry = scene.boxes[box];
  const part = entry === undefined ? undefined : scene.parts[entry.part];
  if (!entry || !part || !direction) throw new RangeError(`no box has number ${box}`);
  return { part: part.id, box: entry.body.name, face: faceTowards(entry.box, direction, sense) };
}
