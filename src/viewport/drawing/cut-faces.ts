/** What a section plane cuts: the exact cut face of every solid box, and the outline of each piece. World frame, mm. */
import {
  add,
  cornersOfBox,
  cross,
  dot,
  interpolate,
  type OrientedBox,
  type Scene,
  scale,
  subtract,
  type Vector3,
} from '../../../geometry';
import type { Section } from '../../store/view-store';
import { type Extent, mergedEdges } from './merged-edges';
import { extentOf } from './part-drawing';

export interface CutFace {
  /** Index of the part in the scene. */
  readonly part: number;
  /** Corners in order. */
  readonly polygon: readonly Vector3[];
  /** Too thin for hatching: filled solid, as ISO 128 allows for thin sections. */
  readonly thin: boolean;
}

export interface Cut {
  readonly faces: readonly CutFace[];
  readonly outline: readonly (readonly [Vector3, Vector3])[];
}

/** Sections thinner than this are filled instead of hatched, mm. */
const THIN_MM = 2.2;

/** Half the thickness of the slab whose edges give the outline, mm. */
const SLAB_MM = 0.5;

const axisNumber = { x: 0, y: 1, z: 2 } as const;

export function cutScene(scene: Scene, section: Section): Cut {
  const axis = axisNumber[section.axis];
  const faces: CutFace[] = [];
  const slabs = new Map<string, Extent[]>();
  const outline: (readonly [Vector3, Vector3])[] = [];
  for (const { part, body, box } of scene.boxes) {
    if (body.role !== 'solid') continue;
    const polygon = cutBox(box, axis, section.at);
    if (polygon.length < 3) continue;
    faces.push({ part, polygon, thin: leastWidth(polygon) < THIN_MM });
    const extent = extentOf(box);
    if (!extent) {
      polygon.forEach((corner, index) => {
        outline.push([corner, polygon[(index + 1) % polygon.length] ?? corner]);
      });
      continue;
    }
    const key = `${part} ${body.element}`;
    const group = slabs.get(key) ?? [];
    slabs.set(key, group);
    group.push(slabOf(extent, axis, section.at));
  }
  for (const group of slabs.values()) outline.push(...outlineOf(group, axis, section.at));
  return { faces, outline };
}

/** Corners of box and plane's common face, in order; empty when they only touch or miss. */
export function cutBox(box: OrientedBox, axis: 0 | 1 | 2, at: number): readonly Vector3[] {
  const corners = cornersOfBox(box);
  const points: Vector3[] = [];
  for (let corner = 0; corner < 8; corner++) {
    for (const bit of [1, 2, 4]) {
      if (corner & bit) continue;
      const [from, to] = [corners[corner], corners[corner | bit]];
      if (!from || !to || from[axis] < at === to[axis] < at) continue;
      points.push(interpolate(from, to, (at - from[axis]) / (to[axis] - from[axis])));
    }
  }
  return inOrder(points, axis);
}

/** Sorts the corners of a convex polygon round its middle. */
function inOrder(points: readonly Vector3[], axis: 0 | 1 | 2): readonly Vector3[] {
  if (points.length < 3) return [];
  const middle = scale(points.reduce(add), 1 / points.length);
  const [u, v] = [(axis + 1) % 3, (axis + 2) % 3] as [0 | 1 | 2, 0 | 1 | 2];
  const angle = (p: Vector3) => Math.atan2(p[v] - middle[v], p[u] - middle[u]);
  return [...points].sort((a, b) => angle(a) - angle(b));
}

/** The smallest distance between a side and the corner farthest from it. */
function leastWidth(polygon: readonly Vector3[]): number {
  let least = Infinity;
  polygon.forEach((from, index) => {
    const side = subtract(polygon[(index + 1) % polygon.length] ?? from, from);
    const long = Math.sqrt(dot(side, side));
    if (long < 1e-9) return;
    const heights = polygon.map((corner) => Math.hypot(...cross(side, subtract(corner, from))) / long);
    least = Math.min(least, Math.max(...heights));
  });
  return least;
}

function slabOf({ min, max }: Extent, axis: 0 | 1 | 2, at: number): Extent {
  const replaced = (point: Vector3, value: number): Vector3 => [
    axis === 0 ? value : point[0],
    axis === 1 ? value : point[1],
    axis === 2 ? value : point[2],
  ];
  return { min: replaced(min, at - SLAB_MM), max: replaced(max, at + SLAB_MM) };
}

function outlineOf(slabs: readonly Extent[], axis: 0 | 1 | 2, at: number): [Vector3, Vector3][] {
  const onPlane = (point: Vector3): Vector3 => [
    axis === 0 ? at : point[0],
    axis === 1 ? at : point[1],
    axis === 2 ? at : point[2],
  ];
  return mergedEdges(slabs)
    .filter(({ faces }) => faces.some((normal) => normal[axis] > 0.5))
    .map(({ from, to }) => [onPlane(from), onPlane(to)]);
}
