/** A plan opened for questions about its dimensions: placed, examined and solved once, its varied parts at hand. */
import type { PartModel } from '../../parts/body';
import { seatPose } from '../../plan/mounting';
import { placePlan } from '../../plan/place-plan';
import { isSeated, type Plan } from '../../plan/plan-schema';
import type { Scene } from '../../plan/scene';
import type { RigidTransform } from '../../space/transform';
import type { Vector3 } from '../../space/vector';
import { type ExaminedPart, examineParts } from '../examined-part';
import type { Solution } from '../finding';
import { createSolver } from '../solve';
import type { ChangedPart } from './changed-part';
import { type VariedPart, variedPart } from './varied-part';

export interface PlanStudy {
  readonly plan: Plan;
  readonly scene: Scene;
  readonly parts: readonly ExaminedPart[];
  readonly solution: Solution;
  /** The same questions about another plan, its parts called as they are here. */
  studyOfOther(plan: Plan): PlanStudy;
  varied(part: number): VariedPart;
  /** As the plan shifts the part on its mount, in the frame of the mount. */
  shiftOf(part: number): Vector3;
}

const studies = new WeakMap<Plan, PlanStudy>();

/** Opened once for each plan object. */
export function studyOf(plan: Plan): PlanStudy {
  const known = studies.get(plan);
  if (known) return known;
  const made = openStudy(plan);
  studies.set(plan, made);
  return made;
}

const NO_SHIFT: Vector3 = [0, 0, 0];

function openStudy(plan: Plan, labels?: ReadonlyMap<string, string>): PlanStudy {
  const placed = placePlan(plan);
  const scene = labels ? relabelled(placed, labels) : placed;
  const parts = examineParts(scene, []);
  const entries = scene.parts.map(({ id }) => plan.parts[id]);
  let solution: Solution | undefined;
  return {
    plan,
    scene,
    parts,
    get solution() {
      solution ??= createSolver().solve(scene);
      return solution;
    },
    studyOfOther(other) {
      return openStudy(other, labels ?? new Map(scene.parts.map(({ id, label }) => [id, label])));
    },
    varied(part) {
      const entry = entries[part];
      if (!entry) throw new RangeError(`the plan has no part number ${part}`);
      return variedPart(entry.spec, entry.adjust);
    },
    shiftOf(part) {
      const placement = entries[part]?.placement;
      return (placement && isSeated(placement) && placement.shift) || NO_SHIFT;
    },
  };
}

/** Another part more or less must not turn 'Card' into 'Card 1'. */
function relabelled(scene: Scene, labels: ReadonlyMap<string, string>): Scene {
  return {
    ...scene,
    parts: scene.parts.map((part) => ({ ...part, label: labels.get(part.id) ?? part.label })),
  };
}

export function partAt(study: PlanStudy, index: number): ExaminedPart {
  const part = study.parts[index];
  if (!part) throw new RangeError(`the plan has no part number ${index}`);
  return part;
}

/** Changed parts by their number. */
export type Changes = ReadonlyMap<number, ChangedPart>;

/**
 * Pose of a part in the world when some parts have changed. `pivot` is a carrier that is held where it is: what
 * happens below it does not matter.
 */
export function poseWith(
  study: PlanStudy,
  index: number,
  changes: Changes,
  pivot: number | undefined,
): RigidTransform {
  const { placed, chain } = partAt(study, index);
  const carrier = chain[0]?.carrier;
  if (index === pivot || !placed.seat || carrier === undefined) return placed.pose;
  const mount = framed(
    partAt(study, carrier).placed.model.mounts,
    placed.seat.mount,
    changes.get(carrier)?.mounts,
  );
  const foot = framed(placed.model.feet, placed.seat.foot, changes.get(index)?.feet);
  if (!mount || !foot) return placed.pose;
  const below = poseWith(study, carrier, changes, pivot);
  return seatPose(below, mount, foot, placed.seat.turn, study.shiftOf(index));
}

function framed<T extends PartModel['mounts'][number] | PartModel['feet'][number]>(
  all: readonly T[],
  id: string,
  moved: ReadonlyMap<string, RigidTransform> | undefined,
): T | undefined {
  const standing = all.find((entry) => entry.id === id);
  const frame = moved?.get(id);
  return standing && frame ? { ...standing, frame } : standing;
}
