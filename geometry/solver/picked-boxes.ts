/** Which boxes of a part a rule means, looked up once for each model. */
import type { PartModel } from '../parts/body';
import { picksBox } from './clearance-rule';
import { clearanceRules } from './clearance-rules';
import type { ExaminedPart } from './examined-part';

interface PickedByRule {
  readonly from: readonly (readonly number[])[];
  readonly to: readonly (readonly number[])[];
}

const byModel = new WeakMap<PartModel, PickedByRule>();
const byPart = new WeakMap<ExaminedPart, PickedByRule>();

/** Numbers into `Scene.boxes` of the boxes that rule number `rule` measures from or to. */
export function boxesPicked(part: ExaminedPart, rule: number, side: 'from' | 'to'): readonly number[] {
  return pickedOf(part)[side][rule] ?? [];
}

function pickedOf(part: ExaminedPart): PickedByRule {
  const known = byPart.get(part);
  if (known) return known;
  const { firstBox, model } = part.placed;
  const local = localPicks(model);
  const shift = (lists: readonly (readonly number[])[]) =>
    lists.map((list) => list.map((box) => firstBox + box));
  const picked = { from: shift(local.from), to: shift(local.to) };
  byPart.set(part, picked);
  return picked;
}

function localPicks(model: PartModel): PickedByRule {
  const known = byModel.get(model);
  if (known) return known;
  const pick = (side: 'from' | 'to') =>
    clearanceRules.map((rule) =>
      model.boxes.flatMap((body, index) => (picksBox(rule[side], body) ? [index] : [])),
    );
  const picks = { from: pick('from'), to: pick('to') };
  byModel.set(model, picks);
  return picks;
}
