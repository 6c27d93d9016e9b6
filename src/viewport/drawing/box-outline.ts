/** Edges and faces of single boxes in the world, for reserved spaces, ghosts and marked faces. */
import { cornersOfBox, type OrientedBox, type Polyhedron, type Vector3 } from '../../../geometry';
import { boxFace, type FaceNumber, faceNumbers, pointOn } from './box-face';

export type Segment = readonly [Vector3, Vector3];

export function boxEdges(box: OrientedBox): Segment[] {
  const corners = cornersOfBox(box);
  const edges: Segment[] = [];
  for (let corner = 0; corner < 8; corner++) {
    for (const bit of [1, 2, 4]) {
      const [from, to] = [corners[corner], corners[corner | bit]];
      if (!(corner & bit) && from && to) edges.push([from, to]);
    }
  }
  return edges;
}

export function facePolygon(box: OrientedBox, number: FaceNumber): Vector3[] {
  const face = boxFace(box, number);
  const { halfAlong: a, halfAcross: b } = face;
  return [pointOn(face, -a, -b), pointOn(face, a, -b), pointOn(face, a, b), pointOn(face, -a, b)];
}

export function boxPolygons(box: OrientedBox): Vector3[][] {
  return faceNumbers.map((number) => facePolygon(box, number));
}

export function polygonEdges(polygon: readonly Vector3[]): Segment[] {
  return polygon.map((corner, index) => [corner, polygon[(index + 1) % polygon.length] ?? corner]);
}

export function polyhedronPolygons({ vertices, faces }: Polyhedron): Vector3[][] {
  return faces.map((face) => face.map((index) => vertices[index]).filter((corner) => corner !== undefined));
}

/** Each edge of a polyhedron once. */
export function polyhedronEdges({ vertices, faces }: Polyhedron): Segment[] {
  const edges = new Map<string, Segment>();
  for (const face of faces) {
    face.forEach((from, index) => {
      const to = face[(index + 1) % face.length] ?? from;
      const [start, end] = [vertices[from], vertices[to]];
      if (start && end) edges.set(from < to ? `${from} ${to}` : `${to} ${from}`, [start, end]);
    });
  }
  return [...edges.values()];
}
