/** The boxes of a leg in the world, as they stand and as they would stand with changed parts. */
import { transformBox } from '../../space/oriented-box';
import { PackedBoxes } from '../../space/packed-boxes';
import type { RigidTransform } from '../../space/transform';
import type { Leg } from './clearance-legs';
import { type Changes, type PlanStudy, partAt, poseWith } from './plan-study';

export interface LegBodies {
  readonly leg: Leg;
  /** Boxes of `from`, then boxes of `to`, in the order of the leg. */
  readonly standing: PackedBoxes;
  with(changes: Changes): PackedBoxes;
}

export function legBodies(study: PlanStudy, leg: Leg): LegBodies {
  const { boxes } = study.scene;
  const standing = PackedBoxes.from(
    [...leg.fromBoxes, ...leg.toBoxes].map((number) => {
      const entry = boxes[number];
      if (!entry) throw new RangeError(`no box has number ${number}`);
      return entry.box;
    }),
  );
  return { leg, standing, with: (changes) => changedBoxes(study, leg, standing, changes) };
}

function changedBoxes(study: PlanStudy, leg: Leg, standing: PackedBoxes, changes: Changes): PackedBoxes {
  const packed = new PackedBoxes(standing.count);
  packed.shapes.set(standing.shapes);
  packed.bounds.set(standing.bounds);
  packed.aligned.set(standing.aligned);
  for (const [part, numbers, first] of [
    [leg.from, leg.fromBoxes, 0],
    [leg.to, leg.toBoxes, leg.fromBoxes.length],
  ] as const) {
    const { placed } = partAt(study, part);
    const moved = changes.get(part)?.boxes;
    const pose = poseWith(study, part, changes, leg.pivot);
    const hasMoved = !samePlace(pose, placed.pose);
    if (!hasMoved && !moved) continue;
    numbers.forEach((number, index) => {
      const local = number - placed.firstBox;
      if (!hasMoved && !moved?.has(local)) return;
      // A box that is no longer there is held where it was; the change says that the body is built another way.
      const body = moved?.get(local) ?? placed.model.boxes[local];
      if (body) packed.setBox(first + index, transformBox(pose, body.box));
    });
  }
  return packed;
}

function samePlace(a: RigidTransform, b: RigidTransform): boolean {
  return (
    a === b ||
    (a.translation.every((entry, index) => entry === b.translation[index]) &&
      a.rotation.every((entry, index) => entry === b.rotation[index]))
  );
}
