import { readFileSync } from 'node:fs';
import type { Plan } from '../../../geometry/plan/plan-schema';
import { readPlan } from '../../../geometry/plan/read-plan';

export type ExamplePlan = 'demo' | 'faults' | 'small';

/** One of the example plans that the app opens with. */
export function examplePlan(name: ExamplePlan): Plan {
  const read = readPlan(readFileSync(new URL(`../../../public/plans/${name}.json`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(read.problems.map(({ path, message }) => `${path} ${message}`).join('; '));
  return read.plan;
}
