import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { fitOfBand, keptInBand } from '../../../geometry/solver/stack-up/fit-verdict';
import { normalDensity, probabilityBelow } from '../../../geometry/solver/stack-up/normal-distribution';

describe('normal distribution', () => {
  it('agrees with a second library over eight sigmas either way', () => {
    let largest = 0;
    for (let step = -8000; step <= 8000; step++) {
      const z = step / 1000;
      const reference: number = jStat.normal.cdf(z, 0, 1);
      largest = Math.max(largest, Math.abs(probabilityBelow(z, 0, 1) - reference));
    }
    expect(largest).toBeLessThan(1e-7);
  });

  it('agrees with printed values', () => {
    // Abramowitz and Stegun, Handbook of Mathematical Functions, table 26.1.
    expect(probabilityBelow(1, 0, 1)).toBeCloseTo(0.8413447461, 6);
    expect(probabilityBelow(2, 0, 1)).toBeCloseTo(0.9772498681, 6);
    expect(probabilityBelow(-3, 0, 1)).toBeCloseTo(0.001349898, 8);
    expect(normalDensity(0, 0, 1)).toBeCloseTo(0.3989422804, 9);
    expect(normalDensity(3, 1, 2)).toBeCloseTo(0.2419707245 / 2, 9);
  });

  it('keeps the tail in proportion', () => {
    // Abramowitz and Stegun, table 26.2: -log10 Q(5) = 6.54265.
    expect(-Math.log10(probabilityBelow(-5, 0, 1))).toBeCloseTo(6.54265, 4);
  });

  it('is certain without spread', () => {
    expect(probabilityBelow(0, -0.1, 0)).toBe(1);
    expect(probabilityBelow(0, 0.1, 0)).toBe(0);
    expect(probabilityBelow(0, 0, 0)).toBe(0);
  });
});

describe('fits in the words of ISO 286-1:2010, 3.3', () => {
  it('names them by the band', () => {
    expect(fitOfBand([0.1, 0.4])).toBe('clearance fit');
    expect(fitOfBand([-0.1, 0.4])).toBe('transition fit');
    expect(fitOfBand([-0.4, -0.1])).toBe('interference fit');
  });

  it('counts the extreme cases of touching as the standard does', () => {
    expect(fitOfBand([0, 0.4])).toBe('clearance fit');
    expect(fitOfBand([-0.4, 0])).toBe('interference fit');
  });

  it('says whether the wanted gap is kept', () => {
    expect(keptInBand([3, 5], 3)).toBe('always');
    expect(keptInBand([2.9, 5], 3)).toBe('depending on the pieces');
    expect(keptInBand([1, 2.9], 3)).toBe('never');
  });
});
