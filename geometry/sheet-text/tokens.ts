/** Cuts a text into numbers, units, words and marks. One pass; every pattern is of bounded length. */
import type { TextSpan } from './reading';
import { type SheetUnit, unitAt, unitNamed } from './units';

export type Token = TextSpan &
  (
    | { readonly type: 'word'; readonly word: string }
    | { readonly type: 'number'; readonly digits: string; readonly isSpaced: boolean }
    /** An exact value written otherwise than in digits and a mark: 12-11/16. */
    | { readonly type: 'fraction'; readonly value: number }
    | { readonly type: 'unit'; readonly unit: SheetUnit }
    /** '8', '4+4', '6+2', '12+4'. */
    | { readonly type: 'pins'; readonly pins: string }
    | { readonly type: 'lanes'; readonly lanes: string }
    /** An M.2 module, with its length where the name tells it. */
    | { readonly type: 'm2'; readonly length: number | undefined }
    | { readonly type: 'letters'; readonly letters: readonly string[] }
    | { readonly type: 'mark'; readonly mark: string }
    | { readonly type: 'column' }
    | { readonly type: 'line' }
  );

const LINE = /\r\n|[\n\r\u0085\u2028\u2029]/y;
const FRACTION =
  /(?:(\d{1,3})[ -])?(\d{1,2})\/(2|4|8|16|32|64)(?= ?(?:"|''|in(?:ch|ches)?\b|zoll|pouce|po\b|pulgada|pollic))/y;
const PINS =
  /(?:(\d{1,2}) ?\+ ?)?(\d{1,2}) ?-? ?(?:pins?|pines|polig|polige|poligen|polen|broches?|poli|contactos)(?![a-z])|12v-2x6|12vhpwr/y;
const M2 = /m\.2(?:[ -]{0,2}22(30|42|60|80|110)(?!\d)(?:-[sd]\d(?:-[a-z])?)?)?(?![a-z])/y;
const LANES = /x ?(16|8|4|1)(?![\d.,]| ?mm)/y;
const LETTERS = /([lwhdtbp])x([lwhdtbp])(?:x([lwhdtbp]))?(?![a-z])/y;
const GROUPED =
  /\d{1,3}(?:['\u00a0]\d{3}){1,4}(?!\d)(?:[.,]\d{1,6})?(?!\d)|\d{1,3} \d{3}(?!\d)(?:[.,]\d{1,6})?(?!\d)/y;
const NUMBER = /\d{1,12}(?:[.,]\d{1,12}){0,4}/y;
const WORD = /(?:(?:lp)?ddr\d|[\p{L}\u200b]{1,40})/uy;
const WATER_COLUMN = /(?:mm|in) ?h2o(?![a-z])/y;
const ENTITY = /&(?:nbsp|times|quot|amp);/y;

export interface Tokens {
  readonly tokens: readonly Token[];
  readonly steps: number;
}

export function tokensOf(text: string, folded: string): Tokens {
  const tokens: Token[] = [];
  let at = 0;
  let steps = 0;
  while (at < folded.length) {
    const token = nextToken(text, folded, at, tokens);
    steps += 1;
    if (token.type === 'space') at = token.end;
    else {
      tokens.push(token);
      at = token.end;
    }
  }
  return { tokens, steps };
}

type Met = Token | (TextSpan & { readonly type: 'space' });

function nextToken(text: string, folded: string, at: number, before: readonly Token[]): Met {
  const first = folded.charAt(at);
  if (isDigit(first)) return numberToken(folded, at);
  if (isBlank(first)) return blankToken(folded, at, before);
  const line = match(LINE, folded, at);
  if (line) return { type: 'line', start: at, end: at + line[0].length };
  const unit = unitAfterNumber(text, folded, at, before);
  if (unit) return unit;
  return wordToken(folded, at, before) ?? markToken(folded, at);
}

function numberToken(folded: string, at: number): Met {
  const isInWord = at > 0 && /[a-z]/.test(folded.charAt(at - 1));
  const fraction = isInWord ? undefined : match(FRACTION, folded, at);
  if (fraction) {
    const [all, whole = '0', upper = '0', lower = '1'] = fraction;
    const value = Number(whole) + Number(upper) / Number(lower);
    return { type: 'fraction', value, start: at, end: at + all.length };
  }
  const pins = match(PINS, folded, at);
  if (pins) {
    const [all, first, second] = pins;
    const name = second === undefined ? '16' : first === undefined ? second : `${first}+${second}`;
    return { type: 'pins', pins: name, start: at, end: at + all.length };
  }
  const grouped = match(GROUPED, folded, at);
  if (grouped && !isDigit(folded.charAt(at - 1))) {
    const digits = grouped[0];
    return { type: 'number', digits, isSpaced: digits.includes(' '), start: at, end: at + digits.length };
  }
  const digits = match(NUMBER, folded, at)?.[0] ?? folded.charAt(at);
  return { type: 'number', digits, isSpaced: false, start: at, end: at + digits.length };
}

function blankToken(folded: string, at: number, before: readonly Token[]): Met {
  let end = at;
  let hasTab = false;
  while (end < folded.length && isBlank(folded.charAt(end))) {
    hasTab ||= folded.charAt(end) === '\t';
    end += 1;
  }
  const last = before.at(-1);
  const isIndent = last === undefined || last.type === 'line';
  const isColumn = hasTab || (end - at >= 3 && !isIndent);
  return { type: isColumn ? 'column' : 'space', start: at, end };
}

function wordToken(folded: string, at: number, before: readonly Token[]): Met | undefined {
  const m2 = match(M2, folded, at);
  if (m2) return { type: 'm2', length: m2[1] ? Number(m2[1]) : undefined, start: at, end: at + m2[0].length };
  const lanes = isAfterBusName(before) ? match(LANES, folded, at) : undefined;
  if (lanes) return { type: 'lanes', lanes: `x${lanes[1] ?? ''}`, start: at, end: at + lanes[0].length };
  const column = match(WATER_COLUMN, folded, at)?.[0];
  const water = column === undefined ? undefined : unitNamed(column);
  if (column && water) return { type: 'unit', unit: water, start: at, end: at + column.length };
  const letters = match(LETTERS, folded, at);
  if (letters) {
    const [all, ...each] = letters;
    return {
      type: 'letters',
      letters: each.filter((one) => one !== undefined),
      start: at,
      end: at + all.length,
    };
  }
  const word = match(WORD, folded, at)?.[0];
  if (word === undefined) return undefined;
  return {
    type: 'word',
    word: word.replaceAll('\u200b', '').replace(/^(?:lp)?ddr\d$/, 'ddr'),
    start: at,
    end: at + word.length,
  };
}

function markToken(folded: string, at: number): Met {
  const entity = match(ENTITY, folded, at)?.[0];
  if (entity === '&nbsp;') return { type: 'space', start: at, end: at + entity.length };
  if (entity === '&times;') return { type: 'word', word: 'x', start: at, end: at + entity.length };
  const mark = folded.charAt(at);
  if (mark === '|') return { type: 'column', start: at, end: at + 1 };
  return { type: 'mark', mark, start: at, end: at + 1 };
}

/** Units stand behind a number (perhaps in brackets) or alone in brackets. */
function unitAfterNumber(
  text: string,
  folded: string,
  at: number,
  before: readonly Token[],
): Met | undefined {
  const last = before.at(-1);
  const isAfter = last !== undefined && (last.type === 'number' || last.type === 'fraction');
  const isBracketed = last?.type === 'mark' && (last.mark === '(' || last.mark === '[');
  const isToleranced = last?.type === 'mark' && last.mark === '%';
  if (!isAfter && !isBracketed && !isToleranced) return undefined;
  const found = unitAt(folded, text, at);
  if (!found) return undefined;
  const { unit, end } = found;
  const name = folded.slice(at, end);
  // One letter may be a side instead: 128W x 75D, 313 mm (L).
  if (isBracketed && (/^[a-z]$/.test(name) ? name !== 'g' : false)) return undefined;
  if (isBracketed && !/^[ \])]/.test(folded.charAt(end))) return undefined;
  if (/^[wh]$/.test(name) && isBesideTimes(folded, end, before)) return undefined;
  if (name === 'in' && /^ [a-wyz]/.test(folded.slice(end, end + 2)) && !isAdjective(folded, end))
    return undefined;
  return { type: 'unit', unit, start: at, end };
}

function isBesideTimes(folded: string, end: number, before: readonly Token[]): boolean {
  const second = before.at(-2);
  return /^ ?x/.test(folded.slice(end, end + 2)) || (second?.type === 'word' && second.word === 'x');
}

function isAdjective(folded: string, end: number): boolean {
  return /^ (?:long|wide|high|tall|deep|thick)/.test(folded.slice(end, end + 6));
}

/** 'PCIe 4.0' or 'PCI Express' stands just before. */
function isAfterBusName(before: readonly Token[]): boolean {
  return before.slice(-5).some((token) => token.type === 'word' && /^(pcie|pci|express)$/.test(token.word));
}

function match(pattern: RegExp, folded: string, at: number): RegExpExecArray | undefined {
  pattern.lastIndex = at;
  return pattern.exec(folded) ?? undefined;
}

function isDigit(unit: string): boolean {
  return unit >= '0' && unit <= '9';
}

function isBlank(unit: string): boolean {
  return (
    unit === ' ' || unit === '\t' || unit === '\u00a0' || unit === '\u200b' || unit === '\f' || unit === '\v'
  );
}
