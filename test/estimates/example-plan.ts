import { readFileSync } from 'node:fs';
import { placePlan } from '../../geometry/plan/place-plan';
import type { Plan } from '../../geometry/plan/plan-schema';
import { readPlanValue } from '../../geometry/plan/read-plan';
import type { Scene } from '../../geometry/plan/scene';

export interface PlacedPlan {
  readonly plan: Plan;
  readonly scene: Scene;
}

type Changed = (
  parts: Record<string, { spec: Record<string, unknown>; placement: unknown }>,
  plan: Record<string, unknown>,
) => void;

/** One of the example plans, changed before it is read; what the schema refuses throws. */
export function examplePlan(
  name: 'demo' | 'faults' | 'small',
  change: Changed = () => undefined,
): PlacedPlan {
  const text = readFileSync(new URL(`../../public/plans/${name}.json`, import.meta.url), 'utf8');
  const value = JSON.parse(text) as Record<string, unknown>;
  change(value.parts as Parameters<Changed>[0], value);
  const read = readPlanValue(value);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return { plan: read.plan, scene: placePlan(read.plan) };
}

/**
 * The machine that builders' common practice speaks of, in the demo's enclosure: a six-core processor of the 105 W
 * class, a twin-tower cooler of 120 mm fans, a card of 260 W fed by two 8-pin plugs, an 850 W supply, a room of 22 deg C.
 * Nothing about power or heat is stated beyond that.
 */
export function commonPracticePlan(): PlacedPlan {
  return examplePlan('demo', (parts, plan) => {
    const spec = (id: string) => parts[id]?.spec ?? {};
    const { maker, socket, width, depth, height, mass } = spec('processor');
    const processor = {
      kind: 'processor',
      maker,
      model: 'Six 105',
      socket,
      width,
      depth,
      height,
      mass,
      class: 105,
    };
    Object.assign(parts, { processor: { ...parts.processor, spec: processor } });
    const twin = examplePlan('faults').plan.parts.cooler?.spec;
    Object.assign(parts, { cooler: { ...parts.cooler, spec: twin } });
    const card = spec('card');
    card.sustained = 260;
    delete card.peak;
    card.power = [
      { type: 'card 8-pin', edge: 'top', at: 188 },
      { type: 'card 8-pin', edge: 'top', at: 208 },
    ];
    spec('supply').watts = 850;
    plan.brief = { roomTemperature: 22, noiseWish: { decibels: 37, metres: 0.7 } };
  });
}
