/** Whether a part in the plan still says what its entry on the shelf says, and the way to take that over. */
import { adjustPart, type PlanPart, replacePart } from '../../geometry';
import { editPlan, planStore, undo } from '../store/plan-store';
import { announce } from '../store/status-store';
import type { PartVersion, Remarks } from '../store/stored-records';
import { earlierVersions } from './own-parts';
import type { ShelfEntry } from './shelf-entry';
import { differencesOf, isSameSpec, type SpecDifference } from './spec-differences';

export interface ShelfChange {
  readonly entry: ShelfEntry;
  /** From what the plan has to what the shelf has. */
  readonly differences: readonly SpecDifference[];
  /** `shelf`: the plan has an earlier version of it. `plan`: the figures were edited in the plan, or nobody knows. */
  readonly changed: 'shelf' | 'plan';
}

/** The entry that a part of a plan was taken from, also when it was merged into another since. */
export function entryOfPart(
  { shelf }: PlanPart,
  entries: readonly ShelfEntry[],
  remarks: ReadonlyMap<string, Remarks>,
): ShelfEntry | undefined {
  if (shelf === undefined) return undefined;
  const found = entries.find(({ id }) => id === shelf);
  if (found) return found;
  for (const { entry, formerIds } of remarks.values())
    if (formerIds?.includes(shelf)) return entries.find(({ id }) => id === entry);
  return undefined;
}

/** Undefined when they agree, or are of different kinds. Looks into the history of own parts. */
export async function findShelfChange(part: PlanPart, entry: ShelfEntry): Promise<ShelfChange | undefined> {
  if (part.spec.kind !== entry.spec.kind) return undefined;
  const differences = differencesOf(part.spec, entry.spec);
  if (differences.length === 0) return undefined;
  const history: readonly PartVersion[] = entry.own ? await earlierVersions(entry.id).catch(() => []) : [];
  const isEarlier = history.some(({ spec }) => isSameSpec(spec, part.spec));
  return { entry, differences, changed: isEarlier ? 'shelf' : 'plan' };
}

/** The part in the plan gets the figures of the shelf, keeping seat and adjustments; one step of undo. */
export function takeOverFromShelf(id: string, { id: shelf, spec }: ShelfEntry): void {
  const { plan } = planStore.getState();
  const adjust = plan.parts[id]?.adjust ?? {};
  const { plan: replaced, loosened } = replacePart(plan, id, spec, shelf);
  const known = Object.entries(adjust);
  editPlan(() => known.reduce((next, [name, value]) => adjustPart(next, id, name, value), replaced));
  const loose = loosened.length === 0 ? '' : ` Without a mount: ${loosened.join(', ')}.`;
  announce(`${spec.model} is now as on the shelf.${loose}`, { label: 'Undo', run: undo });
}
