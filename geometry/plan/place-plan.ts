/** From the document to the placed scene: walks the mounting tree and lays every foot on its mount. */
import type { AdjustmentValues, Foot, Mount, PartModel } from '../parts/body';
import { buildPart } from '../parts/build-part';
import type { PartSpec } from '../parts/part-spec';
import { transformBox } from '../space/oriented-box';
import { PackedBoxes } from '../space/packed-boxes';
import { rotationFromDegrees } from '../space/rotation';
import { identityTransform, type RigidTransform } from '../space/transform';
import { feetFor, footFits, holesHold, seatPose } from './mounting';
import { partLabels } from './part-labels';
import { isSeated, type Placement, type Plan, type SeatedPlacement } from './plan-schema';
import type { PlacedPart, PlacementProblem, Scene, SceneBox, Seat } from './scene';

/**
 * Places every part. Never throws for a valid plan: a part whose place cannot be found stands at the world origin (or
 * on its mount, when only the fit is wrong) and the scene's `problems` say why. Bodies are remembered by spec and
 * adjustment object, so that an edit to one part builds one body.
 */
export function placePlan(plan: Plan): Scene {
  const placer = new Placer(plan);
  const labels = partLabels(plan);
  const parts: PlacedPart[] = [];
  const boxes: SceneBox[] = [];
  for (const [id, part] of Object.entries(plan.parts)) {
    const { pose, seat, model } = placer.place(id);
    const index = parts.length;
    parts.push({
      id,
      kind: part.spec.kind,
      label: labels.get(id) ?? id,
      spec: part.spec,
      model,
      pose,
      firstBox: boxes.length,
      ...(seat ? { seat } : {}),
      ...(part.adjust ? { adjust: part.adjust } : {}),
    });
    for (const body of model.boxes) boxes.push({ part: index, body, box: transformBox(pose, body.box) });
  }
  return {
    parts,
    indexById: new Map(parts.map((part, index) => [part.id, index])),
    boxes,
    packed: PackedBoxes.from(boxes.map((entry) => entry.box)),
    problems: placer.problems,
    wantedGaps: plan.gaps ?? {},
  };
}

const NO_ADJUSTMENT: AdjustmentValues = {};
const models = new WeakMap<PartSpec, WeakMap<AdjustmentValues, PartModel>>();

/** The body of a spec, built once for each spec and adjustment object. */
export function modelOf(spec: PartSpec, adjust: AdjustmentValues = NO_ADJUSTMENT): PartModel {
  const bySpec = models.get(spec) ?? new WeakMap<AdjustmentValues, PartModel>();
  models.set(spec, bySpec);
  const known = bySpec.get(adjust);
  if (known) return known;
  const model = buildPart(spec, adjust);
  bySpec.set(adjust, model);
  return model;
}

interface Place {
  readonly model: PartModel;
  readonly pose: RigidTransform;
  readonly seat?: Seat;
}

class Placer {
  readonly problems: PlacementProblem[] = [];
  private readonly plan: Plan;
  private readonly done = new Map<string, Place>();
  private readonly underWay = new Set<string>();
  private readonly taken = new Map<string, string>();

  constructor(plan: Plan) {
    this.plan = plan;
  }

  place(id: string): Place {
    const known = this.done.get(id);
    if (known) return known;
    const part = this.plan.parts[id];
    if (!part) throw new RangeError(`the plan has no part ${id}`);
    const model = modelOf(part.spec, part.adjust);
    this.underWay.add(id);
    const place = { model, ...this.poseOf(id, model, part.placement) };
    this.underWay.delete(id);
    this.done.set(id, place);
    return place;
  }

  private poseOf(id: string, model: PartModel, placement: Placement): { pose: RigidTransform; seat?: Seat } {
    if (isSeated(placement)) return this.seat(id, model, placement);
    return {
      pose: { rotation: rotationFromDegrees(placement.rotate ?? [0, 0, 0]), translation: placement.at },
    };
  }

  private seat(
    id: string,
    model: PartModel,
    placement: SeatedPlacement,
  ): { pose: RigidTransform; seat?: Seat } {
    const { on, mount: mountId, turn = 0, shift = [0, 0, 0] } = placement;
    const fail = (kind: PlacementProblem['kind']) => {
      this.problems.push({ kind, part: id, on, mount: mountId });
    };
    if (this.plan.parts[on] === undefined) {
      fail('carrier missing');
      return { pose: identityTransform };
    }
    if (this.underWay.has(on)) {
      fail('carried in a circle');
      return { pose: identityTransform };
    }
    const carrier = this.place(on);
    const mount = carrier.model.mounts.find((candidate) => candidate.id === mountId);
    const foot = chooseFoot(model, mount, placement.foot);
    if (!mount || !foot) {
      fail(mount ? 'foot does not fit' : 'mount missing');
      return { pose: carrier.pose };
    }
    if (!mount.patterns.includes(foot.pattern)) fail('foot does not fit');
    else if (!holesHold(mount, foot, turn, shift)) fail('holes do not meet');
    if (!(mount.turns ?? [0]).includes(((turn % 360) + 360) % 360)) fail('turn not allowed');
    const key = `${on}/${mountId}`;
    if (this.taken.has(key)) fail('mount taken');
    else this.taken.set(key, id);
    return {
      pose: seatPose(carrier.pose, mount, foot, turn, shift),
      seat: { on, mount: mountId, foot: foot.id, turn },
    };
  }
}

/** The foot asked for; else the first that fits the mount; else the first of all. */
function chooseFoot(
  model: PartModel,
  mount: Mount | undefined,
  wanted: string | undefined,
): Foot | undefined {
  if (wanted !== undefined) return model.feet.find((foot) => foot.id === wanted);
  const fitting = mount && feetFor(mount, model.feet).find((foot) => footFits(mount, foot));
  return fitting ?? model.feet[0];
}
