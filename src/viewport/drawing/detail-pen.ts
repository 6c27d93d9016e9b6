/** Draws on the faces of boxes: lines, rectangles, circles and openings, in mm about the centre of a face. */
import { add, scale, type Vector3 } from '../../../geometry';
import { type BoxFace, pointOn } from './box-face';
import type { FillKind, FillList, StrokeList } from './stroke-list';

export interface DetailLook {
  /** Tenths of a CSS pixel. */
  readonly weight: number;
  /** 0 ink, 100 quiet. */
  readonly quiet: number;
}

export const fineLine: DetailLook = { weight: 7, quiet: 45 };
export const faintLine: DetailLook = { weight: 6, quiet: 100 };
export const firmLine: DetailLook = { weight: 9, quiet: 10 };

/**
 * Openings lie this much above the face they are cut into, and lines twice as much, so that the depth buffer can tell
 * them apart also where the face is seen straight on; mm.
 */
const LIFT_MM = 0.06;

export type FacePoint = readonly [along: number, across: number];

export class DetailPen {
  private readonly strokes: StrokeList;
  private readonly fills: FillList;

  constructor(strokes: StrokeList, fills: FillList) {
    this.strokes = strokes;
    this.fills = fills;
  }

  line(face: BoxFace, from: FacePoint, to: FacePoint, look: DetailLook = fineLine): void {
    const lift = scale(face.normal, 2 * LIFT_MM);
    const start = add(pointOn(face, from[0], from[1]), lift);
    const end = add(pointOn(face, to[0], to[1]), lift);
    this.strokes.add(start, end, { kind: 'detail', ...look }, face.normal);
  }

  path(face: BoxFace, points: readonly FacePoint[], look: DetailLook = fineLine): void {
    points.slice(1).forEach((point, index) => {
      this.line(face, points[index] ?? point, point, look);
    });
  }

  rectangle(face: BoxFace, look: DetailLook = fineLine): void {
    const { halfAlong: a, halfAcross: b } = face;
    this.path(
      face,
      [
        [-a, -b],
        [a, -b],
        [a, b],
        [-a, b],
        [-a, -b],
      ],
      look,
    );
  }

  circle(face: BoxFace, centre: FacePoint, radius: number, look: DetailLook = fineLine): void {
    const pieces = radius > 20 ? 56 : radius > 6 ? 28 : 12;
    const points = Array.from({ length: pieces + 1 }, (_, index): FacePoint => {
      const angle = (2 * Math.PI * index) / pieces;
      return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
    });
    this.path(face, points, look);
  }

  /** Parallel lines across the face, `pitch` mm apart, running along its second direction. */
  ribs(face: BoxFace, pitch: number, look: DetailLook = faintLine): void {
    const count = Math.floor((2 * face.halfAlong) / pitch);
    for (let index = 1; index < count; index++) {
      const at = -face.halfAlong + (2 * face.halfAlong * index) / count;
      this.line(face, [at, -face.halfAcross], [at, face.halfAcross], look);
    }
  }

  /** A darker rectangle (or, as a disc, the circle in it) where one looks into the part. */
  opening(face: BoxFace, kind: FillKind = 'opening'): void {
    const corner = pointOn(face, -face.halfAlong, -face.halfAcross);
    this.fills.add(
      add(corner, scale(face.normal, LIFT_MM)),
      scale(face.along, 2 * face.halfAlong),
      scale(face.across, 2 * face.halfAcross),
      kind,
    );
  }

  /** A stroke that is not on a face, such as a centre line. */
  free(from: Vector3, to: Vector3, look: DetailLook): void {
    this.strokes.add(from, to, { kind: 'plain', ...look });
  }
}
