/** The mount a unit's part sits on, as it stands in the world. */
import type { Foot, Mount } from '../../../parts/body';
import type { PlacedPart, Scene } from '../../../plan/scene';
import { axisOfRotation } from '../../../space/rotation';
import { compose, type RigidTransform, transformPoint } from '../../../space/transform';
import { distance, type Vector3 } from '../../../space/vector';

export interface PlacedSeat {
  readonly carrier: number;
  readonly mount: Mount;
  readonly foot: Foot;
  /** Mount frame in the world; its z points away from the carrier, into the guest. */
  readonly frame: RigidTransform;
  /** That z. */
  readonly away: Vector3;
}

export function seatOf(scene: Scene, part: PlacedPart): PlacedSeat | undefined {
  const { seat } = part;
  const carrier = seat === undefined ? undefined : scene.indexById.get(seat.on);
  const placed = carrier === undefined ? undefined : scene.parts[carrier];
  const mount = placed?.model.mounts.find((candidate) => candidate.id === seat?.mount);
  const foot = part.model.feet.find((candidate) => candidate.id === seat?.foot);
  if (carrier === undefined || !placed || !mount || !foot) return undefined;
  const frame = compose(placed.pose, mount.frame);
  return { carrier, mount, foot, frame, away: axisOfRotation(frame.rotation, 'z') };
}

/** Holes of the foot that lie on points of the mount, in the world; all holes where the mount has no points. */
export function heldHoles(part: PlacedPart, seat: PlacedSeat): readonly Vector3[] {
  const holes = (seat.foot.points ?? []).map(({ at }) =>
    transformPoint(part.pose, transformPoint(seat.foot.frame, [at[0], at[1], 0])),
  );
  const points = seat.mount.points?.map(({ at }) => transformPoint(seat.frame, [at[0], at[1], 0]));
  if (points === undefined) return holes;
  return holes.filter((hole) => points.some((point) => distance(hole, point) <= HOLE_MEETS_POINT_MM));
}

/** Holes this near count as meeting: screws have that much play. */
const HOLE_MEETS_POINT_MM = 1;
