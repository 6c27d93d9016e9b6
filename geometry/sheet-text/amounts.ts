/** Figures with their units, ranges and bands: '400-1500 rpm ±10%', '322 x 136 x 58 mm', '128 (W) x 75 (D)'. */
import { type DecimalMark, type NumberReading, readingsOf } from './numbers';
import { type Side, sideOfWord } from './sides';
import type { Token } from './tokens';
import type { SheetUnit } from './units';

export interface Band {
  readonly value: number;
  readonly isPercent: boolean;
}

export interface Figure {
  /** More than one where the digits can be read in two ways; none where they cannot be read. */
  readonly readings: readonly NumberReading[];
  readonly unit: SheetUnit | undefined;
  readonly band: Band | undefined;
  /** The lower end, where the sheet gives a range; `readings` are the upper end. */
  readonly isRange: boolean;
  readonly side: Side;
}

export interface Amount {
  readonly figures: readonly Figure[];
  /** '3 x 92 mm' */
  readonly count: number | undefined;
}

export interface AmountFound {
  readonly amount: Amount;
  /** Set when the number only counts what comes next: '4 x DIMM'. */
  readonly count: number | undefined;
  readonly next: number;
}

const MOST_FIGURES = 4;
const LARGEST_COUNT = 16;
const RANGE_WORDS: ReadonlySet<string> = new Set(['to', 'bis', 'a', 'tot', 'hasta', 'through']);

/** The amount that begins at this token: a number, or the letter of a side before one. */
export function amountAt(tokens: readonly Token[], at: number, mark: DecimalMark): AmountFound {
  const figures: Figure[] = [];
  let next = at;
  let isProduct = false;
  while (figures.length < MOST_FIGURES) {
    const found = figureAt(tokens, next, mark);
    if (!found) break;
    figures.push(found.figure);
    next = found.next;
    const after = productAt(tokens, next, figures);
    if (after === undefined) break;
    if (after === 'counts') {
      const count = countOf(figures[0]);
      const isCount = figures.length === 1 && count !== undefined;
      return { amount: { figures, count: undefined }, count: isCount ? count : undefined, next: next + 1 };
    }
    isProduct = true;
    next = after;
  }
  const [first, second, third] = figures;
  const count = isProduct && first && second && !third ? countOf(first) : undefined;
  if (count !== undefined && second && isCountable(second))
    return { amount: { figures: [second], count }, count: undefined, next };
  return { amount: { figures: withSharedUnits(figures), count: undefined }, count: undefined, next };
}

/** Where the next figure of a product begins; 'counts' when a times sign leads to something that is no figure. */
function productAt(
  tokens: readonly Token[],
  at: number,
  figures: readonly Figure[],
): number | 'counts' | undefined {
  const token = tokens[at];
  const isTimes =
    (token?.type === 'word' && token.word === 'x') || (token?.type === 'mark' && token.mark === '*');
  const begins = (index: number) => {
    const one = tokens[index];
    if (one?.type === 'number' || one?.type === 'fraction') return true;
    return (
      one?.type === 'word' &&
      one.word.length === 1 &&
      sideOfWord(one.word, []) !== undefined &&
      isSided(tokens, index)
    );
  };
  if (isTimes) return begins(at + 1) ? at + 1 : 'counts';
  // 'L=281mm W=126mm H=49mm': sided figures side by side belong together.
  const hasSides = figures.every((figure) => figure.side !== undefined);
  return hasSides && token?.type === 'word' && begins(at) ? at : undefined;
}

function isSided(tokens: readonly Token[], at: number): boolean {
  const next = tokens[at + 1];
  if (next?.type === 'number') return true;
  return (
    next?.type === 'mark' && (next.mark === '=' || next.mark === ':') && tokens[at + 2]?.type === 'number'
  );
}

interface FigureFound {
  readonly figure: Figure;
  readonly next: number;
}

function figureAt(tokens: readonly Token[], at: number, mark: DecimalMark): FigureFound | undefined {
  let next = at;
  let side: Side;
  const first = tokens[at];
  if (first?.type === 'word') {
    side = sideOfWord(first.word, []);
    next += tokens[at + 1]?.type === 'mark' ? 2 : 1;
  }
  const number = numberAt(tokens[next], mark);
  if (!number) return undefined;
  next += 1;
  let readings = number;
  let unit = unitToken(tokens[next]);
  if (unit) next += 1;
  let isRange = false;
  for (;;) {
    const upper = rangeEnd(tokens, next);
    if (upper === undefined) break;
    // A range of ranges is no range: timings, dates, part numbers.
    readings = isRange ? [] : (numberAt(tokens[upper], mark) ?? []);
    isRange = true;
    next = upper + 1;
    const upperUnit = unitToken(tokens[next]);
    if (upperUnit) {
      unit = upperUnit;
      next += 1;
    }
  }
  const banded = bandAt(tokens, next, mark);
  next = banded?.next ?? next;
  const lateUnit = unit ? undefined : unitToken(tokens[next]);
  if (lateUnit) next += 1;
  const sided = side ? undefined : sideAfter(tokens, next);
  const unitLast = unit || lateUnit || !sided ? undefined : unitToken(tokens[sided.next]);
  const known = unit ?? lateUnit ?? unitLast;
  const isMisspaced =
    isSpaced(tokens[at]) && !['speed', 'mass', 'power', 'flow'].includes(known?.measure ?? '');
  return {
    figure: {
      readings: isMisspaced ? [] : readings,
      unit: known,
      band: banded?.band,
      isRange,
      side: side ?? sided?.side,
    },
    next: (sided?.next ?? next) + (unitLast ? 1 : 0),
  };
}

function isSpaced(token: Token | undefined): boolean {
  return token?.type === 'number' && token.isSpaced;
}

function numberAt(token: Token | undefined, mark: DecimalMark): readonly NumberReading[] | undefined {
  if (token?.type === 'fraction') return [{ value: token.value, halfStep: 1 / 128 }];
  return token?.type === 'number' ? readingsOf(token.digits, mark) : undefined;
}

function unitToken(token: Token | undefined): SheetUnit | undefined {
  return token?.type === 'unit' ? token.unit : undefined;
}

/** The index of the number after 'to', a dash or a tilde. */
function rangeEnd(tokens: readonly Token[], at: number): number | undefined {
  const token = tokens[at];
  const isDash = token?.type === 'mark' && (token.mark === '-' || token.mark === '~' || token.mark === '…');
  const isWord = token?.type === 'word' && RANGE_WORDS.has(token.word);
  return (isDash || isWord) && tokens[at + 1]?.type === 'number' ? at + 1 : undefined;
}

/** '±10%', '+/- 0.5', '(± 5 %)'. */
function bandAt(
  tokens: readonly Token[],
  at: number,
  mark: DecimalMark,
): { readonly band: Band | undefined; readonly next: number } | undefined {
  let next = at;
  const isBracketed = isMark(tokens[next], '(');
  if (isBracketed) next += 1;
  if (isMark(tokens[next], '±')) next += 1;
  else if (isMark(tokens[next], '+') && isMark(tokens[next + 1], '-')) next += 2;
  else if (isMark(tokens[next], '+') && isMark(tokens[next + 1], '/') && isMark(tokens[next + 2], '-'))
    next += 3;
  else return undefined;
  const readings = numberAt(tokens[next], mark);
  if (!readings) return undefined;
  next += 1;
  const unit = unitToken(tokens[next]);
  const isPercent = isMark(tokens[next], '%') || unit?.measure === 'foreign';
  // The unit of the figure may stand behind its band; it is left for the figure to find.
  if (isPercent) next += 1;
  if (isBracketed) {
    if (unit && !isPercent) next += 1;
    if (!isMark(tokens[next], ')')) return undefined;
    next += 1;
  }
  const [only, other] = readings;
  return { band: only && !other ? { value: only.value, isPercent } : undefined, next };
}

/** '(W)' or a bare letter before a times sign. */
function sideAfter(
  tokens: readonly Token[],
  at: number,
): { readonly side: Side; readonly next: number } | undefined {
  const isBracketed = isMark(tokens[at], '(') && isMark(tokens[at + 2], ')');
  const token = tokens[isBracketed ? at + 1 : at];
  if (token?.type !== 'word' || token.word.length !== 1) return undefined;
  const side = sideOfWord(token.word, []);
  return side && { side, next: at + (isBracketed ? 3 : 1) };
}

function isMark(token: Token | undefined, mark: string): boolean {
  return token?.type === 'mark' && token.mark === mark;
}

function countOf(figure: Figure | undefined): number | undefined {
  if (!figure || figure.unit || figure.side || figure.band || figure.isRange) return undefined;
  const [only, other] = figure.readings;
  if (!only || other || only.halfStep !== 0.5 || only.value < 1 || only.value > LARGEST_COUNT)
    return undefined;
  return only.value;
}

/** What can be counted is of another size than the count: '3 x 92 mm', '2 x 16 GB'. */
function isCountable({ unit, readings }: Figure): boolean {
  if (unit?.measure === 'data') return true;
  return (readings[0]?.value ?? 0) >= 40 && unit?.name !== 'in' && unit?.name !== 'cm';
}

/** A unit behind the last figure is the unit of all before it that have none. */
function withSharedUnits(figures: readonly Figure[]): readonly Figure[] {
  let unit: SheetUnit | undefined;
  return figures
    .toReversed()
    .map((figure) => {
      unit = figure.unit ?? unit;
      return { ...figure, unit };
    })
    .toReversed();
}
