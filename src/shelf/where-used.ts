/** Which saved plans use a part of the shelf. */
import { planDatabase } from '../store/plan-database';
import type { ShelfEntry } from './shelf-entry';

export interface PartUse {
  readonly planId: string;
  readonly planName: string;
  /** How many of it the plan has. */
  readonly count: number;
}

/** Plans whose parts were taken from the entry, or one merged into it; newest first. Unreadable plans are passed over. */
export async function findUses(
  { id }: Pick<ShelfEntry, 'id'>,
  formerIds: readonly string[] = [],
): Promise<readonly PartUse[]> {
  const ids = new Set([id, ...formerIds]);
  const records = await (await planDatabase()).getAll('plans');
  return records
    .toSorted((a, b) => b.savedAt - a.savedAt)
    .flatMap(({ id: planId, plan }) => {
      const parts = Object.values(plan?.parts ?? {});
      const count = parts.filter((part) => part?.shelf !== undefined && ids.has(part.shelf)).length;
      return count === 0 ? [] : [{ planId, planName: String(plan.name ?? 'Unnamed plan'), count }];
    });
}
