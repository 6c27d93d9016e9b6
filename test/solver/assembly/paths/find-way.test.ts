import { describe, expect, it } from 'vitest';
import { bodiesOf } from '../../../../geometry/solver/assembly/assembly-bodies';
import { findWayOut } from '../../../../geometry/solver/assembly/paths/find-way';
import { directions26, rangeOf } from '../../../../geometry/solver/assembly/paths/hull';
import { searchInPlane } from '../../../../geometry/solver/assembly/paths/plane-search';
import { defaultSearchLimits } from '../../../../geometry/solver/assembly/paths/search-limits';
import {
  freeDirections,
  oneStraightMove,
  searchFor,
  twoStraightMoves,
} from '../../../../geometry/solver/assembly/paths/straight-moves';
import { obstaclesOf, testWay } from '../../../../geometry/solver/assembly/paths/test-way';
import type { Motion } from '../../../../geometry/space/motion';
import { poseAlong } from '../../../../geometry/space/motion';
import { boxFromCorners, type OrientedBox, transformBox } from '../../../../geometry/space/oriented-box';
import { PackedBoxes } from '../../../../geometry/space/packed-boxes';
import { interiorsOverlap } from '../../../../geometry/space/separation';
import { boxesOf, lChannel, tSlot, wovenBars } from '../oracle-scenes';

function searchOf(unit: readonly OrientedBox[], others: readonly OrientedBox[]) {
  const bodies = bodiesOf([unit], others);
  return { bodies, search: searchFor(bodies, bodies.boxesOf[0] ?? [], obstaclesOf(bodies, 0)) };
}

/** Samples a certified way and expects no overlap anywhere. */
function expectFree(
  unit: readonly OrientedBox[],
  others: readonly OrientedBox[],
  motions: readonly Motion[],
  samples: number,
) {
  for (let k = 0; k <= samples; k++) {
    const pose = poseAlong(motions, k / samples, 100);
    for (const mine of unit) {
      for (const other of others) {
        const pair = PackedBoxes.from([transformBox(pose, mine), other]);
        expect(interiorsOverlap(pair, 0, 1)).toBe(false);
      }
    }
  }
}

describe('straight ways', () => {
  it('a bar in a T-slot leaves along the slot, both ways, and in no other of 26 directions', () => {
    const { search } = searchOf(tSlot.bar, tSlot.channel);
    expect(directions26).toHaveLength(26);
    expect(freeDirections(search)).toEqual([
      [-1, 0, 0],
      [1, 0, 0],
    ]);
  });

  it('a peg in an L-channel has no straight way; two moves: 78 to 80 back, then out along +y', () => {
    const { search } = searchOf(lChannel.peg, lChannel.walls);
    expect(oneStraightMove(search)).toBeUndefined();
    const way = twoStraightMoves(search, 24);
    expect(way).toHaveLength(2);
    const [first, second] = way ?? [];
    if (first?.kind !== 'slide' || second?.kind !== 'slide') throw new Error('two slides are expected');
    expect(first.by[0]).toBeLessThanOrEqual(-78);
    expect(first.by[0]).toBeGreaterThanOrEqual(-80);
    expect(second.by[1]).toBeGreaterThan(0);
    expectFree(lChannel.peg, lChannel.walls, way ?? [], 400);
  });

  it('woven bars: up and down each meets exactly the next; outwards each is free', () => {
    const bars = wovenBars();
    const bodies = bodiesOf(bars);
    const blockers = (unit: number, by: readonly [number, number, number]) =>
      testWay(bodies, unit, [{ kind: 'slide', by }]).blockers;
    const up = [0, 1, 2].map((unit) => blockers(unit, [0, 0, 500]));
    const down = [0, 1, 2].map((unit) => blockers(unit, [0, 0, -500]));
    // One neighbour above, the other below, all round the ring.
    expect(new Set(up)).toEqual(new Set([1n, 2n, 4n]));
    expect(new Set(down)).toEqual(new Set([1n, 2n, 4n]));
    for (const unit of [0, 1, 2]) {
      expect((up[unit] ?? 0n) | (down[unit] ?? 0n) | (1n << BigInt(unit))).toBe(7n);
      const f = (unit * 2 * Math.PI) / 3;
      expect(blockers(unit, [500 * Math.cos(f), 500 * Math.sin(f), 0])).toBe(0n);
    }
  });

  it('a way is refused when the part overlaps at its seat, with a proof', () => {
    const { search } = searchOf(
      [boxFromCorners([0, 0, 0], [10, 10, 10])],
      [boxFromCorners([9, 0, 0], [20, 10, 10])],
    );
    expect(findWayOut(search, [0, 0, 1])).toMatchObject({ proof: 'blocked by closed form' });
  });
});

/** Two corridors of width a meeting at a right angle, closed above and below, a rectangle at the end of one. */
function corner(a: number, length: number, width: number) {
  const far = Math.max(240, length + 60);
  const walls = boxesOf([
    [-10, -10, 0, far, 0, 20],
    [-10, 0, 0, 0, far, 20],
    [a, a, 0, far, far, 20],
    [-10, -10, -5, far, far, 0],
    [-10, -10, 20, far, far, 25],
    [far, 0, 0, far + 5, a, 20],
  ]);
  const piece = [boxFromCorners([far - length, (a - width) / 2, 0], [far, (a + width) / 2, 20])];
  return { walls, piece };
}

describe('search in the plane of the tilt', () => {
  const limits = { ...defaultSearchLimits, tilt: 90, poses: 6000, cell: 5, angle: 3 };
  const plane = { normal: [0, 0, 1], out: [0, 1, 0], across: [1, 0, 0] } as const;

  it('takes a 160 x 40 rectangle round a corner of 100 (202.8 would pass) and certifies every piece', () => {
    const { walls, piece } = corner(100, 160, 40);
    const { search } = searchOf(piece, walls);
    const found = searchInPlane(search, plane, limits);
    expect(found.motions).toBeDefined();
    expect(found.motions?.some((motion) => motion.kind === 'turn')).toBe(true);
    expectFree(piece, walls, found.motions ?? [], 800);
  });

  it('does not take one of 206, past the closed form 2 (sqrt 2 a - w) = 202.84, and says how far it came', () => {
    const { walls, piece } = corner(100, 206, 40);
    const { search } = searchOf(piece, walls);
    const found = searchInPlane(search, plane, { ...limits, poses: 1500 });
    expect(found.motions).toBeUndefined();
    expect(found.furthest).toBeLessThan(300);
  });
});

/** A tray 320 long, open above between two ledges 300 apart: a card only leaves with one end first. */
describe('a card under a ledge', () => {
  const under = (length: number) => ({
    card: [boxFromCorners([0, 0, 0], [length, 10, 20])],
    walls: boxesOf([
      [-5, -5, 0, 330, 0, 20],
      [-5, 0, 0, 0, 200, 20],
      [325, 0, 0, 330, 200, 20],
      [-5, 60, 0, 30, 65, 20],
      [-5, -5, -5, 330, 200, 0],
      [-5, -5, 20, 330, 200, 25],
    ]),
  });

  it('comes out tilted, never straight', () => {
    const { card, walls } = under(310);
    const { search } = searchOf(card, walls);
    expect(oneStraightMove(search)).toBeUndefined();
    const found = findWayOut(search, [0, 1, 0]);
    if (!('method' in found)) throw new Error(found.because);
    expect(found.motions.some((motion) => motion.kind === 'turn')).toBe(true);
    expectFree(card, walls, found.motions, 1000);
  });

  it('is not found for one that cannot, in words that do not claim a proof', () => {
    const { card, walls } = under(324);
    const { search } = searchOf(card, walls);
    const found = findWayOut(search, [0, 1, 0], { ...defaultSearchLimits, poses: 300 });
    expect(found).toMatchObject({ proof: 'no way in found within these bounds' });
  });

  it('the hull of what is in the way is the range of the walls', () => {
    const { search, bodies } = searchOf(under(310).card, under(310).walls);
    expect([...rangeOf(bodies, search.obstacles)]).toEqual([-5, -5, -5, 330, 200, 25]);
  });
});
