/** Fan curve, system curve and operating point of every stream of a running machine, for a chart. m3/h and Pa. */

import { makersAirDensity } from '../../standards/standard-atmosphere';
import { SECONDS_PER_HOUR } from '../air/air-laws';
import { curveAtSpeed, curvesInSeries, type FanCurve, pressureAt } from '../air/fan-curve';
import { flowOf } from '../heat/heat-in-place';
import type { Run } from './run';

export interface CurveSample {
  readonly flow: number;
  readonly pressure: number;
}

export interface FanPoint {
  readonly stream: string;
  readonly part: string;
  readonly label: string;
  /** Share of top speed. */
  readonly share: number;
  readonly fan: readonly CurveSample[];
  /** What the rest asks at each flow: in proportion to its square through the point where the fan works. */
  readonly system: readonly CurveSample[];
  readonly at: CurveSample;
}

const SAMPLES = 24;

export function fanPoints({ question, state }: Run): readonly FanPoint[] {
  const ratio = state.network.density / makersAirDensity.value;
  return question.air.devices.flatMap((device) =>
    device.streams.flatMap((stream): FanPoint[] => {
      const shareOf = (id: string) =>
        question.fanShares[id] ?? question.fanShares[device.id] ?? state.shares.get(device.id) ?? 0;
      const turning = stream.fans.filter(({ part, withStream }) => withStream && shareOf(part.id) > 0);
      const [first] = turning;
      if (!first) return [];
      const share = shareOf(first.part.id);
      const curve = curvesInSeries(
        turning.map((place) => curveAtSpeed(question.ratings.curve(place), shareOf(place.part.id), ratio)),
      );
      const flow = flowOf(state, stream.id);
      const pressure = pressureAt(curve, flow);
      const most = Math.max(freeFlow(curve), flow);
      const samples = Array.from({ length: SAMPLES + 1 }, (_, i) => (most * i) / SAMPLES);
      const asked = flow > 0 ? Math.max(pressure, 0) / (flow * flow) : 0;
      return [
        {
          stream: stream.id,
          part: device.part.id,
          label: device.label,
          share,
          fan: samples.map((q) => ({ flow: q * SECONDS_PER_HOUR, pressure: pressureAt(curve, q) })),
          system: samples.map((q) => ({ flow: q * SECONDS_PER_HOUR, pressure: asked * q * q })),
          at: { flow: flow * SECONDS_PER_HOUR, pressure },
        },
      ];
    }),
  );
}

/** Flow at which the last piece of a curve meets no pressure. */
function freeFlow(curve: FanCurve): number {
  const last = curve.at(-1);
  return last && last.slope > 0 ? last.start / last.slope : 0;
}
