/** The plans that come with the page. */
import { type Plan, readPlan } from '../../geometry';

export interface ExamplePlan {
  readonly file: string;
  readonly name: string;
  readonly about: string;
}

export const DEMO_PLAN = 'demo.json';

export const examplePlans: readonly ExamplePlan[] = [
  {
    file: DEMO_PLAN,
    name: 'Chart room workstation',
    about: 'A microATX machine that fits, with one tight spot.',
  },
  {
    file: 'faults.json',
    name: 'Wheelhouse renderer, first sketch',
    about: 'Three honest faults: an overlap, a covered slot, a plug against the panel.',
  },
  {
    file: 'small.json',
    name: 'Shore kit, eleven litres',
    about: 'A Mini-ITX machine where every millimetre counts.',
  },
  {
    file: 'tilted.json',
    name: 'Lamp room drawing desk',
    about: 'A card that only goes in tilted, its far end first.',
  },
  {
    file: 'blocked.json',
    name: 'Signal loft desk, longer card',
    about: 'Everything fits in its place, and yet no way in is found for the card.',
  },
  {
    file: 'knot.json',
    name: 'Slipway timekeeper',
    about: 'Everything fits, and it cannot be built: two parts keep each other out.',
  },
];

/** Fetches an example. Rejects with a plain sentence when it cannot be had. */
export async function fetchExample(file: string): Promise<Plan> {
  const response = await fetch(`${import.meta.env.BASE_URL}plans/${file}`);
  if (!response.ok) throw new Error(`The example plan could not be fetched (${response.status}).`);
  const read = readPlan(await response.text());
  if (read.ok) return read.plan;
  const [problem] = read.problems;
  throw new Error(`The example plan cannot be read: ${problem?.path} ${problem?.message}.`);
}
