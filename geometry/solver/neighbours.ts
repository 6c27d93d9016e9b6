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

/** Facts about a pair by the indices of its parts, the lower first. */
export type PairLookup = (first: number, second: number) => PairFacts | undefined;

const unit: OrientedBox = { centre: [0, 0, 0], half: [1, 1, 1], rotation: identityRotation };
const directions: readonly Vector3[] = FACE_NAMES.map((face) => faceNormal(unit, face));

/** What a neighbour was made from. */
interface Found {
  readonly mine: ExaminedPart;
  readonly theirs: ExaminedPart | undefined;
  readonly distance: number;
  readonly box: number;
  readonly otherBox: number;
  readonly neighbour: Neighbour;
}

/** Keeps the answers of the last scene, and makes only those anew that have changed. */
export class NeighbourFinder {
  private found: (Found | undefined)[] = [];

  /** Six entries a part, in the order of the scene and of `FACE_NAMES`. */
  find(scene: Scene, parts: readonly ExaminedPart[], pairOf: PairLookup): readonly Neighbour[] {
    const before = this.found;
    const found: Found[] = [];
    for (const part of parts) {
      for (let face = 0; face < FACE_NAMES.length; face++) {
        found.push(nearest(scene, parts, pairOf, part, face, before[found.length]));
      }
    }
    this.found = found;
    return found.map((entry) => entry.neighbour);
  }
}

function nearest(
  scene: Scene,
  parts: readonly ExaminedPart[],
  pairOf: PairLookup,
  part: ExaminedPart,
  face: number,
  before: Found | undefined,
): Found {
  let distance = Number.POSITIVE_INFINITY;
  let box = -1;
  let otherBox = -1;
  let theirs: ExaminedPart | undefined;
  for (const other of parts) {
    if (other === part) continue;
    const isFirst = part.index < other.index;
    const travel = (isFirst ? pairOf(part.index, other.index) : pairOf(other.index, part.index))?.travel;
    // What the second meets going one way is what the first meets going the other.
    const entry = isFirst ? face : face ^ 1;
    const reach = travel?.distance[entry] ?? Number.POSITIVE_INFINITY;
    if (!travel || reach >= distance) continue;
    distance = reach;
    theirs = other;
    box = (isFirst ? travel.box[entry] : travel.otherBox[entry]) ?? -1;
    otherBox = (isFirst ? travel.otherBox[entry] : travel.box[entry]) ?? -1;
  }
  const isSame =
    before?.mine === part &&
    before.theirs === theirs &&
    before.distance === distance &&
    before.box === box &&
    before.otherBox === otherBox;
  if (isSame) return before;
  const neighbour = neighbourOf(scene, part, face, distance, box, otherBox);
  return { mine: part, theirs, distance, box, otherBox, neighbour };
}

function neighbourOf(
  scene: Scene,
  part: ExaminedPart,
  face: number,
  distance: number,
  box: number,
  otherBox: number,
): Neighbour {
  const found = { part: part.placed.id, direction: faceNameOf(face) };
  if (box < 0) return found;
  return {
    ...found,
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
