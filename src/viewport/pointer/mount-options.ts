/** The places that take a part in the hand, one for each mount. */
import {
  type AdjustmentValues,
  boundsOfBoxes,
  findMounts,
  type MountCandidate,
  type PartModel,
  type PartSpec,
  type RigidTransform,
  type Scene,
  type SeatedPlacement,
  transformPoint,
  type Vector3,
} from '../../../geometry';
import { boxEdges, type Segment } from '../drawing/box-outline';

export interface MountOption {
  readonly key: string;
  readonly candidate: MountCandidate;
  /** Middle of the part once seated, in the world. */
  readonly middle: Vector3;
  /** Frame round the part once seated. */
  readonly frame: readonly Segment[];
}

/** Middle and half size of a part's solid boxes in its own frame, mm. */
export function solidBounds(model: PartModel): { readonly centre: Vector3; readonly half: Vector3 } {
  const solids = model.boxes.filter((body) => body.role === 'solid').map((body) => body.box);
  const bounds = boundsOfBoxes(solids) ?? { min: [-5, -5, -5], max: [5, 5, 5] };
  const { min, max } = bounds;
  return {
    centre: [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, (min[2] + max[2]) / 2],
    half: [(max[0] - min[0]) / 2, (max[1] - min[1]) / 2, (max[2] - min[2]) / 2],
  };
}

export function frameAt(model: PartModel, pose: RigidTransform): readonly Segment[] {
  const { centre, half } = solidBounds(model);
  return boxEdges({ centre: transformPoint(pose, centre), half, rotation: pose.rotation });
}

/** What looks for a mount: its body as adjusted, and where it stands now when it is in the plan already. */
export interface MountedPart {
  readonly spec: PartSpec;
  readonly model: PartModel;
  readonly id?: string;
  readonly foot?: string | undefined;
  readonly adjust?: AdjustmentValues | undefined;
}

/**
 * Mounts that take the part. Of several feet that fit one mount, the one the part stands on now is kept. `mayReplace`
 * says which taken mounts count too.
 */
export function mountOptions(
  scene: Scene,
  part: MountedPart,
  mayReplace: (occupant: string, placement: SeatedPlacement) => boolean,
): readonly MountOption[] {
  const options = new Map<string, MountOption>();
  const { centre } = solidBounds(part.model);
  for (const candidate of findMounts(scene, part.spec, part.id, part.adjust)) {
    if (candidate.takenBy !== undefined && !mayReplace(candidate.takenBy, candidate.placement)) continue;
    const key = `${candidate.placement.on}/${candidate.placement.mount}`;
    const better = candidate.placement.foot === part.foot;
    if (options.has(key) && !better) continue;
    options.set(key, {
      key,
      candidate,
      middle: transformPoint(candidate.pose, centre),
      frame: frameAt(part.model, candidate.pose),
    });
  }
  return [...options.values()];
}
