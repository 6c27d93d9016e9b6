/** Curves and rated flows of the devices of a machine, each worked out once for a set of assumption values. */
import { makersAirDensity } from '../../standards/standard-atmosphere';
import type { AssumptionValues } from '../assumptions';
import type { Device, FanPlace, Stream } from './devices';
import { curvesInSeries, type FanCurve } from './fan-curve';
import { curveOf } from './fan-ratings';
import { finLosses } from './fin-losses';
import { flowAt } from './link-law';

export interface DeviceRatings {
  /** Curve of a fan at top speed. */
  readonly curve: (place: FanPlace) => FanCurve;
  /** Flow of a device in the open, fans at top speed, near sea level: what its rating was taken at, m3/s. */
  readonly flow: (device: Device) => number;
}

export function deviceRatings(values: AssumptionValues): DeviceRatings {
  const curves = new Map<FanPlace, FanCurve>();
  const flows = new Map<Device, number>();
  const curve = (place: FanPlace): FanCurve => {
    const known = curves.get(place) ?? curveOf(place, values);
    curves.set(place, known);
    return known;
  };
  const flow = (device: Device): number => {
    const known =
      flows.get(device) ?? device.streams.reduce((sum, stream) => sum + openFlow(stream, curve, values), 0);
    flows.set(device, known);
    return known;
  };
  return { curve, flow };
}

function openFlow(stream: Stream, curve: (place: FanPlace) => FanCurve, values: AssumptionValues): number {
  if (stream.fans.length === 0) return 0;
  const losses = finLosses(stream, values, makersAirDensity.value);
  return flowAt({ from: 0, to: 0, ...losses, fan: curvesInSeries(stream.fans.map(curve)) }, 0);
}
