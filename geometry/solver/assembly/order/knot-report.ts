/** An unbuildable plan in words: who holds whom, by how much, who merely waits, what would free them. */
import { interiorsOverlap, signedDistance } from '../../../space/separation';
import { upperFirst } from '../../part-names';
import { allUnits, bitOf, unitsIn } from '../assembly-bodies';
import type { Machine } from '../machine/machine';
import type { MachineSystem } from '../machine/machine-system';
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
  readonly sentence: string;
}

export function reportKnots(machine: Machine, { system }: MachineSystem): KnotReport {
  const found = findKnots(system);
  const id = (unit: number): string => machine.units[unit]?.id ?? '';
  const name = (unit: number): string => machine.units[unit]?.name ?? '';
  const knots = (found?.knots ?? []).map(({ units }): NamedKnot => {
    const names = units.map(name);
    const sentence =
      units.length === 1
        ? `${upperFirst(names[0] ?? '')} has no way in that was found past what never moves.`
        : `${upperFirst(inWords(names))} block each other: whichever goes in first keeps the others out.`;
    return { units: units.map(id), sentence, pairs: pairsOf(machine, system, units) };
  });
  const freeing = (found?.freeing ?? []).map((set) => set.map(id));
  const [easiest] = found?.freeing ?? [];
  const free = easiest ? ` Without ${inWords(easiest.map(name))} the rest goes together.` : '';
  return {
    knots,
    waiting: (found?.waiting ?? []).map(id),
    freeing,
    sentence: `${knots.map((knot) => knot.sentence).join(' ')}${free}`,
  };
}

function inWords(names: readonly string[]): string {
  if (names.length < 2) return names[0] ?? '';
  return `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;
}

function pairsOf(machine: Machine, system: MachineSystem['system'], units: readonly number[]): string[] {
  const sentences: string[] = [];
  const set = units.reduce((s, unit) => s | bitOf(unit), 0n);
  for (const unit of units) {
    for (const other of unitsIn(set & ~bitOf(unit) & allUnits(system.count))) {
      const overlap = deepestOverlap(machine, unit, other);
      if (overlap !== undefined && unit < other)
        sentences.push(
          `${upperFirst(machine.units[unit]?.name ?? '')} and ${machine.units[other]?.name ?? ''} overlap by ${overlap.toFixed(1)} mm at their seats.`,
        );
      if (overlap !== undefined) continue;
      const met = (machine.ways[unit] ?? []).some(({ record }) => (record.blockers & bitOf(other)) !== 0n);
      const needed = (machine.needs[unit] ?? []).some((need) =>
        need.all.some((record) => (record.blockers & bitOf(other)) !== 0n),
      );
      if (met)
        sentences.push(
          `${upperFirst(machine.units[other]?.name ?? '')} stands in the way of ${machine.units[unit]?.name ?? ''}.`,
        );
      else if (needed)
        sentences.push(
          `${upperFirst(machine.units[other]?.name ?? '')} leaves no room for hand or tool at ${machine.units[unit]?.name ?? ''}.`,
        );
    }
  }
  return sentences;
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
