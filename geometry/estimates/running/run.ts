/** The machine running: flows, temperatures and sound of one profile, solved together. */
import type { Plan } from '../../plan/plan-schema';
import type { Scene } from '../../plan/scene';
import type { Device } from '../air/devices';
import { type MachineAir, machineAirOf } from '../air/machine-air';
import type { AssumptionValues } from '../assumptions';
import { questionOf } from '../heat/ask';
import type { Question, Settled } from '../heat/question';
import { settle, type WarmStart } from '../heat/settle';
import { type PartTemperature, partTemperatures } from '../heat/temperatures';
import { circumstancesOf, loadShares, type Profile } from '../profile';
import { levelAtEar, type SoundSource, soundSources } from '../sound/sources';

export interface Run {
  readonly question: Question;
  readonly state: Settled;
  readonly temperatures: readonly PartTemperature[];
  readonly sources: readonly SoundSource[];
  /** dB at the ear; undefined when nothing sounds. */
  readonly level: number | undefined;
  /** Ear to machine, m. */
  readonly distance: number;
}

export type RunResult =
  | { readonly ok: true; readonly run: Run }
  | { readonly ok: false; readonly because: string };

export function runMachine(
  plan: Plan,
  scene: Scene,
  profile: Profile,
  values: AssumptionValues,
  start?: WarmStart,
): RunResult {
  const air = machineAirOf(scene);
  if (!air) return { ok: false, because: 'the plan has no enclosure' };
  const closed = noWayForAir(air);
  if (closed !== undefined) return { ok: false, because: closed };
  const question = questionOf(plan, scene, air, profile, values);
  const settled = settle(question, start);
  if (!settled.ok) return settled;
  return { ok: true, run: heard(plan, profile, question, settled.state) };
}

/** Sound and temperatures of a machine already in balance. */
export function heard(plan: Plan, profile: Profile, question: Question, state: Settled): Run {
  const { scene, air, values } = question;
  const { distance } = circumstancesOf(plan, profile, values);
  const busy = { card: loadShares(profile.load, values).card, supply: question.supplyLoad };
  const shareOf = (device: Device, partId: string) =>
    question.fanShares[partId] ?? question.fanShares[device.id] ?? state.shares.get(device.id) ?? 0;
  const sources = soundSources(scene, air, shareOf, busy, values);
  return {
    question,
    state,
    temperatures: partTemperatures(question, state),
    sources,
    level: levelAtEar(sources, distance, values),
    distance,
  };
}

/** Seams alone are no path that anybody would build on. */
function noWayForAir({ openings, devices, space }: MachineAir): string | undefined {
  const throughWall = devices.some(({ streams, outlets }) =>
    [...streams.map(({ intake }) => intake), ...outlets.map(({ port }) => port)].some(
      (port) => port.toRoom.length > 0 || port.toCell.length > 0,
    ),
  );
  if (openings.length > 0 || throughWall) return undefined;
  return `no path for air: ${space.enclosure.label} states no vent, grille or mesh`;
}
