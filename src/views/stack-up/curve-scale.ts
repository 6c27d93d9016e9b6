/** What part of the millimetre axis the small curve shows, and where things lie on it. */
import type { StackUp } from '../../../geometry';

/** So many standard deviations of the curve are drawn to either side. */
const SHOWN_SIGMAS = 4;
/** Zero and the wanted gap are drawn in place when they are no further off than this many standard deviations. */
const NEAR_SIGMAS = 14;
/** Left free at either end, as a share of what is shown. */
const MARGIN = 0.06;

export interface CurveScale {
  readonly from: number;
  readonly to: number;
  /** 0 to 1 across the picture. */
  place(millimetres: number): number;
  isShown(millimetres: number): boolean;
}

export function curveScale({ nominal, sigma, wanted, worstCase }: StackUp): CurveScale {
  const near = (at: number) => Math.abs(at - nominal) <= NEAR_SIGMAS * sigma;
  const shown = [
    nominal - SHOWN_SIGMAS * sigma,
    nominal + SHOWN_SIGMAS * sigma,
    ...[0, wanted, ...worstCase].filter(near),
  ];
  const [least, most] = [Math.min(...shown), Math.max(...shown)];
  const margin = MARGIN * (most - least);
  const [from, to] = [least - margin, most + margin];
  return {
    from,
    to,
    place: (millimetres) => (millimetres - from) / (to - from),
    isShown: (millimetres) => millimetres >= from && millimetres <= to,
  };
}
