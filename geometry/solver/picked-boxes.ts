/** Which boxes of a part a rule means, looked up once for each model and part. */
import type { PartModel } from '../parts/body';
import { type ClearanceRule, picksBox } from './clearance-rule';
import type { ExaminedPart } from './examined-part';

type Picked = Map<ClearanceRule, { from?: readonly number[]; to?: readonly number[] }>;

const byModel = new WeakMap<PartModel, Picked>();
const byPart = new WeakMap<ExaminedPart, Picked>();

/** Numbers into `Scene.boxes` of the boxes that the rule measures from or to. */
export function boxesPicked(part: ExaminedPart, rule: ClearanceRule, side: 'from' | 'to'): readonly number[] {
  return remembered(byPart, part, rule, side, () => {
    const { firstBox, model } = part.placed;
    return localPicks(model, rule, side).map((box) => firstBox + box);
  });
}

/** The same as indices into `model.boxes`. */
function localPicks(model: PartModel, rule: ClearanceRule, side: 'from' | 'to'): readonly number[] {
  return remembered(byModel, model, rule, side, () =>
    model.boxes.flatMap((body, index) => (picksBox(rule[side], body) ? [index] : [])),
  );
}

function remembered<Key extends object>(
  memory: WeakMap<Key, Picked>,
  key: Key,
  rule: ClearanceRule,
  side: 'from' | 'to',
  pick: () => readonly number[],
): readonly number[] {
  const rules: Picked = memory.get(key) ?? new Map();
  memory.set(key, rules);
  const sides = rules.get(rule) ?? {};
  rules.set(rule, sides);
  sides[side] ??= pick();
  return sides[side];
}
