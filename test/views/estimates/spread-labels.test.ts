import fc from 'fast-check';
import { expect, test } from 'vitest';
import { spreadLabels } from '../../../src/views/estimates/chart/spread-labels';

test('labels keep their order, do not cover one another, and stay in the room when there is enough', () => {
  const heights = fc.array(fc.double({ min: -50, max: 250, noNaN: true }), { minLength: 1, maxLength: 8 });
  fc.assert(
    fc.property(heights, (wished) => {
      const labels = wished.map((at, i) => ({ id: String(i), at }));
      const places = spreadLabels(labels, 15, { from: 20, to: 180 });
      const sorted = [...labels].sort((a, b) => a.at - b.at).map(({ id }) => places.get(id) ?? Number.NaN);
      sorted.forEach((place, i) => {
        expect(place).toBeLessThanOrEqual(180);
        expect(place).toBeGreaterThanOrEqual(20);
        if (i > 0) expect(place - (sorted[i - 1] ?? 0)).toBeGreaterThanOrEqual(15 - 1e-9);
      });
    }),
  );
});

test('a label with room enough stands where it wants to', () => {
  expect(spreadLabels([{ id: 'a', at: 90 }], 15, { from: 0, to: 180 }).get('a')).toBe(90);
});
