/** The order a machine is put together in: found by taking it apart, told forwards. */
import type { Scene } from '../../../plan/scene';
import { type Motion, reversedMotions } from '../../../space/motion';
import type { ScrewUse } from '../../../standards/assembly-screws';
import { bitOf, type UnitSet, unitsIn } from '../assembly-bodies';
import { buildMachine, type Machine, type MachineOptions } from '../machine/machine';
import { type ExtraWays, type MachineSystem, machineSystem } from '../machine/machine-system';
import { searchedWays } from '../machine/searched-ways';
import type { UnitKind } from '../machine/unit';
import { bestOrder } from './best-order';
import { benchOf, isMet, outOfTheWay, peel, RememberedSystem } from './blocking-system';
import { builderCosts } from './builder-preferences';
import { type KnotReport, reportKnots } from './knot-report';
import { type Reason, reasonsFor } from './reasons';

/** Something done to one place of a unit in a step. */
export interface StepNeed {
  readonly name: string;
  /** 'screwdriver, 100 mm shaft', 'finger and thumb, across' ... */
  readonly how: string;
  /** A tool that is held; absent for bare hands. */
  readonly tool?: string;
  readonly screw?: ScrewUse;
}

export interface AssemblyStep {
  readonly number: number;
  readonly action: 'take off' | 'put in' | 'plug in' | 'close';
  /** Unit id, and its words for a sentence. */
  readonly unit: string;
  readonly name: string;
  readonly kind: UnitKind;
  /** Part of the plan it belongs to. */
  readonly part: string;
  /** Id of the unit on which it is put while that lies on the bench; absent for work in the enclosure. */
  readonly bench?: string;
  /** Units that travel with it. */
  readonly with: readonly string[];
  readonly wayWords: string;
  /** Into the seat: poses are relative to the seat, ending with no displacement. */
  readonly motions: readonly Motion[];
  readonly needs: readonly StepNeed[];
  readonly reasons: readonly Reason[];
}

export interface AssemblyOrder {
  readonly buildable: boolean;
  readonly steps: readonly AssemblyStep[];
  /** Whether no order is liked better, or only none of those kept while searching. */
  readonly exact: boolean;
  readonly cost: number;
  /** Why it cannot be finished; absent when it can. */
  readonly stuck?: KnotReport;
  /** Screws, clips and plugs for which no tool or hand of the presets was found to have room, whatever is taken out. */
  readonly unproved: readonly { readonly unit: string; readonly sentence: string }[];
}

export interface OrderOptions extends MachineOptions {
  /** Sets kept at each level of the search. */
  readonly width?: number;
}

const DEFAULT_WIDTH = 60;

/** Deterministic: the same scene gives the same order. Throws what `onProgress` throws, to be stopped. */
export function assemblyOrder(scene: Scene, options: OrderOptions = {}): AssemblyOrder {
  return orderOfMachine(
    buildMachine(scene, { ...options, onProgress: (share) => options.onProgress?.(share * 0.5) }),
    options,
  );
}

export function orderOfMachine(machine: Machine, options: OrderOptions = {}): AssemblyOrder {
  const found = systemWithSearch(machine, 'putting in');
  const remembered = new RememberedSystem(found.system);
  const costs = builderCosts(machine, found, remembered);
  const best = bestOrder(remembered, costs, options.width ?? DEFAULT_WIDTH, (step, steps) =>
    options.onProgress?.(0.5 + (0.5 * step) / steps),
  );
  const steps = stepsOf(machine, found, best.removal);
  const { stuck } = peel(found.system);
  return {
    buildable: stuck === 0n,
    steps,
    exact: best.exact,
    cost: best.cost,
    ...(stuck === 0n ? {} : { stuck: reportKnots(machine, found) }),
    unproved: found.unproved.map(({ unit, need }) => ({
      unit: machine.units[unit]?.id ?? '',
      sentence: `No room was found for ${need.need.fastener ? 'a driver' : 'fingers'} at ${need.need.name} of ${machine.units[unit]?.name ?? ''} with these hands and tools.`,
    })),
  };
}

/** The system with suggested ways; where that gets stuck, ways found by searching are added once. */
export function systemWithSearch(machine: Machine, purpose: 'putting in' | 'taking out'): MachineSystem {
  const first = machineSystem(machine, purpose);
  const { stuck } = peel(first.system);
  if (stuck === 0n) return first;
  const extra: readonly ExtraWays[] = searchedWays(machine, stuck);
  return extra.length === 0 ? first : machineSystem(machine, purpose, extra);
}

function stepsOf(machine: Machine, found: MachineSystem, removal: readonly number[]): AssemblyStep[] {
  let removed = 0n;
  const backwards: Omit<AssemblyStep, 'number'>[] = [];
  for (const unit of removal) {
    const step = stepOf(machine, found, unit, removed);
    if (step) backwards.push(step);
    removed |= bitOf(unit);
  }
  const opened = machine.units
    .filter((unit) => unit.kind === 'panel' || unit.kind === 'slot cover')
    .flatMap((unit): Omit<AssemblyStep, 'number'>[] => {
      const closing = backwards.find((step) => step.unit === unit.id);
      if (!closing) return [];
      const motions = reversedMotions(closing.motions);
      return [{ ...closing, action: 'take off', motions, reasons: [], needs: [] }];
    });
  return [...opened, ...backwards.reverse()].map((step, k) => ({ number: k + 1, ...step }));
}

function stepOf(
  machine: Machine,
  found: MachineSystem,
  index: number,
  removed: UnitSet,
): Omit<AssemblyStep, 'number'> | undefined {
  const unit = machine.units[index];
  if (!unit) return undefined;
  const { system, sources, riders } = found;
  const gone = outOfTheWay(system, index, removed);
  const needs: StepNeed[] = [];
  let wayWords = '';
  let motions: readonly Motion[] = [];
  for (const [k, requirement] of (system.requirements[index] ?? []).entries()) {
    const source = sources[index]?.[k];
    const met = requirement.alternatives
      .map((alternative, at) => ({ alternative, at }))
      .filter(({ alternative }) => isMet(alternative, gone))
      .sort((a, b) => (a.alternative.cost ?? 0) - (b.alternative.cost ?? 0))[0];
    if (!met || !source) continue;
    if (source.kind === 'way') {
      const way = source.ways[met.at];
      wayWords = way?.way.words ?? '';
      motions = reversedMotions(way?.way.motions ?? []);
    }
    if (source.kind === 'need') {
      const { need, all, records } = source.need;
      const usable = (
        found.onBench[index] ? all.filter((record) => (record.blockers & bitOf(index)) === 0n) : records
      )[met.at];
      if (usable)
        needs.push({
          name: need.name,
          how: usable.volume.name,
          ...(usable.volume.tool === undefined ? {} : { tool: usable.volume.tool }),
          ...(need.fastener === undefined ? {} : { screw: need.fastener.use }),
        });
    }
  }
  const bench = benchOf(system, index, removed);
  const travelling = unitsIn((riders[index] ?? 0n) & ~removed);
  const isCover = unit.kind === 'panel' || unit.kind === 'slot cover';
  return {
    action: isCover ? 'close' : unit.kind === 'plug' ? 'plug in' : 'put in',
    unit: unit.id,
    name: unit.name,
    kind: unit.kind,
    part: machine.scene.parts[unit.part]?.id ?? '',
    ...(bench === undefined ? {} : { bench: machine.units[bench]?.id ?? '' }),
    with: travelling.map((rider) => machine.units[rider]?.id ?? ''),
    wayWords,
    motions,
    needs,
    reasons: reasonsFor(machine, found, index, removed),
  };
}
