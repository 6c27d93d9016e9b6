import { describe, expect, it } from 'vitest';
import { allUnits, bodiesOf, unitsIn } from '../../../../geometry/solver/assembly/assembly-bodies';
import { peel, systemOfWays } from '../../../../geometry/solver/assembly/order/blocking-system';
import { findKnots } from '../../../../geometry/solver/assembly/order/knots';
import { directions26 } from '../../../../geometry/solver/assembly/paths/hull';
import { testWay } from '../../../../geometry/solver/assembly/paths/test-way';
import { interiorsOverlap } from '../../../../geometry/space/separation';
import { shiftSearch, smallestInterlock } from '../../../oracles/assembly/shift-search';
import { boxesOf, burrA, burrB, type Corners, cellsOf, lengthened } from '../oracle-scenes';
import { randomBoxes } from './random-scenes';

const burr = (parts: readonly (readonly Corners[])[]) => bodiesOf(parts.map(boxesOf));

/** Ways of every unit along the six axes, as sets of blockers. */
function straightSystem(bodies: ReturnType<typeof bodiesOf>) {
  return systemOfWays(
    bodies.boxesOf.map((_, unit) =>
      directions26.slice(0, 6).map((d) => {
        const record = testWay(bodies, unit, [{ kind: 'slide', by: [500 * d[0], 500 * d[1], 500 * d[2]] }]);
        return unitsIn(record.blockers);
      }),
    ),
  );
}

describe('six-piece burrs', () => {
  it('are typed as published: cell counts, no overlap', () => {
    expect(burrA.map((part) => cellsOf(part).length)).toEqual([18, 18, 16, 16, 15, 15]);
    expect(burrB.map((part) => cellsOf(part).length)).toEqual([19, 18, 15, 15, 15, 15]);
    for (const parts of [burrA, burrB]) {
      const cells = parts.flatMap(cellsOf);
      expect(new Set(cells).size).toBe(cells.length);
    }
  });

  it.each([
    ['A', burrA],
    ['B', burrB],
  ])('%s: no part leaves in one straight move, not one way in six is free', (_, parts) => {
    const bodies = burr(parts);
    const system = straightSystem(bodies);
    expect(peel(system).stuck).toBe(allUnits(6));
    for (let i = 0; i < bodies.count; i++) {
      for (let j = 0; j < bodies.count; j++) {
        if (bodies.unitOf[i] !== bodies.unitOf[j]) expect(interiorsOverlap(bodies.packed, i, j)).toBe(false);
      }
    }
    // Moved one at a time, a few of them hold each other already.
    expect(findKnots(system)?.knots.length).toBeGreaterThan(0);
  });

  it('A comes apart in 6 moves, then 4, 1, 1, 1', () => {
    const found = shiftSearch(burr(burrA), [0, 1, 2, 3, 4, 5], 1);
    expect(found.levels).toEqual([6, 4, 1, 1, 1]);
    expect(found.comesApart).toBe(true);
  });

  it('B comes apart in 9 moves, then 3, 1, 1, 1', () => {
    const found = shiftSearch(burr(burrB), [0, 1, 2, 3, 4, 5], 1);
    expect(found.levels).toEqual([9, 3, 1, 1, 1]);
    expect(found.comesApart).toBe(true);
  });

  it.each([
    ['A', burrA],
    ['B', burrB],
  ])('%s with sticks of 8 never comes apart, and any one part away it does', (_, parts) => {
    const bodies = burr(lengthened(parts));
    const all = [0, 1, 2, 3, 4, 5];
    expect(shiftSearch(bodies, all, 1)).toMatchObject({ levels: [], comesApart: false, exhaustive: true });
    expect(smallestInterlock(bodies, all, 1)).toEqual(all);
    const levels = all.map((away) =>
      shiftSearch(
        bodies,
        all.filter((unit) => unit !== away),
        1,
      ),
    );
    expect(levels.every((found) => found.comesApart)).toBe(true);
    expect(levels.map((found) => found.levels[0])).toEqual([1, 1, 1, 1, 2, 2]);
  });
});

describe('single axis-aligned boxes', () => {
  it('never knot: 300 scenes of up to 25 boxes peel one at a time in any one direction', () => {
    for (let scene = 0; scene < 50; scene++) {
      const bodies = bodiesOf(randomBoxes(scene, 25).map((box) => [box]));
      for (const d of directions26.slice(0, 6)) {
        const ways = bodies.boxesOf.map((_, unit) => [
          unitsIn(
            testWay(bodies, unit, [{ kind: 'slide', by: [900 * d[0], 900 * d[1], 900 * d[2]] }]).blockers,
          ),
        ]);
        expect(peel(systemOfWays(ways)).stuck).toBe(0n);
      }
    }
  });
});

describe('scenes of up to 6 parts of four boxes each, against all orders', () => {
  const permutations = (n: number): number[][] =>
    n === 0
      ? [[]]
      : permutations(n - 1).flatMap((rest) =>
          Array.from({ length: n }, (_, at) => [...rest.slice(0, at), n - 1, ...rest.slice(at)]),
        );

  it('the same verdict whether anything comes apart one at a time along the axes', () => {
    const verdicts = new Set<boolean>();
    for (let scene = 0; scene < 40; scene++) {
      const parts = 3 + (scene % 4);
      const boxes = randomBoxes(scene + 500, 4 * parts, 60, 30);
      if (boxes.length < 4 * parts) continue;
      // Boxes far apart in the list make parts that reach round one another.
      const bodies = bodiesOf(
        Array.from({ length: parts }, (_, k) => boxes.filter((_box, at) => at % parts === k)),
      );
      const leaves = (unit: number, present: ReadonlySet<number>): boolean =>
        directions26.slice(0, 6).some((d) => {
          const motions = [{ kind: 'slide', by: [500 * d[0], 500 * d[1], 500 * d[2]] }] as const;
          return (
            testWay(bodies, unit, motions, (box) => present.has(bodies.unitOf[box] ?? -1)).contacts.length ===
            0
          );
        });
      const works = permutations(parts).some((order) => {
        const present = new Set(order);
        return order.every((unit) => {
          const free = leaves(unit, present);
          present.delete(unit);
          return free;
        });
      });
      expect(peel(straightSystem(bodies)).stuck === 0n).toBe(works);
      verdicts.add(works);
    }
    // Both answers occur, or the test would say little.
    expect(verdicts).toEqual(new Set([true, false]));
  });
});
