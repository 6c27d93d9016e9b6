import { describe, expect, it } from 'vitest';
import {
  heightToStandUp,
  longestLadder,
  longestRectangle,
  openingForRectangle,
  turnedExtents,
  widestRectangle,
} from '../../../oracles/assembly/closed-forms';

describe('closed forms of motion', () => {
  it.each([
    [1, 1, 2.828427],
    [2, 4, 8.323876],
    [1, 8, 11.18034],
    [64, 125, 262.528094],
  ])('ladder round a corner %d, %d (MathWorld, Moving Ladder Problem)', (a, b, expected) => {
    expect(longestLadder(a, b)).toBeCloseTo(expected, 5);
    // A rectangle of no width is a ladder.
    expect(longestRectangle(a, b, 0).length).toBeCloseTo(expected, 5);
  });

  it.each([
    [1, 1, 0.5, 1.828427, 45],
    [1, 1, 0.25, 2.328427, 45],
    [100, 100, 40, 202.842712, 45],
    [2, 1, 0.5, 3.120816, 35.039],
    [3, 5, 1, 9.155433, 51.435],
    [250, 180, 40, 524.824374, 41.19],
    [330, 160, 147, 358.914399, 24.836],
  ])('rectangle round a corner %d, %d, %d', (a, b, w, expected, at) => {
    const found = longestRectangle(a, b, w);
    expect(found.length).toBeCloseTo(expected, 5);
    expect(found.at).toBeCloseTo(at, 3);
    if (a === b) expect(found.length).toBeCloseTo(2 * (Math.SQRT2 * a - w), 6);
  });

  it.each([
    [1, 1, 2, 0.414214],
    [1, 1, 1.5, 0.664214],
    [100, 100, 150, 66.421356],
    [200, 150, 300, 95.711218],
    [2, 1, 2, 0.98093],
  ])('widest piece through corners %d, %d of length %d', (u, v, s, expected) => {
    const found = widestRectangle(u, v, s);
    expect(found.width).toBeCloseTo(expected, 5);
    if (u === v) expect(found.width).toBeCloseTo(Math.SQRT2 * u - s / 2, 6);
  });

  it('a box 4.3 x 0.2 x 0.07 fails flat in a corridor 1.5 wide and passes when lifted to 2.5', () => {
    const flat = longestRectangle(1.5, 1.5, 0.07 * 2).length;
    expect(longestRectangle(1.5, 1.5, 0.07).length).toBeCloseTo(4.1026, 4);
    expect(flat).toBeLessThan(4.3);
    // Lifted by 32.84 degrees its plan length is 4.3 cos + 0.2 sin, its height exactly 2.5.
    const [plan, height] = turnedExtents(4.3, 0.2, 32.84);
    expect(plan).toBeCloseTo(3.7212, 3);
    expect(height).toBeLessThanOrEqual(2.5 + 1e-3);
    const needed = (plan / 2 + 0.07) / Math.SQRT2;
    expect(needed).toBeCloseTo(1.36514, 3);
    expect(longestRectangle(1.5, 1.5, 0.07).length).toBeGreaterThan(plan);
  });

  it.each([
    [4, 3, 5],
    [6, 2.5, 6.5],
    [320, 147, 352.149116],
  ])('height to stand up %d x %d', (h, d, expected) => {
    expect(heightToStandUp(h, d)).toBeCloseTo(expected, 6);
  });

  it.each([
    [10, 340.664763, 200.334157],
    [30, 350.628129, 287.305734],
    [45, 330.218869, 330.218869],
  ])('extents of 320 x 147 turned by %d degrees', (degrees, along, across) => {
    const extents = turnedExtents(320, 147, degrees);
    expect(extents[0]).toBeCloseTo(along, 5);
    expect(extents[1]).toBeCloseTo(across, 5);
  });

  it.each([
    [5, 21.266],
    [10, 42.37],
    [15, 63.152],
    [20, 83.453],
  ])('a board of 244 tilted by %d degrees', (degrees, rise) => {
    expect(turnedExtents(244, 0, degrees)[1]).toBeCloseTo(rise, 3);
  });

  it('rectangle in rectangle (Carver 1957, in Wetzel 2000)', () => {
    expect(openingForRectangle(320, 40, 300)).toBeCloseTo(188.527085, 5);
    expect(openingForRectangle(105, 5, 100)).toBeCloseTo(41.759343, 5);
    // 9 x 4 does not fit in 8 x 6 though area, diagonal, perimeter and thickness all allow it.
    expect(openingForRectangle(9, 4, 8)).toBeCloseTo(9.787594, 5);
  });
});
