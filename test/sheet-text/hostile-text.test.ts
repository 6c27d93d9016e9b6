import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type PartKind, partKinds } from '../../geometry';
import { guessKind } from '../../geometry/sheet-text/guess-kind';
import { readSheetText } from '../../geometry/sheet-text/read-sheet-text';
import { LARGEST_SHEET_TEXT, MOST_LEFTOVERS, type SheetReading } from '../../geometry/sheet-text/reading';
import { readSheets } from './score-sheets';

const kind = fc.constantFrom(...partKinds);

/** Bits of sheets, of code and of nothing, in any order. */
const bit = fc.oneof(
  fc.constantFrom(
    ...[
      '322 x 136 x 58 mm',
      'Höhe:',
      'height',
      '±',
      '12-11/16"',
      '\t',
      '|',
      '\n',
      ';',
      '(',
      ')',
      '2 x 8-pin',
      '1.200',
      ',',
    ],
    ...[
      'x',
      'x16',
      'mit Lüfter',
      'max',
      '400-1500 rpm',
      '=',
      '/',
      '-',
      'M.2 2280',
      '&nbsp;',
      '\u200b',
      '\u0000',
      '\ud800',
      '½',
    ],
  ),
  fc.double().map(String),
  fc.string({ unit: 'binary' }),
  fc.string({ unit: 'grapheme' }),
);
const text = fc.array(bit, { maxLength: 60 }).map((bits) => bits.join(' '));

function expectSound(reading: SheetReading, source: string): void {
  const spans = [
    ...reading.values.map(({ span }) => span),
    ...reading.questions.map(({ span }) => span),
    ...reading.leftovers.map(({ span }) => span),
  ];
  for (const { start, end } of spans) {
    expect(start).toBeGreaterThanOrEqual(0);
    expect(end).toBeGreaterThanOrEqual(start);
    expect(end).toBeLessThanOrEqual(source.length);
  }
  const paths = reading.values.map(({ path }) => path);
  expect(new Set(paths).size).toBe(paths.length);
  for (const { value, plusMinus = 0 } of reading.values) {
    if (typeof value === 'number') expect(Number.isFinite(value) && value > 0).toBe(true);
    expect(Number.isFinite(plusMinus) && plusMinus >= 0).toBe(true);
  }
  expect(reading.leftovers.length).toBeLessThanOrEqual(MOST_LEFTOVERS);
  const asked = reading.questions.flatMap(({ answers }) =>
    answers.flatMap(({ fills }) => fills.map(({ path }) => path)),
  );
  for (const path of asked) expect(paths).not.toContain(path);
}

describe('whatever is pasted', () => {
  test('is read without throwing, and every phrase lies within the text', () => {
    fc.assert(
      fc.property(text, kind, (source, one) => expectSound(readSheetText(source, one), source)),
      { numRuns: 1500 },
    );
  });

  test('is read the same way twice', () => {
    fc.assert(
      fc.property(text, kind, (source, one) => {
        expect(readSheetText(source, one)).toEqual(readSheetText(source, one));
      }),
      { numRuns: 150 },
    );
  });

  test('a guess at the kind never throws', () => {
    fc.assert(
      fc.property(text, (source) => {
        const guess = guessKind(source);
        expect(guess === undefined || partKinds.includes(guess)).toBe(true);
      }),
      { numRuns: 100 },
    );
  });
});

/** Texts that make a careless pattern go back over and over what it has read. */
const bombs: readonly (readonly [name: string, unit: string])[] = [
  ['digits', '1'],
  ['digits and points', '1.1,'],
  ['grouped digits', '1 111 '],
  ['spaces', ' '],
  ['tabs', '\t'],
  ['bars', '|'],
  ['opening brackets', '('],
  ['colons', ':'],
  ['semicolons', 'a;'],
  ['letters', 'a'],
  ['compounds', 'kuhlerhohe'],
  ['sides', 'l x w x '],
  ['products', '1 x 2 x '],
  ['ranges', '1-2-'],
  ['bands', '1 ± 2 '],
  ['labels', 'height '],
  ['labels and commas', 'height, '],
  ['remarks', '155 mm (with fan) '],
  ['values', 'gold, silver, '],
  ['statements', 'height 155 mm, '],
  ['lines of statements', 'height 155 mm\n'],
  ['lines that differ', 'height 155 mm width 120 mm depth 80\r\n'],
  ['columns', 'height\twidth\tlength\n'],
  ['pins', '2 x 8-pin '],
  ['names', 'model: x\n'],
  ['halves of a pair', '\ud83d'],
  ['control characters', '\u0000\u0007'],
  ['unknown words', 'Zwergenhut '],
];

/** The most looks at a token, word or rule that a character of text may cost. */
const MOST_STEPS_A_CHARACTER = 25;

describe('the work', () => {
  test.each(bombs)('on a megabyte of %s is bounded, counted in steps', (_, unit) => {
    const source = unit.repeat(Math.ceil(1_000_000 / unit.length));
    const reading = readSheetText(source, 'cooler');
    expectSound(reading, source);
    expect(reading.steps).toBeLessThan(MOST_STEPS_A_CHARACTER * LARGEST_SHEET_TEXT);
    expect(reading.readTo).toBe(LARGEST_SHEET_TEXT);
  });

  test.each(bombs)('on %s grows in step with the text', (_, unit) => {
    const stepsFor = (length: number) =>
      readSheetText(unit.repeat(Math.ceil(length / unit.length)), 'cooler').steps;
    const ratio = stepsFor(80_000) / stepsFor(20_000);
    expect(ratio).toBeLessThan(4.4);
  });
});

test('a sheet cut off anywhere is read soundly', () => {
  for (const { text: source, truth } of readSheets().slice(0, 30)) {
    for (let length = 0; length < source.length; length += 7) {
      const cut = source.slice(0, length);
      expectSound(readSheetText(cut, truth.kind), cut);
    }
  }
});

test('a sheet read as one of another kind is read soundly', () => {
  for (const { text: source } of readSheets())
    for (const one of partKinds satisfies readonly PartKind[])
      expectSound(readSheetText(source, one), source);
});
