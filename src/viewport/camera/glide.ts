/** The short move from one sight to another. */
import { interpolate } from '../../../geometry';
import { wrapDegrees } from './move-sight';
import type { Sight } from './sight';

/** Long enough to see where one is going, short enough not to wait. */
export const GLIDE_MS = 320;

/** A lens this narrow cannot be told from a parallel projection, and its eye is still at a finite distance. */
const NEARLY_PARALLEL = 0.5;

/** The sight at a fraction 0 to 1 of the way; exactly the goal at 1. */
export function glide(from: Sight, to: Sight, fraction: number): Sight {
  if (fraction >= 1) return to;
  const eased = fraction * fraction * (3 - 2 * fraction);
  const between = (a: number, b: number) => a + (b - a) * eased;
  const lensOf = (sight: Sight) => Math.max(NEARLY_PARALLEL, sight.lens);
  return {
    target: interpolate(from.target, to.target, eased),
    azimuth: from.azimuth + wrapDegrees(to.azimuth - from.azimuth) * eased,
    elevation: between(from.elevation, to.elevation),
    height: Math.exp(between(Math.log(from.height), Math.log(to.height))),
    lens: between(lensOf(from), lensOf(to)),
  };
}
