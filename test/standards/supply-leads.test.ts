import { describe, expect, it } from 'vitest';
import { bundleDiameter, leastLeadLength, supplyLeadLengths } from '../../geometry/standards/supply-leads';

describe('leads of a supply', () => {
  it('no usual length is under the least the guide recommends (document 336521, revision 2.01: 150 mm)', () => {
    expect(leastLeadLength.value).toBe(150);
    for (const family of Object.values(supplyLeadLengths))
      for (const length of Object.values(family)) expect(length.value).toBeGreaterThanOrEqual(150);
  });

  it('bundles of round leads are no thinner than circles packed in a circle', () => {
    // Two side by side; three about a point: 1 + 2 / sqrt 3; seven: six about one.
    expect(bundleDiameter(2, 9)).toBeCloseTo(18, 9);
    expect(bundleDiameter(3, 9)).toBeCloseTo(9 * (1 + 2 / Math.sqrt(3)), 3);
    expect(bundleDiameter(7, 9)).toBeCloseTo(27, 9);
  });
});
