/** The two faces by which one box stands in another. */
import type { Scene } from '../plan/scene';
import { separateBoxes } from '../space/separation';
import type { FaceRef } from './finding';

/** Faces of two overlapping boxes (numbers into `Scene.boxes`) across which they are parted by the shortest way. */
export function meetingFaces(scene: Scene, first: number, second: number): readonly [FaceRef, FaceRef] {
  const a = scene.boxes[first];
  const b = scene.boxes[second];
  const partA = a && scene.parts[a.part];
  const partB = b && scene.parts[b.part];
  if (!partA || !partB) throw new RangeError('a box of the pair is not in the scene');
  const { faceA, faceB } = separateBoxes(a.box, b.box);
  return [
    { part: partA.id, box: a.body.name, face: faceA },
    { part: partB.id, box: b.body.name, face: faceB },
  ];
}
