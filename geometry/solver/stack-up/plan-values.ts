/** A plan with other values for some of its dimensions. */
import { withDimensions } from '../../parts/stated-dimensions/change-dimension';
import type { Plan } from '../../plan/plan-schema';
import type { ChangedPart } from './changed-part';
import type { PlanStudy } from './plan-study';

/** By part id, then by path: the value in mm. */
export type DimensionValues = ReadonlyMap<string, ReadonlyMap<string, number>>;

/** The bodies that the values give, by part number. Throws RangeError for a part that is not in the plan. */
export function changesFor(study: PlanStudy, values: DimensionValues): ReadonlyMap<number, ChangedPart> {
  const changes = new Map<number, ChangedPart>();
  for (const [id, ofPart] of values) {
    const index = study.scene.indexById.get(id);
    if (index === undefined) throw new RangeError(`the plan has no part ${id}`);
    changes.set(index, study.varied(index).withValues(ofPart));
  }
  return changes;
}

/** The plan with those values written into its sheets. */
export function planWithValues(plan: Plan, values: DimensionValues): Plan {
  const parts = { ...plan.parts };
  for (const [id, ofPart] of values) {
    const entry = parts[id];
    if (!entry) throw new RangeError(`the plan has no part ${id}`);
    parts[id] = { ...entry, spec: withDimensions(entry.spec, ofPart) };
  }
  return { ...plan, parts };
}
