/** Looks words up: longest phrase first, then German and Dutch compounds taken apart. */
import { foldWord } from '../fold-text';
import type { Atom } from './atoms';
import { fillerWords, labelWords } from './label-words';
import { type Slot, valueWords } from './value-words';

export interface ValueWord {
  readonly slot: Slot;
  readonly value: string;
}

export interface Phrase {
  readonly atoms: readonly Atom[];
  /** A word may be a value as well as a label: 'modular', 'main'. */
  readonly value: ValueWord | undefined;
  readonly isFiller: boolean;
}

const MOST_WORDS = 5;
const LONGEST_COMPOUND = 40;
const EMPTY: Phrase = { atoms: [], value: undefined, isFiller: false };

const book = new Map<string, Phrase>();
/** Last members of compounds that are labels of their own: 'hohe', 'gewicht'. */
const compoundEnds = new Set<string>();
/** First members that say nothing new: 'gesamthohe' is the height. */
const NEUTRAL_STARTS: ReadonlySet<string> = new Set([
  'gesamt',
  'bau',
  'rahmen',
  'einbau',
  'netto',
  'karten',
  'produkt',
]);

function add(words: string, change: (before: Phrase) => Phrase): void {
  for (const word of words.split(',')) {
    // Hyphens and apostrophes part words here as they do on the sheet.
    const key = foldWord(word.replaceAll(/[-']/g, ' '));
    book.set(key, change(book.get(key) ?? EMPTY));
  }
}

add(fillerWords, (before) => ({ ...before, isFiller: true }));
for (const [atoms, words] of Object.entries(labelWords)) {
  add(words, (before) => ({ ...before, atoms: atoms.split('+') as Atom[] }));
  if (atoms.includes('+')) continue;
  for (const word of words.split(',')) {
    const key = foldWord(word);
    if (!key.includes(' ') && key.length >= 4) compoundEnds.add(key);
  }
}
for (const [slot, value, words] of valueWords)
  add(words, (before) => ({ ...before, value: { slot, value } }));

export interface FoundPhrase {
  readonly phrase: Phrase;
  /** How many of the words it took. */
  readonly words: number;
  readonly steps: number;
}

/** The longest known phrase at the beginning of these words. */
export function phraseAt(words: readonly string[]): FoundPhrase | undefined {
  const most = Math.min(MOST_WORDS, words.length);
  for (let count = most; count >= 1; count -= 1) {
    const phrase = book.get(words.slice(0, count).join(' '));
    if (phrase) return { phrase, words: count, steps: most - count + 1 };
  }
  const first = words[0] ?? '';
  const phrase = book.get(withoutEnding(first)) ?? compound(first);
  return phrase && { phrase, words: 1, steps: most + LONGEST_COMPOUND };
}

/** 'kuhlers', 'laufwerke': the plain word of a longer form. */
function withoutEnding(word: string): string {
  return word.length >= 6 ? word.replace(/(?:es|en|er|s|e|n)$/, '') : word;
}

/** 'kuhlerhohe' is cooler and height; nothing when a member is unknown. */
function compound(word: string): Phrase | undefined {
  if (word.length < 7 || word.length > LONGEST_COMPOUND) return undefined;
  for (let at = 3; at <= word.length - 4; at += 1) {
    const end = word.slice(at);
    if (!compoundEnds.has(end)) continue;
    const start = word.slice(0, at);
    const first = NEUTRAL_STARTS.has(start) ? EMPTY : firstMember(start);
    if (!first) continue;
    return { atoms: [...first.atoms, ...(book.get(end)?.atoms ?? [])], value: undefined, isFiller: false };
  }
  return undefined;
}

function firstMember(start: string): Phrase | undefined {
  const found = book.get(start) ?? (/[ns]$/.test(start) ? book.get(start.slice(0, -1)) : undefined);
  return found && found.atoms.length > 0 ? found : undefined;
}
