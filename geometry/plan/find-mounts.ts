/** Where a part could go in a placed scene. */
import type { AdjustmentValues } from '../parts/body';
import type { PartSpec } from '../parts/part-spec';
import type { RigidTransform } from '../space/transform';
import { feetFor, footFits, seatPose } from './mounting';
import { modelOf } from './place-plan';
import type { SeatedPlacement } from './plan-schema';
import type { Scene } from './scene';

export interface MountCandidate {
  readonly placement: SeatedPlacement;
  /** 'Slot 2 on Board' */
  readonly label: string;
  /** World pose of the part once seated there. */
  readonly pose: RigidTransform;
  /** Id of the part that sits there now, if any. */
  readonly takenBy?: string;
}

/**
 * Every mount of the scene that takes the part, in the order of the scene, one entry for each foot that fits.
 * `moving` is the part being moved: its own mounts, and those of everything it carries, are left out, and the mount it
 * sits on counts as free.
 */
export function findMounts(
  scene: Scene,
  spec: PartSpec,
  moving?: string,
  adjust?: AdjustmentValues,
): readonly MountCandidate[] {
  const model = modelOf(spec, adjust);
  const carried = moving === undefined ? new Set<string>() : carriedBy(scene, moving);
  const taken = new Map(
    scene.parts.flatMap((part) =>
      part.seat && part.id !== moving ? [[`${part.seat.on}/${part.seat.mount}`, part.id]] : [],
    ),
  );
  const candidates: MountCandidate[] = [];
  for (const carrier of scene.parts) {
    if (carried.has(carrier.id)) continue;
    for (const mount of carrier.model.mounts) {
      const takenBy = taken.get(`${carrier.id}/${mount.id}`);
      for (const foot of feetFor(mount, model.feet)) {
        const turn = (mount.turns ?? [0]).find((allowed) => footFits(mount, foot, allowed));
        if (turn === undefined) continue;
        candidates.push({
          placement: { on: carrier.id, mount: mount.id, foot: foot.id, ...(turn === 0 ? {} : { turn }) },
          label: `${mount.label} on ${carrier.label}`,
          pose: seatPose(carrier.pose, mount, foot, turn),
          ...(takenBy === undefined ? {} : { takenBy }),
        });
      }
    }
  }
  return candidates;
}

/** The part and everything mounted on it, directly or not. */
export function carriedBy(scene: Scene, id: string): ReadonlySet<string> {
  const carried = new Set([id]);
  let grew = true;
  while (grew) {
    grew = false;
    for (const part of scene.parts) {
      if (part.seat && carried.has(part.seat.on) && !carried.has(part.id)) {
        carried.add(part.id);
        grew = true;
      }
    }
  }
  return carried;
}
