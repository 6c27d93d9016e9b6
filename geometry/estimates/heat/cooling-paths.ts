/** Resistances between what makes heat and the air that takes it, by part: from sheets, else from assumptions. */
import { nominal } from '../../parts/dimension';
import type { PlacedPart, Scene } from '../../plan/scene';
import type { Device } from '../air/devices';
import type { AssumptionValues } from '../assumptions';
import { believable, readRating } from '../ratings';
import { finResistance } from './resistance-laws';

/** A resistance that depends on the share of the rated flow, or the reason why there is none. */
export type Cooling =
  | { readonly known: true; readonly at: (flowShare: number) => number; readonly missing: readonly string[] }
  | { readonly known: false; readonly because: string };

function finShape(values: AssumptionValues) {
  return { fixedShare: values.fixedShare, exponent: values.flowExponent, cap: values.stillCap };
}

/** Lid of the processor to the intake air of its cooler. */
export function coolerCooling(cooler: PlacedPart, values: AssumptionValues): Cooling {
  const { spec } = cooler;
  if (spec.kind !== 'cooler') return { known: false, because: `${cooler.label} is no cooler` };
  const stated = readRating(cooler, 'heat resistance', spec.resistance, 'K/W', believable.resistance);
  const watts = readRating(cooler, 'heat it is made for', spec.watts, 'W', believable.coolerWatts);
  const rated = stated.known ? stated.value : watts.known ? values.coolerRise / watts.value : undefined;
  if (rated === undefined)
    return {
      known: false,
      because: `the sheet of ${cooler.label} states neither a heat resistance nor the heat it is made for`,
    };
  const missing = stated.known ? [] : [stated.because];
  return {
    known: true,
    missing,
    at: (share) => values.lidToFoot + finResistance(rated, share, finShape(values)),
  };
}

/** Chip of a card to its intake air. */
export function cardCooling(card: PlacedPart, sustained: number, values: AssumptionValues): Cooling {
  const { spec } = card;
  if (spec.kind !== 'card') return { known: false, because: `${card.label} is no card` };
  if (spec.fans === undefined) return { known: false, because: `the sheet of ${card.label} states no fans` };
  const stated = readRating(card, 'heat resistance', spec.resistance, 'K/W', believable.resistance);
  const rated = stated.known ? stated.value : values.cardRise / sustained;
  const missing = stated.known ? [] : [stated.because];
  return { known: true, missing, at: (share) => finResistance(rated, share, finShape(values)) };
}

/** Face area that `radiatorPerSeat` is stated for, m2, and its depth, mm. */
const SEAT_AREA = 0.12 * 0.12;
const SEAT_DEPTH = 27;

/** Conductance grows less than in proportion to the depth: the air is warm already. */
const DEPTH_EXPONENT = 0.7;

/** Liquid of a radiator to its intake air at given flows of its streams (m3/s), K/W. */
export function radiatorResistance(
  device: Device,
  flows: readonly number[],
  densityRatio: number,
  ratedFlow: number,
  values: AssumptionValues,
): number {
  let conductance = 0;
  device.streams.forEach(({ core }, i) => {
    if (!core || !(core.area > 0)) return;
    const speed = (Math.abs(flows[i] ?? 0) / core.area) * densityRatio;
    const seats = core.area / SEAT_AREA;
    const depth = (core.depth / SEAT_DEPTH) ** DEPTH_EXPONENT;
    const share = Math.max(speed ** values.flowExponent, 1 / (2 * values.stillCap));
    conductance += values.radiatorPerSeat * seats * depth * share;
  });
  const { spec } = device.part;
  if (spec.kind !== 'radiator' || spec.resistance === undefined) return 1 / conductance;
  const flow = flows.reduce((sum, one) => sum + Math.abs(one), 0);
  const share = ratedFlow > 0 ? (flow / ratedFlow) * densityRatio : 0;
  return finResistance(nominal(spec.resistance), share, { ...finShape(values), fixedShare: 0 });
}

/** Kelvins a watt of a drive or module over the air where it is, and the highest it should be. */
export function standingResistance(
  scene: Scene,
  part: PlacedPart,
  values: AssumptionValues,
): number | undefined {
  const { spec } = part;
  if (spec.kind === 'memory') return values.memoryRise;
  if (spec.kind !== 'drive') return undefined;
  if (spec.form !== 'M.2') return values.boxedDrive;
  return isUnderSink(scene, part) ? values.sunkModuleDrive : values.moduleDrive;
}

function isUnderSink(scene: Scene, part: PlacedPart): boolean {
  if (part.spec.kind === 'drive' && part.spec.form === 'M.2' && part.spec.sink !== undefined) return true;
  const board = scene.parts.find((other) => other.id === part.seat?.on);
  if (board?.spec.kind !== 'board') return false;
  const socket = board.spec.m2?.find(({ id }) => `m2 ${id}` === part.seat?.mount);
  return socket?.sink !== undefined;
}
