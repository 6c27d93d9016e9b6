import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaOfRectangle, type Rectangle, subtractRectangles } from '../../geometry/space/rectangles';

const rectangle = (u0: number, v0: number, u1: number, v1: number): Rectangle => ({
  min: [u0, v0],
  max: [u1, v1],
});
const outer = rectangle(0, 0, 40, 30);

/** Rectangles on whole millimetres, some sticking out of the outer one. */
const anyHole = fc
  .tuple(
    fc.integer({ min: -5, max: 42 }),
    fc.integer({ min: -5, max: 32 }),
    fc.integer({ min: 0, max: 20 }),
    fc.integer({ min: 0, max: 20 }),
  )
  .map(([u, v, width, height]) => rectangle(u, v, u + width, v + height));

function covers({ min, max }: Rectangle, u: number, v: number): boolean {
  return u > min[0] && u < max[0] && v > min[1] && v < max[1];
}

describe('rectangle minus holes', () => {
  it('is the rectangle itself without holes, four pieces with a window, nothing when all is taken', () => {
    expect(subtractRectangles(outer, [])).toEqual([outer]);
    expect(subtractRectangles(outer, [rectangle(10, 10, 20, 20)])).toHaveLength(4);
    expect(subtractRectangles(outer, [rectangle(-1, -1, 41, 31)])).toEqual([]);
  });

  it('takes the way of cutting that gives fewer pieces', () => {
    const slots = [0, 1, 2, 3].map((n) => rectangle(5 + 8 * n, 10, 9 + 8 * n, 12));
    // Cut across v: the strip below, the strip above, and five bridges beside the four slots.
    expect(subtractRectangles(outer, slots)).toHaveLength(7);
    const columns = slots.map(({ min, max }) => rectangle(min[1], min[0], max[1], max[0]));
    expect(subtractRectangles(rectangle(0, 0, 30, 40), columns)).toHaveLength(7);
  });

  it('covers every point outside the holes exactly once and no point inside them', () => {
    fc.assert(
      fc.property(fc.array(anyHole, { maxLength: 8 }), (holes) => {
        const pieces = subtractRectangles(outer, holes);
        let free = 0;
        for (let u = 0.5; u < 40; u++) {
          for (let v = 0.5; v < 30; v++) {
            const taken = holes.some((hole) => covers(hole, u, v));
            const count = pieces.filter((piece) => covers(piece, u, v)).length;
            if (count !== (taken ? 0 : 1)) throw new Error(`(${u}, ${v}) is covered ${count} times`);
            if (!taken) free++;
          }
        }
        expect(pieces.reduce((area, piece) => area + areaOfRectangle(piece), 0)).toBe(free);
      }),
      { seed: 20268, numRuns: 300 },
    );
  });
});
