import fc from 'fast-check';
import { all, create } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { readNumberEntry } from '../../src/ui/number-entry';

const math = create(all ?? {});

const readingOf = (text: string, isLength = true): number => {
  const entry = readNumberEntry(text, isLength);
  if ('fault' in entry) throw new Error(`${text} ${entry.fault}`);
  return entry.value;
};
const faultOf = (text: string, isLength = true): string => {
  const entry = readNumberEntry(text, isLength);
  return 'fault' in entry ? entry.fault : `read as ${entry.value}`;
};

describe('what a person types for a length', () => {
  test.each([
    ['322', 322],
    ['12,7', 12.7],
    ['120+25', 145],
    ['12.5*2', 25],
    ['(30 + 2) mm', 32],
    ['12 11/16"', 322.2625],
    ['12 11/16 in', 322.2625],
    ['11/16"', 17.4625],
    ['12½"', 317.5],
    ['0.5 in', 12.7],
    ['32,2 cm', 322],
    ['0.3 m', 300],
    ['10 in + 2 mm', 256],
    ['2 * 1 1/4 in', 63.5],
    ['(120 + 25) / 2', 72.5],
    ['\u22123 + 10', 7],
    ['0.1 + 0.2', 0.3],
    ['25/2', 12.5],
    ['2.9*20.32', 58.928],
  ])('%s is %d mm', (text, value) => expect(readingOf(text)).toBe(value));
});

describe('what can be read in two ways is refused in words', () => {
  test.each([
    ['322 x 136', /more than one size/],
    ['322 × 136 × 58', /more than one size/],
    ['12 11/16', /fraction without a unit/],
    ['11/16', /fraction without a unit/],
    ['12-11/16"', /give each its unit/],
    ['10 + 1 in', /give each its unit/],
    ['1,234.5', /comma and a point/],
    ['1.234,5', /comma and a point/],
    ['12 13', /two numbers side by side/],
    ['3 in * 2 in', /two lengths/],
    ['12/0', /divides by zero/],
    ['12 1/0 in', /divides by zero/],
    ['12 ft', /cannot be read at ft/],
    ['(12', /closing bracket/],
    ['12+', /stops short/],
    ['abc', /cannot be read at abc/],
    ['NaN', /cannot be read/],
    ['Infinity', /cannot be read/],
    ['1e999', /cannot be read/],
    ['alert(1)', /cannot be read at alert/],
    ['', /empty/],
    [`${'('.repeat(90)}1`, /too long/],
  ])('%s', (text, words) => expect(faultOf(text)).toMatch(words));

  test('a field of watts takes sums but no millimetres', () => {
    expect(readingOf('150+25', false)).toBe(175);
    expect(readingOf('11/16', false)).toBe(0.6875);
    expect(faultOf('3 mm', false)).toMatch(/no unit of length/);
  });
});

type Sum = { readonly text: string };
const number = fc.integer({ min: 1, max: 9999 }).map((n): Sum => ({ text: String(n / 10) }));
const { sum } = fc.letrec<{ sum: Sum }>((tie) => ({
  sum: fc.oneof(
    { maxDepth: 3, depthSize: 'small' },
    number,
    fc
      .tuple(tie('sum'), fc.constantFrom('+', '-', '*', '/'), number)
      .map(([a, sign, b]): Sum => ({ text: `(${a.text})${sign}${b.text}` })),
    fc
      .tuple(number, fc.constantFrom(' + ', ' - ', '*'), tie('sum'))
      .map(([a, sign, b]): Sum => ({ text: `${a.text}${sign}(${b.text})` })),
  ),
}));

describe('against mathjs, an independent reader of arithmetic and units', () => {
  test('sums, products and brackets', () => {
    fc.assert(
      fc.property(sum, ({ text }) => {
        fc.pre(text.length <= 80);
        const expected: unknown = math.evaluate(text);
        if (typeof expected !== 'number') throw new Error('no number');
        // Proper fractions of a ruler are refused on purpose in a field of lengths: here it is a field of watts.
        expect(readingOf(text, false)).toBeCloseTo(expected, 4);
      }),
      { numRuns: 300 },
    );
  });

  test('lengths with units', () => {
    const unit = fc.constantFrom('mm', 'cm', 'in', 'm');
    const length = fc.tuple(fc.integer({ min: 1, max: 5000 }), unit).map(([n, u]) => `${n / 8} ${u}`);
    fc.assert(
      fc.property(length, length, fc.constantFrom('+', '-'), (a, b, sign) => {
        const text = `${a} ${sign} ${b}`;
        const expected = math.unit(math.evaluate(text)).toNumber('mm');
        expect(Math.abs(readingOf(text) - expected)).toBeLessThan(1e-5);
      }),
    );
  });

  test('mixed fractions of an inch', () => {
    fc.assert(
      fc.property(
        fc.nat(40),
        fc.integer({ min: 1, max: 63 }),
        fc.constantFrom(2, 4, 8, 16, 32, 64),
        (whole, over, under) => {
          const expected = math.unit(math.evaluate(`(${whole} + ${over}/${under}) inch`)).toNumber('mm');
          expect(Math.abs(readingOf(`${whole} ${over}/${under}"`) - expected)).toBeLessThan(1e-5);
        },
      ),
    );
  });

  test('whatever is typed, it answers with a finite number or with words', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 100 }), fc.boolean(), (text, isLength) => {
        const entry = readNumberEntry(text, isLength);
        expect('fault' in entry ? entry.fault.length > 0 : Number.isFinite(entry.value)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});
