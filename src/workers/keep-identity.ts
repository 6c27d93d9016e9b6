/** A plan that crossed over as a copy, made of the objects known from before wherever nothing changed. */
import type { Plan, PlanPart } from '../../geometry';

/**
 * What the kernel remembers hangs on the spec objects. A copy has new ones each time, so parts that say the same as
 * before are replaced by those before; a plan that says the same altogether is the one before.
 */
export function keepIdentity(before: Plan | undefined, plan: Plan): Plan {
  if (!before) return plan;
  if (saysTheSame(before, plan)) return before;
  const parts: Record<string, PlanPart> = {};
  for (const [id, part] of Object.entries(plan.parts)) {
    const known = before.parts[id];
    parts[id] = known ? knownPart(known, part) : part;
  }
  return { ...plan, parts };
}

function knownPart(known: PlanPart, part: PlanPart): PlanPart {
  if (saysTheSame(known, part)) return known;
  return {
    ...part,
    ...(saysTheSame(known.spec, part.spec) ? { spec: known.spec } : {}),
    ...(known.adjust && saysTheSame(known.adjust, part.adjust) ? { adjust: known.adjust } : {}),
  };
}

/** Copies keep the order of their keys, so the same content has the same text. */
function saysTheSame(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
