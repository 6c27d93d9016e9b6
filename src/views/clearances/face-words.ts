/** A face in words: 'Cooler, front fan, +y face'. */
import type { FaceRef, Scene } from '../../../geometry';

export function faceWords(scene: Scene, { part, box, face }: FaceRef): string {
  const label = scene.parts[scene.indexById.get(part) ?? -1]?.label ?? part;
  const place = box.toLowerCase() === label.toLowerCase() ? label : `${label}, ${box}`;
  return face === undefined ? place : `${place}, ${face} face`;
}
