/** The smallest usual rating of a supply that satisfies everything, and what binds it. */
import { commonPractice } from '../../standards/cited-documents';
import { sixteenPinRequiredAbove } from '../../standards/supply-guide';
import type { Demand } from './demand';
import { durationName, excursionRows, ridesLargerExcursions } from './excursions';

/** Ratings that supplies are sold with, W. */
export const usualRatings = commonPractice([
  300, 350, 400, 450, 500, 550, 600, 650, 700, 750, 850, 1000, 1200, 1300, 1500, 1600, 2000,
] as const);

export interface RatingSuggestion {
  readonly watts: number;
  /** What the next smaller rating fails: 'peaks of 100 µs: 905 W against 150 % of 600 W'. */
  readonly binds: string;
}

/** Undefined when no usual rating will do. */
export function suggestRating(
  demands: readonly Demand[],
  extraWatts: number,
  reserve: number,
): RatingSuggestion | undefined {
  const wants16Pin = demands.some(
    ({ part: { spec } }) => spec.kind === 'card' && spec.power?.some(({ type }) => type === 'card 16-pin'),
  );
  let binds = 'nothing: the smallest usual rating will do';
  for (const watts of usualRatings.value) {
    const failure = failureOf(watts, wants16Pin, demands, extraWatts, reserve);
    if (failure === undefined) return { watts, binds };
    binds = failure;
  }
  return undefined;
}

function failureOf(
  watts: number,
  wants16Pin: boolean,
  demands: readonly Demand[],
  extraWatts: number,
  reserve: number,
): string | undefined {
  if (wants16Pin && watts <= sixteenPinRequiredAbove.value)
    return `the 16-pin plug: it is required of supplies above ${sixteenPinRequiredAbove.value} W only`;
  const rows = excursionRows(demands, extraWatts, ridesLargerExcursions(watts, wants16Pin));
  for (const { microseconds, load, allowedShare } of rows) {
    const continuous = !Number.isFinite(microseconds);
    const allowed = watts * (continuous ? reserve : allowedShare);
    if (load <= allowed) continue;
    const share = Math.round((continuous ? reserve : allowedShare) * 100);
    const name = continuous ? 'sustained load' : `peaks of ${durationName(microseconds)}`;
    return `${name}: ${Math.round(load)} W against ${share} % of ${watts} W`;
  }
  return undefined;
}
