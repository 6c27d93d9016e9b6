import { describe, expect, it } from 'vitest';
import {
  efficiency115Volt,
  efficiency230Volt,
  powerExcursions,
  processorCurrents,
} from '../../geometry/standards/supply-guide';

it('prints the excursions of document 613768 revision 2.01, table 3-3', () => {
  const rows = powerExcursions.value.map((row) => [
    row.microseconds,
    row.dutyCycle,
    row.smallOrWithout16Pin,
    row.above450With16Pin,
  ]);
  expect(rows).toEqual([
    [100, 0.05, 1.5, 2.0],
    [1_000, 0.08, 1.45, 1.8],
    [10_000, 0.125, 1.35, 1.6],
    [100_000, 0.25, 1.1, 1.2],
    [Number.POSITIVE_INFINITY, 1, 1, 1],
  ]);
});

it('prints the processor currents of document 336521, table 2-1, and the 291 W and 437 W they are known as', () => {
  const of125 = processorCurrents.value.find(({ ratedWatts }) => ratedWatts === 125);
  expect(Math.round((of125?.continuousAmperes ?? 0) * 11.2)).toBe(291);
  expect(Math.round((of125?.peakAmperes ?? 0) * 11.2)).toBe(437);
  const of165 = processorCurrents.value.find(({ ratedWatts }) => ratedWatts === 165);
  expect([of165?.continuousAmperes, of165?.peakAmperes]).toEqual([37.5, 40]);
});

describe('efficiency levels (80 PLUS, internal, through two articles at 115 V, one at 230 V)', () => {
  it.each([
    ['Bronze', [82, 85, 82], [85, 88, 85]],
    ['Silver', [85, 88, 85], [87, 90, 87]],
    ['Gold', [87, 90, 87], [90, 92, 89]],
    ['Platinum', [90, 92, 89], [92, 94, 90]],
    ['Titanium', [92, 94, 90], [94, 96, 94]],
  ] as const)('%s', (level, at115, at230) => {
    for (const [table, percent] of [
      [efficiency115Volt, at115],
      [efficiency230Volt, at230],
    ] as const) {
      const { at20, at50, at100 } = table.value[level];
      expect([at20, at50, at100].map((share) => Math.round(share * 100))).toEqual([...percent]);
    }
  });
});
