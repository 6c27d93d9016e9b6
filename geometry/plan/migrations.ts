/**
 * Every released plan format and the step from it to the next. A format is never removed: a plan saved once opens for
 * ever. Each step takes a plain JSON object of format n and returns one of format n + 1; the schema judges the result.
 */
import { PLAN_FORMAT } from './plan-schema';

type PlainPlan = Readonly<Record<string, unknown>>;
export type Migration = (plan: PlainPlan) => PlainPlan;

/** Step n turns format n into format n + 1. Format 1 is the first, so there is none yet. */
const migrations: Readonly<Record<number, Migration>> = {};

export type MigrationResult =
  | { readonly ok: true; readonly plan: PlainPlan }
  | { readonly ok: false; readonly message: string };

/** Brings a plan of any released format to today's; refuses newer and foreign ones by name. */
export function migrate(
  plan: PlainPlan,
  steps: Readonly<Record<number, Migration>> = migrations,
  newest = PLAN_FORMAT,
): MigrationResult {
  const { format } = plan;
  if (typeof format !== 'number' || !Number.isInteger(format) || format < 1) {
    return { ok: false, message: 'is not the number of a plan format; this is not a plan' };
  }
  if (format > newest) {
    return {
      ok: false,
      message: `is ${format}, made by a newer version; this version reads up to ${newest}`,
    };
  }
  let current = plan;
  for (let step = format; step < newest; step++) {
    const migration = steps[step];
    if (!migration)
      return { ok: false, message: `is ${format}, and no way is known from ${step} to ${step + 1}` };
    current = { ...migration(current), format: step + 1 };
  }
  return { ok: true, plan: current };
}
