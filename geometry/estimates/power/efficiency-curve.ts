/** Efficiency of a supply over its load, for a chart, and where it works. */
import { nominal } from '../../parts/dimension';
import type { SupplySpec } from '../../parts/supply/spec';
import type { AssumptionValues } from '../assumptions';
import { lossAt } from './wall-figures';

export interface EfficiencySample {
  /** What comes out, W. */
  readonly output: number;
  /** Out over in, 0 to 1. */
  readonly efficiency: number;
  /** W from the wall. */
  readonly wall: number;
}

export interface EfficiencyCurve {
  readonly mains: 115 | 230;
  readonly samples: readonly EfficiencySample[];
  readonly at: EfficiencySample;
}

const SHARES = Array.from({ length: 21 }, (_, i) => Math.max(i / 20, 0.02));

export function efficiencyCurve(
  spec: SupplySpec,
  output: number,
  mains: 115 | 230,
  values: AssumptionValues,
): EfficiencyCurve {
  const sample = (watts: number): EfficiencySample => {
    const wall = watts + lossAt(spec, watts, mains, values);
    return { output: watts, efficiency: watts / wall, wall };
  };
  const rated = nominal(spec.watts);
  return { mains, samples: SHARES.map((share) => sample(share * rated)), at: sample(output) };
}
