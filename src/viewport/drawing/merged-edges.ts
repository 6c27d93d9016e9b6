/**
 * The edges of several boxes drawn as one body: where two pieces of a wall meet flush there is no line, where they
 * make a recess there is one.
 */
import type { Vector3 } from '../../../geometry';

/** An axis-aligned box, mm. */
export interface Extent {
  readonly min: Vector3;
  readonly max: Vector3;
}

export interface Edge {
  readonly from: Vector3;
  readonly to: Vector3;
  /** Outward normals of the two faces that meet in it. */
  readonly faces: readonly [Vector3, Vector3];
  /** Whether material lies on three of its four sides. */
  readonly recess: boolean;
}

/** How far beside an edge one looks for material, mm; thinner than any sheet. */
const PROBE_MM = 0.02;

type Axis = 0 | 1 | 2;

export function mergedEdges(boxes: readonly Extent[]): Edge[] {
  const edges = new Map<string, Edge>();
  for (const box of boxes) {
    const near = boxes.filter((other) => touches(box, other));
    for (const axis of [0, 1, 2] as const) {
      for (const corner of [0, 1, 2, 3]) edgesAlong(box, axis, corner, near, edges);
    }
  }
  return [...edges.values()];
}

function edgesAlong(
  box: Extent,
  axis: Axis,
  corner: number,
  near: readonly Extent[],
  edges: Map<string, Edge>,
): void {
  const first = ((axis + 1) % 3) as Axis;
  const second = ((axis + 2) % 3) as Axis;
  const atFirst = (corner & 1 ? box.max : box.min)[first];
  const atSecond = (corner & 2 ? box.max : box.min)[second];
  const beside = near.filter((other) => reaches(other, first, atFirst) && reaches(other, second, atSecond));
  const point = (along: number): Vector3 => place(axis, along, first, atFirst, second, atSecond);
  for (const [from, to] of pieces(box, axis, beside)) {
    const surface = surfaceAt((from + to) / 2, axis, first, atFirst, second, atSecond, beside);
    if (!surface) continue;
    const edge: Edge = { from: point(from), to: point(to), ...surface };
    edges.set([...edge.from, ...edge.to].map((value) => value.toFixed(3)).join(' '), edge);
  }
}

/** Looks into the four quarters round a point of the edge: one or three full ones make an edge. */
function surfaceAt(
  along: number,
  axis: Axis,
  first: Axis,
  atFirst: number,
  second: Axis,
  atSecond: number,
  beside: readonly Extent[],
): Pick<Edge, 'faces' | 'recess'> | undefined {
  const full = [0, 1, 2, 3].map((quarter) => {
    const point = place(
      axis,
      along,
      first,
      atFirst + (quarter & 1 ? PROBE_MM : -PROBE_MM),
      second,
      atSecond + (quarter & 2 ? PROBE_MM : -PROBE_MM),
    );
    return beside.some((other) => contains(other, point));
  });
  const filled = full.filter(Boolean).length;
  const recess = filled === 3;
  if (filled !== 1 && !recess && !(filled === 2 && full[0] === full[3])) return undefined;
  // Outward is away from the full quarter, or into the empty one.
  const quarter = full.indexOf(!recess);
  const sense = recess ? 1 : -1;
  const normals = [
    unit(first, quarter & 1 ? sense : -sense),
    unit(second, quarter & 2 ? sense : -sense),
  ] as const;
  return { faces: normals, recess };
}

/** The edge of the box cut wherever another box begins or ends beside it. */
function pieces(box: Extent, axis: Axis, beside: readonly Extent[]): (readonly [number, number])[] {
  const cuts = new Set([box.min[axis], box.max[axis]]);
  for (const other of beside) {
    for (const cut of [other.min[axis], other.max[axis]])
      if (cut > box.min[axis] + PROBE_MM && cut < box.max[axis] - PROBE_MM) cuts.add(cut);
  }
  const sorted = [...cuts].sort((a, b) => a - b);
  return sorted.slice(1).map((to, index) => [sorted[index] ?? to, to] as const);
}

function place(
  axis: Axis,
  along: number,
  first: Axis,
  atFirst: number,
  second: Axis,
  atSecond: number,
): Vector3 {
  const point: [number, number, number] = [0, 0, 0];
  point[axis] = along;
  point[first] = atFirst;
  point[second] = atSecond;
  return point;
}

function unit(axis: Axis, sense: number): Vector3 {
  const direction: [number, number, number] = [0, 0, 0];
  direction[axis] = sense;
  return direction;
}

function reaches(box: Extent, axis: Axis, at: number): boolean {
  return box.min[axis] <= at + PROBE_MM && box.max[axis] >= at - PROBE_MM;
}

function touches(a: Extent, b: Extent): boolean {
  return ([0, 1, 2] as const).every(
    (axis) => a.min[axis] <= b.max[axis] + PROBE_MM && b.min[axis] <= a.max[axis] + PROBE_MM,
  );
}

function contains(box: Extent, point: Vector3): boolean {
  return ([0, 1, 2] as const).every((axis) => point[axis] > box.min[axis] && point[axis] < box.max[axis]);
}
