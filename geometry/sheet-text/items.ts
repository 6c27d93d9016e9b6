/** From the tokens of one cell to what they say: ideas, figures, plugs, values in words, and what parts them. */
import { type Amount, amountAt } from './amounts';
import type { DecimalMark } from './numbers';
import type { TextSpan } from './reading';
import { type Side, sideOfWord } from './sides';
import type { Token } from './tokens';
import { type SheetUnit, unitNamed } from './units';
import type { Atom } from './words/atoms';
import { phraseAt, type ValueWord } from './words/phrase-book';
import { numberWords } from './words/value-words';

export type Item = TextSpan &
  (
    | {
        readonly type: 'atoms';
        readonly atoms: readonly Atom[];
        readonly value: ValueWord | undefined;
        readonly unit?: SheetUnit;
      }
    | { readonly type: 'amount'; readonly amount: Amount }
    | { readonly type: 'count'; readonly count: number }
    | { readonly type: 'pins'; readonly pins: string }
    | { readonly type: 'lanes'; readonly lanes: string }
    | { readonly type: 'm2'; readonly length: number | undefined }
    | { readonly type: 'unit'; readonly unit: SheetUnit }
    /** 'L x W x H' */
    | { readonly type: 'order'; readonly sides: readonly Side[] }
    | { readonly type: 'unknown' }
    | { readonly type: 'stop'; readonly mark: string }
  );

/** Marks that mean nothing by themselves: bullets, rules, about, at most. */
const SKIPPED: ReadonlySet<string> = new Set([...'-*•·►▪◦‣~≈<≤=_#–—©®™✓✔→[]|`^\'"']);
const ABBREVIATED =
  /^(max|min|inkl|incl|excl|exkl|ca|approx|aprox|env|typ|pcs|stat|tem|temp|dia|anz|prof|larg|haut|long)$/;
const JOINERS: ReadonlySet<string> = new Set(['and', 'und', 'et', 'y', 'e', 'en']);

export interface Items {
  readonly items: readonly Item[];
  readonly steps: number;
}

export function itemsOf(tokens: readonly Token[], mark: DecimalMark): Items {
  const items: Item[] = [];
  let steps = 0;
  let at = 0;
  while (at < tokens.length) {
    const found = itemAt(tokens, at, mark);
    steps += found.steps;
    if (found.item) items.push(found.item);
    at = found.next;
  }
  return { items, steps };
}

interface Found {
  readonly item: Item | undefined;
  readonly next: number;
  readonly steps: number;
}

function itemAt(tokens: readonly Token[], at: number, mark: DecimalMark): Found {
  const token = tokens[at];
  if (!token) return { item: undefined, next: at + 1, steps: 1 };
  const { start, end } = token;
  const one = (item: Item | undefined): Found => ({ item, next: at + 1, steps: 1 });
  switch (token.type) {
    case 'number':
    case 'fraction': {
      const { amount, count, next } = amountAt(tokens, at, mark);
      const last = tokens[next - 1]?.end ?? end;
      const item: Item =
        count !== undefined
          ? { type: 'count', count, start, end: last }
          : { type: 'amount', amount, start, end: last };
      return { item, next, steps: next - at };
    }
    case 'pins':
      return one({ type: 'pins', pins: token.pins, start, end });
    case 'lanes':
      return one({ type: 'lanes', lanes: token.lanes, start, end });
    case 'm2':
      return one({ type: 'm2', length: token.length, start, end });
    case 'unit':
      return one({ type: 'unit', unit: token.unit, start, end });
    case 'letters':
      return one({
        type: 'order',
        sides: token.letters.map((one) => sideOfWord(one, token.letters)),
        start,
        end,
      });
    case 'mark':
      return one(markItem(token.mark, tokens, at));
    case 'word':
      return wordItem(tokens, at, token, mark);
    default:
      return one({ type: 'stop', mark: '|', start, end });
  }
}

function markItem(mark: string, tokens: readonly Token[], at: number): Item | undefined {
  const token = tokens[at];
  if (!token) return undefined;
  const { start, end } = token;
  if (mark === '.') {
    const before = tokens[at - 1];
    return before?.type === 'word' && ABBREVIATED.test(before.word)
      ? undefined
      : { type: 'stop', mark, start, end };
  }
  if (',;:()/+&'.includes(mark)) return { type: 'stop', mark, start, end };
  if (SKIPPED.has(mark)) return undefined;
  return { type: 'unknown', start, end };
}

function wordItem(
  tokens: readonly Token[],
  at: number,
  token: Token & { readonly type: 'word' },
  mark: DecimalMark,
): Found {
  const { start, end, word } = token;
  const next = tokens[at + 1];
  const startsFigure = next?.type === 'number' || next?.type === 'pins' || next?.type === 'fraction';
  if (JOINERS.has(word) && (startsFigure || (next?.type === 'word' && Object.hasOwn(numberWords, next.word))))
    return { item: { type: 'stop', mark: '&', start, end }, next: at + 1, steps: 1 };
  const order = orderAt(tokens, at);
  if (order) return order;
  const letter = sidedAmountAt(tokens, at, word, mark);
  if (letter) return letter;
  const count = numberWords[word];
  if (
    count !== undefined &&
    Object.hasOwn(numberWords, word) &&
    phraseAt(wordsAt(tokens, at).words)?.words !== 2
  )
    return { item: { type: 'count', count, start, end }, next: at + 1, steps: 2 };
  return phraseItem(tokens, at, token);
}

function phraseItem(tokens: readonly Token[], at: number, token: Token & { readonly type: 'word' }): Found {
  const { start, end, word } = token;
  const { words, ends } = wordsAt(tokens, at);
  const found = phraseAt(words);
  if (!found) {
    const side = word.length === 1 && !isArticle(tokens, at) ? sideOfWord(word, [word]) : undefined;
    const item: Item = side
      ? { type: 'atoms', atoms: [side], value: undefined, start, end }
      : { type: 'unknown', start, end };
    return { item, next: at + 1, steps: 4 };
  }
  const { phrase, words: taken, steps } = found;
  const last = ends[taken - 1] ?? at;
  const isSide =
    phrase.isFiller && word.length === 1 && taken === 1 && !isArticle(tokens, at) && isAlone(tokens, at);
  const side = isSide ? sideOfWord(word, [word]) : undefined;
  if (side)
    return { item: { type: 'atoms', atoms: [side], value: undefined, start, end }, next: at + 1, steps };
  const unit = taken === 1 ? namedUnit(word) : undefined;
  const saysNothing = phrase.atoms.length === 0 && phrase.value === undefined;
  const item: Item | undefined = saysNothing
    ? undefined
    : {
        type: 'atoms',
        atoms: phrase.atoms,
        value: phrase.value,
        ...(unit ? { unit } : {}),
        start,
        end: tokens[last]?.end ?? end,
      };
  return { item, next: last + 1, steps };
}

/** 'CFM' at the head of a column is a measure and its unit. */
function namedUnit(word: string): SheetUnit | undefined {
  const unit = word.length >= 3 ? unitNamed(word) : undefined;
  return unit && ['speed', 'flow', 'sound'].includes(unit.measure) ? unit : undefined;
}

/** Up to five words from here on, across hyphens, apostrophes and the dots of abbreviations. */
function wordsAt(
  tokens: readonly Token[],
  at: number,
): { readonly words: readonly string[]; readonly ends: readonly number[] } {
  const words: string[] = [];
  const ends: number[] = [];
  for (let index = at; index < tokens.length && words.length < 5 && index < at + 10; index += 1) {
    const token = tokens[index];
    if (token?.type === 'word') {
      words.push(token.word);
      ends.push(index);
    } else if (token?.type !== 'mark' || !isGlue(tokens, index, token.mark)) break;
  }
  return { words, ends };
}

function isGlue(tokens: readonly Token[], index: number, mark: string): boolean {
  if (mark === '-' || mark === "'") return true;
  const before = tokens[index - 1];
  return mark === '.' && before?.type === 'word' && ABBREVIATED.test(before.word);
}

/** 'L x W x H', 'largo x alto x ancho', 'L/W/H': the sides a list of figures is in. */
function orderAt(tokens: readonly Token[], at: number): Found | undefined {
  const words: string[] = [];
  let index = at;
  for (; words.length < 4; index += 2) {
    const token = tokens[index];
    if (token?.type !== 'word' || !sideOfWord(token.word, [])) break;
    words.push(token.word);
    const joint = tokens[index + 1];
    const isJoint =
      (joint?.type === 'word' && joint.word === 'x') || (joint?.type === 'mark' && '/*'.includes(joint.mark));
    if (!isJoint) {
      index += 1;
      break;
    }
  }
  if (words.length < 2 || words.length > 3) return undefined;
  const isFrench = words[0] === 'l' && words[1] === 'l';
  // Longueur x largeur: two letters alike, told apart by their case or not at all.
  const sides = words.map((word, place) => (isFrench && place === 1 ? 'width' : sideOfWord(word, words)));
  const start = tokens[at]?.start ?? 0;
  const end = tokens[index - 1]?.end ?? start;
  return { item: { type: 'order', sides, start, end }, next: index, steps: words.length * 2 };
}

/** 'L 315 x W 140 x T 28 mm', 'L=281mm'. */
function sidedAmountAt(
  tokens: readonly Token[],
  at: number,
  word: string,
  mark: DecimalMark,
): Found | undefined {
  if (word.length !== 1 || !sideOfWord(word, [])) return undefined;
  const second = tokens[at + 1];
  const isEqual = second?.type === 'mark' && (second.mark === '=' || second.mark === ':');
  const from = isEqual ? at + 2 : at + 1;
  if (tokens[from]?.type !== 'number') return undefined;
  const { amount, count, next } = amountAt(tokens, at, mark);
  if (count !== undefined) return undefined;
  const start = tokens[at]?.start ?? 0;
  return {
    item: { type: 'amount', amount, start, end: tokens[next - 1]?.end ?? start },
    next,
    steps: next - at,
  };
}

/** French and Italian articles: d'air, l'alimentation. */
function isArticle(tokens: readonly Token[], at: number): boolean {
  const next = tokens[at + 1];
  return next?.type === 'mark' && next.mark === "'";
}

/** Nothing but this letter in its cell, or a figure right after it. */
function isAlone(tokens: readonly Token[], at: number): boolean {
  const next = tokens[at + 1];
  return (
    (at === 0 && next === undefined) ||
    next?.type === 'number' ||
    (next?.type === 'mark' && (next.mark === ':' || next.mark === '='))
  );
}
