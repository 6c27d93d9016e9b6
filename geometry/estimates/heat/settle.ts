/**
 * The machine in balance: air driven by fans and by warmth, heat carried by the air, fans turned by the heat. Each
 * round solves the flows exactly, then the temperatures exactly, then asks every fan control what it would do; it ends
 * when nothing moves any more.
 */
import { roomAirDensity } from '../../standards/standard-atmosphere';
import { buildNetwork } from '../air/build-network';
import { prepareHeat, risesOf } from '../air/carry-heat';
import type { Device } from '../air/devices';
import { solveNetwork } from '../air/solve-network';
import { askedShares } from './controls';
import { drawnInRise, heatsByNode } from './heat-in-place';
import type { Question, Settled } from './question';

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
