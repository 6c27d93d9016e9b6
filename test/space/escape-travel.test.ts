import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { escapeTravel } from '../../geometry/space/escape-travel';
import { boxFromCorners, type OrientedBox, translateBox } from '../../geometry/space/oriented-box';
import { PackedBoxes } from '../../geometry/space/packed-boxes';
import { signedDistance } from '../../geometry/space/separation';
import { scale, type Vector3 } from '../../geometry/space/vector';
import { directions, gridBox, someBox } from './some-boxes';

const nothing = () => false;

/** The deepest overlap of any pair, mm, once the first body has moved; 0 for none. */
function depthAfter(first: readonly OrientedBox[], second: readonly OrientedBox[], move: Vector3): number {
  const moved = first.map((box) => translateBox(box, move));
  const packed = PackedBoxes.from([...moved, ...second]);
  const depths = moved.flatMap((_, i) => second.map((__, j) => -signedDistance(packed, i, moved.length + j)));
  return Math.max(0, ...depths);
}

describe('the travel that frees a body', () => {
  it('passes over a gap too narrow to stop in', () => {
    const packed = PackedBoxes.from([
      boxFromCorners([0, 0, 0], [10, 10, 10]),
      boxFromCorners([5, 0, 0], [8, 10, 10]),
      boxFromCorners([15, 0, 0], [16, 10, 10]),
    ]);
    // Leaving the first obstacle takes 8; then the second begins at 15 and the body needs 10: on to 16.
    expect(escapeTravel(packed, [0], [1, 2], [1, 0, 0], nothing)).toBe(16);
    expect(escapeTravel(packed, [0], [1], [1, 0, 0], nothing)).toBe(8);
    expect(escapeTravel(packed, [0], [1, 2], [-1, 0, 0], nothing)).toBe(5);
    expect(escapeTravel(packed, [0], [2], [1, 0, 0], nothing)).toBe(0);
    expect(escapeTravel(packed, [0], [1, 2], [1, 0, 0], (_, obstacle) => obstacle === 1)).toBe(0);
  });

  it('ends free, and no shorter travel does', () => {
    const body = fc.array(fc.oneof(gridBox, someBox), { minLength: 1, maxLength: 3 });
    let freed = 0;
    fc.assert(
      fc.property(
        body,
        body,
        directions,
        fc.double({ min: 0, max: 1, noNaN: true }),
        (a, b, direction, part) => {
          const packed = PackedBoxes.from([...a, ...b]);
          const mine = a.map((_, index) => index);
          const theirs = b.map((_, index) => a.length + index);
          const travel = escapeTravel(packed, mine, theirs, direction, nothing);
          expect(depthAfter(a, b, scale(direction, travel))).toBeLessThan(1e-5);
          if (travel === 0) return;
          freed++;
          // Anywhere before, something still overlaps (or touches at most at single places).
          const before = travel * part * 0.999;
          const free = depthAfter(a, b, scale(direction, before)) < 1e-9;
          if (free) expect(depthAfter(a, b, scale(direction, before + 1e-5))).toBeGreaterThan(0);
        },
      ),
      { numRuns: 600 },
    );
    expect(freed).toBeGreaterThan(50);
  });
});
