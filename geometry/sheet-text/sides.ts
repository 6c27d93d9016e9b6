/** The sides of a thing, as letters or words name them. */
import { phraseAt } from './words/phrase-book';

export type Side = 'length' | 'width' | 'height' | 'depth' | 'thickness' | undefined;

const LETTERS: Readonly<Record<string, Side>> = {
  l: 'length',
  w: 'width',
  b: 'width',
  h: 'height',
  d: 'depth',
  p: 'depth',
  t: 'thickness',
};

const NAMED: ReadonlySet<string> = new Set(['length', 'width', 'height', 'depth', 'thickness']);

/**
 * The side a letter or word stands for; undefined when it is none. T is the German depth (Tiefe) beside a B for the
 * width (Breite), otherwise the thickness. The A of Spanish sheets is either of two sides and so none.
 */
export function sideOfWord(word: string, others: readonly string[]): Side {
  if (word === 't' && others.includes('b')) return 'depth';
  const letter = Object.hasOwn(LETTERS, word) ? LETTERS[word] : undefined;
  if (letter || word.length < 4) return letter;
  const [atom, more] = phraseAt([word])?.phrase.atoms ?? [];
  return more === undefined && atom !== undefined && NAMED.has(atom) ? (atom as Side) : undefined;
}
