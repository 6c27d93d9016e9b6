/** A placed scene with one dimension of one part at any value. */
import { buildPart } from '../../parts/build-part';
import { withDimension } from '../../parts/stated-dimensions/change-dimension';
import { dimensionAt } from '../../parts/stated-dimensions/stated-dimensions';
import { carriedBy } from '../../plan/find-mounts';
import type { Plan, PlanPart } from '../../plan/plan-schema';
import { type OrientedBox, transformBox } from '../../space/oriented-box';
import { PackedBoxes } from '../../space/packed-boxes';
import { identityRotation } from '../../space/rotation';
import { compareModels } from '../stack-up/changed-part';
import { type PlanStudy, partAt, poseWith } from '../stack-up/plan-study';

export interface SceneAtValue {
  /** All boxes, in the order of the scene. */
  readonly packed: PackedBoxes;
  /** Pieces came or went: the boxes do not stand for the whole body any more. */
  readonly isRebuilt: boolean;
}

export interface VariedScene {
  readonly study: PlanStudy;
  readonly part: number;
  readonly path: string;
  /** As the plan states it, mm. */
  readonly standing: number;
  /** The part and all that it carries. */
  readonly changing: ReadonlySet<number>;
  at(value: number): SceneAtValue;
  /** The plan placed anew with the value, for where the body is built another way. */
  reopenedAt(value: number): VariedScene;
}

/** Throws RangeError when the plan has no such part or the part no such dimension. */
export function variedScene(study: PlanStudy, id: string, path: string): VariedScene {
  const part = study.scene.indexById.get(id);
  const entry = study.plan.parts[id];
  if (part === undefined || !entry) throw new RangeError(`the plan has no part ${id}`);
  const standing = dimensionAt(entry.spec, path).nominal;
  const changing = new Set(
    [...carriedBy(study.scene, id)].flatMap((carried) => study.scene.indexById.get(carried) ?? []),
  );
  const known = new Map<number, SceneAtValue>();
  const reopened = new Map<number, VariedScene>();
  return {
    study,
    part,
    path,
    standing,
    changing,
    at(value) {
      const before = known.get(value);
      if (before) return before;
      const made =
        value === standing
          ? { packed: study.scene.packed, isRebuilt: false }
          : sceneAt(study, part, entry, { path, value }, changing);
      known.set(value, made);
      return made;
    },
    reopenedAt(value) {
      const before = reopened.get(value);
      if (before) return before;
      const made = variedScene(study.studyOfOther(planAtValue(study.plan, id, path, value)), id, path);
      reopened.set(value, made);
      return made;
    },
  };
}

function sceneAt(
  study: PlanStudy,
  part: number,
  entry: PlanPart,
  { path, value }: { readonly path: string; readonly value: number },
  changing: ReadonlySet<number>,
): SceneAtValue {
  const { scene } = study;
  const packed = new PackedBoxes(scene.packed.count);
  packed.shapes.set(scene.packed.shapes);
  packed.bounds.set(scene.packed.bounds);
  packed.aligned.set(scene.packed.aligned);
  const model = buildPart(withDimension(entry.spec, path, value), entry.adjust);
  const change = compareModels(partAt(study, part).placed.model, model);
  const changes = new Map([[part, change]]);
  for (const index of changing) {
    const { placed } = partAt(study, index);
    const pose = poseWith(study, index, changes, undefined);
    placed.model.boxes.forEach((body, local) => {
      const isChanged = index === part && change.boxes.has(local);
      const now = isChanged ? change.boxes.get(local) : body;
      packed.setBox(placed.firstBox + local, now ? transformBox(pose, now.box) : GONE);
    });
  }
  return { packed, isRebuilt: change.rebuilt.size > 0 };
}

/** A piece that is not there any more is out of everybody's way. */
const GONE: OrientedBox = { centre: [0, 1e6, 0], half: [0, 0, 0], rotation: identityRotation };

/** The same plan with the value written into its sheet. */
export function planAtValue(plan: Plan, id: string, path: string, value: number): Plan {
  const entry = plan.parts[id];
  if (!entry) throw new RangeError(`the plan has no part ${id}`);
  return {
    ...plan,
    parts: { ...plan.parts, [id]: { ...entry, spec: withDimension(entry.spec, path, value) } },
  };
}
