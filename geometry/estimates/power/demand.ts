/** What each part asks of the supply, W: for long, at most, and by rail. */
import { nominal } from '../../parts/dimension';
import type { PlacedPart, Scene } from '../../plan/scene';
import { cardPowerLimits } from '../../standards/power-connectors';
import { processorCurrents } from '../../standards/supply-guide';
import type { AssumptionValues } from '../assumptions';
import type { EstimateInput } from '../estimate';
import { believable, peakBounds, type Reading, readRating } from '../ratings';

export type Rail = '12 V' | '5 V' | '3.3 V';

export interface Demand {
  readonly part: PlacedPart;
  /** What the supply must give for long, W. */
  readonly sustained: number;
  /** Heat the part makes when busy for long, W: what the rest of the models use. */
  readonly heat: number;
  /** Shortest, highest peak, W. */
  readonly peak: number;
  /** How a peak fades: share of (peak - sustained) left after 10 ms and 100 ms. */
  readonly fades: { readonly at10ms: number; readonly at100ms: number };
  /** Share of the power from each rail. */
  readonly rails: Readonly<Record<Rail, number>>;
  /** Ratings stood in for. */
  readonly missing: readonly string[];
  readonly inputs: readonly EstimateInput[];
}

/** Voltage the processor's currents are multiplied by to get watts, by the supply guide's own arithmetic. */
export const PROCESSOR_RAIL_VOLTS = 11.2;

const allTwelve = { '12 V': 1, '5 V': 0, '3.3 V': 0 } as const;
const steady = { at10ms: 0, at100ms: 0 } as const;

/**
 * Where each kind takes its power: processors, cards, fans and pumps from 12 V; boards and memory from all; drives by
 * form. Common practice, no source; only the rails' table rests on it.
 */
const railsOf: Readonly<Record<string, Readonly<Record<Rail, number>>>> = {
  board: { '12 V': 0.4, '5 V': 0.4, '3.3 V': 0.2 },
  memory: { '12 V': 0, '5 V': 1, '3.3 V': 0 },
  'M.2': { '12 V': 0, '5 V': 0, '3.3 V': 1 },
  '2.5': { '12 V': 0, '5 V': 1, '3.3 V': 0 },
  '3.5': { '12 V': 0.6, '5 V': 0.4, '3.3 V': 0 },
};

/** Parts that draw power, in the order of the scene. */
export function demandsOf(scene: Scene, values: AssumptionValues): readonly Demand[] {
  return scene.parts.flatMap((part) => demandOf(part, values) ?? []);
}

function demandOf(part: PlacedPart, values: AssumptionValues): Demand | undefined {
  const { spec } = part;
  switch (spec.kind) {
    case 'processor':
      return processorDemand(part, values);
    case 'card':
      return cardDemand(part, values);
    case 'memory':
      return steadyDemand(
        part,
        readWatts(part, spec.watts, believable.memoryWatts),
        values.memoryWatts,
        'memory',
        values,
      );
    case 'drive':
      return steadyDemand(
        part,
        readWatts(part, spec.watts, believable.driveWatts),
        values.driveWatts,
        spec.form,
        values,
      );
    case 'board':
      return steadyDemand(
        part,
        readWatts(part, spec.watts, believable.boardWatts),
        values.boardWatts,
        'board',
        values,
      );
    case 'fan':
      return steadyDemand(
        part,
        readWatts(part, spec.watts, { least: 0, most: 60 }),
        values.fanWatts,
        'fan',
        values,
      );
    case 'cooler': {
      const fans = spec.style === 'tower' ? spec.fans.length : spec.style === 'top flow' ? 1 : 0;
      const pump = spec.style === 'liquid block' ? values.pumpWatts : 0;
      const reading: Reading =
        spec.style === 'liquid block' && spec.pumpWatts !== undefined
          ? readWatts(part, spec.pumpWatts, { least: 0, most: 60 })
          : { known: false, because: `the sheet of ${part.label} states no power of its fans or pump` };
      return steadyDemand(part, reading, fans * values.fanWatts + pump, 'fan', values);
    }
    default:
      return undefined;
  }
}

function readWatts(
  part: PlacedPart,
  watts: Parameters<typeof readRating>[2],
  bounds: { least: number; most: number },
) {
  return readRating(part, 'power', watts, 'W', bounds);
}

function steadyDemand(
  part: PlacedPart,
  reading: Reading,
  typical: number,
  rails: string,
  values: AssumptionValues,
): Demand {
  const watts = reading.known ? reading.value * values.sheetPower : typical;
  return {
    part,
    sustained: watts,
    heat: watts,
    peak: watts,
    fades: steady,
    rails: railsOf[rails] ?? allTwelve,
    missing: reading.known ? [] : [reading.because],
    inputs: [reading.known ? reading.input : assumedInput(part, 'power', typical)],
  };
}

function assumedInput(part: PlacedPart, title: string, value: number): EstimateInput {
  return { name: `${part.label}, ${title}`, value, unit: 'W', source: 'assumed' };
}

/** Amperes of the published table at a class, between its rows; beyond them in proportion to the class. */
export function classCurrents(ratedWatts: number): { continuous: number; peak: number } {
  const rows = processorCurrents.value;
  const above = rows.findIndex((row) => row.ratedWatts >= ratedWatts);
  const [low, high] = [rows[above - 1], rows[above]];
  if (low && high) {
    const share = (ratedWatts - low.ratedWatts) / (high.ratedWatts - low.ratedWatts);
    return {
      continuous: low.continuousAmperes + share * (high.continuousAmperes - low.continuousAmperes),
      peak: low.peakAmperes + share * (high.peakAmperes - low.peakAmperes),
    };
  }
  const end = above === 0 ? rows[0] : rows.at(-1);
  if (!end) throw new RangeError('the table of processor currents is empty');
  const ratio = ratedWatts / end.ratedWatts;
  return { continuous: end.continuousAmperes * ratio, peak: end.peakAmperes * ratio };
}

function processorDemand(part: PlacedPart, values: AssumptionValues): Demand | undefined {
  const { spec } = part;
  if (spec.kind !== 'processor') return undefined;
  const classWatts = nominal(spec.class);
  const currents = classCurrents(classWatts);
  const sustained = readRating(part, 'sustained power', spec.sustained, 'W', believable.processorWatts);
  const bounds = peakBounds(sustained.known ? spec.sustained : undefined, believable.processorPeak);
  const peak = readRating(part, 'peak power', spec.peak, 'W', bounds);
  const supplied = sustained.known
    ? sustained.value * values.sheetPower
    : currents.continuous * PROCESSOR_RAIL_VOLTS;
  const heat = sustained.known ? supplied : classWatts * values.heatOverClass;
  const highest = peak.known ? peak.value * values.sheetPower : currents.peak * PROCESSOR_RAIL_VOLTS;
  const classInput: EstimateInput = {
    name: `${part.label}, power class`,
    value: classWatts,
    unit: 'W',
    source: 'sheet',
  };
  return {
    part,
    sustained: supplied,
    heat,
    peak: Math.max(highest, supplied),
    // The guide's peak lasts at most 10 ms; then the sustained current holds.
    fades: { at10ms: 1, at100ms: 0 },
    rails: allTwelve,
    missing: [sustained, peak].flatMap((reading) => (reading.known ? [] : [reading.because])),
    inputs: [
      classInput,
      ...[sustained, peak].flatMap((reading) => (reading.known ? [reading.input] : [])),
      ...(sustained.known && peak.known
        ? []
        : [
            {
              name: `${part.label}, by class: ${currents.continuous.toFixed(1)} A for long, ${currents.peak.toFixed(1)} A peak`,
              value: Math.round(currents.continuous * PROCESSOR_RAIL_VOLTS),
              unit: 'W',
              source: 'standard',
              note: 'supply guide, document 336521, table 2-1, times 11.2 V',
            } satisfies EstimateInput,
          ]),
    ],
  };
}

/** What slot and plugs of a card may carry together for long, W. */
export function connectorLimit(spec: {
  readonly power?: readonly { readonly type: string }[] | undefined;
}): number {
  return (spec.power ?? []).reduce((sum, { type }) => sum + plugLimit(type), cardPowerLimits.slotWatts.value);
}

/** Sustained limit of one plug of a card, W. */
export function plugLimit(type: string): number {
  if (type === 'card 16-pin') return cardPowerLimits['16-pin'].watts.value;
  return type === 'card 8-pin' ? cardPowerLimits['2x4'].watts.value : cardPowerLimits['2x3'].watts.value;
}

function cardDemand(part: PlacedPart, values: AssumptionValues): Demand | undefined {
  const { spec } = part;
  if (spec.kind !== 'card') return undefined;
  const sustained = readRating(part, 'sustained power', spec.sustained, 'W', believable.cardWatts);
  const bounds = peakBounds(sustained.known ? spec.sustained : undefined, believable.cardPeak);
  const peak = readRating(part, 'peak power', spec.peak, 'W', bounds);
  const allowed = connectorLimit(spec);
  const watts = sustained.known ? sustained.value * values.sheetPower : allowed * values.cardOfConnectors;
  const highest = peak.known ? peak.value * values.sheetPower : watts * values.peakOverSustained;
  return {
    part,
    sustained: watts,
    heat: watts,
    peak: Math.max(highest, watts),
    fades: { at10ms: values.peakShareAt10ms, at100ms: values.peakShareAt100ms },
    rails: allTwelve,
    missing: [sustained, peak].flatMap((reading) => (reading.known ? [] : [reading.because])),
    inputs: [
      sustained.known ? sustained.input : assumedInput(part, 'sustained power, from its connectors', watts),
      peak.known ? peak.input : assumedInput(part, 'peak power', highest),
    ],
  };
}
