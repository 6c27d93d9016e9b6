/** The nearest neighbour of every part in all six world directions. */
import type { Scene } from '../plan/scene';
import { FACE_NAMES, faceNameOf } from '../space/face-names';
import { faceNormal, type OrientedBox } from '../space/oriented-box';
import { identityRotation } from '../space/rotation';
import { faceTowards } from '../space/separation';
import type { Vector3 } from '../space/vector';
import type { FaceRef, Neighbour } from './finding';
import type { PairFacts } from './pair-facts';

/** Facts about a pair by the indices of its parts, the lower first. */
export type PairLookup = (first: number, second: number) => PairFacts | undefined;

const unit: OrientedBox = { centre: [0, 0, 0], half: [1, 1, 1], rotation: identityRotation };
const directions: readonly Vector3[] = FACE_NAMES.map((face) => faceNormal(unit, face));

/** Six entries a part, in the order of the scene and of `FACE_NAMES`. */
export function findNeighbours(scene: Scene, pairOf: PairLookup): readonly Neighbour[] {
  const neighbours: Neighbour[] = [];
  for (let part = 0; part < scene.parts.length; part++) {
    for (let face = 0; face < FACE_NAMES.length; face++) {
      neighbours.push(nearest(scene, pairOf, part, face));
    }
  }
  return neighbours;
}

function nearest(scene: Scene, pairOf: PairLookup, part: number, face: number): Neighbour {
  const id = scene.parts[part]?.id ?? '';
  const direction = faceNameOf(face);
  let least = Number.POSITIVE_INFINITY;
  let mine = -1;
  let theirs = -1;
  for (let other = 0; other < scene.parts.length; other++) {
    if (other === part) continue;
    const isFirst = part < other;
    const travel = (isFirst ? pairOf(part, other) : pairOf(other, part))?.travel;
    // What the second meets going one way is what the first meets going the other.
    const entry = isFirst ? face : face ^ 1;
    const distance = travel?.distance[entry] ?? Number.POSITIVE_INFINITY;
    if (!travel || distance >= least) continue;
    least = distance;
    mine = (isFirst ? travel.box[entry] : travel.otherBox[entry]) ?? -1;
    theirs = (isFirst ? travel.otherBox[entry] : travel.box[entry]) ?? -1;
  }
  if (mine < 0) return { part: id, direction };
  return {
    part: id,
    direction,
    millimetres: least,
    from: faceOf(scene, mine, directions[face], 1),
    to: faceOf(scene, theirs, directions[face], -1),
  };
}

function faceOf(scene: Scene, box: number, direction: Vector3 | undefined, sense: 1 | -1): FaceRef {
  const entry = scene.boxes[box];
  const part = entry === undefined ? undefined : scene.parts[entry.part];
  if (!entry || !part || !direction) throw new RangeError(`no box has number ${box}`);
  return { part: part.id, box: entry.body.name, face: faceTowards(entry.box, direction, sense) };
}
