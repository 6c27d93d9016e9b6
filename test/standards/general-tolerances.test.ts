import { describe, expect, it } from 'vitest';
import {
  defaultPlusMinus,
  generalTolerance,
  linearTolerances,
} from '../../geometry/standards/general-tolerances';

describe('general tolerances (ISO 2768-1:1989, table 1)', () => {
  it.each([
    ['f', [0.05, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5, undefined]],
    ['m', [0.1, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2]],
    ['c', [0.2, 0.3, 0.5, 0.8, 1.2, 2, 3, 4]],
    ['v', [undefined, 0.5, 1, 1.5, 2.5, 4, 6, 8]],
  ] as const)('class %s', (toleranceClass, row) => {
    const sizes = [1, 5, 20, 100, 300, 700, 1500, 3000];
    expect(sizes.map((size) => generalTolerance(toleranceClass, size))).toEqual([...row]);
  });

  it.each([
    // upper ends of the ranges as printed: over 3 up to 6, over 6 up to 30, ...
    [3, 'c', 0.2, 0.3],
    [6, 'm', 0.1, 0.2],
    [30, 'm', 0.2, 0.3],
    [120, 'm', 0.3, 0.5],
    [400, 'm', 0.5, 0.8],
    [1000, 'm', 0.8, 1.2],
    [2000, 'm', 1.2, 2],
  ] as const)('counts %d itself into the lower range', (end, toleranceClass, within, beyond) => {
    expect(generalTolerance(toleranceClass, end)).toBe(within);
    expect(generalTolerance(toleranceClass, end + 0.01)).toBe(beyond);
  });

  it('leaves no size between ranges, from 0.5 to 4000', () => {
    const rows = linearTolerances.value;
    expect([rows[0]?.over, rows.at(-1)?.upTo]).toEqual([0.5, 4000]);
    for (const [i, row] of rows.slice(1).entries()) expect(row.over).toBe(rows[i]?.upTo);
  });

  it('takes the sign away and refuses what is no length', () => {
    expect(generalTolerance('c', -100)).toBe(0.8);
    expect(() => generalTolerance('m', Number.NaN)).toThrow(RangeError);
    expect(() => defaultPlusMinus('measured', Number.POSITIVE_INFINITY)).toThrow(RangeError);
  });
});

describe('tolerance of a dimension that states none (our choice over ISO 2768-1 classes)', () => {
  it('gives a sheet and a standard class m, an assumption class c', () => {
    expect(defaultPlusMinus('sheet', 312)).toBe(0.5);
    expect(defaultPlusMinus('standard', 100)).toBe(0.3);
    expect(defaultPlusMinus('assumed', 312)).toBe(1.2);
  });

  it('trusts a measurement more than a sheet, and an assumption least', () => {
    for (const size of [50, 140]) {
      expect(defaultPlusMinus('measured', size)).toBeLessThan(defaultPlusMinus('sheet', size));
      expect(defaultPlusMinus('sheet', size)).toBeLessThan(defaultPlusMinus('assumed', size));
    }
    expect(defaultPlusMinus('measured', 330)).toBeGreaterThan(defaultPlusMinus('measured', 140));
  });
});
