/** One number in one cell of a table, perhaps with its unit behind it. */
import { foldText } from './fold-text';
import { type DecimalMark, decimalMarkOf, readingsOf } from './numbers';
import { tokensOf } from './tokens';

export type { DecimalMark } from './numbers';

export interface NumberCell {
  readonly value: number;
  readonly unit: string | undefined;
}

const LONGEST_NUMBER = 40;

/** Undefined for what is no number; 'ambiguous' for '1.200' where nothing tells which mark parts the tenths. */
export function readNumberCell(text: string, mark: DecimalMark): NumberCell | 'ambiguous' | undefined {
  if (text.length > LONGEST_NUMBER) return undefined;
  const folded = foldText(text.trim());
  const isNegative = folded.startsWith('-');
  const met = /^[+-]?(\d[\d.,'\u00a0 ]*|[.,]\d+)\s*(\S.{0,14})?$/.exec(folded);
  if (!met) return undefined;
  const digits = (met[1] ?? '').trim().replace(/^([.,])/, '0$1');
  const unit = met[2]?.trim();
  const [first, second] = readingsOf(digits, mark);
  if (!first) return undefined;
  if (second) return 'ambiguous';
  return { value: isNegative ? -first.value : first.value, unit };
}

/** Which mark parts whole from tenths in a column of cells; undefined when they do not tell. */
export function decimalMarkOfCells(cells: readonly string[]): DecimalMark {
  const text = cells.join('\n');
  return decimalMarkOf(tokensOf(text, foldText(text)).tokens);
}
