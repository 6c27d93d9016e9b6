/**
 * The machine in balance: air driven by fans and by warmth, heat carried by the air, fans turned by the heat. Each
 * round solves the flows exactly, then the temperatures exactly, then asks every fan control what it would do; it ends
 * when nothing moves any more.
 */
import { nominal } from '../../parts/dimension';
import type { PlacedPart, Scene } from '../../plan/scene';
import { airSpecificHeat, makersAirDensity, roomAirDensity } from '../../standards/standard-atmosphere';
import { rebreathingRise } from '../air/air-laws';
import { buildNetwork, cellNode, type MachineNetwork, ROOM } from '../air/build-network';
import { type HeatCarrier, prepareHeat, risesOf } from '../air/carry-heat';
import type { DeviceRatings } from '../air/device-ratings';
import type { Device } from '../air/devices';
import type { MachineAir } from '../air/machine-air';
import { type NetworkSolution, solveNetwork } from '../air/solve-network';
import type { AssumptionValues } from '../assumptions';
import { type Cooling, cardCooling, coolerCooling, radiatorResistance } from './cooling-paths';
import { holdingShare, settledShare } from './fan-control';

export interface Question {
  readonly scene: Scene;
  readonly air: MachineAir;
  readonly values: AssumptionValues;
  readonly ratings: DeviceRatings;
  /** deg C and m. */
  readonly room: number;
  readonly altitude: number;
  /** Heat of every part, W; of the supply its loss. */
  readonly heats: ReadonlyMap<string, number>;
  /** Heat of the processor and cards when busy for long, W: what their coolers are made for. */
  readonly sustained: ReadonlyMap<string, number>;
  /** Output of the supply over its rating. */
  readonly supplyLoad: number;
  /** Share of top speed of case fans, and the most that cooler fans may take. */
  readonly caseShare: number;
  readonly coolerMost: number;
  readonly fanShares: Readonly<Record<string, number>>;
}

export interface Settled {
  readonly network: MachineNetwork;
  readonly solution: NetworkSolution;
  readonly carrier: HeatCarrier;
  readonly watts: Float64Array;
  /** Rise of every node above the air drawn in from the room, K. */
  readonly rises: Float64Array;
  /** What the air drawn in is already warmer than the room, K. */
  readonly drawnInRise: number;
  /** Share of top speed by device id. */
  readonly shares: ReadonlyMap<string, number>;
  readonly rounds: number;
  readonly settled: boolean;
}

export type SettleResult =
  | { readonly ok: true; readonly state: Settled }
  | { readonly ok: false; readonly because: string };

const MOST_ROUNDS = 60;
const STILL_SHARE = 2e-4;
const STILL_KELVIN = 0.02;

/** Where to start from: the answer to a question that differs little. */
export type WarmStart = Pick<Settled, 'solution' | 'rises' | 'shares'>;

export function settle(question: Question, start?: WarmStart): SettleResult {
  const { air, values, room, altitude } = question;
  const density = roomAirDensity(altitude, room);
  let shares = new Map(
    start?.shares ?? air.devices.map((device) => [device.id, firstShare(question, device)]),
  );
  let rises = start?.rises;
  let flows = start?.solution.flows;
  const network = buildNetwork(air, values, question.ratings, density);
  if (rises?.length !== network.nodes) rises = new Float64Array(network.nodes);
  for (let round = 1; ; round++) {
    network.tune(
      (device, part) =>
        question.fanShares[part] ?? question.fanShares[device.id] ?? shares.get(device.id) ?? 0,
    );
    network.warm(rises, room);
    const solved = solveNetwork(network.nodes, network.links, flows, round > 1);
    if (!solved.ok) return { ok: false, because: `the air network finds ${solved.because}` };
    const { solution } = solved;
    flows = solution.flows;
    const carrier = prepareHeat(network.nodes, network.links, solution.flows, density, network.paths);
    const watts = heatsByNode(question, network);
    const fresh = risesOf(carrier, watts);
    const state: Settled = {
      network,
      solution,
      carrier,
      watts,
      rises: fresh,
      drawnInRise: drawnInRise(network, solution, fresh, values),
      shares,
      rounds: round,
      settled: false,
    };
    const asked = askedShares(question, state);
    const moved = Math.max(...[...asked].map(([id, share]) => Math.abs(share - (shares.get(id) ?? 0))), 0);
    const before = rises;
    const warmed = fresh.reduce((most, rise, i) => Math.max(most, Math.abs(rise - (before[i] ?? 0))), 0);
    if ((moved < STILL_SHARE && warmed < STILL_KELVIN) || round === MOST_ROUNDS)
      return { ok: true, state: { ...state, settled: round < MOST_ROUNDS } };
    shares = easedShares(shares, asked, round);
    rises = eased(rises, fresh, round);
  }
}

/** Rounds after which steps get shorter, so that air, heat and controls do not chase each other. */
const SOON = 2;
const LATE = 10;

function stepOf(round: number): number {
  if (round <= SOON) return 1;
  return round <= LATE ? 0.6 : 0.35;
}

function eased(before: Float64Array, fresh: Float64Array, round: number): Float64Array {
  const step = stepOf(round);
  return fresh.map((rise, i) => step * rise + (1 - step) * (before[i] ?? 0));
}

function easedShares(
  before: ReadonlyMap<string, number>,
  asked: ReadonlyMap<string, number>,
  round: number,
): Map<string, number> {
  const step = round <= LATE ? 1 : stepOf(round);
  return new Map(
    [...asked].map(([id, share]) => [id, step * share + (1 - step) * (before.get(id) ?? share)]),
  );
}

function firstShare(question: Question, device: Device): number {
  return device.kind === 'card' ? 0.6 : Math.min(question.coolerMost, 0.7);
}

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
function drawnInRise(
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

/** What every control would set now, by device id. */
function askedShares(question: Question, state: Settled): Map<string, number> {
  return new Map(question.air.devices.map((device) => [device.id, askedShare(question, state, device)]));
}

function askedShare(question: Question, state: Settled, device: Device): number {
  const { values, caseShare, supplyLoad } = question;
  switch (device.kind) {
    case 'case fan':
      return caseShare;
    case 'supply':
      return values.supplyLeastSpeed + (1 - values.supplyLeastSpeed) * Math.min(supplyLoad, 1);
    case 'card':
      return cardShare(question, state, device);
    case 'cooler':
    case 'radiator':
      return coolerShare(question, state, device);
  }
}

function cardShare(question: Question, state: Settled, device: Device): number {
  const { values, room } = question;
  const heat = question.heats.get(device.id) ?? 0;
  const cooling = cardCooling(device.part, question.sustained.get(device.id) ?? heat, values);
  if (!cooling.known) return values.cardLeastSpeed;
  const turning = state.shares.get(device.id) ?? 1;
  const flow = flowShare(state, device, question.ratings);
  const air = room + intakeRise(state, device);
  const at = (share: number) => air + heat * cooling.at((flow * share) / Math.max(turning, 0.01));
  const { spec } = device.part;
  const target =
    spec.kind === 'card' && spec.limit !== undefined ? nominal(spec.limit) - 10 : values.cardTarget;
  return holdingShare(at, target, values.cardLeastSpeed);
}

function coolerShare(question: Question, state: Settled, device: Device): number {
  const { values, coolerMost } = question;
  const turning = state.shares.get(device.id) ?? 1;
  const at = (share: number) =>
    processorTemperature(question, state, device, share / Math.max(turning, 0.01));
  return settledShare((share) => at(share) ?? values.coolerFullAt, {
    least: values.coolerLeastSpeed,
    most: coolerMost,
    slowAt: values.coolerSlowAt,
    fullAt: values.coolerFullAt,
  });
}

/** Temperature of the processor cooled by a device whose flow is `times` what it is now; undefined if unknown. */
export function processorTemperature(
  question: Question,
  state: Settled,
  device: Device,
  times = 1,
): number | undefined {
  const { scene, values, room } = question;
  const processor = scene.parts.find((part) => part.kind === 'processor');
  if (processor?.spec.kind !== 'processor') return undefined;
  const heat = question.heats.get(processor.id) ?? 0;
  const cooling = processorCooling(question, state, device, times);
  if (!cooling.known) return undefined;
  const { resistance } = processor.spec;
  const inner =
    resistance === undefined ? values.dieRise / nominal(processor.spec.class) : nominal(resistance);
  return room + intakeRise(state, device) + heat * (inner + cooling.at(1));
}

/** Lid to air through the device as its flow is now, times `times`; the argument of the result is not used again. */
export function processorCooling(question: Question, state: Settled, device: Device, times = 1): Cooling {
  const { scene, values } = question;
  if (device.kind === 'radiator') {
    const flows = device.streams.map(({ id }) => flowOf(state, id) * times);
    const ratio = state.network.density / makersAirDensity.value;
    const whole =
      values.lidToFoot +
      values.blockToLiquid +
      radiatorResistance(device, flows, ratio, question.ratings.flow(device), values);
    return { known: true, at: () => whole, missing: [] };
  }
  const cooler = scene.parts.find((part) => part.id === device.id);
  if (!cooler) return { known: false, because: 'the processor has no cooler' };
  const cooling = coolerCooling(cooler, values);
  if (!cooling.known) return cooling;
  const whole = cooling.at(flowShare(state, device, question.ratings) * times);
  return { known: true, at: () => whole, missing: cooling.missing };
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
