/** Numbers as a person reads and types them. */

const MINUS = '\u2212';

/**
 * A length with one decimal, or two when it is smaller than a tenth, so that a small overlap is never shown as
 * nothing: 12.5, −6.0, −0.04. Without the unit.
 */
export function formatMillimetres(value: number): string {
  const size = Math.abs(value);
  const decimals = size > 0 && size < 0.095 ? 2 : 1;
  const text = size.toFixed(decimals);
  return value < 0 && Number(text) !== 0 ? `${MINUS}${text}` : text;
}

/** A number without noise of arithmetic, in the shortest form that a field can take back. */
export function fieldText(value: number): string {
  return String(Number(value.toFixed(6)));
}

/** What a person typed, with a point or a comma and any kind of minus; undefined when it is no finite number. */
export function readNumber(text: string): number | undefined {
  const plain = text
    .trim()
    .replace(/[\u2212\u2013]/g, '-')
    .replace(',', '.');
  if (!/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(plain)) return undefined;
  const value = Number(plain);
  return Number.isFinite(value) ? value : undefined;
}

/** '1 fault', '3 faults'. */
export function countOf(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** Keeps a number and its unit on one line: '7.3 mm' never breaks in the middle. */
export function keepUnits(sentence: string): string {
  return sentence.replace(/(\d) (?=(?:mm|cm³|%|W|dB|°C)(?:\W|$))/g, '$1\u00a0');
}
