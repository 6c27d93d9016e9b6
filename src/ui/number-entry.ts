/**
 * What a person types into a field for a number: '322', '12,7', '12 11/16"', '120+25', '12.5*2', '(30 + 2) mm'.
 * A bare number is in the field's own unit; a length may carry mm, cm, m, in or ". Nothing is guessed: what can be
 * read in two ways is refused in words.
 */
import { readNumber } from './numbers';

export type NumberEntry = { readonly value: number } | { readonly fault: string };

/** A number of millimetres (`length`) or a plain one, while it is being worked out. */
interface Amount {
  readonly value: number;
  /** Stated with a unit of length: the value is in millimetres. */
  readonly length: boolean;
}

const MILLIMETRES: ReadonlyMap<string, number> = new Map([
  ['mm', 1],
  ['cm', 10],
  ['m', 1000],
  ['in', 25.4],
  ['inch', 25.4],
  ['inches', 25.4],
  ['"', 25.4],
]);

const VULGAR: ReadonlyMap<string, string> = new Map([
  ['½', '1/2'],
  ['¼', '1/4'],
  ['¾', '3/4'],
  ['⅛', '1/8'],
  ['⅜', '3/8'],
  ['⅝', '5/8'],
  ['⅞', '7/8'],
]);

/** Longer than any sum a person types into one field. */
const LONGEST_ENTRY = 80;

/** A fraction of a ruler's inch with no unit: nobody can tell inches from a division of millimetres. */
const BARE_FRACTION = 'is a fraction without a unit: add mm or in';
const RULER_PARTS: ReadonlySet<string> = new Set(['2', '4', '8', '16', '32', '64']);

class Refusal extends Error {}

/** `isLength`: the field is in millimetres and takes units of length. Never throws. */
export function readNumberEntry(text: string, isLength: boolean): NumberEntry {
  const plain = readNumber(text);
  if (plain !== undefined) return { value: plain };
  if (text.trim() === '') return { fault: 'is empty' };
  if (text.length > LONGEST_ENTRY) return { fault: 'is too long for one number' };
  try {
    const value = new EntryReader(text, isLength).read();
    if (!Number.isFinite(value)) return { fault: 'is too large' };
    // Sums are rounded to a millionth: no one types more, and 0.1 + 0.2 should read 0.3.
    return { value: Number(value.toFixed(6)) };
  } catch (error) {
    if (error instanceof Refusal) return { fault: error.message };
    throw error;
  }
}

const TOKEN = /\s*(\d+(?:[.,]\d*)*|[.,]\d+|[a-z]+|["+\-*/()]|\S)/giy;

function tokensOf(text: string): readonly string[] {
  const vulgar = [...VULGAR].reduce(
    (whole, [sign, fraction]) => whole.replaceAll(sign, ` ${fraction}`),
    text,
  );
  const plain = vulgar
    .replaceAll(/[\u2212\u2013]/g, '-')
    .replaceAll(/[\u2033\u201d\u201c]|''/g, '"')
    .replaceAll('⁄', '/')
    .trim();
  return [...plain.matchAll(TOKEN)].flatMap(([, token]) => (token === undefined ? [] : [token]));
}

/** Reads one entry from left to right: sums of products of measures and brackets. */
class EntryReader {
  private readonly tokens: readonly string[];
  private readonly isLength: boolean;
  private at = 0;

  constructor(text: string, isLength: boolean) {
    this.tokens = tokensOf(text);
    this.isLength = isLength;
  }

  read(): number {
    const amount = this.sum();
    const rest = this.tokens[this.at];
    if (rest !== undefined) throw refusalOf(rest);
    return amount.value;
  }

  private sum(): Amount {
    let total = this.product();
    for (;;) {
      const sign = this.take('+') ? 1 : this.take('-') ? -1 : 0;
      if (sign === 0) return total;
      const next = this.product();
      if (next.length !== total.length)
        throw new Refusal('adds a number with a unit to one without: give each its unit');
      total = { value: total.value + sign * next.value, length: total.length };
    }
  }

  private product(): Amount {
    let total = this.factor();
    for (;;) {
      if (this.take('*')) {
        const next = this.factor();
        if (total.length && next.length) throw new Refusal('multiplies two lengths');
        total = { value: total.value * next.value, length: total.length || next.length };
      } else if (this.take('/')) {
        const next = this.factor();
        if (next.length) throw new Refusal('divides by a length');
        if (next.value === 0) throw new Refusal('divides by zero');
        total = { value: total.value / next.value, length: total.length };
      } else return total;
    }
  }

  private factor(): Amount {
    if (this.take('-')) {
      const { value, length } = this.factor();
      return { value: -value, length };
    }
    if (!this.take('(')) return this.withUnit(this.measure());
    const inner = this.sum();
    if (!this.take(')')) throw new Refusal('misses a closing bracket');
    return inner.length ? inner : this.withUnit(inner.value);
  }

  /** '12', '12.7', '12 11/16'; '11/16' only where a unit follows, else it is a division. */
  private measure(): number {
    const whole = this.number();
    const mixed = this.fractionAt(this.at);
    if (mixed !== undefined && Number.isInteger(whole)) {
      if (this.isLength && !this.isUnit(this.tokens[this.at + 3])) throw new Refusal(BARE_FRACTION);
      this.at += 3;
      return whole + mixed;
    }
    const alone = this.fractionAt(this.at - 1);
    if (alone === undefined) return whole;
    if (this.isUnit(this.tokens[this.at + 2])) {
      this.at += 2;
      return alone;
    }
    if (this.isLength && alone < 1 && RULER_PARTS.has(this.tokens[this.at + 1] ?? ''))
      throw new Refusal(BARE_FRACTION);
    return whole;
  }

  /** Value of 'digits / digits' that starts at a token; undefined for anything else. */
  private fractionAt(at: number): number | undefined {
    const [over, slash, under] = this.tokens.slice(at, at + 3);
    if (slash !== '/' || !/^\d+$/.test(over ?? '') || !/^\d+$/.test(under ?? '')) return undefined;
    if (Number(under) === 0) throw new Refusal('divides by zero');
    return Number(over) / Number(under);
  }

  private number(): number {
    const token = this.tokens[this.at];
    if (token === undefined) throw new Refusal('stops short');
    if (!/^[\d.,]/.test(token)) throw refusalOf(token);
    if (token.includes(',') && token.includes('.'))
      throw new Refusal(`has a comma and a point in ${token}: leave the thousands out`);
    const value = readNumber(token);
    if (value === undefined) throw refusalOf(token);
    this.at += 1;
    return value;
  }

  private withUnit(value: number): Amount {
    const token = this.tokens[this.at];
    if (!this.isUnit(token)) return { value, length: false };
    if (!this.isLength) throw new Refusal(`takes no unit of length: ${token}`);
    this.at += 1;
    return { value: value * (MILLIMETRES.get(token.toLowerCase()) ?? 1), length: true };
  }

  private isUnit(token: string | undefined): token is string {
    return token !== undefined && MILLIMETRES.has(token.toLowerCase());
  }

  private take(sign: string): boolean {
    if (this.tokens[this.at] !== sign) return false;
    this.at += 1;
    return true;
  }
}

function refusalOf(token: string): Refusal {
  if (/^(x|×|·)$/i.test(token)) return new Refusal('holds more than one size: one field, one number');
  if (/^\d/.test(token)) return new Refusal(`has two numbers side by side before ${token}`);
  return new Refusal(`cannot be read at ${token}`);
}
