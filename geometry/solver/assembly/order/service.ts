/** To take one unit out of the finished machine: how few others have to come out first, and which. */
import FlatQueue from 'flatqueue';
import { allUnits, bitOf, sizeOf, type UnitSet, unitsIn } from '../assembly-bodies';
import { alwaysBlocks, type BlockingSystem, canGo, carriersOf, everBlocks, peel } from './blocking-system';

export interface Service {
  /** Others that come out first, in an order that works. */
  readonly out: readonly number[];
  /** False when the search was cut short: then fewer might do. */
  readonly exact: boolean;
}

/** States looked at for one unit before the answer is called 'at most'; our choice. */
const MOST_STATES = 4000;

/** Undefined when the unit cannot come out whatever else is taken out. */
export function serviceOf(system: BlockingSystem, unit: number): Service | undefined {
  if ((peel(system).stuck & bitOf(unit)) !== 0n) return undefined;
  const needed = necessary(system, unit);
  const straight = orderWithin(system, unit, needed);
  if (straight) return { out: straight, exact: true };
  return searched(system, unit, needed) ?? byDeletion(system, unit);
}

/** What has to go whatever alternatives are taken, through any number of steps. */
function necessary(system: BlockingSystem, unit: number): UnitSet {
  let set = alwaysBlocks(system, unit);
  for (let grown = -1n; grown !== set; ) {
    grown = set;
    for (const other of unitsIn(grown)) set |= alwaysBlocks(system, other);
  }
  return set & ~bitOf(unit);
}

/** An order in which `set` can go alone and the unit after it; undefined when it cannot. */
function orderWithin(system: BlockingSystem, unit: number, set: UnitSet): readonly number[] | undefined {
  const order: number[] = [];
  let removed = 0n;
  for (let went = true; went; ) {
    went = false;
    for (const other of unitsIn(set & ~removed)) {
      if (!canGo(system, other, removed)) continue;
      removed |= bitOf(other);
      order.push(other);
      went = true;
    }
  }
  return removed === set && canGo(system, unit, removed) ? order : undefined;
}

/** Fewest removals by A* over the sets that can be gone; only units that ever stand in the way are touched. */
function searched(system: BlockingSystem, unit: number, needed: UnitSet): Service | undefined {
  // What stands in the way, and what the unit could be carried out on, through any number of steps.
  const all = allUnits(system.count);
  const touches = (other: number): UnitSet => (everBlocks(system, other) | carriersOf(system, other)) & all;
  let relevant = touches(unit);
  for (let grown = -1n; grown !== relevant; ) {
    grown = relevant;
    for (const other of unitsIn(grown)) relevant |= touches(other);
  }
  relevant &= ~bitOf(unit);
  const open = new FlatQueue<{ readonly removed: UnitSet; readonly order: readonly number[] }>();
  const seen = new Set<UnitSet>([0n]);
  open.push({ removed: 0n, order: [] }, sizeOf(needed));
  for (let states = 0; states < MOST_STATES; states++) {
    const state = open.pop();
    if (!state) return undefined;
    if (canGo(system, unit, state.removed)) return { out: state.order, exact: true };
    for (const other of unitsIn(relevant & ~state.removed)) {
      const removed = state.removed | bitOf(other);
      if (seen.has(removed) || !canGo(system, other, state.removed)) continue;
      seen.add(removed);
      open.push({ removed, order: [...state.order, other] }, sizeOf(removed) + sizeOf(needed & ~removed));
    }
  }
  return undefined;
}

/** A set that no member can be left out of, though another might be smaller. */
function byDeletion(system: BlockingSystem, unit: number): Service {
  const all = allUnits(system.count) & ~bitOf(unit);
  const able = (set: UnitSet): readonly number[] | undefined => {
    let removed = 0n;
    const order: number[] = [];
    for (let went = true; went && !canGo(system, unit, removed); ) {
      went = false;
      for (const other of unitsIn(set & ~removed)) {
        if (!canGo(system, other, removed)) continue;
        removed |= bitOf(other);
        order.push(other);
        went = true;
      }
    }
    return canGo(system, unit, removed) ? order : undefined;
  };
  let kept = all;
  for (const other of unitsIn(all)) if (able(kept & ~bitOf(other))) kept &= ~bitOf(other);
  return { out: able(kept) ?? unitsIn(kept), exact: false };
}
