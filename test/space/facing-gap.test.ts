import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { facingGap, leastFacingGap } from '../../geometry/space/facing-gap';
import { boxFromCorners } from '../../geometry/space/oriented-box';
import { PackedBoxes } from '../../geometry/space/packed-boxes';
import { signedGapAlong } from '../../geometry/space/travel';
import type { Vector3 } from '../../geometry/space/vector';
import { directions, gridBox, someBox } from './some-boxes';

const box = (from: Vector3, to: Vector3) => boxFromCorners(from, to);
const across: readonly Vector3[] = [
  [1, 0, 0],
  [-1, 0, 0],
  [0, 1, 0],
  [0, -1, 0],
];

describe('the facing gap of two boxes', () => {
  const packed = PackedBoxes.from([
    box([0, 0, 0], [10, 10, 10]),
    box([13, 2, 2], [20, 8, 8]),
    box([8, 2, 2], [20, 8, 8]),
    box([13, 12, 2], [20, 18, 8]),
  ]);

  it('is positive in front, negative in an overlap, and nothing beside or behind', () => {
    expect(facingGap(packed, 0, 1, [1, 0, 0])).toBe(3);
    expect(facingGap(packed, 0, 2, [1, 0, 0])).toBe(-2);
    expect(facingGap(packed, 0, 1, [-1, 0, 0])).toBe(Number.NEGATIVE_INFINITY);
    expect(facingGap(packed, 0, 3, [1, 0, 0])).toBe(Number.NEGATIVE_INFINITY);
  });

  it('of a pair that overlaps is the shortest way back among the directions asked for', () => {
    expect(leastFacingGap(packed, [0], [2], across)).toEqual({ gap: -2, a: 0, b: 2, direction: 0 });
    expect(leastFacingGap(packed, [0], [2], [[0, 1, 0]])).toEqual({ gap: -8, a: 0, b: 2, direction: 0 });
  });

  it('stays away when nothing is nearer than the limit', () => {
    expect(leastFacingGap(packed, [0], [1], across, 3)).toBeUndefined();
    expect(leastFacingGap(packed, [0], [1], across, 3.001)?.gap).toBe(3);
    expect(leastFacingGap(packed, [], [1], across)).toBeUndefined();
    expect(leastFacingGap(packed, [0], [3], across)).toBeUndefined();
  });
});

describe('the least facing gap of two bodies', () => {
  it('agrees with the kernel’s directed gap, box by box, along the axes and off them', () => {
    let faced = 0;
    fc.assert(
      fc.property(
        fc.array(gridBox, { minLength: 1, maxLength: 4 }),
        fc.array(fc.oneof(gridBox, someBox), { minLength: 1, maxLength: 4 }),
        directions,
        (first, second, direction) => {
          const packed = PackedBoxes.from([...first, ...second]);
          const mine = first.map((_, index) => index);
          const theirs = second.map((_, index) => first.length + index);
          const least = leastFacingGap(packed, mine, theirs, [direction]);
          const expected = signedGapAlong(first, second, direction);
          expect(least === undefined).toBe(expected === undefined);
          if (!least || !expected) return;
          faced++;
          expect(least.gap).toBeCloseTo(expected.gap, 5);
        },
      ),
      { numRuns: 2000 },
    );
    expect(faced).toBeGreaterThan(200);
  });
});
