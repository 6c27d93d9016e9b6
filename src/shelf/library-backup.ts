/**
 * The whole library out of storage and back. A restore is one transaction over everything: it happens whole or not at
 * all, and what was there before comes back by `undoRestore`.
 */
import { newKey, planDatabase, type StoredPlan } from '../store/plan-database';
import { mergeRemarks } from './duplicates';
import type { Library } from './library-file';
import { isSameSpec } from './spec-differences';

export type RestoreWay = 'merge' | 'replace';

const LIBRARY_STORES = ['plans', 'ownParts', 'partVersions', 'remarks', 'photos'] as const;

/** Everything as it stands in storage, at one moment. */
export async function readLibrary(): Promise<Library> {
  const transaction = (await planDatabase()).transaction(LIBRARY_STORES);
  const [plans, parts, versions, remarks, photos] = await Promise.all([
    transaction.objectStore('plans').getAll(),
    transaction.objectStore('ownParts').getAll(),
    transaction.objectStore('partVersions').getAll(),
    transaction.objectStore('remarks').getAll(),
    transaction.objectStore('photos').getAll(),
  ]);
  await transaction.done;
  return { plans, parts, versions, remarks, photos };
}

/**
 * Brings a library into storage and returns what stood there before.
 *
 * `replace`: what is here goes. `merge`: what is here stays as it is; what is only in the file is added, and a plan or
 * part that is here in another form is added beside as a copy with an id of its own.
 */
export async function restoreLibrary(file: Library, way: RestoreWay): Promise<Library> {
  const before = await readLibrary();
  await writeLibrary(way === 'replace' ? withHigherRevisions(file, before) : merged(before, file), before);
  return before;
}

/** Puts back what stood in storage before a restore. */
export async function undoRestore(before: Library): Promise<void> {
  const now = await readLibrary();
  await writeLibrary(withHigherRevisions(before, now), now);
}

/** Rejects, and writes nothing, when storage is no longer `known`: another tab has saved meanwhile. */
async function writeLibrary(library: Library, known: Library): Promise<void> {
  const transaction = (await planDatabase()).transaction(LIBRARY_STORES, 'readwrite');
  const [plans, parts, versions, remarks, photos] = [
    transaction.objectStore('plans'),
    transaction.objectStore('ownParts'),
    transaction.objectStore('partVersions'),
    transaction.objectStore('remarks'),
    transaction.objectStore('photos'),
  ] as const;
  try {
    const isAsKnown =
      versionsIn(await plans.getAll()) === versionsIn(known.plans) &&
      (await parts.count()) === known.parts.length;
    if (!isAsKnown) throw new Error('another tab has changed the library meanwhile');
    await Promise.all([plans, parts, versions, remarks, photos].map((store) => store.clear()));
    const write = (request: Promise<unknown>) => void request.catch(() => undefined);
    for (const record of library.plans) write(plans.put(record));
    for (const record of library.parts) write(parts.put(record));
    for (const record of library.versions) write(versions.put(record));
    for (const record of library.remarks) write(remarks.put(record));
    for (const record of library.photos) write(photos.put(record));
  } catch (error) {
    // What cannot be stored at all throws and would let the rest pass.
    transaction.abort();
    await transaction.done.catch(() => undefined);
    throw error;
  }
  await transaction.done;
}

function versionsIn(records: readonly { readonly id: string; readonly revision: number }[]): string {
  return records.map(({ id, revision }) => `${id} ${revision}`).join('\n');
}

/** A tab that has a plan or part open must see that another has come in its place. */
function withHigherRevisions(library: Library, before: Library): Library {
  return {
    ...library,
    plans: library.plans.map((plan) => raised(plan, before.plans)),
    parts: library.parts.map((part) => raised(part, before.parts)),
  };
}

function raised<T extends { readonly id: string; readonly revision: number }>(
  record: T,
  before: readonly T[],
): T {
  const known = indexOf(before).get(record.id);
  return known ? { ...record, revision: Math.max(known.revision, record.revision) + 1 } : record;
}

const indices = new WeakMap<object, ReadonlyMap<string, unknown>>();

function indexOf<T extends { readonly id: string }>(records: readonly T[]): ReadonlyMap<string, T> {
  const known = indices.get(records) as ReadonlyMap<string, T> | undefined;
  if (known) return known;
  const index = new Map(records.map((record) => [record.id, record]));
  indices.set(records, index);
  return index;
}

function merged(here: Library, file: Library): Library {
  const copies = new Map<string, string>();
  const parts = file.parts.flatMap((part) => {
    const known = indexOf(here.parts).get(part.id);
    if (!known) return [part];
    if (isSameSpec(known.spec, part.spec)) return [];
    const id = `own-${newKey()}`;
    copies.set(part.id, id);
    return [{ ...part, id, revision: 1 }];
  });
  const added = new Set(parts.map(({ id }) => id));
  const plans = file.plans.flatMap((record) => planToAdd(record, indexOf(here.plans).get(record.id)));
  const remarks = new Map(here.remarks.map((record) => [record.entry, record]));
  for (const record of file.remarks) {
    const entry = copies.get(record.entry) ?? record.entry;
    const known = remarks.get(entry);
    remarks.set(entry, known ? mergeRemarks(known, { ...record, entry }) : { ...record, entry });
  }
  const photoIds = new Set(here.photos.map(({ id }) => id));
  return {
    plans: [...here.plans, ...plans],
    parts: [...here.parts, ...parts],
    // Of a part that is here its own history counts.
    versions: [...here.versions, ...file.versions.filter(({ part }) => added.has(part))],
    remarks: [...remarks.values()],
    photos: [
      ...here.photos,
      ...file.photos
        .filter(({ id }) => !photoIds.has(id))
        .map((photo) => ({ ...photo, entry: copies.get(photo.entry) ?? photo.entry })),
    ],
  };
}

function planToAdd(record: StoredPlan, known: StoredPlan | undefined): readonly StoredPlan[] {
  if (!known) return [record];
  if (JSON.stringify(known.plan) === JSON.stringify(record.plan)) return [];
  const name = `${record.plan.name.slice(0, 100)}, from the backup`;
  return [{ ...record, id: newKey(), revision: 1, plan: { ...record.plan, name } }];
}
