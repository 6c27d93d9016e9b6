/** The shelf as this page has it: the parts that come with it, and the person's own. */
import { createStore } from 'zustand/vanilla';
import { type PartKind, type PartSpec, type Problem, partKinds, partSpecSchema } from '../../geometry';
import { newKey, planDatabase } from '../store/plan-database';
import { readShelf, type ShelfEntry } from './shelf-entry';

interface ShelfState {
  readonly entries: readonly ShelfEntry[];
  readonly problems: readonly Problem[];
  readonly loaded: boolean;
}

export const shelfStore = createStore<ShelfState>()(() => ({ entries: [], problems: [], loaded: false }));

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

async function ownEntries(): Promise<readonly ShelfEntry[]> {
  const records = await (await planDatabase()).getAll('ownParts');
  return records.flatMap(({ id, spec }) => {
    const parsed = partSpecSchema.safeParse(spec);
    return parsed.success ? [{ id, spec: parsed.data, own: true }] : [];
  });
}

/** Loads everything once. Own parts stand first within their kind. */
export async function loadShelf(): Promise<void> {
  if (shelfStore.getState().loaded) return;
  const own = ownEntries().catch(() => []);
  const shelves = await Promise.all(partKinds.map(fetchKind));
  shelfStore.setState({
    entries: [...(await own), ...shelves.flatMap((shelf) => shelf.entries)],
    problems: shelves.flatMap((shelf) => shelf.problems),
    loaded: true,
  });
}

/** Keeps a part on the person's own shelf. Rejects when the browser keeps nothing. */
export async function keepOwnPart(spec: PartSpec): Promise<ShelfEntry> {
  const entry = { id: `own-${newKey()}`, spec, own: true };
  await (await planDatabase()).put('ownParts', { id: entry.id, spec });
  shelfStore.setState((state) => ({ entries: [entry, ...state.entries] }));
  return entry;
}

export async function dropOwnPart(id: string): Promise<void> {
  await (await planDatabase()).delete('ownParts', id);
  shelfStore.setState((state) => ({ entries: state.entries.filter((entry) => entry.id !== id) }));
}
