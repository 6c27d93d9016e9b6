/** Which face of a breathing space lies on the fan that breathes through it. */
import type { BodyBox, PartModel } from '../parts/body';
import { FACE_NAMES } from '../space/face-names';
import { axisOfFace, type FaceName, faceCentre, faceNormal, type OrientedBox } from '../space/oriented-box';
import { rotateVector, transposeRotation } from '../space/rotation';
import { add, scale, subtract, type Vector3 } from '../space/vector';

export interface AirSide {
  /** Face of the space, by the space's own axes, that touches the part. */
  readonly face: FaceName;
  /** Depth of the space away from that face, mm. */
  readonly depth: number;
}

const known = new WeakMap<BodyBox, AirSide>();

/** How far behind the face the part's material may begin, mm: grilles and fans are set back a little. */
const SET_BACK_MM = 1;

/** The face most of which has the part's own solids behind it; the largest when none has. */
export function airSideOf(model: PartModel, space: BodyBox): AirSide {
  const seen = known.get(space);
  if (seen) return seen;
  const solids = model.boxes.filter((body) => body.role === 'solid').map((body) => body.box);
  let best: FaceName = FACE_NAMES[0] ?? '-x';
  let most = -1;
  for (const face of FACE_NAMES) {
    const backed = samplePoints(space.box, face).filter((point) => solids.some((box) => holds(box, point)));
    // Backing decides; among equals the larger face, which is the one across the shallower depth.
    const merit = backed.length + 1 / (1 + depthOf(space.box, face));
    if (merit > most) {
      most = merit;
      best = face;
    }
  }
  const side: AirSide = { face: best, depth: depthOf(space.box, best) };
  known.set(space, side);
  return side;
}

function depthOf(box: OrientedBox, face: FaceName): number {
  return 2 * halfAlong(box, face);
}

function halfAlong(box: OrientedBox, face: FaceName): number {
  const axis = axisOfFace(face);
  return box.half[axis === 'x' ? 0 : axis === 'y' ? 1 : 2];
}

/** Nine points spread over a face, a little outside it. */
function samplePoints(box: OrientedBox, face: FaceName): readonly Vector3[] {
  const outside = add(faceCentre(box, face), scale(faceNormal(box, face), SET_BACK_MM / 2));
  const across = (['+x', '+y', '+z'] as const).filter((name) => axisOfFace(name) !== axisOfFace(face));
  let points: readonly Vector3[] = [outside];
  for (const name of across) {
    const step = scale(faceNormal(box, name), halfAlong(box, name) / 2);
    points = points.flatMap((point) => [subtract(point, step), point, add(point, step)]);
  }
  return points;
}

function holds(box: OrientedBox, point: Vector3): boolean {
  const local = rotateVector(transposeRotation(box.rotation), subtract(point, box.centre));
  return local.every((coordinate, axis) => Math.abs(coordinate) <= (box.half[axis] ?? 0) + SET_BACK_MM / 2);
}
