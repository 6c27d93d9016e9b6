/**
 * What builders would rather do, as costs of a step; common practice, no source. They only choose among orders that
 * paths and reach allow: none of them says what must come before what.
 */
import { bitOf, sizeOf, type UnitSet } from '../assembly-bodies';
import type { Machine } from '../machine/machine';
import type { MachineSystem } from '../machine/machine-system';
import type { AssemblyUnit, UnitKind } from '../machine/unit';
import type { StepCost } from './best-order';
import { benchOf, outOfTheWay, type RememberedSystem } from './blocking-system';

/** When in a build each kind is liked best: bench first, large and fragile late, panels last. */
const LIKED_AT: Readonly<Record<UnitKind, number>> = {
  processor: 1,
  drive: 2,
  'M.2 sink': 3,
  memory: 4,
  cooler: 5,
  'cooler fan': 6,
  board: 8,
  fan: 9,
  radiator: 9,
  supply: 10,
  adapter: 10,
  plug: 10,
  card: 14,
  'slot cover': 16,
  panel: 17,
  enclosure: 18,
};

/** Cost of one pair of steps in the order builders do not like, of working inside what could lie on the bench, ... */
const WRONG_WAY_ROUND = 1;
const IN_THE_ENCLOSURE = 3;
/** ... and of one unit of awkwardness of a way or grip (a long driver is 0.3, a leaning arm 0.2). */
const AWKWARD = 5;
/** ... and of a plug of whose grips none is left free, beside one that can be taken in every way. */
const CROWDED = 12;

function likedAt(machine: Machine, unit: AssemblyUnit): number {
  const spec = machine.scene.parts[unit.part]?.spec;
  // A drive in a bay belongs with the fans and the supply, one on the board with the processor.
  if (unit.kind === 'drive' && spec?.kind === 'drive' && spec.form !== 'M.2') return LIKED_AT.fan;
  // A fan's own plug comes with its part; leads of a card come after the card, those at the supply before it goes in.
  if (unit.kind === 'plug') {
    const owner = unit.on === undefined ? undefined : machine.units[unit.on];
    if (owner?.kind === 'card') return LIKED_AT.card + 1;
    if (owner?.kind === 'supply') return LIKED_AT.supply - 0.5;
    if (unit.plug?.fixedTo !== undefined && machine.units[unit.plug.fixedTo]?.kind === 'cooler')
      return LIKED_AT['cooler fan'] + 0.5;
  }
  return LIKED_AT[unit.kind];
}

/** The cost of taking a unit out as the next one: of putting it in last among what is left. */
export function builderCosts(
  machine: Machine,
  { system, riders }: MachineSystem,
  remembered: RememberedSystem,
): StepCost {
  const liked = machine.units.map((unit) => likedAt(machine, unit));
  const later = machine.units.map((unit, k) =>
    machine.units.reduce(
      (set, other) =>
        (liked[other.index] ?? 0) > (liked[k] ?? 0) && other !== unit ? set | bitOf(other.index) : set,
      0n,
    ),
  );
  const board = machine.units.find((unit) => unit.kind === 'board');
  const crowds = machine.units.map((unit) => (unit.kind === 'plug' ? crowding(machine, unit) : undefined));
  return (unit, removed) => {
    const wrong = sizeOf((later[unit] ?? 0n) & ~removed);
    const inside =
      board && insideBoard(riders[board.index] ?? 0n, unit) && benchOf(system, unit, removed) === undefined;
    const benchWork = inside && (liked[unit] ?? 0) < LIKED_AT.board ? IN_THE_ENCLOSURE : 0;
    const crowd = CROWDED * (crowds[unit]?.(outOfTheWay(system, unit, removed)) ?? 0);
    return WRONG_WAY_ROUND * wrong + benchWork + crowd + AWKWARD * (remembered.costToGo(unit, removed) ?? 0);
  };
}

function insideBoard(riders: UnitSet, unit: number): boolean {
  return (riders & bitOf(unit)) !== 0n;
}

/** The share of the ways to take a plug that what is still there shuts off, of those that can be free at all. */
function crowding(machine: Machine, unit: AssemblyUnit): (gone: UnitSet) => number {
  const own = unit.on === undefined ? 0n : bitOf(unit.on);
  const grips = (machine.needs[unit.index] ?? [])
    .flatMap((need) => need.all)
    .filter((record) => !record.fixed && (record.blockers & own) === 0n)
    .map((record) => record.blockers);
  const matters = grips.reduce((set, blockers) => set | blockers, 0n);
  const known = new Map<UnitSet, number>();
  return (gone) => {
    if (grips.length === 0) return 0;
    const key = gone & matters;
    const before = known.get(key);
    if (before !== undefined) return before;
    const shut = grips.filter((blockers) => (blockers & ~key) !== 0n).length / grips.length;
    known.set(key, shut);
    return shut;
  };
}
