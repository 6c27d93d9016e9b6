import { describe, expect, it } from 'vitest';
import {
  roundedLength,
  savedByRounding,
  shortestBentPath,
  sideStep,
} from '../../../geometry/solver/assembly/leads/bend-lengths';
import {
  bundleDiameter,
  circlesInCircle,
  mixedBundleDiameter,
} from '../../../geometry/standards/supply-leads';
import { seeded } from './order/random-scenes';

describe('lengths of bent leads', () => {
  it('a square corner rounded with R saves (2 - pi / 2) R', () => {
    expect(savedByRounding(Math.PI / 2, 40)).toBeCloseTo((2 - Math.PI / 2) * 40, 9);
    const rounded = roundedLength(
      [
        [0, 0, 0],
        [300, 0, 0],
        [300, 200, 0],
      ],
      40,
    );
    expect(rounded.length).toBeCloseTo(482.831853, 6);
    expect(rounded.tight).toEqual([]);
  });

  it('a corner without room for its radius is told', () => {
    // A square corner of radius R takes R of each piece beside it (R tan 45 degrees).
    const short = roundedLength(
      [
        [0, 0, 0],
        [30, 0, 0],
        [30, 200, 0],
      ],
      40,
    );
    expect(short.tight).toEqual([{ at: [30, 0, 0], fits: expect.closeTo(30, 9) }]);
    // A piece of 50 between two corners leaves 25 for each.
    const step = roundedLength(
      [
        [0, 0, 0],
        [100, 0, 0],
        [100, 50, 0],
        [200, 50, 0],
      ],
      40,
    );
    expect(step.tight.map((corner) => corner.fits)).toEqual([expect.closeTo(25, 9), expect.closeTo(25, 9)]);
  });

  it.each([
    [40, 20, 52.915026, 57.81874],
    [40, 40, 69.282032, 83.775804],
    [40, 80, 80, 125.663706],
    [30, 10, 33.166248, 35.141133],
  ])('side step R %d, h %d', (radius, h, run, length) => {
    expect(sideStep(h, radius).run).toBeCloseTo(run, 6);
    expect(sideStep(h, radius).length).toBeCloseTo(length, 6);
  });
});

describe('shortest bent paths (Dubins 1957; Shkel and Lumelsky 2001)', () => {
  it.each([
    [4, 0, 0, 1, 'S', 4],
    [10, 0, 0, 1, 'S', 10],
    [1, 1, 90, 1, 'L', 1.570796],
    [0, 2, 180, 1, 'L', Math.PI],
    [0, 4, 180, 1, 'LSL', 5.141593],
    [2, 2, 90, 1, 'LSL', 2.98501],
    [4, 4, 0, 1, 'LSR', 5.85459],
    [4, 4, 180, 1, 'LSL', 7.613729],
    [-2, 0, 0, 1, 'LSL', 8.283185],
    [-4, 0, 0, 1, 'LSL', 10.283185],
    [0, 1, 0, 1, 'LSL', 7.283185],
    [0, 2, 0, 1, 'LSL', 8.283185],
    [2, 0, 180, 1, 'LSR', 6.283185],
    [0, 0, 180, 1, '', 7.330383],
    [0, 0, 90, 1, 'LRL', 6.408513],
    [100, 60, 0, 40, 'LSR', 119.600489],
    [0, 60, 180, 30, 'L', 94.24778],
  ])('to (%d, %d) heading %d, R %d', (x, y, heading, radius, word, length) => {
    const path = shortestBentPath({ x: 0, y: 0, heading: 0 }, { x, y, heading }, radius);
    expect(path.length).toBeCloseTo(length, 5);
    // Where two words tie, the length decides.
    if (word !== '' && !['LSR', 'LSL'].includes(word)) expect(path.word).toBe(word);
  });

  it('is at most 7 pi / 3 R longer than the straight line, and grows with the scale (Kim and Cheong 2011)', () => {
    const random = seeded(11);
    for (let k = 0; k < 20_000; k++) {
      const to = { x: 6 * (random() - 0.5), y: 6 * (random() - 0.5), heading: 360 * random() };
      const path = shortestBentPath({ x: 0, y: 0, heading: 0 }, to, 1);
      const straight = Math.hypot(to.x, to.y);
      expect(path.length).toBeGreaterThanOrEqual(straight - 1e-9);
      expect(path.length - straight).toBeLessThanOrEqual((7 * Math.PI) / 3 + 1e-9);
      const larger = shortestBentPath({ x: 0, y: 0, heading: 0 }, { ...to, x: 3 * to.x, y: 3 * to.y }, 3);
      expect(larger.length).toBeCloseTo(3 * path.length, 6);
    }
  });
});

describe('bundles', () => {
  it('closed forms of the packing table', () => {
    const ratio = (n: number) => circlesInCircle.value[n - 1] ?? 0;
    expect(ratio(3)).toBeCloseTo(1 + 2 / Math.sqrt(3), 4);
    expect(ratio(4)).toBeCloseTo(1 + Math.SQRT2, 4);
    expect(ratio(5)).toBeCloseTo(1 + Math.sqrt(2 + 2 / Math.sqrt(5)), 4);
    expect(ratio(7)).toBe(3);
    expect(ratio(19)).toBeCloseTo(1 + Math.SQRT2 + Math.sqrt(6), 3);
  });

  it('the rule 1.2 sqrt(n) is too small for 2 and 3, so it is not used there', () => {
    expect(1.2 * Math.sqrt(2)).toBeCloseTo(1.6971, 4);
    expect(bundleDiameter(2, 6)).toBe(12);
    expect(bundleDiameter(3, 1)).toBe(2.1547);
    expect(bundleDiameter(25, 1)).toBeCloseTo(6, 9);
    expect(mixedBundleDiameter([10, 10])).toBe(20);
    expect(mixedBundleDiameter([8])).toBe(8);
  });
});
