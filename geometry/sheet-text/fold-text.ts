/** The text with accents, capitals and kinds of dashes and quotes taken out, letter for letter in the same places. */

const SAME_PLACE: Readonly<Record<string, string>> = {
  '\u2010': '-',
  '\u2011': '-',
  '\u2012': '-',
  '\u2013': '-',
  '\u2014': '-',
  '\u2212': '-',
  '\u207b': '-',
  '\u00d7': 'x',
  '\u2715': 'x',
  '\u2716': 'x',
  '\u2033': '"',
  '\u201c': '"',
  '\u201d': '"',
  '\u2019': "'",
  '\u2018': "'",
  '\u2032': "'",
  '\u00b9': '¹',
  '\u2009': '\u00a0',
  '\u202f': '\u00a0',
  '\u2007': '\u00a0',
  '\u00ad': '\u200b',
  '\u200c': '\u200b',
  '\u200d': '\u200b',
  '\ufeff': '\u200b',
  '\uff1a': ':',
  ß: 's',
  æ: 'a',
  ø: 'o',
};

/** Same length as the text, so that a place in one is the same place in the other. */
export function foldText(text: string): string {
  let folded = '';
  for (let index = 0; index < text.length; index += 1) folded += foldUnit(text.charAt(index));
  return folded;
}

function foldUnit(unit: string): string {
  if (unit < '\u0080') return unit >= 'A' && unit <= 'Z' ? unit.toLowerCase() : unit;
  const known = SAME_PLACE[unit];
  if (known !== undefined) return known;
  if (!/\p{L}/u.test(unit)) return unit;
  const base = unit.normalize('NFD').charAt(0).toLowerCase();
  return base.length === 1 ? base : unit;
}

/** A dictionary word as the reader meets it: folded, in single spaces. */
export function foldWord(word: string): string {
  return foldText(word).replaceAll('\u200b', '').replaceAll(/\s+/g, ' ').trim();
}
