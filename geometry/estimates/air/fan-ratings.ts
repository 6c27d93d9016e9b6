/** The curve of one fan at top speed, from its sheet or, where that is silent, from what its frame usually does. */
import { type Dimension, nominal } from '../../parts/dimension';
import { typicalFan } from '../../standards/typical-fans';
import type { AssumptionValues } from '../assumptions';
import type { EstimateInput } from '../estimate';
import { believable, fanFlowBounds, type RatingBounds, readRating } from '../ratings';
import { SECONDS_PER_HOUR } from './air-laws';
import type { FanPlace } from './devices';
import { curveThrough, type FanCurve, straightCurve } from './fan-curve';

export interface RatedFan {
  readonly curve: FanCurve;
  /** rpm */
  readonly speed: number;
  /** dB at 1 m at top speed. */
  readonly sound: number;
  readonly missing: readonly string[];
  readonly inputs: readonly EstimateInput[];
}

interface Sheet {
  readonly speed?: Dimension | undefined;
  readonly flow?: Dimension | undefined;
  readonly pressure?: Dimension | undefined;
  readonly sound?: Dimension | undefined;
}

/** Largest fan of a frame: its size is the blades' sweep, so the frame is a little larger. */
const FRAME_OVER_SWEEP = 1 / 0.94;

/** Fans of cases and coolers, by their sheets. */
export function ratedFrameFan(place: FanPlace, values: AssumptionValues): RatedFan {
  const { part } = place;
  const { spec } = part;
  const frame = spec.kind === 'fan' ? spec.size : place.size;
  const sheet: Sheet = spec.kind === 'fan' ? spec : spec.kind === 'cooler' ? (spec.eachFan ?? {}) : {};
  const typical = typicalFan(frame).value;
  const missing: string[] = [];
  const inputs: EstimateInput[] = [];
  const take = (
    title: string,
    stated: Dimension | undefined,
    usual: number,
    unit: 'm³/h' | 'Pa' | 'dB' | 'rpm',
    bounds: RatingBounds,
  ): number => {
    const reading = readRating(part, `fan ${title}`, stated, unit, bounds);
    if (reading.known) {
      inputs.push(reading.input);
      return reading.value;
    }
    missing.push(reading.because);
    inputs.push({ name: `${part.label}, fan ${title}`, value: usual, unit, source: 'assumed' });
    return usual;
  };
  const flow = take('free flow', sheet.flow, typical.flow, 'm³/h', fanFlowBounds(frame * FRAME_OVER_SWEEP));
  const pressure = take('shut-off pressure', sheet.pressure, typical.pressure, 'Pa', believable.fanPressure);
  const sound = take('sound', sheet.sound, typical.sound, 'dB', believable.sound);
  const speed = take('top speed', sheet.speed, typical.speed, 'rpm', believable.fanSpeed);
  const points = spec.kind === 'fan' ? statedCurve(spec.curve, values) : undefined;
  return {
    curve:
      points ?? straightCurve((flow * values.sheetFlow) / SECONDS_PER_HOUR, pressure * values.sheetPressure),
    speed,
    sound,
    missing,
    inputs,
  };
}

/** A stated curve, sorted; undefined when its points are not those of a fan. */
function statedCurve(
  points: readonly { readonly flow: Dimension; readonly pressure: Dimension }[] | undefined,
  values: AssumptionValues,
): FanCurve | undefined {
  if (points === undefined) return undefined;
  const sorted = points
    .map(({ flow, pressure }) => ({
      flow: (nominal(flow) * values.sheetFlow) / SECONDS_PER_HOUR,
      pressure: nominal(pressure) * values.sheetPressure,
    }))
    .sort((a, b) => a.flow - b.flow);
  const falls = sorted.every((point, i) => {
    const before = sorted[i - 1];
    return before === undefined || (point.flow > before.flow && point.pressure <= before.pressure);
  });
  return falls ? curveThrough(sorted) : undefined;
}

/** A card's or supply's own fan, net of the fins behind it: mean speed of the air over its disc. */
export function discFan(place: FanPlace, metresPerSecond: number, shutOff: number): FanCurve {
  const area = (Math.PI / 4) * (place.size / 1000) ** 2;
  return straightCurve(metresPerSecond * area, shutOff);
}

/** The part's own blades, for a stream that has none of a sheet. */
export function curveOf(place: FanPlace, values: AssumptionValues): FanCurve {
  const { kind } = place.part;
  if (kind === 'card') return discFan(place, values.cardFlowPerArea, values.cardPressure);
  if (kind === 'supply') return discFan(place, values.supplyFlowPerArea, values.supplyPressure);
  return ratedFrameFan(place, values).curve;
}
