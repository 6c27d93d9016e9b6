/** What holds the units of a knot, in sentences: which requirement of which unit is not met with the others there. */
import { upperFirst } from '../../part-names';
import { allUnits, bitOf, sizeOf, type UnitSet, unitsIn } from '../assembly-bodies';
import type { Machine, TestedNeed } from '../machine/machine';
import type { MachineSystem, RequirementSource } from '../machine/machine-system';
import { pieceOfObstacle } from '../path-places';
import { type Alternative, isMet, outOfTheWay, peel, type Requirement } from './blocking-system';
import { causeOf } from './reasons';

/** One sentence for each thing that cannot be done while the other units of the knot are there. */
export function knotCauses(machine: Machine, found: MachineSystem, units: readonly number[]): string[] {
  const never = bitOf(machine.units.length);
  const sentences = new Map<string, string>();
  const say = (key: string, sentence: string): void => {
    if (!sentences.has(key)) sentences.set(key, sentence);
  };
  for (const { unit, source, missing } of heldIn(found, units)) {
    const name = machine.units[unit]?.name ?? '';
    const cannot = source.kind === 'need' ? whatCannot(source.need) : 'finds no way in';
    for (const other of unitsIn(missing & allUnits(machine.units.length))) {
      const later = machine.units[other]?.name ?? '';
      const cause = causeOf(machine, later, other, source);
      say(`${unit} ${other} ${cannot}`, `With ${later} in place ${name} ${cannot}: ${cause}.`);
    }
    if ((missing & never) === 0n) continue;
    const piece = fixedPiece(machine, source);
    if (source.kind === 'need')
      say(
        `${unit} need`,
        `${upperFirst(name)} ${cannot} in the enclosure: ${piece} is in the way. It has to be done on the bench.`,
      );
    else if (source.kind === 'way' && source.ways.some(({ record }) => !record.fixed)) {
      const riding = units.filter((other) => ((found.riders[unit] ?? 0n) & bitOf(other)) !== 0n);
      const names = riding.map((other) => machine.units[other]?.name ?? '').join(' and ');
      say(`${unit} riders`, `With ${names} on it ${name} finds no way in.`);
    } else
      say(
        `${unit} way`,
        `In the enclosure no way in was found for ${name} within these bounds: ${piece} is in the way.`,
      );
  }
  return [...sentences.values()];
}

function whatCannot({ need }: TestedNeed): string {
  return need.fastener ? 'cannot be screwed down' : 'cannot be plugged or clipped';
}

interface Held {
  readonly unit: number;
  readonly source: RequirementSource;
  /** The fewest things whose absence would meet the requirement. */
  readonly missing: UnitSet;
}

/** Requirements not met when everything but the knot is out of the way. */
function heldIn({ system, sources }: MachineSystem, units: readonly number[]): readonly Held[] {
  const knot = units.reduce((set, unit) => set | bitOf(unit), 0n);
  const removed = allUnits(system.count) & ~knot;
  return units.flatMap((unit) => {
    const gone = outOfTheWay(system, unit, removed);
    return (system.requirements[unit] ?? []).flatMap((requirement, k): Held[] => {
      const source = sources[unit]?.[k];
      if (!source || requirement.alternatives.some((alternative) => isMet(alternative, gone))) return [];
      return [{ unit, source, missing: fewestMissing(requirement, gone) }];
    });
  });
}

function fewestMissing(requirement: Requirement, gone: UnitSet): UnitSet {
  let best: UnitSet | undefined;
  for (const alternative of requirement.alternatives) {
    const missing = missingOf(alternative, gone);
    if (best === undefined || sizeOf(missing) < sizeOf(best)) best = missing;
  }
  return best ?? 0n;
}

function missingOf(alternative: Alternative, gone: UnitSet): UnitSet {
  let missing = alternative.blockers & ~gone;
  for (const rider of alternative.riders ?? []) {
    if ((gone & bitOf(rider.unit)) !== 0n) continue;
    missing |= rider.stuck ? bitOf(rider.unit) : rider.blockers & ~gone;
  }
  return missing;
}

/** Whether it is a way that is missing, not room for a hand or tool. */
export function findsNoWay(found: MachineSystem, units: readonly number[]): boolean {
  return heldIn(found, units).some(({ source }) => source.kind === 'way');
}

/** The wall, tray or cage that a hand, a tool or the mount's own way meets first. */
function fixedPiece(machine: Machine, source: RequirementSource): string {
  const contacts =
    source.kind === 'need'
      ? source.need.all.flatMap((record) => record.meets)
      : source.kind === 'way'
        ? source.ways.flatMap(({ record }) => record.contacts)
        : [];
  const contact = contacts.find(({ unit }) => unit < 0);
  return contact ? `the ${pieceOfObstacle(machine, contact.obstacle)}` : 'the enclosure';
}

/**
 * Openings that would let everything go: where a knot is held by a need that only a wall or the tray is in the way of,
 * the whole system is looked at again as if that piece were open there.
 */
export function openingsThatFree(
  machine: Machine,
  found: MachineSystem,
  units: readonly number[],
): readonly string[] {
  const { system } = found;
  const never = bitOf(machine.units.length);
  const asked = new Map<number, Set<string>>();
  for (const { unit, source, missing } of heldIn(found, units))
    if (source.kind === 'need' && (missing & never) !== 0n) {
      const pieces = asked.get(unit) ?? new Set<string>();
      asked.set(unit, pieces.add(fixedPiece(machine, source)));
    }
  return [...asked].flatMap(([unit, pieces]): string[] => {
    const requirements = system.requirements.map((mine, k) =>
      k === unit ? mine.map((requirement) => opened(requirement, never)) : mine,
    );
    if (peel({ ...system, requirements }).stuck !== 0n) return [];
    const name = machine.units[unit]?.name ?? '';
    return [
      `With an opening in ${[...pieces].join(' and ')} at the screws of ${name} everything goes together.`,
    ];
  });
}

function opened(requirement: Requirement, never: UnitSet): Requirement {
  return {
    alternatives: requirement.alternatives.map((alternative) => ({
      ...alternative,
      blockers: alternative.blockers & ~never,
    })),
  };
}
