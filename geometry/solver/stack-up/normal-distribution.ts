/** The normal distribution, by the error function of simple-statistics (relative error of the tail below 1.2e-7). */
import { errorFunction } from 'simple-statistics';

/** Probability that a normal variable falls below a limit. Without spread it is certain one way or the other. */
export function probabilityBelow(limit: number, mean: number, sigma: number): number {
  if (!(sigma > 0)) return mean < limit ? 1 : 0;
  return 0.5 * (1 + errorFunction((limit - mean) / (sigma * Math.SQRT2)));
}

/** Height of the bell at x, 1/mm for x in mm; for drawing the distribution. Sigma must be above zero. */
export function normalDensity(x: number, mean: number, sigma: number): number {
  const z = (x - mean) / sigma;
  return Math.exp(-(z * z) / 2) / (sigma * Math.sqrt(2 * Math.PI));
}
