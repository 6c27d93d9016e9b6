/**
 * Boxes as a picture of a solid body, seen from far away along any direction: faces in the order in which they can be
 * painted over one another, each with the edges that are edges of the thing and not seams between its pieces.
 */
import { type Bounds, boundsOfBox } from '../../space/oriented-box';
import { add, dot, scale, type Vector3 } from '../../space/vector';
import type { BodyBox } from '../body';
import { thingOf } from './line-drawing';

export type PaperPoint = readonly [u: number, v: number];

export interface PaintedFace {
  readonly body: BodyBox;
  /** The axis its normal lies along. */
  readonly axis: 0 | 1 | 2;
  readonly corners: readonly [PaperPoint, PaperPoint, PaperPoint, PaperPoint];
  readonly edges: readonly (readonly [PaperPoint, PaperPoint])[];
}

/** Right, up and towards the viewer, as unit vectors of the part's frame. */
export interface Eye {
  readonly right: Vector3;
  readonly up: Vector3;
  readonly towards: Vector3;
}

/**
 * Turned by `yaw` about the axis that stands up and then tilted by `pitch`, degrees; at 0, 0 it is the view along
 * `towards`. The three axes must make a right-handed frame.
 */
export function eyeAt(front: Eye, yaw: number, pitch: number): Eye {
  const [cy, sy] = [Math.cos((yaw * Math.PI) / 180), Math.sin((yaw * Math.PI) / 180)];
  const [cp, sp] = [Math.cos((pitch * Math.PI) / 180), Math.sin((pitch * Math.PI) / 180)];
  const mix = (r: number, u: number, t: number): Vector3 =>
    add(add(scale(front.right, r), scale(front.up, u)), scale(front.towards, t));
  return {
    right: mix(cy, 0, -sy),
    up: mix(-sp * sy, cp, -sp * cy),
    towards: mix(cp * sy, sp, cp * cy),
  };
}

interface Piece {
  readonly body: BodyBox;
  readonly bounds: Bounds;
  readonly thing: string;
  readonly paper: { readonly min: PaperPoint; readonly max: PaperPoint };
  readonly depth: number;
}

const APART_MM = 1e-6;

/** Furthest first. Boxes that overlap one another are ordered by their middles. */
export function bodyPicture(boxes: readonly BodyBox[], eye: Eye): readonly PaintedFace[] {
  const pieces = boxes.map((body) => pieceOf(body, eye));
  return paintingOrder(pieces, eye.towards).flatMap((piece) => facesOf(piece, pieces, eye));
}

function onPaper(eye: Eye, point: Vector3): PaperPoint {
  return [dot(eye.right, point), dot(eye.up, point)];
}

function pieceOf(body: BodyBox, eye: Eye): Piece {
  const bounds = boundsOfBox(body.box);
  const corners = [0, 1, 2, 3, 4, 5, 6, 7].map((k) => onPaper(eye, cornerOf(bounds, k)));
  const us = corners.map(([u]) => u);
  const vs = corners.map(([, v]) => v);
  return {
    body,
    bounds,
    thing: thingOf(body),
    paper: { min: [Math.min(...us), Math.min(...vs)], max: [Math.max(...us), Math.max(...vs)] },
    depth: dot(eye.towards, body.box.centre),
  };
}

function cornerOf({ min, max }: Bounds, k: number): Vector3 {
  return [k & 1 ? max[0] : min[0], k & 2 ? max[1] : min[1], k & 4 ? max[2] : min[2]];
}

/** Every piece after all those that it can hide. */
function paintingOrder(pieces: readonly Piece[], towards: Vector3): readonly Piece[] {
  const behind = pieces.map(() => new Set<number>());
  pieces.forEach((a, i) => {
    for (let j = i + 1; j < pieces.length; j++) {
      const b = pieces[j];
      if (!b || !overlapsOnPaper(a, b)) continue;
      const order = nearerOf(a, b, towards);
      if (order > 0) behind[i]?.add(j);
      if (order < 0) behind[j]?.add(i);
    }
  });
  const left = new Set(pieces.keys());
  const ordered: Piece[] = [];
  while (left.size > 0) {
    const free = [...left].filter((i) => [...(behind[i] ?? [])].every((j) => !left.has(j)));
    // Three boxes may hide one another in a ring: then the furthest goes first.
    const next = (free.length > 0 ? free : [...left]).reduce((best, i) =>
      (pieces[i]?.depth ?? 0) < (pieces[best]?.depth ?? 0) ? i : best,
    );
    const piece = pieces[next];
    if (piece) ordered.push(piece);
    left.delete(next);
  }
  return ordered;
}

function overlapsOnPaper({ paper: a }: Piece, { paper: b }: Piece): boolean {
  return ([0, 1] as const).every((i) => a.min[i] < b.max[i] - APART_MM && b.min[i] < a.max[i] - APART_MM);
}

/** Above 0 when `a` may hide `b`, below when `b` may hide `a`, 0 when neither can. */
function nearerOf(a: Piece, b: Piece, towards: Vector3): number {
  let [aCannot, bCannot] = [false, false];
  for (const axis of [0, 1, 2] as const) {
    const way = towards[axis];
    const aLower = a.bounds.max[axis] <= b.bounds.min[axis] + APART_MM;
    const bLower = b.bounds.max[axis] <= a.bounds.min[axis] + APART_MM;
    if ((aLower && way >= 0) || (bLower && way <= 0)) aCannot = true;
    if ((bLower && way >= 0) || (aLower && way <= 0)) bCannot = true;
  }
  if (aCannot && bCannot) return 0;
  if (aCannot) return -1;
  return bCannot ? 1 : a.depth - b.depth;
}

const around = { 0: [1, 2], 1: [0, 2], 2: [0, 1] } as const;

/** The three faces that look at the viewer; fewer when the view is along an axis. */
function facesOf(piece: Piece, pieces: readonly Piece[], eye: Eye): readonly PaintedFace[] {
  const same = pieces.filter((other) => other !== piece && other.thing === piece.thing);
  return ([0, 1, 2] as const).flatMap((axis): PaintedFace[] => {
    if (Math.abs(eye.towards[axis]) < 1e-9) return [];
    const end = eye.towards[axis] > 0 ? 'max' : 'min';
    const [p, q] = around[axis];
    const at = piece.bounds[end][axis];
    const flush = same.filter(({ bounds }) => Math.abs(bounds[end][axis] - at) < APART_MM);
    const point = (a: number, b: number): Vector3 => {
      const made: [number, number, number] = [0, 0, 0];
      made[axis] = at;
      made[p] = a;
      made[q] = b;
      return made;
    };
    const { min, max } = piece.bounds;
    const paper = (a: number, b: number) => onPaper(eye, point(a, b));
    const edges = [
      ...pieceSides(flush, p, q, min[p], min[q], max[q], 'max').map(
        ([s, e]) => [paper(min[p], s), paper(min[p], e)] as const,
      ),
      ...pieceSides(flush, p, q, max[p], min[q], max[q], 'min').map(
        ([s, e]) => [paper(max[p], s), paper(max[p], e)] as const,
      ),
      ...pieceSides(flush, q, p, min[q], min[p], max[p], 'max').map(
        ([s, e]) => [paper(s, min[q]), paper(e, min[q])] as const,
      ),
      ...pieceSides(flush, q, p, max[q], min[p], max[p], 'min').map(
        ([s, e]) => [paper(s, max[q]), paper(e, max[q])] as const,
      ),
    ];
    const corners = [
      paper(min[p], min[q]),
      paper(max[p], min[q]),
      paper(max[p], max[q]),
      paper(min[p], max[q]),
    ] as const;
    return [{ body: piece.body, axis, corners, edges }];
  });
}

/** What is left of a side from `low` to `high` where no flush piece lies against it. */
function pieceSides(
  flush: readonly Piece[],
  across: 0 | 1 | 2,
  running: 0 | 1 | 2,
  at: number,
  low: number,
  high: number,
  meets: 'min' | 'max',
): readonly (readonly [number, number])[] {
  const taken = flush
    .filter(({ bounds }) => Math.abs(bounds[meets][across] - at) < APART_MM)
    .map(({ bounds }) => [bounds.min[running], bounds.max[running]] as const)
    .sort((a, b) => a[0] - b[0]);
  const free: (readonly [number, number])[] = [];
  let from = low;
  for (const [start, end] of taken) {
    if (start > from + APART_MM) free.push([from, Math.min(start, high)]);
    from = Math.max(from, end);
  }
  if (from < high - APART_MM) free.push([from, high]);
  return free.filter(([start, end]) => end - start > APART_MM);
}
