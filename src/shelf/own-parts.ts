/** The person's own parts in storage. Every change is one transaction: it happens whole or not at all. */
import type { IDBPTransaction } from 'idb';
import type { PartSpec } from '../../geometry';
import { newKey, type PlanDatabase, planDatabase } from '../store/plan-database';
import type { PutResult } from '../store/plan-library';
import {
  type PartVersion,
  type Photo,
  partVersionSchema,
  type Remarks,
  type StoredPart,
  storedPartSchema,
} from '../store/stored-records';

/** Earlier versions kept of one part. */
const MOST_VERSIONS = 50;
/** Records read and checked between two breaths of the page: some ten milliseconds. */
const BATCH = 500;

/** Reads all own parts in small bites, so that tens of thousands do not hold the page up; unreadable ones are left. */
export async function readOwnParts(): Promise<readonly StoredPart[]> {
  const database = await planDatabase();
  const parts: StoredPart[] = [];
  for (let after: IDBKeyRange | undefined; ; ) {
    const records = await database.getAll('ownParts', after, BATCH);
    for (const record of records) {
      const parsed = storedPartSchema.safeParse(record);
      if (parsed.success) parts.push(parsed.data);
    }
    const last = records.at(-1);
    if (!last || records.length < BATCH) return parts;
    after = IDBKeyRange.lowerBound(last.id, true);
    await new Promise((resolve) => setTimeout(resolve));
  }
}

/** Keeps all of the parts or, when the browser refuses one, none. Rejects with the browser's reason. */
export async function addOwnParts(specs: readonly PartSpec[]): Promise<readonly StoredPart[]> {
  const savedAt = Date.now();
  const parts = specs.map((spec) => ({ id: `own-${newKey()}`, spec, revision: 1, savedAt }));
  const transaction = (await planDatabase()).transaction('ownParts', 'readwrite');
  try {
    // The transaction waits for all of them; tens of thousands of awaited promises cost more than the writing.
    for (const part of parts) void transaction.store.put(part).catch(() => undefined);
  } catch (error) {
    // What cannot be stored at all throws here and would let the others pass.
    transaction.abort();
    await transaction.done.catch(() => undefined);
    throw error;
  }
  await transaction.done;
  return parts;
}

/**
 * Writes a new version over the revision it was read at and keeps the one before. Writes nothing when storage holds
 * another revision, or none.
 */
export async function changeStoredPart(
  id: string,
  spec: PartSpec,
  base: number,
  reason?: string,
): Promise<PutResult> {
  const transaction = (await planDatabase()).transaction(['ownParts', 'partVersions'], 'readwrite');
  const parts = transaction.objectStore('ownParts');
  const versions = transaction.objectStore('partVersions');
  const found = await parts.get(id);
  if (found?.revision !== base) {
    await transaction.done;
    return { saved: false, found: found?.revision };
  }
  const before: PartVersion = {
    part: id,
    revision: base,
    spec: found.spec,
    savedAt: found.savedAt,
    ...(reason ? { reason } : {}),
  };
  const kept = await versions.getAllKeys(versionsOf(id));
  await Promise.all([
    versions.put(before),
    parts.put({ id, spec, revision: base + 1, savedAt: Date.now() }),
    ...kept.slice(0, Math.max(0, kept.length + 1 - MOST_VERSIONS)).map((key) => versions.delete(key)),
    transaction.done,
  ]);
  return { saved: true, revision: base + 1 };
}

/** What the part was before, newest first. */
export async function earlierVersions(id: string): Promise<readonly PartVersion[]> {
  const records = await (await planDatabase()).getAll('partVersions', versionsOf(id));
  return records
    .flatMap((record) => {
      const parsed = partVersionSchema.safeParse(record);
      return parsed.success ? [parsed.data] : [];
    })
    .reverse();
}

function versionsOf(id: string): IDBKeyRange {
  // An array stands above every number, so this is the end of the part's revisions.
  return IDBKeyRange.bound([id], [id, []]);
}

/** All that storage held of some parts, to be put back whole. */
export interface DroppedParts {
  readonly parts: readonly StoredPart[];
  readonly versions: readonly PartVersion[];
  readonly remarks: readonly Remarks[];
  readonly photos: readonly Photo[];
}

const SHELF_STORES = ['ownParts', 'partVersions', 'remarks', 'photos'] as const;

type ShelfTransaction = IDBPTransaction<PlanDatabase, typeof SHELF_STORES, 'readwrite'>;

/**
 * Takes parts out of storage with all that belongs to them. What `andThen` does in the same transaction happens with
 * it or not at all.
 */
export async function takeOwnParts(
  ids: readonly string[],
  andThen: (transaction: ShelfTransaction, dropped: DroppedParts) => Promise<unknown> = async () => {},
): Promise<DroppedParts> {
  const transaction = (await planDatabase()).transaction(SHELF_STORES, 'readwrite');
  const parts = transaction.objectStore('ownParts');
  const versions = transaction.objectStore('partVersions');
  const remarks = transaction.objectStore('remarks');
  const photos = transaction.objectStore('photos');
  const dropped = {
    parts: [] as StoredPart[],
    versions: [] as PartVersion[],
    remarks: [] as Remarks[],
    photos: [] as Photo[],
  };
  for (const id of ids) {
    const [part, earlier, remark, pictures] = await Promise.all([
      parts.get(id),
      versions.getAll(versionsOf(id)),
      remarks.get(id),
      photos.index('entry').getAll(id),
    ]);
    if (part) dropped.parts.push(part);
    if (remark) dropped.remarks.push(remark);
    dropped.versions.push(...earlier);
    dropped.photos.push(...pictures);
    await Promise.all([
      parts.delete(id),
      versions.delete(versionsOf(id)),
      remarks.delete(id),
      ...pictures.map((picture) => photos.delete(picture.id)),
    ]);
  }
  await Promise.all([andThen(transaction, dropped), transaction.done]);
  return dropped;
}

export async function putBackParts({ parts, versions, remarks, photos }: DroppedParts): Promise<void> {
  const transaction = (await planDatabase()).transaction(SHELF_STORES, 'readwrite');
  await Promise.all([
    ...parts.map((part) => transaction.objectStore('ownParts').put(part)),
    ...versions.map((version) => transaction.objectStore('partVersions').put(version)),
    ...remarks.map((remark) => transaction.objectStore('remarks').put(remark)),
    ...photos.map((photo) => transaction.objectStore('photos').put(photo)),
    transaction.done,
  ]);
}

/**
 * Takes many parts out at once, with what was remarked on them since: tens of thousands in seconds, because nothing is
 * read that is not there. Returns how many there were.
 */
export async function forgetOwnParts(ids: readonly string[]): Promise<number> {
  const transaction = (await planDatabase()).transaction(SHELF_STORES, 'readwrite');
  const gone = new Set(ids);
  const parts = transaction.objectStore('ownParts');
  const versions = transaction.objectStore('partVersions');
  const remarks = transaction.objectStore('remarks');
  const photos = transaction.objectStore('photos');
  const [kept, earlier, remarked, pictures] = await Promise.all([
    parts.getAllKeys(),
    versions.getAllKeys(),
    remarks.getAllKeys(),
    photos.count(),
  ]);
  const found = kept.filter((id) => gone.has(id));
  // The transaction waits for all of them.
  for (const id of found) void parts.delete(id).catch(() => undefined);
  for (const key of earlier) if (gone.has(key[0])) void versions.delete(key).catch(() => undefined);
  for (const key of remarked) if (gone.has(key)) void remarks.delete(key).catch(() => undefined);
  if (pictures > 0) {
    const owned = (await photos.getAll()).filter(({ entry }) => gone.has(entry));
    for (const { id } of owned) void photos.delete(id).catch(() => undefined);
  }
  await transaction.done;
  return found.length;
}
