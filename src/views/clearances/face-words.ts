/** A face in words: 'Cooler, front fan, upper face', 'Card, face towards the side panel'. */
import type { FaceName, FaceRef, OrientedBox, Scene } from '../../../geometry';

export function faceWords(scene: Scene, { part, box, face }: FaceRef): string {
  const index = scene.indexById.get(part) ?? -1;
  const placed = scene.parts[index];
  const label = placed?.label ?? part;
  // Sheets with openings are cut into numbered pieces, of which a builder knows nothing.
  const name = placed?.kind === 'enclosure' ? box.replace(/(, piece)? \d+$/, '') : box;
  const place = name.toLowerCase() === label.toLowerCase() ? label : `${label}, ${name}`;
  if (face === undefined) return place;
  const entry = scene.boxes.find((one) => one.part === index && one.body.name === box);
  return entry ? `${place}, ${sideWords(entry.box, face)}` : place;
}

/** Which way a face of a placed box looks: the world runs rear to front, floor to top, tray to side panel. */
function sideWords({ centre, rotation }: OrientedBox, face: FaceName): string {
  const own = ['x', 'y', 'z'].indexOf(face.charAt(1));
  const sign = face.startsWith('-') ? -1 : 1;
  const [x = 0, y = 0, z = 0] = [0, 1, 2].map((row) => sign * (rotation[3 * row + own] ?? 0));
  if (Math.abs(x) > STRAIGHT) return x > 0 ? 'face towards the front' : 'face towards the rear';
  if (Math.abs(y) > STRAIGHT) return y > 0 ? 'upper face' : 'lower face';
  if (Math.abs(z) <= STRAIGHT) return 'slanted face';
  const behindTray = centre[2] < 0;
  if (z > 0) return behindTray ? 'face towards the tray' : 'face towards the side panel';
  return behindTray ? 'face towards the back panel' : 'face towards the tray';
}

/** Cosine beyond which a face is said to look along an axis: 5 degrees. */
const STRAIGHT = 0.996;
