/** What must hold between a part that changes and all others: wanted gaps along their rules, and nothing in one place. */
import type { Material } from '../../parts/body';
import type { Vector3 } from '../../space/vector';
import type { ClearanceRule } from '../clearance-rule';
import { clearanceRules } from '../clearance-rules';
import type { ExaminedPart } from '../examined-part';
import { applies } from '../measure-clearances';
import { boxesMeant } from '../picked-boxes';
import { directionsOf } from '../rule-directions';
import type { PlanStudy } from '../stack-up/plan-study';
import { RESIZED } from './motion';

/** Between boxes of two parts; numbers into `Scene.boxes`. */
export interface Constraint {
  readonly fromPart: number;
  readonly toPart: number;
  readonly fromBoxes: readonly number[];
  readonly toBoxes: readonly number[];
  /** The rule whose gap is to be kept along its directions; absent where the boxes must only not overlap. */
  readonly gap?: { readonly rule: ClearanceRule; readonly directions: readonly Vector3[] };
}

/** Between all parts that move against each other; `movesLike` gives each box its class of motion. */
export function constraintsOn(study: PlanStudy, movesLike: Int32Array): readonly Constraint[] {
  const classes = study.parts.map((part) => motionOfPart(part, movesLike));
  const found: Constraint[] = [];
  for (const first of study.parts) {
    for (const second of study.parts) {
      if (first === second) continue;
      const motion = classes[first.index];
      if (motion !== RESIZED && motion === classes[second.index]) continue;
      found.push(...gapsBetween(study, first, second), ...spacesKept(study, first, second));
      if (first.index < second.index) found.push(...solidsApart(study, first, second));
    }
  }
  return found;
}

/** The class that all boxes of a part share; `RESIZED` when they do not move as one. */
function motionOfPart({ placed }: ExaminedPart, movesLike: Int32Array): number {
  const end = placed.firstBox + placed.model.boxes.length;
  const [first = RESIZED, ...others] = movesLike.subarray(placed.firstBox, end);
  return others.every((motion) => motion === first) ? first : RESIZED;
}

function gapsBetween(study: PlanStudy, first: ExaminedPart, second: ExaminedPart): readonly Constraint[] {
  const { scene } = study;
  return clearanceRules.flatMap((rule) => {
    if (!rule.from.kinds.includes(first.placed.kind) || !rule.to.kinds.includes(second.placed.kind))
      return [];
    if (!applies(scene, rule, first, second)) return [];
    const directions = directionsOf(rule, first);
    const fromBoxes = boxesMeant(scene, first, rule, 'from', directions);
    const toBoxes = boxesMeant(scene, second, rule, 'to', directions);
    if (fromBoxes.length === 0 || toBoxes.length === 0) return [];
    return [{ fromPart: first.index, toPart: second.index, fromBoxes, toBoxes, gap: { rule, directions } }];
  });
}

/** Spaces without which the machine does not run, against the solids of others. */
function spacesKept(study: PlanStudy, owner: ExaminedPart, other: ExaminedPart): readonly Constraint[] {
  const { features } = owner.placed.model;
  const needed = new Set(features.flatMap((feature) => (feature.required ? feature.use : [])));
  if (needed.size === 0) return [];
  const spaces = owner.reserved.filter((box) => needed.has(study.scene.boxes[box]?.body.name ?? ''));
  return [{ fromPart: owner.index, toPart: other.index, fromBoxes: spaces, toBoxes: other.solids }];
}

/** Hardware that engages may enter what is made to receive it. */
function solidsApart(study: PlanStudy, first: ExaminedPart, second: ExaminedPart): readonly Constraint[] {
  const parts = { fromPart: first.index, toPart: second.index };
  const whole = { ...parts, fromBoxes: first.solids, toBoxes: second.solids };
  for (const [guest, carrier] of [
    [first, second],
    [second, first],
  ] as const) {
    const link = guest.chain[0];
    if (link?.carrier !== carrier.index || guest.engaging.length === 0) continue;
    const around = carrier.solids.filter(
      (box) => !study.scene.boxes[box]?.body.receives?.includes(link.mount.id),
    );
    const outside = guest.solids.filter((box) => !guest.engaging.includes(box));
    return guest === first
      ? [
          { ...parts, fromBoxes: outside, toBoxes: carrier.solids },
          { ...parts, fromBoxes: guest.engaging, toBoxes: around },
        ]
      : [
          { ...parts, fromBoxes: carrier.solids, toBoxes: outside },
          { ...parts, fromBoxes: around, toBoxes: guest.engaging },
        ];
  }
  return [whole];
}

/** Gap the rule wants to this box, mm; 0 where only overlap is forbidden. */
export function wantedOf(study: PlanStudy, constraint: Constraint, toBox: number): number {
  const rule = constraint.gap?.rule;
  if (!rule) return 0;
  const material: Material | undefined = study.scene.boxes[toBox]?.body.material;
  const usual = material === 'glass' ? rule.wanted.toGlass : undefined;
  return study.scene.wantedGaps[rule.id] ?? usual ?? rule.wanted.millimetres;
}
