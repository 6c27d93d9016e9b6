/** When nothing more can go: which smallest sets hold each other, who merely waits, and what would free them. */
import { allUnits, bitOf, sizeOf, type UnitSet, unitsIn } from '../assembly-bodies';
import {
  type Alternative,
  type BlockingSystem,
  carriersOf,
  outOfTheWay,
  peel,
  type Requirement,
} from './blocking-system';

export interface Knot {
  /** One smallest set of units that hold each other: take any one of them away and the rest of it comes apart. */
  readonly units: readonly number[];
  /** True when it is held by what never moves, or by nothing a removal could change. */
  readonly held: boolean;
}

export interface Stuck {
  readonly knots: readonly Knot[];
  /** Units that wait for a knot and would go once it is free. */
  readonly waiting: readonly number[];
  /** Smallest sets of units whose absence lets everything else go; one unit each where one is enough. */
  readonly freeing: readonly (readonly number[])[];
}

/** Undefined when everything can go. */
export function findKnots(system: BlockingSystem): Stuck | undefined {
  const { stuck } = peel(system);
  if (stuck === 0n) return undefined;
  const knots = knotsOf(system, stuck);
  const inKnots = knots.reduce((set, knot) => knot.units.reduce((s, unit) => s | bitOf(unit), set), 0n);
  return { knots, waiting: unitsIn(stuck & ~inKnots), freeing: freeingSets(system, stuck, inKnots) };
}

/** Bottom components of 'waits for', each shrunk to a smallest set. */
function knotsOf(system: BlockingSystem, stuck: UnitSet): readonly Knot[] {
  const waitsFor = new Map(unitsIn(stuck).map((unit) => [unit, waitsOn(system, unit, stuck)]));
  const knots: Knot[] = [];
  for (const component of components(waitsFor)) {
    const set = component.reduce((s, unit) => s | bitOf(unit), 0n);
    const out = component.reduce((s, unit) => s | (waitsFor.get(unit) ?? 0n), 0n) & ~set;
    if (out !== 0n) continue;
    const shrunk = shrink(system, set);
    knots.push({ units: unitsIn(shrunk), held: sizeOf(shrunk) === 1 });
  }
  return knots.sort((a, b) => (a.units[0] ?? 0) - (b.units[0] ?? 0));
}

/** The fewest still-present units that one way of the unit waits for, its requirements taken together. */
function waitsOn(system: BlockingSystem, unit: number, present: UnitSet): UnitSet {
  const gone = allUnits(system.count) & ~present;
  const away = outOfTheWay(system, unit, gone);
  let set = 0n;
  for (const requirement of system.requirements[unit] ?? []) set |= cheapest(requirement, away);
  // What never moves is only out of the way on the bench: then the unit waits for what carries it there.
  const never = bitOf(system.count);
  if ((set & never) !== 0n) set = (set & ~never) | (carriersOf(system, unit) & present);
  return set & ~bitOf(unit);
}

function cheapest(requirement: Requirement, away: UnitSet): UnitSet {
  let best: UnitSet | undefined;
  for (const alternative of requirement.alternatives) {
    const missing = missingOf(alternative, away);
    if (best === undefined || sizeOf(missing) < sizeOf(best)) best = missing;
  }
  return best ?? 0n;
}

function missingOf(alternative: Alternative, away: UnitSet): UnitSet {
  let missing = alternative.blockers & ~away;
  for (const rider of alternative.riders ?? []) {
    if ((away & bitOf(rider.unit)) !== 0n) continue;
    if (rider.stuck) missing |= bitOf(rider.unit);
    else missing |= rider.blockers & ~away;
  }
  return missing;
}

/** Whether the units of a set still hold each other when nothing else is there. */
function stillStuck(system: BlockingSystem, set: UnitSet): boolean {
  return peel(system, allUnits(system.count) & ~set).stuck === set;
}

/** Leaves out one member after another as long as some of the rest stays stuck. */
function shrink(system: BlockingSystem, set: UnitSet): UnitSet {
  let kept = set;
  for (const unit of unitsIn(set)) {
    const without = peel(system, allUnits(system.count) & ~(kept & ~bitOf(unit))).stuck;
    if (without !== 0n) kept = without;
  }
  return stillStuck(system, kept) ? kept : set;
}

/** Tarjan's strongly connected components, each sorted, those that wait for nothing else first. */
export function components(graph: ReadonlyMap<number, UnitSet>): readonly (readonly number[])[] {
  const index = new Map<number, number>();
  const low = new Map<number, number>();
  const stack: number[] = [];
  const found: number[][] = [];
  const visit = (unit: number): void => {
    index.set(unit, index.size);
    low.set(unit, index.get(unit) ?? 0);
    stack.push(unit);
    for (const next of unitsIn(graph.get(unit) ?? 0n)) {
      if (!graph.has(next)) continue;
      if (!index.has(next)) visit(next);
      if (stack.includes(next)) low.set(unit, Math.min(low.get(unit) ?? 0, low.get(next) ?? 0));
    }
    if (low.get(unit) !== index.get(unit)) return;
    const at = stack.indexOf(unit);
    found.push(stack.splice(at).sort((a, b) => a - b));
  };
  for (const unit of graph.keys()) if (!index.has(unit)) visit(unit);
  return found;
}

/** Smallest sets whose absence lets all others go: single units, else pairs, else one set found by deletion. */
function freeingSets(
  system: BlockingSystem,
  stuck: UnitSet,
  inKnots: UnitSet,
): readonly (readonly number[])[] {
  // Members of the knots first: they are what a person is told about.
  const units = [...unitsIn(stuck & inKnots), ...unitsIn(stuck & ~inKnots)];
  const frees = (set: UnitSet): boolean => peel(system, set).stuck === 0n;
  const single = units.filter((unit) => frees(bitOf(unit)));
  if (single.length > 0) return single.map((unit) => [unit]);
  const pairs: number[][] = [];
  units.forEach((a, k) => {
    for (const b of units.slice(k + 1)) if (frees(bitOf(a) | bitOf(b))) pairs.push([a, b]);
  });
  if (pairs.length > 0) return pairs;
  let set = stuck;
  for (const unit of units) if (frees(set & ~bitOf(unit))) set &= ~bitOf(unit);
  return [unitsIn(set)];
}
