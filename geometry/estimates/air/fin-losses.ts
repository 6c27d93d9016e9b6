/** What fins and cores take from a stream, by what is assumed of them. */
import { makersAirDensity } from '../../standards/standard-atmosphere';
import type { AssumptionValues } from '../assumptions';
import type { Stream } from './devices';

/** Depths that the assumed losses of fins and cores are stated for, mm. */
const FIN_DEPTH = 50;
const CORE_DEPTH = 27;

/**
 * Loss of the fins and cores of a stream: at 1 m/s before them half grows with the flow and half with its square, as
 * between plates a few millimetres apart at these speeds; in proportion to the depth.
 */
export function finLosses(
  { fins, core }: Pick<Stream, 'fins' | 'core'>,
  values: AssumptionValues,
  density: number,
): { linear: number; quadratic: number } {
  let linear = 0;
  let quadratic = 0;
  for (const [place, loss, depth] of [
    [fins, values.finLoss, FIN_DEPTH],
    [core, values.coreLoss, CORE_DEPTH],
  ] as const) {
    if (!place || !(place.area > 0)) continue;
    const half = (loss * (place.depth / depth)) / 2;
    linear += half / place.area;
    quadratic += (half * (density / makersAirDensity.value)) / place.area ** 2;
  }
  return { linear, quadratic };
}
