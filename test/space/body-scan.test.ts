import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boundsOfSome,
  clearBodyScan,
  createBodyScan,
  scanBodies,
  visitOverlaps,
} from '../../geometry/space/body-scan';
import { PackedBoxes } from '../../geometry/space/packed-boxes';
import { interiorsOverlap } from '../../geometry/space/separation';
import { freeTravel } from '../../geometry/space/travel';
import { axisDirections, gridBox, someBox } from './some-boxes';

const body = fc.array(fc.oneof(gridBox, someBox), { minLength: 1, maxLength: 4 });

describe('what one body meets of another', () => {
  it('is the kernel’s free travel in all six directions, and every overlapping pair', () => {
    let met = 0;
    let overlapping = 0;
    fc.assert(
      fc.property(body, body, (first, second) => {
        const packed = PackedBoxes.from([...first, ...second]);
        const mine = first.map((_, index) => index);
        const theirs = second.map((_, index) => first.length + index);
        const scan = createBodyScan();
        clearBodyScan(scan);
        scanBodies(packed, mine, theirs, boundsOfSome(packed, theirs), scan);
        axisDirections.forEach((direction, face) => {
          const expected = freeTravel(first, second, direction, 1e6);
          const found = scan.distance[face];
          if (expected.contact === undefined) expect(found).toBe(Number.POSITIVE_INFINITY);
          else {
            met++;
            expect(found).toBeCloseTo(expected.distance, 5);
          }
        });
        const pairs: number[] = [];
        for (const i of mine) for (const j of theirs) if (interiorsOverlap(packed, i, j)) pairs.push(i, j);
        overlapping += pairs.length / 2;
        expect(scan.overlaps).toEqual(pairs);
      }),
      { numRuns: 800 },
    );
    expect(met).toBeGreaterThan(500);
    expect(overlapping).toBeGreaterThan(100);
  });

  it('visits exactly the pairs whose interiors overlap', () => {
    fc.assert(
      fc.property(body, body, (first, second) => {
        const packed = PackedBoxes.from([...first, ...second]);
        const mine = first.map((_, index) => index);
        const theirs = second.map((_, index) => first.length + index);
        const visited: string[] = [];
        visitOverlaps(packed, mine, theirs, boundsOfSome(packed, theirs), (i, j) =>
          visited.push(`${i} ${j}`),
        );
        const expected = mine.flatMap((i) =>
          theirs.filter((j) => interiorsOverlap(packed, i, j)).map((j) => `${i} ${j}`),
        );
        expect(visited).toEqual(expected);
      }),
      { numRuns: 400 },
    );
  });
});
