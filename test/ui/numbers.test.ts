import { describe, expect, test } from 'vitest';
import { countOf, fieldText, formatMillimetres, readNumber } from '../../src/ui/numbers';

describe('a length', () => {
  test.each([
    [12.34, '12.3'],
    [-6, '−6.0'],
    [0, '0.0'],
    [-0, '0.0'],
    [0.04, '0.04'],
    [-0.04, '−0.04'],
    [-0.001, '0.00'],
    [0.1, '0.1'],
  ])('%d reads %s', (value, text) => expect(formatMillimetres(value)).toBe(text));
});

describe('a typed number', () => {
  test.each([
    ['12', 12],
    [' 12,5 ', 12.5],
    ['−3', -3],
    ['+.5', 0.5],
    ['1e2', 100],
  ])('%j is %d', (text, value) => expect(readNumber(text)).toBe(value));

  test.each(['', 'abc', '12 mm', 'NaN', 'Infinity', '1e999', '0x10', '1,2,3', '--1'])('%j is none', (text) =>
    expect(readNumber(text)).toBeUndefined(),
  );

  test('comes back from the field as it went in, without the noise of sums', () => {
    expect(fieldText(0.1 + 0.2)).toBe('0.3');
    expect(readNumber(fieldText(-87.063))).toBe(-87.063);
  });
});

test('counts read as words', () => {
  expect([countOf(1, 'fault'), countOf(3, 'fault'), countOf(2, 'field needs', 'fields need')]).toEqual([
    '1 fault',
    '3 faults',
    '2 fields need',
  ]);
});
