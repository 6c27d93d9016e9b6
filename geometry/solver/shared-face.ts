/** The part of a face that another box's face stands in front of. */
import { axisOfFace, type FaceName, faceCentre, faceNormal, type OrientedBox } from '../space/oriented-box';
import { faceTowards } from '../space/separation';
import { add, dot, normalise, scale, subtract, type Vector3 } from '../space/vector';

/** Sine of the angle up to which a face counts as square to the direction. */
const SQUARE_SINE = 1e-9;

type Point = readonly [number, number];

/**
 * Middle of what the facing faces of two boxes share as seen along the unit direction from a to b, as a point on the
 * face of a; undefined when the faces are not square to the direction or share nothing.
 */
export function middleOfSharedFace(a: OrientedBox, b: OrientedBox, direction: Vector3): Vector3 | undefined {
  const faceA = faceTowards(a, direction, 1);
  const faceB = faceTowards(b, direction, -1);
  if (!isSquare(a, faceA, direction) || !isSquare(b, faceB, direction)) return undefined;
  const [nameU, nameV] = acrossOf(faceA);
  const u = faceNormal(a, nameU);
  const v = faceNormal(a, nameV);
  const origin = faceCentre(a, faceA);
  const flat = (corner: Vector3): Point => {
    const from = subtract(corner, origin);
    return [dot(from, u), dot(from, v)];
  };
  const [halfU, halfV] = [halfOf(a, nameU), halfOf(a, nameV)];
  let shared: readonly Point[] = cornersOfFace(b, faceB).map(flat);
  shared = cut(cut(shared, 0, halfU), 1, halfV);
  if (shared.length === 0) return undefined;
  const [meanU, meanV] = mean(shared);
  return add(origin, add(scale(u, meanU), scale(v, meanV)));
}

function isSquare(box: OrientedBox, face: FaceName, direction: Vector3): boolean {
  const normal = normalise(faceNormal(box, face));
  const along = scale(direction, dot(normal, direction));
  const off = subtract(normal, along);
  return dot(off, off) <= SQUARE_SINE * SQUARE_SINE;
}

function acrossOf(face: FaceName): readonly [FaceName, FaceName] {
  const axis = axisOfFace(face);
  if (axis === 'x') return ['+y', '+z'];
  return axis === 'y' ? ['+x', '+z'] : ['+x', '+y'];
}

function halfOf(box: OrientedBox, face: FaceName): number {
  const axis = axisOfFace(face);
  return box.half[axis === 'x' ? 0 : axis === 'y' ? 1 : 2];
}

/** The corners of a face in order round it. */
function cornersOfFace(box: OrientedBox, face: FaceName): readonly Vector3[] {
  const [nameU, nameV] = acrossOf(face);
  const u = scale(faceNormal(box, nameU), halfOf(box, nameU));
  const v = scale(faceNormal(box, nameV), halfOf(box, nameV));
  const centre = faceCentre(box, face);
  return [
    add(centre, add(u, v)),
    add(centre, subtract(v, u)),
    subtract(centre, add(u, v)),
    add(centre, subtract(u, v)),
  ];
}

/** Keeps what lies between plus and minus `half` on one axis (Sutherland and Hodgman, 1974). */
function cut(polygon: readonly Point[], axis: 0 | 1, half: number): readonly Point[] {
  return keepBelow(keepBelow(polygon, axis, 1, half), axis, -1, half);
}

function keepBelow(polygon: readonly Point[], axis: 0 | 1, sign: 1 | -1, limit: number): readonly Point[] {
  const kept: Point[] = [];
  polygon.forEach((point, index) => {
    const previous = polygon.at(index - 1) ?? point;
    const over = sign * point[axis] - limit;
    const before = sign * previous[axis] - limit;
    if (over > 0 !== before > 0) {
      const t = before / (before - over);
      kept.push([previous[0] + t * (point[0] - previous[0]), previous[1] + t * (point[1] - previous[1])]);
    }
    if (over <= 0) kept.push(point);
  });
  return kept;
}

function mean(points: readonly Point[]): Point {
  const sum = points.reduce<Point>((total, point) => [total[0] + point[0], total[1] + point[1]], [0, 0]);
  return [sum[0] / points.length, sum[1] / points.length];
}
