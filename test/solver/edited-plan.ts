import { placePlan } from '../../geometry/plan/place-plan';
import { type Plan, planSchema } from '../../geometry/plan/plan-schema';
import type { Solution } from '../../geometry/solver/finding';
import { solve } from '../../geometry/solver/solve';

interface EditedPart {
  spec?: Record<string, unknown>;
  placement?: Record<string, unknown>;
  adjust?: Record<string, number>;
}

/** The plan with fields of some parts replaced, checked against its schema again. */
export function edited(plan: Plan, edits: Readonly<Record<string, EditedPart>>): Plan {
  const parts: Record<string, unknown> = { ...plan.parts };
  for (const [id, edit] of Object.entries(edits)) {
    const part = plan.parts[id];
    if (!part) throw new Error(`no part ${id}`);
    parts[id] = {
      ...part,
      ...(edit.spec ? { spec: { ...part.spec, ...edit.spec } } : {}),
      ...(edit.placement ? { placement: { ...part.placement, ...edit.placement } } : {}),
      ...(edit.adjust ? { adjust: edit.adjust } : {}),
    };
  }
  return planSchema.parse({ ...plan, parts });
}

/** The plan without some of its parts. */
export function without(plan: Plan, ...ids: readonly string[]): Plan {
  const parts = Object.fromEntries(Object.entries(plan.parts).filter(([id]) => !ids.includes(id)));
  return planSchema.parse({ ...plan, parts });
}

export function solvePlan(plan: Plan): Solution {
  return solve(placePlan(plan));
}

/** Ids of the interferences of a plan. */
export function clashes(plan: Plan): readonly string[] {
  return solvePlan(plan)
    .findings.filter((finding) => finding.kind === 'interference')
    .map((finding) => finding.id);
}
