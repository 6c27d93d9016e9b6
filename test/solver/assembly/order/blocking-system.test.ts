import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bitOf, unitsIn } from '../../../../geometry/solver/assembly/assembly-bodies';
import { bestOrder } from '../../../../geometry/solver/assembly/order/best-order';
import {
  canGo,
  isRemovalOrder,
  peel,
  RememberedSystem,
  systemOfWays,
} from '../../../../geometry/solver/assembly/order/blocking-system';
import { findKnots } from '../../../../geometry/solver/assembly/order/knots';
import { serviceOf } from '../../../../geometry/solver/assembly/order/service';
import { countOrders } from '../../../oracles/assembly/count-orders';

/** Precedence only: `before[k]` all have to be gone before k. */
function precedence(before: readonly (readonly number[])[]) {
  return systemOfWays(before.map((all) => [all]));
}

function grid(rows: number, columns: number) {
  return precedence(
    Array.from({ length: rows * columns }, (_, k) => [
      ...(k >= columns ? [k - columns] : []),
      ...(k % columns > 0 ? [k - 1] : []),
    ]),
  );
}

function subsets(n: number) {
  return precedence(
    Array.from({ length: 1 << n }, (_, set) =>
      Array.from({ length: n }, (_, k) => k).flatMap((k) => (set & (1 << k) ? [set ^ (1 << k)] : [])),
    ),
  );
}

function chains(lengths: readonly number[]) {
  const before: number[][] = [];
  for (const length of lengths)
    for (let k = 0; k < length; k++) before.push(k === 0 ? [] : [before.length - 1]);
  return precedence(before);
}

function zigzag(n: number) {
  // a < b > c < d ...: every odd place waits for both neighbours.
  return precedence(
    Array.from({ length: n }, (_, k) => (k % 2 === 0 ? [] : [k - 1, ...(k + 1 < n ? [k + 1] : [])])),
  );
}

describe('counting orders', () => {
  it('ball-point pen: 30 orders of its liaisons, 12 when the ink goes in before both ends close', () => {
    // Liaisons 1 to 5 of Ullman, The Mechanical Design Process, 2009, section 11.5: 3 before 4, 1 before 5.
    const pen = precedence([[], [], [], [2], [0]]);
    expect(countOrders(pen)).toBe(30n);
    // 4 < max(1, 2): whichever of head and button comes second waits for the ink. Taken apart, the ink waits for one.
    const apart = systemOfWays([[[4]], [[]], [[3]], [[0], [1]], [[]]]);
    expect(countOrders(apart)).toBe(12n);
    // Ullman's own plan: button, body with (head, tube, ink), cap, as liaisons 2, 3, 4, 1, 5.
    expect(isRemovalOrder(pen, [1, 2, 3, 0, 4])).toBe(true);
    expect(isRemovalOrder(pen, [1, 3, 2, 0, 4])).toBe(false);
  });

  it.each([
    [2, 2, 2n],
    [2, 3, 5n],
    [2, 4, 14n],
    [2, 5, 42n],
    [3, 3, 42n],
    [3, 4, 462n],
  ])('%d x %d grid (Catalan numbers, hook lengths)', (rows, columns, expected) => {
    expect(countOrders(grid(rows, columns))).toBe(expected);
  });

  it.each([
    [1, 1n],
    [2, 2n],
    [3, 48n],
    [4, 1680384n],
  ])('subsets of a %d-set by inclusion', (n, expected) => {
    expect(countOrders(subsets(n))).toBe(expected);
  });

  it('zigzags: the Euler numbers', () => {
    const expected = [1n, 1n, 2n, 5n, 16n, 61n, 272n, 1385n, 7936n, 50521n];
    expect(expected.map((_, k) => countOrders(zigzag(k + 1)))).toEqual(expected);
  });

  it('chains side by side, a binary tree, and 25 parts in five chains', () => {
    expect(countOrders(chains([3, 4]))).toBe(35n);
    expect(countOrders(precedence([[], [0], [0], [1], [1], [2], [2]]))).toBe(80n);
    expect(countOrders(chains([5, 5, 5, 5, 5]))).toBe(623_360_743_125_120n);
  });

  it('a small machine with alternatives: 50 orders, services 0 1 1 1 2 3 4', () => {
    const { machine } = smallMachine();
    expect(countOrders(machine)).toBe(50n);
    const services = [0, 1, 2, 3, 4, 5, 6].map((unit) => serviceOf(machine, unit)?.out.length);
    // P, K, C, L, S, D, B
    expect(services).toEqual([0, 1, 1, 1, 2, 3, 4]);
    expect([...(serviceOf(machine, 6)?.out ?? [])].sort()).toEqual([0, 1, 3, 4]);
  });
});

/** P free; K, C, L need P; S needs P and L; D needs (C and K) or S; B needs K and S. */
function smallMachine() {
  const [P, K, C, L, S] = [0, 1, 2, 3, 4];
  return { machine: systemOfWays([[[]], [[P]], [[P]], [[P]], [[P, L]], [[C, K], [S]], [[K, S]]]) };
}

function permutations(n: number): number[][] {
  if (n === 0) return [[]];
  return permutations(n - 1).flatMap((rest) =>
    Array.from({ length: n }, (_, at) => [...rest.slice(0, at), n - 1, ...rest.slice(at)]),
  );
}

describe('knots', () => {
  it('A, B, C wait for each other in a ring, D waits for A, E is free', () => {
    const system = systemOfWays([[[1]], [[2]], [[0]], [[0]], [[]]]);
    expect(peel(system)).toEqual({ order: [4], stuck: 0b1111n });
    expect(findKnots(system)).toMatchObject({ knots: [{ units: [0, 1, 2] }], waiting: [3] });
  });

  it('two separate pairs are two knots of two', () => {
    const found = findKnots(systemOfWays([[[1]], [[0]], [[3]], [[2]]]));
    expect(found?.knots.map((knot) => knot.units)).toEqual([
      [0, 1],
      [2, 3],
    ]);
    expect(found?.freeing).toEqual([
      [0, 2],
      [0, 3],
      [1, 2],
      [1, 3],
    ]);
  });

  it('A needs B or C, B needs A, C needs A and B: the knot is A and B, either frees all', () => {
    const found = findKnots(systemOfWays([[[1], [2]], [[0]], [[0, 1]]]));
    expect(found?.knots.map((knot) => knot.units)).toEqual([[0, 1]]);
    expect(found?.waiting).toEqual([2]);
    // Without C, A could leave at once, so C frees them as well; A and B, the knot itself, come first.
    expect(found?.freeing).toEqual([[0], [1], [2]]);
  });

  it('A needs B or X and X is free: no knot, A leaves after X', () => {
    const system = systemOfWays([[[1], [2]], [[0]], [[]]]);
    expect(findKnots(system)).toBeUndefined();
    expect(peel(system).order.indexOf(0)).toBeGreaterThan(peel(system).order.indexOf(2));
  });

  it('services take one smallest set, never a mixture', () => {
    // T is blocked +x by A, +y by B and C, +z by A and B.
    const system = systemOfWays([[[1], [2, 3], [1, 2]], [[]], [[]], [[]]]);
    expect(serviceOf(system, 0)).toEqual({ out: [1], exact: true });
  });
});

describe('random blocker systems of up to 8 units against all orders', () => {
  const systems = fc
    .integer({ min: 1, max: 6 })
    .chain((n) =>
      fc
        .array(
          fc.array(fc.uniqueArray(fc.nat({ max: n - 1 }), { maxLength: 3 }), { minLength: 1, maxLength: 3 }),
          { minLength: n, maxLength: n },
        )
        .map((ways) =>
          systemOfWays(ways.map((sets, unit) => sets.map((set) => set.filter((other) => other !== unit)))),
        ),
    );

  const check = (numRuns: number, arbitrary: typeof systems, seed: number) =>
    fc.assert(
      fc.property(arbitrary, (system) => {
        const orders = permutations(system.count).filter((order) => isRemovalOrder(system, order));
        expect(peel(system).stuck === 0n).toBe(orders.length > 0);
        expect(findKnots(system) === undefined).toBe(orders.length > 0);
        expect(countOrders(system)).toBe(BigInt(orders.length));
        for (let unit = 0; unit < system.count; unit++) {
          const least = fewestBefore(system, unit);
          expect(serviceOf(system, unit)?.out.length).toBe(least);
        }
        const cost = (unit: number, removed: bigint) =>
          ((unit * 7 + unitsIn(removed).length * 5) % 11) + (removed % 3n === 0n ? 1 : 0);
        if (orders.length > 0) {
          const best = bestOrder(new RememberedSystem(system), cost, 100_000);
          expect(isRemovalOrder(system, best.removal)).toBe(true);
          expect(best.cost).toBe(Math.min(...orders.map((order) => costOf(order, cost))));
          expect(best.exact).toBe(true);
        }
      }),
      { numRuns, seed },
    );

  it('same verdict, service counts, order counts and cheapest order', () => {
    check(120, systems, 41);
  });

  it('the same for two systems of eight', () => {
    const eight = fc
      .array(fc.array(fc.uniqueArray(fc.nat({ max: 7 }), { maxLength: 2 }), { minLength: 1, maxLength: 2 }), {
        minLength: 8,
        maxLength: 8,
      })
      .map((ways) =>
        systemOfWays(ways.map((sets, unit) => sets.map((set) => set.filter((other) => other < unit)))),
      );
    check(2, eight as typeof systems, 42);
  });
});

function costOf(order: readonly number[], cost: (unit: number, removed: bigint) => number): number {
  let removed = 0n;
  let sum = 0;
  for (const unit of order) {
    sum += cost(unit, removed);
    removed |= bitOf(unit);
  }
  return sum;
}

/** Fewest others out before the unit can go, over all reachable sets; undefined when it never can. */
function fewestBefore(system: ReturnType<typeof systemOfWays>, unit: number): number | undefined {
  let level = new Set<bigint>([0n]);
  for (let gone = 0; gone < system.count; gone++) {
    for (const removed of level) if (canGo(system, unit, removed)) return gone;
    const next = new Set<bigint>();
    for (const removed of level) {
      for (let other = 0; other < system.count; other++) {
        if (other !== unit && (removed & bitOf(other)) === 0n && canGo(system, other, removed))
          next.add(removed | bitOf(other));
      }
    }
    level = next;
  }
  return undefined;
}
