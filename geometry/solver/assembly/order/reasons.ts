/** Why one thing goes in before another, in a sentence made from what meets what. */

import { upperFirst } from '../../part-names';
import { bitOf } from '../assembly-bodies';
import type { Machine, TestedNeed, TestedWay } from '../machine/machine';
import type { MachineSystem, RequirementSource } from '../machine/machine-system';
import { benchOf } from './blocking-system';

export interface Reason {
  /** Unit ids: the first goes in before the second. */
  readonly first: string;
  readonly second: string;
  /** Whether no way or tool of those tried gets round it, or it is only easier so. */
  readonly force: 'must' | 'easier';
  readonly sentence: string;
}

/** Reasons for the place of a unit in a removal order: for everything put in after it that would be in its way. */
export function reasonsFor(
  machine: Machine,
  machineSystem: MachineSystem,
  unit: number,
  removed: bigint,
): readonly Reason[] {
  const { system, sources, riders } = machineSystem;
  const bench = benchOf(system, unit, removed);
  const near = bench === undefined ? removed : removed & (riders[bench] ?? 0n);
  const never = bitOf(machine.units.length);
  const reasons = new Map<number, Reason>();
  for (const [k, requirement] of (system.requirements[unit] ?? []).entries()) {
    const source = sources[unit]?.[k];
    if (!source) continue;
    const possible = requirement.alternatives
      .map((alternative, index) => ({ alternative, index }))
      .filter(({ alternative }) => bench !== undefined || (alternative.blockers & never) === 0n);
    const easiest = [...possible].sort((a, b) => (a.alternative.cost ?? 0) - (b.alternative.cost ?? 0))[0];
    for (const other of machine.units) {
      const bit = bitOf(other.index);
      if ((near & bit) === 0n || other.kind === 'panel') continue;
      const must =
        possible.length > 0 && possible.every(({ alternative }) => (alternative.blockers & bit) !== 0n);
      const easier = easiest !== undefined && (easiest.alternative.blockers & bit) !== 0n;
      if (!must && !easier) continue;
      const known = reasons.get(other.index);
      if (known && (known.force === 'must' || !must)) continue;
      reasons.set(other.index, reasonOf(machine, unit, other.index, source, must ? 'must' : 'easier'));
    }
  }
  return [...reasons.values()];
}

function reasonOf(
  machine: Machine,
  unit: number,
  other: number,
  source: RequirementSource,
  force: 'must' | 'easier',
): Reason {
  const first = machine.units[unit];
  const later = machine.units[other];
  const name = first?.name ?? '';
  const laterName = later?.name ?? '';
  const because = causeOf(machine, laterName, other, source);
  const goes = force === 'must' ? 'goes' : 'goes in more easily';
  const verb =
    first?.kind === 'plug'
      ? force === 'must'
        ? 'is plugged'
        : 'is more easily plugged'
      : `${goes}${force === 'must' ? ' in' : ''}`;
  return {
    first: first?.id ?? '',
    second: later?.id ?? '',
    force,
    sentence: `${upperFirst(name)} ${plural(name, verb)} before ${laterName}: ${because}.`,
  };
}

/** 'the front panel leads are plugged'. */
function plural(name: string, verb: string): string {
  return / leads\b/.test(name) ? verb.replace(/^goes/, 'go').replace(/^is /, 'are ') : verb;
}

/** Why a unit is kept out by another that is there, from what the requirement meets: 'the cooler covers its screw'. */
export function causeOf(machine: Machine, later: string, other: number, source: RequirementSource): string {
  switch (source.kind) {
    case 'way':
      return wayCause(machine, later, other, source.ways);
    case 'need':
      return needCause(machine, later, other, source.need);
    case 'carries':
      return `${later} sits on it`;
    case 'lead':
      return `${later} hangs on it`;
  }
}

function wayCause(machine: Machine, later: string, other: number, ways: readonly TestedWay[]): string {
  const contact = ways.flatMap(({ record }) => record.contacts).find(({ unit }) => unit === other);
  const piece = contact === undefined ? undefined : pieceName(machine, contact.obstacle);
  return piece ? `${later} stands in its way with its ${piece}` : `${later} stands in its way`;
}

function needCause(machine: Machine, later: string, other: number, tested: TestedNeed): string {
  const contact = tested.all.flatMap((record) => record.meets).find(({ unit }) => unit === other);
  const piece = contact === undefined ? undefined : pieceName(machine, contact.obstacle);
  const whole = piece ? `${later} (its ${piece})` : later;
  if (tested.need.fastener) {
    return contact?.piece === 0
      ? `${whole} covers ${tested.need.name === 'its screw' ? 'its screw' : 'a screw of it'}`
      : `${whole} leaves no room for the driver on ${tested.need.name === 'its screw' ? 'its screw' : 'a screw of it'}`;
  }
  return `${whole} leaves no room for fingers at ${tested.need.name === 'the plug' ? 'its plug' : tested.need.name}`;
}

/** The piece of a part that is met, when its name says more than the part's own. */
function pieceName(machine: Machine, box: number): string | undefined {
  const entry = machine.scene.boxes[machine.sceneBox[box] ?? -1];
  if (entry?.body.role !== 'solid') return undefined;
  const unit = machine.units[machine.bodies.unitOf[box] ?? -1];
  if (!unit || unit.boxes.length === 1) return undefined;
  return entry.body.name.replace(/ \d+$/, '').toLowerCase();
}
