import { FACE_NAMES } from './face-names';
import { cornersOfBox, facePlane, type OrientedBox, type Plane } from './oriented-box';
import { separateBoxes } from './separation';
import { CONTACT_TOLERANCE_MM } from './tolerance';
import { add, cross, distance, dot, interpolate, scale, subtract, type Vector3 } from './vector';

/** A convex solid: vertices in mm, each face a list of vertex numbers, counter-clockwise seen from outside. */
export interface Polyhedron {
  readonly vertices: readonly Vector3[];
  readonly faces: readonly (readonly number[])[];
}

/** Vertices closer than this are one vertex, and a plane this close to a vertex passes through it; mm. */
const SAME_POINT_MM = CONTACT_TOLERANCE_MM / 10;

/** Corner numbers (`cornersOfBox`) of the faces, in the order of `FACE_NAMES`, counter-clockwise from outside. */
const FACE_CORNERS: readonly (readonly number[])[] = [
  [0, 4, 6, 2],
  [1, 3, 7, 5],
  [0, 1, 5, 4],
  [2, 6, 7, 3],
  [0, 2, 3, 1],
  [4, 5, 7, 6],
];

/** The solid two boxes have in common, for drawing; undefined when they only touch or are apart. */
export function overlapPolyhedron(a: OrientedBox, b: OrientedBox): Polyhedron | undefined {
  if (separateBoxes(a, b).distance >= 0) return undefined;
  const corners = cornersOfBox(a);
  let faces = FACE_CORNERS.map((face) => face.map((corner) => corners[corner] ?? a.centre));
  for (const name of FACE_NAMES) faces = cutByPlane(faces, facePlane(b, name));
  return faces.length < 4 ? undefined : shareVertices(faces);
}

/** The corners of the solid two boxes have in common; empty when they only touch or are apart. */
export function overlapCorners(a: OrientedBox, b: OrientedBox): readonly Vector3[] {
  return overlapPolyhedron(a, b)?.vertices ?? [];
}

/** Volume of a convex polyhedron, cubic mm. */
export function volumeOfPolyhedron(solid: Polyhedron): number {
  const [apex] = solid.vertices;
  if (apex === undefined) return 0;
  let volume = 0;
  for (const face of solid.faces) {
    const [first, ...rest] = face.map((index) => subtract(solid.vertices[index] ?? apex, apex));
    if (first === undefined) continue;
    rest.slice(1).forEach((corner, index) => {
      volume += dot(first, cross(rest[index] ?? first, corner)) / 6;
    });
  }
  return volume;
}

/** Cuts every face to the inside of the plane and closes the hole with a new face. */
function cutByPlane(faces: Vector3[][], plane: Plane): Vector3[][] {
  const height = (p: Vector3) => dot(plane.normal, p) - plane.offset;
  const reach = Math.max(...faces.flat().map(height));
  if (reach <= SAME_POINT_MM) return faces;
  const rim: Vector3[] = [];
  const kept: Vector3[][] = [];
  for (const face of faces) {
    const cut: Vector3[] = [];
    face.forEach((to, index) => {
      const from = face[(index + face.length - 1) % face.length] ?? to;
      const heightFrom = height(from);
      const heightTo = height(to);
      const crosses =
        Math.min(heightFrom, heightTo) < -SAME_POINT_MM && Math.max(heightFrom, heightTo) > SAME_POINT_MM;
      if (crosses) {
        const crossing = interpolate(from, to, heightFrom / (heightFrom - heightTo));
        cut.push(crossing);
        rim.push(crossing);
      }
      if (heightTo <= SAME_POINT_MM) cut.push(to);
      if (Math.abs(heightTo) <= SAME_POINT_MM) rim.push(to);
    });
    if (cut.length > 2 && cut.some((p) => height(p) < -SAME_POINT_MM)) kept.push(cut);
  }
  const cap = orderAround(distinct(rim), plane.normal);
  if (cap.length > 2) kept.push(cap);
  return kept;
}

function distinct(points: readonly Vector3[]): Vector3[] {
  const kept: Vector3[] = [];
  for (const p of points) if (!kept.some((other) => distance(other, p) <= 2 * SAME_POINT_MM)) kept.push(p);
  return kept;
}

/** Sorts the points of a convex face counter-clockwise about a normal. */
function orderAround(points: Vector3[], normal: Vector3): Vector3[] {
  const [first] = points;
  if (first === undefined) return [];
  const centre = scale(points.reduce(add), 1 / points.length);
  const u = subtract(first, centre);
  const v = cross(normal, u);
  const angle = (p: Vector3) => Math.atan2(dot(subtract(p, centre), v), dot(subtract(p, centre), u));
  return [...points].sort((p, q) => angle(p) - angle(q));
}

/** Numbers the vertices once each; faces that shrink to a line are dropped. */
function shareVertices(faces: readonly (readonly Vector3[])[]): Polyhedron {
  const vertices: Vector3[] = [];
  const numbered: number[][] = [];
  for (const face of faces) {
    const indices: number[] = [];
    for (const p of face) {
      let index = vertices.findIndex((other) => distance(other, p) <= 2 * SAME_POINT_MM);
      if (index < 0) index = vertices.push(p) - 1;
      if (!indices.includes(index)) indices.push(index);
    }
    if (indices.length > 2) numbered.push(indices);
  }
  return { vertices, faces: numbered };
}
