/**
 * Who stands in whose way, as sets. Removal is a question of a unit and of what is still there, and it is monotone:
 * fewer units never block more. So peeling whatever can go, as long as anything can, decides whether an order exists.
 */
import { allUnits, bitOf, sizeOf, type UnitSet, unitsIn } from '../assembly-bodies';

/** Another unit that travels along when it is still on its carrier, and what it would meet on the same way. */
export interface Rider {
  readonly unit: number;
  readonly blockers: UnitSet;
  /** It cannot travel on this way at all: it has to be off before. */
  readonly stuck: boolean;
}

/** One way to meet a requirement: free as soon as all blockers are gone. */
export interface Alternative {
  readonly blockers: UnitSet;
  readonly riders?: readonly Rider[];
  /** How unwelcome it is beside the others of its requirement: 0 for the usual way. */
  readonly cost?: number;
}

/** Something a unit needs to go (or to come in): a way, a free screw, a free plug. Any one alternative will do. */
export interface Requirement {
  readonly alternatives: readonly Alternative[];
}

/** A unit that others may ride on: they can be put on it while it lies on the bench. */
export interface Carrier {
  /** Everything that can ride on it. */
  readonly riders: UnitSet;
}

export interface BlockingSystem {
  readonly count: number;
  /** By unit; all requirements have to be met. */
  readonly requirements: readonly (readonly Requirement[])[];
  /** By unit, for those that carry others out with them. */
  readonly carriers?: readonly (Carrier | undefined)[];
}

/** A system of plain alternatives: unit k can go once one of `ways[k]` is gone altogether. */
export function systemOfWays(ways: readonly (readonly (readonly number[])[])[]): BlockingSystem {
  return {
    count: ways.length,
    requirements: ways.map((alternatives) => [
      {
        alternatives: alternatives.map((blockers) => ({
          blockers: blockers.reduce((set, unit) => set | bitOf(unit), 0n),
        })),
      },
    ]),
  };
}

/**
 * What is out of the way of a unit: what has been removed, and on the bench everything not on the same carrier. The bit
 * behind the last unit stands for what never moves: on the bench that is away as well.
 */
export function outOfTheWay(system: BlockingSystem, unit: number, removed: UnitSet): UnitSet {
  const carrier = benchOf(system, unit, removed);
  if (carrier === undefined) return removed | carriedAway(system, removed);
  const riders = system.carriers?.[carrier]?.riders ?? 0n;
  // The carrier lies on the bench with what it still carries: nothing else is near. It stays under them itself.
  return (removed & ~bitOf(carrier)) | (allUnits(system.count + 1) & ~(riders | bitOf(carrier)));
}

/** What lies on the bench because its carrier does: it stands in nobody's way any more. */
function carriedAway(system: BlockingSystem, removed: UnitSet): UnitSet {
  let away = 0n;
  const carriers = system.carriers ?? [];
  for (let carrier = 0; carrier < carriers.length; carrier++) {
    const riders = carriers[carrier]?.riders;
    if (riders !== undefined && (removed & bitOf(carrier)) !== 0n) away |= riders;
  }
  return away;
}

/** The carrier on which a unit lies on the bench; the innermost where one carries another. */
export function benchOf(system: BlockingSystem, unit: number, removed: UnitSet): number | undefined {
  let best: number | undefined;
  let size = Infinity;
  const carriers = system.carriers ?? [];
  for (let carrier = 0; carrier < carriers.length; carrier++) {
    const riders = carriers[carrier]?.riders;
    if (riders === undefined || (removed & bitOf(carrier)) === 0n || (riders & bitOf(unit)) === 0n) continue;
    const riding = sizeOf(riders);
    if (riding >= size) continue;
    best = carrier;
    size = riding;
  }
  return best;
}

export function isMet(alternative: Alternative, gone: UnitSet): boolean {
  if ((alternative.blockers & ~gone) !== 0n) return false;
  for (const rider of alternative.riders ?? []) {
    if ((gone & bitOf(rider.unit)) !== 0n) continue;
    if (rider.stuck || (rider.blockers & ~gone) !== 0n) return false;
  }
  return true;
}

/** Whether a unit can go when `removed` are gone. */
export function canGo(system: BlockingSystem, unit: number, removed: UnitSet): boolean {
  const gone = outOfTheWay(system, unit, removed);
  for (const requirement of system.requirements[unit] ?? []) {
    if (!requirement.alternatives.some((alternative) => isMet(alternative, gone))) return false;
  }
  return true;
}

/** Cost of the cheapest alternatives with which a unit can go; undefined when it cannot. */
export function costToGo(system: BlockingSystem, unit: number, removed: UnitSet): number | undefined {
  const gone = outOfTheWay(system, unit, removed);
  let sum = 0;
  for (const requirement of system.requirements[unit] ?? []) {
    let least = Infinity;
    for (const alternative of requirement.alternatives) {
      const cost = alternative.cost ?? 0;
      if (cost < least && isMet(alternative, gone)) least = cost;
    }
    if (least === Infinity) return undefined;
    sum += least;
  }
  return sum;
}

export interface Peel {
  /** In the order in which they went, lowest number first among those that can go at once. */
  readonly order: readonly number[];
  /** What is left when nothing more can go. */
  readonly stuck: UnitSet;
}

/** Removes whatever can go, again and again; `removed` are gone already. */
export function peel(system: BlockingSystem, removed: UnitSet = 0n): Peel {
  const order: number[] = [];
  let gone = removed;
  let went = true;
  while (went) {
    went = false;
    for (let unit = 0; unit < system.count; unit++) {
      if ((gone & bitOf(unit)) !== 0n || !canGo(system, unit, gone)) continue;
      gone |= bitOf(unit);
      order.push(unit);
      went = true;
    }
  }
  return { order, stuck: allUnits(system.count) & ~gone };
}

/** Every unit that appears as a blocker in some alternative of a unit. */
export function everBlocks(system: BlockingSystem, unit: number): UnitSet {
  let set = 0n;
  for (const requirement of system.requirements[unit] ?? []) {
    for (const alternative of requirement.alternatives) {
      set |= alternative.blockers;
      for (const rider of alternative.riders ?? []) set |= rider.blockers | bitOf(rider.unit);
    }
  }
  return set;
}

/** Units that have to go before `unit` whatever alternatives are taken (directly, not through others). */
export function alwaysBlocks(system: BlockingSystem, unit: number): UnitSet {
  let set = 0n;
  for (const requirement of system.requirements[unit] ?? []) {
    let common = allUnits(system.count);
    for (const alternative of requirement.alternatives) common &= alternative.blockers;
    if (requirement.alternatives.length > 0) set |= common;
  }
  return set & allUnits(system.count);
}

/** Whether each unit of a complete removal order can go when its turn comes. */
export function isRemovalOrder(system: BlockingSystem, order: readonly number[]): boolean {
  let removed = 0n;
  for (const unit of order) {
    if ((removed & bitOf(unit)) !== 0n || !canGo(system, unit, removed)) return false;
    removed |= bitOf(unit);
  }
  return removed === allUnits(system.count);
}

/**
 * Answers about one system, remembered: whether a unit can go depends only on the few units that ever stand in its way
 * and on its carriers, so most questions of a search have been asked before.
 */
export class RememberedSystem {
  readonly system: BlockingSystem;
  private readonly matters: readonly UnitSet[];
  private readonly known: readonly Map<UnitSet, number | undefined>[];

  constructor(system: BlockingSystem) {
    this.system = system;
    const units = Array.from({ length: system.count }, (_, unit) => unit);
    this.matters = units.map((unit) => {
      const blocks = everBlocks(system, unit);
      const carried = unitsIn(blocks & allUnits(system.count)).reduce(
        (set, other) => set | carriersOf(system, other),
        0n,
      );
      return blocks | carriersOf(system, unit) | carried;
    });
    this.known = units.map(() => new Map());
  }

  /** As `costToGo`; undefined when the unit cannot go. */
  costToGo(unit: number, removed: UnitSet): number | undefined {
    const answers = this.known[unit];
    const key = removed & (this.matters[unit] ?? 0n);
    if (answers?.has(key)) return answers.get(key);
    const cost = costToGo(this.system, unit, key);
    answers?.set(key, cost);
    return cost;
  }

  canGo(unit: number, removed: UnitSet): boolean {
    return this.costToGo(unit, removed) !== undefined;
  }
}

/** The units that carry a unit, as far as carrying matters to it. */
export function carriersOf(system: BlockingSystem, unit: number): UnitSet {
  let set = 0n;
  (system.carriers ?? []).forEach((carrier, k) => {
    if (carrier && (carrier.riders & bitOf(unit)) !== 0n) set |= bitOf(k);
  });
  return set;
}
