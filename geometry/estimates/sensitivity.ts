/** Which assumption matters most to an estimate, or to a plan as a whole. */
import type { AssumptionId } from './assumptions';
import { reachOf } from './banded';
import type { AssumptionEffect, Estimate, EstimateUnit } from './estimate';

export interface Sensitivity {
  readonly estimate: string;
  readonly title: string;
  readonly unit: EstimateUnit;
  /** The strongest assumption. */
  readonly effect: AssumptionEffect;
  /** Its share of the square of the band: 1 when it is the whole of it. */
  readonly share: number;
}

/** The strongest assumption of every estimate that has a band. */
export function strongestAssumptions(estimates: readonly Estimate[]): readonly Sensitivity[] {
  return estimates.flatMap(({ id, title, unit, assumptions }): Sensitivity[] => {
    const [effect] = assumptions;
    if (!effect) return [];
    const whole = assumptions.reduce((sum, one) => sum + reachOf(one) ** 2, 0);
    return [{ estimate: id, title, unit, effect, share: reachOf(effect) ** 2 / whole }];
  });
}

/**
 * Assumptions by how much of the bands they are answerable for: the mean, over the estimates, of their share of the
 * square of the band. The first is the one to measure.
 */
export function assumptionRanking(
  estimates: readonly Estimate[],
): readonly { readonly id: AssumptionId; readonly words: string; readonly share: number }[] {
  const sums = new Map<AssumptionId, { words: string; share: number }>();
  const banded = estimates.filter(({ assumptions }) => assumptions.length > 0);
  for (const { assumptions } of banded) {
    const whole = assumptions.reduce((sum, one) => sum + reachOf(one) ** 2, 0);
    for (const effect of assumptions) {
      const known = sums.get(effect.id)?.share ?? 0;
      sums.set(effect.id, {
        words: effect.words,
        share: known + reachOf(effect) ** 2 / whole / banded.length,
      });
    }
  }
  return [...sums].map(([id, rest]) => ({ id, ...rest })).sort((a, b) => b.share - a.share);
}
