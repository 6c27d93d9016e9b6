/** Small helpers to seat parts and to measure openings along a line. */
import type { PartModel } from '../../../geometry/parts/body';
import { seatPose } from '../../../geometry/plan/mounting';
import { boundsOfBox, type OrientedBox, transformBox } from '../../../geometry/space/oriented-box';
import { separateBoxes } from '../../../geometry/space/separation';
import { CONTACT_TOLERANCE_MM } from '../../../geometry/space/tolerance';
import { identityTransform, type RigidTransform } from '../../../geometry/space/transform';
import type { Vector3 } from '../../../geometry/space/vector';

export interface Placed {
  readonly model: PartModel;
  readonly pose: RigidTransform;
  readonly mount?: string;
}

export function standing(model: PartModel): Placed {
  return { model, pose: identityTransform };
}

export function seat(model: PartModel, on: Placed, mountId: string): Placed {
  const mount = on.model.mounts.find((candidate) => candidate.id === mountId);
  const foot = model.feet.find((candidate) => mount?.patterns.includes(candidate.pattern));
  if (!mount || !foot) throw new Error(`nothing goes on ${mountId}`);
  return { model, pose: seatPose(on.pose, mount, foot), mount: mountId };
}

/** Overlapping solids of a guest and what it stands on, less what its engaging boxes may enter. */
export function clashes(guest: Placed, other: Placed): string[] {
  const solids = (placed: Placed) =>
    placed.model.boxes
      .filter((body) => body.role === 'solid')
      .map((body) => ({ body, box: transformBox(placed.pose, body.box) }));
  return solids(guest).flatMap((a) =>
    solids(other)
      .filter((b) => !(a.body.engages && guest.mount && b.body.receives?.includes(guest.mount)))
      .filter((b) => separateBoxes(a.box, b.box).distance < -CONTACT_TOLERANCE_MM)
      .map((b) => `${a.body.name} / ${b.body.name}`),
  );
}

/** The stretch of a line through `point` along an axis that no solid box takes; infinite ends where nothing stands. */
export function freeStretch(model: PartModel, point: Vector3, axis: 0 | 1 | 2): readonly [number, number] {
  let [low, high] = [-Infinity, Infinity];
  for (const body of model.boxes) {
    if (body.role !== 'solid') continue;
    const { min, max } = boundsOfBox(body.box);
    const beside = ([0, 1, 2] as const).some(
      (other) => other !== axis && (point[other] <= min[other] || point[other] >= max[other]),
    );
    if (beside) continue;
    if (point[axis] > min[axis] && point[axis] < max[axis]) return [point[axis], point[axis]];
    if (max[axis] <= point[axis]) low = Math.max(low, max[axis]);
    if (min[axis] >= point[axis]) high = Math.min(high, min[axis]);
  }
  return [low, high];
}

export function isInSolid(model: PartModel, point: Vector3): boolean {
  return model.boxes.some((body) => body.role === 'solid' && contains(body.box, point));
}

function contains(box: OrientedBox, point: Vector3): boolean {
  const { min, max } = boundsOfBox(box);
  return ([0, 1, 2] as const).every((axis) => point[axis] > min[axis] && point[axis] < max[axis]);
}
