/** Finding parts on the shelf by what a person types, slips of the finger forgiven. */
import uFuzzy from '@leeoniya/ufuzzy';
import { kindName } from '../../geometry';
import { longestEdge } from './entry-figures';
import { keyDimension } from './key-dimension';
import type { ShelfEntry } from './shelf-entry';

/** One slip in each word; figures and words of one or two letters are taken as they stand. */
const fuzzy = new uFuzzy({
  intraMode: 1,
  unicode: true,
  interSplit: "[^\\p{L}\\d']+",
  intraSplit: '\\p{Ll}\\p{Lu}',
  intraBound: '\\p{L}\\d|\\d\\p{L}|\\p{Ll}\\p{Lu}',
  intraChars: "[\\p{L}\\d']",
  intraContr: "'\\p{L}{1,2}\\b",
});

const texts = new WeakMap<ShelfEntry, string>();

/** What is searched of an entry, in small letters without accents. Worked out once for each entry object. */
function searchText(entry: ShelfEntry): string {
  const known = texts.get(entry);
  if (known !== undefined) return known;
  const { spec, note = '' } = entry;
  const text = plain(`${kindName(spec.kind)} ${spec.maker} ${spec.model} ${keyDimension(spec)} ${note}`);
  texts.set(entry, text);
  return text;
}

function plain(text: string): string {
  return uFuzzy.latinize(text.toLowerCase());
}

/** When this many are found as typed, nobody made a slip. */
const ENOUGH = 20;

const haystacks = new WeakMap<readonly ShelfEntry[], readonly string[]>();

/** Texts of a list that is searched again and again, letter by letter. */
function textsOf(entries: readonly ShelfEntry[]): readonly string[] {
  const known = haystacks.get(entries);
  if (known) return known;
  const made = entries.map(searchText);
  haystacks.set(entries, made);
  return made;
}

/**
 * Entries that have every word typed, in any order. When few have the words as they were typed, those follow that have
 * them with a slip each; within both they keep their order.
 */
export function searchShelf(entries: readonly ShelfEntry[], typed: string): readonly ShelfEntry[] {
  const words = plain(typed).split(/\s+/).filter(Boolean);
  if (words.length === 0) return entries;
  const all = textsOf(entries);
  const has = (text: string) => words.every((word) => text.includes(word));
  const exact = entries.filter((_, index) => has(all[index] ?? ''));
  if (exact.length >= ENOUGH) return exact;
  const found = new Set(exact);
  return [...exact, ...withSlips(entries, words).filter((entry) => !found.has(entry))];
}

function withSlips(entries: readonly ShelfEntry[], words: readonly string[]): readonly ShelfEntry[] {
  let found = entries;
  for (const word of words) {
    // A leading minus means 'without' to the library; nobody types it here for that.
    const needle = word.replace(/^-+/, '');
    if (found.length === 0 || needle === '') continue;
    const places = fuzzy.filter([...textsOf(found)], needle);
    const before = found;
    if (places) found = places.flatMap((place) => before[place] ?? []);
  }
  return found;
}

/** Works out beforehand, in small bites, what search and sorting ask, so that the first letter is answered at once. */
export function prepareShelf(entries: readonly ShelfEntry[]): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let at = 0;
  const go = () => {
    const end = performance.now() + 8;
    while (at < entries.length && performance.now() < end) {
      const entry = entries[at];
      if (entry) {
        searchText(entry);
        longestEdge(entry.spec);
      }
      at += 1;
    }
    if (at < entries.length) timer = setTimeout(go);
  };
  timer = setTimeout(go);
  return () => clearTimeout(timer);
}
