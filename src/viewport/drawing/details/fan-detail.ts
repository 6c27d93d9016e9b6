import type { OrientedBox } from '../../../../geometry';
import { type BoxFace, largeFaces, partOfFace } from '../box-face';
import { type DetailPen, type FacePoint, faintLine, fineLine, firmLine } from '../detail-pen';

const BLADES = 7;
/** Share of the half frame that the swept circle and the hub take; drawn detail, not a dimension. */
const RING = 0.94;
const HUB = 0.36;
/** How far a blade bends over from hub to tip, degrees. */
const SWEEP = 48;

/** Ring, hub and curved blades on both large faces of a fan. */
export function drawFan(pen: DetailPen, box: OrientedBox): void {
  for (const face of largeFaces(box)) {
    const half = Math.min(face.halfAlong, face.halfAcross);
    drawRotor(pen, face, half * RING, face.number & 1 ? 1 : -1);
    const corner = half * 0.875;
    for (const [x, y] of [
      [1, 1],
      [1, -1],
      [-1, 1],
      [-1, -1],
    ] as const)
      pen.circle(face, [x * corner, y * corner], half * 0.045, faintLine);
  }
}

/** A rotor within a circle on a face; `turning` is the side to which its blades bend. */
export function drawRotor(pen: DetailPen, face: BoxFace, radius: number, turning: 1 | -1): void {
  pen.opening(partOfFace(face, 0, 0, radius, radius), 'disc');
  const above = face;
  pen.circle(above, [0, 0], radius, firmLine);
  const hub = radius * HUB;
  pen.circle(above, [0, 0], hub, firmLine);
  pen.circle(above, [0, 0], hub * 0.72, faintLine);
  for (let blade = 0; blade < BLADES; blade++) {
    pen.path(above, bladeEdge((360 / BLADES) * blade, SWEEP * turning, hub, radius * 0.97), fineLine);
  }
}

/** The leading edge of a blade: a curve from the hub that bends over towards the tip. */
function bladeEdge(start: number, sweep: number, hub: number, tip: number): FacePoint[] {
  return Array.from({ length: 9 }, (_, step): FacePoint => {
    const along = step / 8;
    const angle = ((start + sweep * along ** 1.6) * Math.PI) / 180;
    const radius = hub + (tip - hub) * along;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });
}

/** The wire guard over a supply's or a card's fan: rings round the rotor. */
export function drawGuardedFan(pen: DetailPen, face: BoxFace, radius: number): void {
  drawRotor(pen, face, radius, 1);
  for (const share of [0.55, 0.78]) pen.circle(face, [0, 0], radius * share, faintLine);
}
