/** The shelf as this page has it: the parts that come with it, the person's own, and what is remarked on both. */
import { createStore } from 'zustand/vanilla';
import { type PartKind, type PartSpec, type Problem, partKinds } from '../../geometry';
import { planDatabase } from '../store/plan-database';
import type { PutResult } from '../store/plan-library';
import { type Remarks, type StoredPart, storedPartSchema } from '../store/stored-records';
import {
  addOwnParts,
  changeStoredPart,
  type DroppedParts,
  putBackParts,
  readOwnParts,
  takeOwnParts,
} from './own-parts';
import { changeRemarks, findRemarks, readRemarks } from './remarks';
import { readShelf, type ShelfEntry } from './shelf-entry';
import { hearOtherShelves, type ShelfNews, tellOtherShelves } from './shelf-tabs';

interface ShelfState {
  /** Own parts first. */
  readonly entries: readonly ShelfEntry[];
  readonly problems: readonly Problem[];
  readonly loaded: boolean;
  /** By id of the entry. */
  readonly remarks: ReadonlyMap<string, Remarks>;
}

export const shelfStore = createStore<ShelfState>()(() => ({
  entries: [],
  problems: [],
  loaded: false,
  remarks: new Map(),
}));

async function fetchKind(kind: PartKind): Promise<ReturnType<typeof readShelf>> {
  try {
    const response = await fetch(`${import.meta.env.BASE_URL}shelf/${kind}.json`);
    if (!response.ok) throw new Error(`answer ${response.status}`);
    return readShelf(kind, await response.json());
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return { entries: [], problems: [{ path: `shelf/${kind}`, message: `could not be fetched: ${why}` }] };
  }
}

function entryOf({ id, spec, revision }: StoredPart): ShelfEntry {
  return { id, spec, own: true, revision };
}

async function storedShelf(): Promise<Pick<ShelfState, 'entries' | 'remarks'>> {
  const [parts, remarks] = await Promise.all([readOwnParts(), readRemarks()]);
  return { entries: parts.map(entryOf), remarks: new Map(remarks.map((remark) => [remark.entry, remark])) };
}

/** Loads everything once, and keeps up with the other tabs from then on. */
export async function loadShelf(): Promise<void> {
  if (shelfStore.getState().loaded) return;
  const stored = storedShelf().catch(() => ({ entries: [], remarks: new Map<string, Remarks>() }));
  const shelves = await Promise.all(partKinds.map(fetchKind));
  const supplied = shelves.flatMap((shelf) => shelf.entries);
  const problems = shelves.flatMap((shelf) => shelf.problems);
  const { entries, remarks } = await stored;
  shelfStore.setState({ entries: [...entries, ...supplied], remarks, problems, loaded: true });
  hearOtherShelves((news) => void followNews(news).catch(() => undefined));
}

/** Reads own parts and remarks anew: after another tab, or a restored backup, has changed more than can be named. */
export async function reloadOwnShelf(): Promise<void> {
  const { entries, remarks } = await storedShelf();
  shelfStore.setState((state) => ({
    entries: [...entries, ...state.entries.filter((entry) => !entry.own)],
    remarks,
  }));
}

async function followNews({ entries }: ShelfNews): Promise<void> {
  if (!entries) return reloadOwnShelf();
  const database = await planDatabase();
  for (const id of entries) {
    const parsed = storedPartSchema.safeParse(await database.get('ownParts', id));
    if (parsed.success) showOwn([entryOf(parsed.data)]);
    else hideOwn([id]);
    const remarks = await findRemarks(id);
    showRemarks(id, remarks);
  }
}

/** Entries known by id stay where they are; new ones come first. */
function showOwn(own: readonly ShelfEntry[]): void {
  const changed = new Map(own.map((entry) => [entry.id, entry]));
  shelfStore.setState((state) => {
    const entries = state.entries.map((entry) => {
      const after = changed.get(entry.id);
      changed.delete(entry.id);
      return after ?? entry;
    });
    return { entries: [...changed.values(), ...entries] };
  });
}

function hideOwn(ids: readonly string[]): void {
  const gone = new Set(ids);
  shelfStore.setState((state) => ({
    entries: state.entries.filter((entry) => !entry.own || !gone.has(entry.id)),
  }));
}

function showRemarks(entry: string, remarks: Remarks | undefined): void {
  shelfStore.setState((state) => {
    const all = new Map(state.remarks);
    if (remarks) all.set(entry, remarks);
    else all.delete(entry);
    return { remarks: all };
  });
}

/** Keeps a part on the person's own shelf. Rejects when the browser keeps nothing. */
export async function keepOwnPart(spec: PartSpec): Promise<ShelfEntry> {
  const [entry] = await keepOwnParts([spec]);
  if (!entry) throw new Error('the part was not kept');
  return entry;
}

/** Keeps many parts in one transaction: all of them or, when the browser refuses, none; then rejects. */
export async function keepOwnParts(specs: readonly PartSpec[]): Promise<readonly ShelfEntry[]> {
  if (specs.length === 0) return [];
  const entries = (await addOwnParts(specs)).map(entryOf);
  showOwn(entries);
  tellOtherShelves(entries.map(({ id }) => id));
  return entries;
}

/**
 * Puts a new version of an own part in place of the one read at revision `base`, which is kept in its history with
 * the reason. Saves nothing when another tab was first; the shelf then shows what that tab saved.
 */
export async function changeOwnPart(
  id: string,
  spec: PartSpec,
  base: number,
  reason?: string,
): Promise<PutResult> {
  const result = await changeStoredPart(id, spec, base, reason);
  if (result.saved) {
    showOwn([{ id, spec, own: true, revision: result.revision }]);
    tellOtherShelves([id]);
  } else await followNews({ entries: [id] });
  return result;
}

/** Takes own parts off the shelf with all that belongs to them; returns it, to be put back by `restoreOwnParts`. */
export async function dropOwnParts(ids: readonly string[]): Promise<DroppedParts> {
  const dropped = await takeOwnParts(ids);
  hideOwn(ids);
  for (const id of ids) showRemarks(id, undefined);
  tellOtherShelves(ids);
  return dropped;
}

export async function restoreOwnParts(dropped: DroppedParts): Promise<void> {
  await putBackParts(dropped);
  showOwn(dropped.parts.map(entryOf));
  for (const remarks of dropped.remarks) showRemarks(remarks.entry, remarks);
  tellOtherShelves(dropped.parts.map(({ id }) => id));
}

/** Changes what is remarked on any entry; rejects when it cannot be kept, and then nothing has changed. */
export async function remark(entry: string, edit: (before: Remarks) => Remarks): Promise<void> {
  showRemarks(entry, await changeRemarks(entry, edit));
  tellOtherShelves([entry]);
}
