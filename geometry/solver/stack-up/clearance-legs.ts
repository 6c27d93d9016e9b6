/** A clearance taken apart: from which boxes to which, along what, and by which parts it can change. */

import type { Vector3 } from '../../space/vector';
import type { ClearanceRule } from '../clearance-rule';
import { clearanceRules } from '../clearance-rules';
import type { Clearance } from '../finding';
import { applies } from '../measure-clearances';
import { boxesMeant } from '../picked-boxes';
import { directionsOf } from '../rule-directions';
import type { Touched } from './changed-part';
import { type PlanStudy, partAt } from './plan-study';

/** One part held against another. Boxes are numbers into `Scene.boxes`. */
export interface Leg {
  readonly from: number;
  readonly to: number;
  readonly fromBoxes: readonly number[];
  readonly toBoxes: readonly number[];
  /** The nearest carrier of both, which may be one of the two; what is below it moves both alike. */
  readonly pivot: number | undefined;
  /** By part: what of it can change this leg. */
  readonly matters: ReadonlyMap<number, Touched>;
}

export interface ClearanceLegs {
  readonly directions: readonly Vector3[];
  /** Several for 'whatever is in front': the least of them counts. */
  readonly legs: readonly Leg[];
}

const rulesById = new Map(clearanceRules.map((rule) => [rule.id, rule]));

/** Throws RangeError for a clearance of no known rule, or of parts that are not in the plan. */
export function legsOfClearance(study: PlanStudy, clearance: Clearance): ClearanceLegs {
  const rule = rulesById.get(clearance.rule);
  const from = study.scene.indexById.get(clearance.parts[0]);
  const to = study.scene.indexById.get(clearance.parts[1]);
  if (!rule || from === undefined || to === undefined)
    throw new RangeError(`no rule measures the clearance ${clearance.id} in this plan`);
  const directions = directionsOf(rule, partAt(study, from));
  const others = rule.nearestOnly ? study.parts.map((_, index) => index) : [to];
  const legs = others.flatMap((other) => {
    const leg = other === from ? undefined : legOfRule(study, rule, from, other, directions);
    return leg ? [leg] : [];
  });
  return { directions, legs };
}

function legOfRule(
  study: PlanStudy,
  rule: ClearanceRule,
  from: number,
  to: number,
  directions: readonly Vector3[],
): Leg | undefined {
  const { scene } = study;
  const [first, second] = [partAt(study, from), partAt(study, to)];
  if (!rule.from.kinds.includes(first.placed.kind) || !rule.to.kinds.includes(second.placed.kind))
    return undefined;
  if (!applies(scene, rule, first, second)) return undefined;
  const fromBoxes = boxesMeant(scene, first, rule, 'from', directions);
  const toBoxes = boxesMeant(scene, second, rule, 'to', directions);
  if (fromBoxes.length === 0 || toBoxes.length === 0) return undefined;
  return makeLeg(study, from, to, fromBoxes, toBoxes);
}

/** A leg between given boxes of two different parts. */
export function makeLeg(
  study: PlanStudy,
  from: number,
  to: number,
  fromBoxes: readonly number[],
  toBoxes: readonly number[],
): Leg {
  const pivot = sharedCarrier(study, from, to);
  const matters = new Map<number, Mattering>();
  const of = (part: number): Mattering => {
    const known = matters.get(part) ?? { boxes: new Set(), mounts: new Set(), feet: new Set() };
    matters.set(part, known);
    return known;
  };
  for (const [part, boxes] of [
    [from, fromBoxes],
    [to, toBoxes],
  ] as const) {
    const { firstBox } = partAt(study, part).placed;
    for (const box of boxes) of(part).boxes.add(box - firstBox);
    for (let step = part; step !== pivot; ) {
      const { placed, chain } = partAt(study, step);
      const carrier = chain[0]?.carrier;
      if (carrier === undefined || !placed.seat) break;
      of(step).feet.add(placed.seat.foot);
      of(carrier).mounts.add(placed.seat.mount);
      step = carrier;
    }
  }
  return { from, to, fromBoxes, toBoxes, pivot, matters };
}

interface Mattering {
  readonly boxes: Set<number>;
  readonly mounts: Set<string>;
  readonly feet: Set<string>;
}

function sharedCarrier(study: PlanStudy, from: number, to: number): number | undefined {
  const carriers = (part: number): readonly number[] => [
    part,
    ...partAt(study, part).chain.map((link) => link.carrier),
  ];
  const ofTo = new Set(carriers(to));
  return carriers(from).find((part) => ofTo.has(part));
}
