/** Sockets, slots, headers and modules. */
import type { OrientedBox } from '../../../../geometry';
import { type BoxFace, boxFace, faceNumbers, largeFaces, longFirst, partOfFace } from '../box-face';
import { type DetailPen, faintLine, fineLine } from '../detail-pen';

/** The outer face of something that stands on a board: +z of the board frame. */
const outerFace = (box: OrientedBox): BoxFace => longFirst(boxFace(box, 5));

/** The gap a card or module goes into, with a key near one end. */
export function drawSlot(pen: DetailPen, box: OrientedBox): void {
  const face = outerFace(box);
  const reach = face.halfAlong - 2;
  const gap = Math.min(1, face.halfAcross * 0.3);
  pen.opening(partOfFace(face, 0, 0, reach, gap));
  pen.rectangle(partOfFace(face, 0, 0, reach, gap), fineLine);
  pen.line(face, [reach * 0.7, -gap], [reach * 0.7, gap], fineLine);
}

/** About as wide as it is long, so that a pin is a dot. */
const pinStroke = { weight: 11, quiet: 80 };

/** Pins in rows, each a short stroke. */
export function drawPins(pen: DetailPen, face: BoxFace, pitch = 2.54): void {
  const long = longFirst(face);
  const columns = Math.max(1, Math.floor((2 * long.halfAlong - 1) / pitch));
  const rows = Math.max(1, Math.min(4, Math.floor((2 * long.halfAcross - 1) / pitch)));
  if (columns > 20) return;
  for (let column = 0; column < columns; column++) {
    for (let row = 0; row < rows; row++) {
      const along = (column - (columns - 1) / 2) * pitch;
      const across = (row - (rows - 1) / 2) * pitch;
      pen.line(long, [along - 0.3, across], [along + 0.3, across], pinStroke);
    }
  }
}

export function drawHeader(pen: DetailPen, box: OrientedBox): void {
  drawPins(pen, outerFace(box));
}

/** Frame and lid of a processor or its socket. */
export function drawSocket(pen: DetailPen, box: OrientedBox): void {
  const face = outerFace(box);
  pen.rectangle(partOfFace(face, 0, 0, face.halfAlong * 0.82, face.halfAcross * 0.82), fineLine);
}

/** Grooves along a heat sink. */
export function drawGrooves(pen: DetailPen, box: OrientedBox): void {
  const face = outerFace(box);
  const turned = {
    ...face,
    along: face.across,
    across: face.along,
    halfAlong: face.halfAcross,
    halfAcross: face.halfAlong,
  };
  pen.ribs(turned, Math.max(3, face.halfAcross / 3), faintLine);
}

/** Chips on both sides of a memory module, and the edge of its spreader. */
export function drawModule(pen: DetailPen, box: OrientedBox): void {
  for (const face of largeFaces(box)) {
    const long = longFirst(face);
    if (long.halfAcross < 6) continue;
    const chip = long.halfAlong / 9.5;
    for (let index = -3.5; index <= 3.5; index++) {
      const along = index * 2 * chip * 1.12;
      pen.rectangle(partOfFace(long, along, 0, chip * 0.86, long.halfAcross * 0.52), faintLine);
    }
  }
}

/** Ports side by side on the rear face of the connector block (-y of the board frame looks out of the enclosure). */
export function drawPorts(pen: DetailPen, box: OrientedBox): void {
  const face = longFirst(boxFace(box, 2));
  const count = Math.max(2, Math.round(face.halfAlong / 10));
  const width = face.halfAlong / count;
  for (let index = 0; index < count; index++) {
    const along = (2 * index + 1 - count) * width;
    for (const across of [-0.48, 0.48]) {
      pen.rectangle(
        partOfFace(face, along, across * face.halfAcross, width * 0.72, face.halfAcross * 0.36),
        fineLine,
      );
    }
  }
}

/** Label and screws of a drive. */
export function drawLabel(pen: DetailPen, box: OrientedBox): void {
  for (const face of largeFaces(box)) {
    if (Math.min(face.halfAlong, face.halfAcross) < 8) continue;
    pen.rectangle(partOfFace(face, 0, 0, face.halfAlong * 0.78, face.halfAcross * 0.72), faintLine);
    for (const [x, y] of [
      [1, 1],
      [1, -1],
      [-1, 1],
      [-1, -1],
    ] as const)
      pen.circle(face, [x * (face.halfAlong - 4), y * (face.halfAcross - 4)], 1.5, faintLine);
  }
}

/** Slots cut into a bracket plate for the air of a card. */
export function drawBracketVents(pen: DetailPen, box: OrientedBox): void {
  for (const face of largeFaces(box)) {
    const long = longFirst(face);
    if (long.halfAlong < 30) continue;
    pen.ribs({ ...long, halfAlong: long.halfAlong * 0.8, halfAcross: long.halfAcross * 0.7 }, 7, fineLine);
  }
}

/** Pins on every side of a socket from which a plug may come. */
export function drawSocketPins(pen: DetailPen, box: OrientedBox): void {
  for (const number of faceNumbers) drawPins(pen, boxFace(box, number));
}
