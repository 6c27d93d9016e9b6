/** The border: text from a file, a link or storage becomes a plan, or a list of problems that name their field. */
import { describeIssues, type Problem } from './describe-issues';
import { migrate } from './migrations';
import { type Plan, planSchema } from './plan-schema';

export type { Problem } from './describe-issues';

export type ReadResult =
  | { readonly ok: true; readonly plan: Plan }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A plan of 200 parts with every field filled takes under a megabyte; more is not a plan. */
export const LARGEST_PLAN_TEXT = 2_000_000;

/** Reads plan text. Never throws. */
export function readPlan(text: string): ReadResult {
  if (text.length > LARGEST_PLAN_TEXT) {
    return refuse(`is ${text.length} characters long; a plan has at most ${LARGEST_PLAN_TEXT}`);
  }
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return refuse('is not JSON, or was cut off');
  }
  return readPlanValue(value);
}

/** The same for a value that is already parsed. */
export function readPlanValue(value: unknown): ReadResult {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return refuse('is not a plan object');
  const migrated = migrate(value as Readonly<Record<string, unknown>>);
  if (!migrated.ok) return { ok: false, problems: [{ path: 'format', message: migrated.message }] };
  const parsed = planSchema.safeParse(migrated.plan, { reportInput: true });
  if (!parsed.success) return { ok: false, problems: describeIssues(parsed.error.issues, migrated.plan) };
  return { ok: true, plan: parsed.data };
}

/** The text of a plan file: stable order, one trailing newline. */
export function writePlan(plan: Plan): string {
  return `${JSON.stringify(plan, null, 2)}\n`;
}

function refuse(message: string): ReadResult {
  return { ok: false, problems: [{ path: 'plan', message }] };
}
