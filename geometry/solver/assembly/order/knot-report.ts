/** An unbuildable plan in words: who holds whom, by how much, who merely waits, what would free them. */
import { interiorsOverlap, signedDistance } from '../../../space/separation';
import { upperFirst } from '../../part-names';
import { sizeOf } from '../assembly-bodies';
import type { Machine } from '../machine/machine';
import type { MachineSystem } from '../machine/machine-system';
import { findsNoWay, knotCauses, openingsThatFree } from './knot-causes';
import { findKnots } from './knots';

export interface NamedKnot {
  /** Unit ids; one smallest set. */
  readonly units: readonly string[];
  readonly sentence: string;
  /** One sentence for each pair that hold each other, with the number where there is one. */
  readonly pairs: readonly string[];
}

export interface KnotReport {
  readonly knots: readonly NamedKnot[];
  readonly waiting: readonly string[];
  /** Smallest sets of units without which the rest goes together. */
  readonly freeing: readonly (readonly string[])[];
  /** Openings in what never moves with which everything goes together, as sentences. */
  readonly openings: readonly string[];
  readonly sentence: string;
}

export function reportKnots(machine: Machine, machineSystem: MachineSystem): KnotReport {
  const found = findKnots(machineSystem.system);
  const id = (unit: number): string => machine.units[unit]?.id ?? '';
  const name = (unit: number): string => machine.units[unit]?.name ?? '';
  const knots = (found?.knots ?? []).map(({ units }): NamedKnot => {
    const names = units.map(name);
    const pairs = pairsOf(machine, machineSystem, units);
    const sentence =
      units.length === 1
        ? sayHeld(names[0] ?? '', pairs, findsNoWay(machineSystem, units))
        : `${upperFirst(inWords(names))} block each other: whichever goes in first keeps the others out.`;
    return { units: units.map(id), sentence, pairs };
  });
  // What carries others is the last thing anybody gives up: a machine without its board is none. It is only named
  // where nothing less would do.
  const carried = (set: readonly number[]): number =>
    set.reduce((sum, unit) => sum + sizeOf(machineSystem.riders[unit] ?? 0n), 0);
  const sets = [...(found?.freeing ?? [])].sort((a, b) => carried(a) - carried(b));
  const least = sets[0] ? carried(sets[0]) : 0;
  const freeing = sets.filter((set) => carried(set) === least).map((set) => set.map(id));
  const [easiest] = sets;
  const openings = (found?.knots ?? []).flatMap(({ units }) =>
    openingsThatFree(machine, machineSystem, units),
  );
  const free = easiest ? ` Without ${inWords(easiest.map(name))} the rest goes together.` : '';
  return {
    knots,
    waiting: (found?.waiting ?? []).map(id),
    freeing,
    openings,
    sentence: `${knots.map((knot) => knot.sentence).join(' ')}${free}`,
  };
}

/** One unit that nothing else of the plan keeps out: the enclosure does, or what it is held by itself. */
function sayHeld(name: string, pairs: readonly string[], noWay: boolean): string {
  if (noWay) return `${upperFirst(name)}: no way in was found within these bounds.`;
  return pairs[0] === undefined
    ? `${upperFirst(name)} cannot be put in.`
    : `${upperFirst(name)} holds itself up.`;
}

function inWords(names: readonly string[]): string {
  if (names.length < 2) return names[0] ?? '';
  return `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;
}

function pairsOf(machine: Machine, found: MachineSystem, units: readonly number[]): string[] {
  const overlaps: string[] = [];
  for (const [k, unit] of units.entries()) {
    for (const other of units.slice(k + 1)) {
      const overlap = deepestOverlap(machine, unit, other);
      if (overlap !== undefined)
        overlaps.push(
          `${upperFirst(machine.units[unit]?.name ?? '')} and ${machine.units[other]?.name ?? ''} overlap by ${overlap.toFixed(1)} mm at their seats.`,
        );
    }
  }
  return overlaps.length > 0 ? overlaps : knotCauses(machine, found, units);
}

/** Deepest overlap of two units at their seats, mm; undefined when they do not overlap. */
function deepestOverlap(machine: Machine, a: number, b: number): number | undefined {
  const { packed, boxesOf, mayMeet } = machine.bodies;
  let deepest: number | undefined;
  for (const i of boxesOf[a] ?? []) {
    for (const j of boxesOf[b] ?? []) {
      if (!interiorsOverlap(packed, i, j) || mayMeet(i, j)) continue;
      const depth = -signedDistance(packed, i, j);
      if (deepest === undefined || depth > deepest) deepest = depth;
    }
  }
  return deepest;
}
