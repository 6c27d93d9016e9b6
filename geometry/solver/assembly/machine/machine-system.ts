/** From tested ways and needs to the sets that orders are searched over. */
import { bitOf, type UnitSet } from '../assembly-bodies';
import type { Alternative, BlockingSystem, Carrier, Requirement, Rider } from '../order/blocking-system';
import { testWay } from '../paths/test-way';
import type { WayRecord } from '../paths/way';
import type { Machine, TestedNeed, TestedWay } from './machine';
import type { AssemblyUnit, UnitKind } from './unit';

export type Purpose = 'putting in' | 'taking out';

/** What a requirement of the system stands for. */
export type RequirementSource =
  | { readonly kind: 'way'; readonly ways: readonly TestedWay[] }
  | { readonly kind: 'need'; readonly need: TestedNeed }
  | { readonly kind: 'carries'; readonly units: readonly number[] }
  | { readonly kind: 'lead'; readonly units: readonly number[] };

export interface MachineSystem {
  readonly system: BlockingSystem;
  /** By unit and requirement, in the order of `system.requirements`. */
  readonly sources: readonly (readonly RequirementSource[])[];
  /** Needs that no placement of these presets meets, whatever is taken out: left out of the system, and told. */
  readonly unproved: readonly { readonly unit: number; readonly need: TestedNeed }[];
  /** By unit: whether it can be put on something that lies on the bench. */
  readonly onBench: readonly boolean[];
  /** By unit: everything that can travel or lie on the bench with it. */
  readonly riders: readonly UnitSet[];
}

/** How unwelcome it is to plug the lead of a part before the part is in its place. */
const HANGING_LOOSE = 1;

/** Kinds that leave the enclosure with what is on them. */
const CARRYING: ReadonlySet<UnitKind> = new Set<UnitKind>([
  'board',
  'card',
  'adapter',
  'supply',
  'radiator',
  'cooler',
]);

export function machineSystem(
  machine: Machine,
  purpose: Purpose,
  extra: readonly ExtraWays[] = [],
): MachineSystem {
  const { units } = machine;
  const never = bitOf(units.length);
  const riders = units.map((unit) => ridersOf(units, unit));
  const carriers = units.map((unit, k): Carrier | undefined =>
    CARRYING.has(unit.kind) && riders[k] !== 0n ? { riders: riders[k] ?? 0n } : undefined,
  );
  const onBench = units.map((unit) =>
    carriers.some((carrier) => carrier && (carrier.riders & bitOf(unit.index)) !== 0n),
  );
  const unproved: { unit: number; need: TestedNeed }[] = [];
  const requirements: Requirement[][] = [];
  const sources: RequirementSource[][] = [];
  for (const unit of units) {
    const mine: Requirement[] = [];
    const from: RequirementSource[] = [];
    const add = (requirement: Requirement, source: RequirementSource): void => {
      mine.push(requirement);
      from.push(source);
    };
    const ways = [
      ...(machine.ways[unit.index] ?? []),
      ...extra.flatMap((e) => (e.unit === unit.index ? e.ways : [])),
    ];
    const usable = ways.filter(({ record }) => !record.fixed || onBench[unit.index]);
    add(
      { alternatives: usable.map((way) => wayAlternative(machine, unit, way, riders, never, purpose)) },
      { kind: 'way', ways: usable },
    );
    for (const need of machine.needs[unit.index] ?? []) {
      if (need.need.onlyTakingOut && purpose === 'putting in') continue;
      const alternatives = needAlternatives(unit, need, onBench[unit.index] === true, never);
      if (alternatives.length === 0) unproved.push({ unit: unit.index, need });
      else add({ alternatives }, { kind: 'need', need });
    }
    const first = goFirst(units, unit, carriers[unit.index] !== undefined);
    for (const [kind, blocking] of first) {
      const blockers = blocking.reduce((set, other) => set | bitOf(other), 0n);
      // A lead is long enough to be plugged while its fan still hangs loose, though nobody likes to.
      const loose = kind === 'lead' ? [{ blockers: 0n, cost: HANGING_LOOSE }] : [];
      if (blocking.length > 0) add({ alternatives: [{ blockers }, ...loose] }, { kind, units: blocking });
    }
    requirements.push(mine);
    sources.push(from);
  }
  return {
    system: { count: units.length, requirements, carriers },
    sources,
    unproved,
    riders,
    onBench,
  };
}

/** Ways found by searching, beside the suggested ones. */
export interface ExtraWays {
  readonly unit: number;
  readonly ways: readonly TestedWay[];
}

/** All units that sit on a unit, directly or not, and could travel with it. */
function ridersOf(units: readonly AssemblyUnit[], carrier: AssemblyUnit): UnitSet {
  if (!CARRYING.has(carrier.kind)) return 0n;
  let set = 0n;
  for (const unit of units)
    if (unit !== carrier && sitsOn(units, unit, carrier.index)) set |= bitOf(unit.index);
  return set;
}

function sitsOn(units: readonly AssemblyUnit[], unit: AssemblyUnit, carrier: number): boolean {
  for (let at: AssemblyUnit | undefined = unit, steps = 0; at && steps < units.length; steps++) {
    if (at.on === carrier) return true;
    at = at.on === undefined ? undefined : units[at.on];
  }
  return false;
}

/** Whether a plug on a board or card is the end of a lead that goes elsewhere: then its socket stays where it is. */
function isTiedDown(machine: Machine, unit: AssemblyUnit, carrier: number, purpose: Purpose): boolean {
  const { units } = machine;
  if (unit.kind !== 'plug') return false;
  const owner = unit.on === undefined ? undefined : units[unit.on];
  // A lead can be plugged into a card or a supply that still lies on the bench; its other end stays loose. A card that
  // is taken out is unplugged first where a hand gets to the plug.
  if (owner?.kind === 'supply') return false;
  if (owner?.kind === 'card' && owner.index === carrier)
    return purpose === 'taking out' && isReachable(machine, unit, owner);
  const fixedTo = unit.plug?.fixedTo;
  const end = fixedTo === undefined ? undefined : units[fixedTo];
  return end === undefined || !sitsOn(units, end, carrier);
}

function wayAlternative(
  machine: Machine,
  unit: AssemblyUnit,
  { way, record }: TestedWay,
  riders: readonly UnitSet[],
  never: UnitSet,
  purpose: Purpose,
): Alternative {
  const group = riders[unit.index] ?? 0n;
  const blockersOf = (found: WayRecord): UnitSet => (found.blockers & ~group) | (found.fixed ? never : 0n);
  if (group === 0n) return { blockers: blockersOf(record), cost: way.cost };
  const own = bitOf(unit.index);
  const along: Rider[] = [];
  for (const rider of machine.units) {
    if ((group & bitOf(rider.index)) === 0n) continue;
    if (isTiedDown(machine, rider, unit.index, purpose)) {
      along.push({ unit: rider.index, blockers: 0n, stuck: true });
      continue;
    }
    const met = testWay(machine.bodies, rider.index, way.motions, (box) => {
      const other = machine.bodies.unitOf[box] ?? -1;
      return other < 0 || ((group | own) & bitOf(other)) === 0n;
    });
    along.push({ unit: rider.index, blockers: blockersOf(met), stuck: false });
  }
  return { blockers: blockersOf(record), riders: along, cost: way.cost };
}

/** Whether fingers get to a plug while what it is in stands at its seat. */
function isReachable(machine: Machine, plug: AssemblyUnit, owner: AssemblyUnit): boolean {
  return (machine.needs[plug.index] ?? []).every((need) =>
    need.records.some((record) => !record.fixed && (record.blockers & bitOf(owner.index)) === 0n),
  );
}

function needAlternatives(
  unit: AssemblyUnit,
  { all, records }: TestedNeed,
  onBench: boolean,
  never: UnitSet,
): Alternative[] {
  const own = bitOf(unit.index);
  const kept = onBench ? all.filter((record) => (record.blockers & own) === 0n) : records;
  return kept.map((record) => ({
    blockers: record.blockers | (record.fixed ? never : 0n),
    cost: record.volume.cost,
  }));
}

/** What sits on a unit that leaves alone, and the plugs of leads that are fixed to it. */
function goFirst(
  units: readonly AssemblyUnit[],
  unit: AssemblyUnit,
  carries: boolean,
): readonly (readonly ['carries' | 'lead', readonly number[]])[] {
  const on = carries ? [] : units.filter((other) => other.on === unit.index).map((other) => other.index);
  const leads = units.filter((other) => other.plug?.fixedTo === unit.index).map((other) => other.index);
  return [
    ['carries', on],
    ['lead', leads],
  ];
}
