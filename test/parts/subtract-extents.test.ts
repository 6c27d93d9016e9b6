import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Extent, Span } from '../../geometry/parts/body-box';
import { extentsOverlap } from '../../geometry/parts/extent-overlap';
import { subtractExtent } from '../../geometry/parts/subtract-extents';

const span: fc.Arbitrary<Span> = fc
  .tuple(fc.integer({ min: -20, max: 20 }), fc.integer({ min: 1, max: 25 }))
  .map(([from, length]) => [from, from + length]);
const extent: fc.Arbitrary<Extent> = fc.record({ x: span, y: span, z: span });

const volume = ({ x, y, z }: Extent): number => (x[1] - x[0]) * (y[1] - y[0]) * (z[1] - z[0]);
const shared = (a: Span, b: Span): number => Math.max(0, Math.min(a[1], b[1]) - Math.max(a[0], b[0]));

describe('cutting room out of material', () => {
  it('leaves disjoint pieces outside the room that hold exactly the rest of the volume', () => {
    fc.assert(
      fc.property(extent, extent, (material, room) => {
        const common = shared(material.x, room.x) * shared(material.y, room.y) * shared(material.z, room.z);
        const cut = subtractExtent(material, room);
        if (common === 0) {
          expect(cut).toBeUndefined();
          return;
        }
        const pieces = (cut ?? []).map((piece) => piece.extent);
        const total = pieces.reduce((sum, piece) => sum + volume(piece), 0);
        expect(total).toBe(volume(material) - common);
        for (const [index, piece] of pieces.entries()) {
          expect(extentsOverlap(piece, room)).toBe(false);
          expect(pieces.slice(index + 1).some((other) => extentsOverlap(piece, other))).toBe(false);
        }
      }),
      { numRuns: 2000, seed: 11 },
    );
  });
});
