/** What has to come out before each part can be changed. */
import type { Scene } from '../../../plan/scene';
import { buildMachine, type Machine, type MachineOptions } from '../machine/machine';
import { systemWithSearch } from './assembly-order';
import { serviceOf } from './service';

export interface ServiceEntry {
  readonly unit: string;
  readonly name: string;
  /** Parts that come out first, in order; plugs and panels apart. Undefined lists: it never comes out. */
  readonly parts: readonly string[];
  readonly plugs: readonly string[];
  readonly covers: readonly string[];
  /** Number of parts that come out first. */
  readonly count: number;
  /** False when fewer might do. */
  readonly exact: boolean;
  readonly possible: boolean;
  readonly sentence: string;
}

/** One entry for every part of the plan that can be taken out, in the order of the plan. */
export function serviceOrder(scene: Scene, options: MachineOptions = {}): readonly ServiceEntry[] {
  return serviceOfMachine(buildMachine(scene, options), options);
}

export function serviceOfMachine(machine: Machine, options: MachineOptions = {}): readonly ServiceEntry[] {
  const { system } = systemWithSearch(machine, 'taking out');
  const wanted = machine.units.filter(
    ({ kind }) => kind !== 'plug' && kind !== 'panel' && kind !== 'slot cover',
  );
  return wanted.map((unit, k): ServiceEntry => {
    options.onProgress?.(k / wanted.length);
    const service = serviceOf(system, unit.index);
    const out = (service?.out ?? []).flatMap((index) => machine.units[index] ?? []);
    const covers = out.filter(({ kind }) => kind === 'panel' || kind === 'slot cover');
    const plugs = out.filter(({ kind }) => kind === 'plug');
    const parts = out.filter((other) => !covers.includes(other) && !plugs.includes(other));
    const sentence = service
      ? sayService(
          unit.name,
          parts.map((part) => part.name),
          plugs.length,
          covers.map((cover) => cover.name),
        )
      : `To change ${unit.name} no way was found.`;
    return {
      unit: unit.id,
      name: unit.name,
      parts: parts.map((part) => part.id),
      plugs: plugs.map((plug) => plug.id),
      covers: covers.map((cover) => cover.id),
      count: parts.length,
      exact: service?.exact ?? false,
      possible: service !== undefined,
      sentence,
    };
  });
}

function sayService(
  name: string,
  parts: readonly string[],
  plugs: number,
  covers: readonly string[],
): string {
  const first = [...covers, ...(plugs > 0 ? [`${plugs} ${plugs === 1 ? 'plug' : 'plugs'}`] : []), ...parts];
  if (first.length === 0) return `To change ${name} nothing else comes out.`;
  const list =
    first.length === 1 ? first[0] : `${first.slice(0, -1).join(', ')} and ${first[first.length - 1]}`;
  return `To change ${name}: ${list} first.`;
}
