/** What a person remarks on entries of the shelf, in storage: favourites, notes, prices, what was measured. */
import { planDatabase } from '../store/plan-database';
import { type Remarks, remarksSchema } from '../store/stored-records';

export async function readRemarks(): Promise<readonly Remarks[]> {
  return (await (await planDatabase()).getAll('remarks')).flatMap(readable);
}

export async function findRemarks(entry: string): Promise<Remarks | undefined> {
  const record = await (await planDatabase()).get('remarks', entry);
  return record && readable(record)[0];
}

function readable(record: unknown): Remarks[] {
  const parsed = remarksSchema.safeParse(record);
  return parsed.success ? [parsed.data] : [];
}

/**
 * Changes what is remarked on an entry. Reads and writes in one transaction, so that what another tab has written to
 * other fields stays. Throws the schema's error, and writes nothing, when the result would not be readable.
 */
export async function changeRemarks(entry: string, edit: (before: Remarks) => Remarks): Promise<Remarks> {
  const transaction = (await planDatabase()).transaction('remarks', 'readwrite');
  try {
    const after = remarksSchema.parse(edit((await transaction.store.get(entry)) ?? { entry }));
    await Promise.all([transaction.store.put(after), transaction.done]);
    return after;
  } catch (error) {
    // A transaction that has failed by itself cannot be aborted a second time.
    await Promise.resolve(transaction.done).catch(() => undefined);
    throw error;
  }
}
