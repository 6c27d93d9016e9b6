/** Remembers how a person matched the columns of a table, for the next table with the same header. */
import { z } from 'zod';
import { planDatabase } from '../../store/plan-database';
import type { Column } from './table-columns';

const columnsSchema = z
  .array(
    z.strictObject({
      header: z.string().max(2000),
      path: z.string().max(120).optional(),
      share: z.enum(['value', 'plusMinus', 'source', 'note']),
      unit: z.string().max(20).optional(),
    }),
  )
  .max(300);

const LONGEST_KEY = 2000;

function keyOf(columns: readonly Column[]): string {
  return `columns ${columns.map(({ header }) => header).join('|')}`.slice(0, LONGEST_KEY);
}

/** The columns as they were matched last time; undefined when there was none, or when nothing is kept here. */
export async function recallColumns(columns: readonly Column[]): Promise<readonly Column[] | undefined> {
  try {
    const stored = await (await planDatabase()).get('settings', keyOf(columns));
    const parsed = columnsSchema.safeParse(stored === undefined ? undefined : JSON.parse(stored));
    if (!parsed.success || parsed.data.length !== columns.length) return undefined;
    return parsed.data.map(({ header, path, share, unit }) => ({ header, path, share, unit }));
  } catch {
    return undefined;
  }
}

export async function rememberColumns(columns: readonly Column[]): Promise<void> {
  try {
    await (await planDatabase()).put('settings', JSON.stringify(columns), keyOf(columns));
  } catch {
    // It is a convenience: without storage the columns are matched anew next time.
  }
}
