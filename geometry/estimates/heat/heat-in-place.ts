/** Where the heat of each part goes, what it does to the air at each intake, and where it leaves. */
import type { PlacedPart, Scene } from '../../plan/scene';
import { airSpecificHeat, makersAirDensity } from '../../standards/standard-atmosphere';
import { rebreathingRise } from '../air/air-laws';
import { cellNode, type MachineNetwork, ROOM } from '../air/build-network';
import type { DeviceRatings } from '../air/device-ratings';
import type { Device } from '../air/devices';
import type { MachineAir } from '../air/machine-air';
import type { NetworkSolution } from '../air/solve-network';
import type { AssumptionValues } from '../assumptions';
import type { Question, Settled } from './question';

/** Puts the heat of every part into the node that takes it up. */
export function heatsByNode(
  { air, heats, scene }: Pick<Question, 'air' | 'heats' | 'scene'>,
  network: MachineNetwork,
  only?: string,
): Float64Array {
  const watts = new Float64Array(network.nodes);
  for (const [id, heat] of heats) {
    if (only !== undefined && id !== only) continue;
    const device = deviceFor(scene, air, id);
    const node = device === undefined ? undefined : network.heatNode.get(device.id);
    const cell = air.cellOf.get(id);
    const to = node ?? (cell === undefined ? undefined : cellNode(cell));
    if (to !== undefined) watts[to] = (watts[to] ?? 0) + heat;
  }
  return watts;
}

/** The device that carries a part's heat away: a processor's is its cooler, or the radiator of a liquid one. */
export function deviceFor(scene: Scene, air: MachineAir, id: string): Device | undefined {
  const own = air.devices.find((device) => device.id === id);
  const part = scene.parts.find((one) => one.id === id);
  if (part?.kind !== 'processor') return own?.kind === 'case fan' ? undefined : own;
  const cooler = coolerOf(scene, part);
  if (cooler?.spec.kind !== 'cooler') return undefined;
  return cooler.spec.style === 'liquid block'
    ? air.devices.find(({ kind }) => kind === 'radiator')
    : air.devices.find((device) => device.id === cooler.id);
}

export function coolerOf(scene: Scene, processor: PlacedPart): PlacedPart | undefined {
  return scene.parts.find((part) => part.kind === 'cooler' && part.seat?.on === processor.id);
}

/** Warm air blown out beside the intakes comes back in: a share of it, at the mean rise of what leaves. */
export function drawnInRise(
  network: MachineNetwork,
  solution: NetworkSolution,
  rises: Float64Array,
  values: AssumptionValues,
): number {
  let out = 0;
  let carried = 0;
  network.links.forEach((link, i) => {
    const flow = solution.flows[i] ?? 0;
    const [up, down] = flow >= 0 ? [link.from, link.to] : [link.to, link.from];
    if (down !== ROOM || up === ROOM) return;
    out += Math.abs(flow);
    carried += Math.abs(flow) * (rises[up] ?? 0);
  });
  return out > 0 ? rebreathingRise(values.roomRebreathing, carried / out) : 0;
}

/** Flow-weighted rise at the intakes of a device above the room, K; the plain mean when nothing flows. */
export function intakeRise(state: Settled, device: Device): number {
  let weight = 0;
  let sum = 0;
  for (const { id } of device.streams) {
    const node = state.network.intakeNode.get(id);
    if (node === undefined) continue;
    const flow = Math.abs(flowOf(state, id)) + 1e-9;
    weight += flow;
    sum += flow * (state.rises[node] ?? 0);
  }
  return (weight > 0 ? sum / weight : 0) + state.drawnInRise;
}

export function flowOf(state: Pick<Settled, 'network' | 'solution'>, stream: string): number {
  const link = state.network.streamLink.get(stream);
  return link === undefined ? 0 : (state.solution.flows[link] ?? 0);
}

/** Flow of a device over what it moves in the open at top speed, by mass. */
export function flowShare(state: Settled, device: Device, ratings: DeviceRatings): number {
  const rated = ratings.flow(device);
  const flow = device.streams.reduce((sum, { id }) => sum + Math.max(flowOf(state, id), 0), 0);
  return rated > 0 ? ((flow / rated) * state.network.density) / makersAirDensity.value : 0;
}

/** Heat that leaves with the air, W, and through the walls, W. */
export function heatLeaving(state: Settled): { byAir: number; throughWalls: number } {
  const perFlow = state.network.density * airSpecificHeat.value;
  let byAir = 0;
  state.network.links.forEach((link, i) => {
    const flow = state.solution.flows[i] ?? 0;
    const [up, down] = flow >= 0 ? [link.from, link.to] : [link.to, link.from];
    if (down === ROOM && up !== ROOM) byAir += perFlow * Math.abs(flow) * (state.rises[up] ?? 0);
  });
  const throughWalls = state.network.paths.reduce((sum, { a, b, conductance }) => {
    if (a !== ROOM && b !== ROOM) return sum;
    return sum + conductance * (state.rises[a === ROOM ? b : a] ?? 0);
  }, 0);
  return { byAir, throughWalls };
}
