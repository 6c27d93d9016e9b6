/** Entries of the shelf that are the same part twice, and how they become one. */
import { planDatabase } from '../store/plan-database';
import type { Remarks } from '../store/stored-records';
import { type DroppedParts, putBackParts, takeOwnParts } from './own-parts';
import type { ShelfEntry } from './shelf-entry';

export interface DuplicateGroup {
  /** Two or more of a kind; own parts among them, since only those can be let go. */
  readonly entries: readonly ShelfEntry[];
  /** `equal`: the sheets agree in every figure. `name`: maker and model agree, figures differ. */
  readonly by: 'equal' | 'name';
}

/** Same maker and model, spelled alike but for case, spaces and hyphens; or the same figures under another name. */
export function findDuplicates(entries: readonly ShelfEntry[]): readonly DuplicateGroup[] {
  const byName = groupsOf(entries, ({ spec }) => `${spec.kind} ${plain(spec.maker)} ${plain(spec.model)}`);
  const grouped = new Set(byName.flat());
  const rest = entries.filter((entry) => !grouped.has(entry));
  return [
    ...byName.map((group) => ({
      entries: group,
      by: allEqual(group) ? ('equal' as const) : ('name' as const),
    })),
    ...groupsOf(rest, figuresOf).map((group) => ({ entries: group, by: 'equal' as const })),
  ];
}

function allEqual([first, ...others]: readonly ShelfEntry[]): boolean {
  return first !== undefined && others.every((other) => figuresOf(other) === figuresOf(first));
}

function groupsOf(
  entries: readonly ShelfEntry[],
  keyOf: (entry: ShelfEntry) => string,
): readonly (readonly ShelfEntry[])[] {
  const groups = new Map<string, ShelfEntry[]>();
  for (const entry of entries) {
    const key = keyOf(entry);
    const group = groups.get(key);
    if (group) group.push(entry);
    else groups.set(key, [entry]);
  }
  return [...groups.values()].filter((group) => group.length > 1 && group.some(({ own }) => own));
}

function plain(text: string): string {
  return text.toLowerCase().replaceAll(/[\s_-]+/g, '');
}

function figuresOf({ spec }: ShelfEntry): string {
  const { maker: _, model: __, remark: ___, ...figures } = spec;
  // Fields in one order, whatever order they were typed in; what is nested is written by the form, in its own.
  return JSON.stringify(Object.entries(figures).sort(([a], [b]) => (a < b ? -1 : 1)));
}

/** What a merge did away with. */
export interface MergedParts {
  readonly kept: string;
  /** What was remarked on the kept entry before. */
  readonly remarks: Remarks | undefined;
  readonly dropped: DroppedParts;
}

/**
 * Lets own parts go in favour of another entry, which takes over what was remarked on and measured of them and answers
 * to their ids from now on. Own remarks of the kept entry stay. Returns what brings it all back.
 */
export async function mergeInto(kept: string, ids: readonly string[]): Promise<MergedParts> {
  let remarks: Remarks | undefined;
  const dropped = await takeOwnParts(ids, async (transaction, { remarks: theirs, photos }) => {
    const store = transaction.objectStore('remarks');
    remarks = await store.get(kept);
    const own = remarks ?? { entry: kept };
    const merged = theirs.reduce(mergeRemarks, { ...own, formerIds: [...(own.formerIds ?? []), ...ids] });
    await Promise.all([
      store.put(merged),
      ...photos.map((photo) => transaction.objectStore('photos').put({ ...photo, entry: kept })),
    ]);
  });
  return { kept, remarks, dropped };
}

export async function undoMerge({ kept, remarks, dropped }: MergedParts): Promise<void> {
  await putBackParts(dropped);
  const database = await planDatabase();
  if (remarks) await database.put('remarks', remarks);
  else await database.delete('remarks', kept);
}

const MOST_EVIDENCE = 100;

/** What the first says comes first; where it is silent, the second fills in. */
export function mergeRemarks(first: Remarks, second: Remarks): Remarks {
  const notes = [first.note, second.note].filter((note, index, all) => note && all.indexOf(note) === index);
  const evidence = [...(first.evidence ?? []), ...(second.evidence ?? [])].filter(
    ({ id }, index, all) => all.findIndex((other) => other.id === id) === index,
  );
  const formerIds = [...new Set([...(first.formerIds ?? []), ...(second.formerIds ?? [])])];
  return {
    ...second,
    ...first,
    ...(first.favourite || second.favourite ? { favourite: true } : {}),
    ...(notes.length > 0 ? { note: notes.join('\n').slice(0, 2000) } : {}),
    ...(evidence.length > 0 ? { evidence: evidence.slice(0, MOST_EVIDENCE) } : {}),
    ...(formerIds.length > 0 ? { formerIds: formerIds.slice(0, 500) } : {}),
  };
}
