/** What the digits of a sheet may mean: '1.200' is a thousand and two hundred, or one and a fifth. */
import type { Token } from './tokens';

export interface NumberReading {
  readonly value: number;
  /** Half of the last place that is written: how exactly the sheet speaks. */
  readonly halfStep: number;
}

/** Which mark parts whole from tenths in this text, as far as its other numbers tell. */
export type DecimalMark = '.' | ',' | undefined;

/** Looks for numbers that can be read in one way only: '12,5' or '63.5'. Contradicting ones tell nothing. */
export function decimalMarkOf(tokens: readonly Token[]): DecimalMark {
  let points = 0;
  let commas = 0;
  for (const token of tokens) {
    if (token.type !== 'number') continue;
    const met = /^\d+([.,])(\d+)$/.exec(token.digits);
    if (!met) continue;
    const [, mark, after = ''] = met;
    if (after.length === 3 && !token.digits.startsWith('0')) continue;
    if (mark === '.') points += 1;
    else commas += 1;
  }
  if (points > 0 && commas > 0) return undefined;
  return points > 0 ? '.' : commas > 0 ? ',' : undefined;
}

/** All readings of the digits; none for what is no number (a version, a date). */
export function readingsOf(digits: string, mark: DecimalMark): readonly NumberReading[] {
  const plain = digits.replaceAll(/['\u00a0 ]/g, '');
  if (/^\d+$/.test(plain)) return [exact(plain)];
  const single = /^(\d+)([.,])(\d+)$/.exec(plain);
  if (single) return singleMark(single, mark, plain !== digits);
  const grouped = /^\d{1,3}([.,])\d{3}(?:\1\d{3})*(?:[.,]\d+)?$/.exec(plain);
  if (!grouped) return [];
  const thousands = grouped[1] ?? '';
  const whole = plain.replaceAll(thousands, '');
  return /^\d+(?:[.,]\d+)?$/.test(whole) ? [exact(whole)] : [];
}

function singleMark(met: RegExpExecArray, mark: DecimalMark, isGrouped: boolean): readonly NumberReading[] {
  const [, whole = '', met1, after = ''] = met;
  const decimal = exact(`${whole}.${after}`);
  const mayBeThousands = after.length === 3 && whole.length <= 3 && !whole.startsWith('0') && !isGrouped;
  if (!mayBeThousands) return [decimal];
  const thousands = exact(`${whole}${after}`);
  if (mark === undefined) return [thousands, decimal];
  return mark === met1 ? [decimal] : [thousands];
}

function exact(text: string): NumberReading {
  const plain = text.replace(',', '.');
  const decimals = plain.split('.')[1]?.length ?? 0;
  return { value: Number(plain), halfStep: 0.5 * 10 ** -decimals };
}
