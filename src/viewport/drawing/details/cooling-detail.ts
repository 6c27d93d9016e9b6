/** Fins, radiator cores, pump blocks and tubes. */
import { add, dot, type OrientedBox, scale, type Vector3 } from '../../../../geometry';
import {
  axisOf,
  type BoxFace,
  boxFace,
  faceNumbers,
  halfOf,
  largeFaces,
  longestAxis,
  longFirst,
  partOfFace,
} from '../box-face';
import { type DetailPen, faintLine, fineLine } from '../detail-pen';

/** Pitch at which fins are drawn, mm: wider than they are made, or they would run into one grey. */
const FIN_PITCH_MM = 3.6;

/** Lines on every face along which fins end; `normalToFins` points across the stack of fins. */
export function drawFins(pen: DetailPen, box: OrientedBox, normalToFins: Vector3): void {
  for (const number of faceNumbers) {
    const face = boxFace(box, number);
    if (Math.abs(dot(face.normal, normalToFins)) > 0.5) continue;
    pen.ribs(turnedTowards(face, normalToFins), FIN_PITCH_MM);
  }
}

/** Pipe ends in a row on the outermost fin. */
export function drawPipeEnds(pen: DetailPen, box: OrientedBox, normalToFins: Vector3): void {
  for (const number of faceNumbers) {
    const face = boxFace(box, number);
    if (dot(face.normal, normalToFins) < 0.5) continue;
    const long = longFirst(face);
    const radius = Math.min(3, long.halfAcross * 0.16);
    for (let pipe = -2.5; pipe <= 2.5; pipe++) {
      const along = (long.halfAlong * pipe) / 3.1;
      pen.circle(long, [along, (Math.abs(pipe) % 2 < 1 ? 1 : -1) * long.halfAcross * 0.35], radius, fineLine);
    }
  }
}

/** Flat tubes and the fins between them on the large faces of a radiator. */
export function drawRadiator(pen: DetailPen, box: OrientedBox): void {
  for (const face of largeFaces(box)) {
    const long = longFirst(face);
    pen.ribs(
      {
        ...long,
        along: long.across,
        across: long.along,
        halfAlong: long.halfAcross,
        halfAcross: long.halfAlong,
      },
      10,
      fineLine,
    );
    pen.ribs(long, 5.2, faintLine);
  }
}

export function drawPumpBlock(pen: DetailPen, box: OrientedBox): void {
  for (const number of faceNumbers) {
    const face = boxFace(box, number);
    const half = Math.min(face.halfAlong, face.halfAcross);
    if (half < 0.6 * Math.max(face.halfAlong, face.halfAcross)) continue;
    pen.circle(face, [0, 0], half * 0.78, fineLine);
    pen.circle(face, [0, 0], half * 0.5, faintLine);
  }
}

/** The edges of a card's fins, seen through the long sides of its shroud. */
export function drawShroudRibs(pen: DetailPen, box: OrientedBox): void {
  for (const number of [4, 5] as const) {
    const face = boxFace(box, number);
    if (face.halfAlong < 30 || face.halfAcross < 6) continue;
    const window = partOfFace(face, 0, 0, face.halfAlong - 14, face.halfAcross * 0.6);
    pen.ribs(window, FIN_PITCH_MM, faintLine);
    pen.rectangle(window, faintLine);
  }
}

/** The centre line of something round. */
export function drawCentreLine(pen: DetailPen, box: OrientedBox): void {
  const axis = longestAxis(box);
  const reach = scale(axisOf(box, axis), halfOf(box, axis) + 4);
  pen.free(add(box.centre, scale(reach, -1)), add(box.centre, reach), faintLine);
}

function turnedTowards(face: BoxFace, direction: Vector3): BoxFace {
  if (Math.abs(dot(face.along, direction)) > 0.5) return face;
  return {
    ...face,
    along: face.across,
    across: scale(face.along, -1),
    halfAlong: face.halfAcross,
    halfAcross: face.halfAlong,
  };
}
