/** Loss of a supply over its load, from the points at which its level is certified. */
import type { SupplySpec } from '../../parts/supply/spec';
import {
  type EfficiencyLevel,
  type EfficiencyPoints,
  efficiency115Volt,
  efficiency230Volt,
} from '../../standards/supply-guide';

/** Input for a given output: 1000 W at 80 % draws 1250 W. */
export function inputPower(outputWatts: number, efficiency: number): number {
  return outputWatts / efficiency;
}

/**
 * Loss as a share of the rating at a share of the load: the polynomial through the certified points, each of which
 * fixes a loss (load / efficiency - load). Between them it bends as losses do: a fixed part, a part with the current,
 * a part with its square. Below the lowest point it is an extrapolation, kept from falling under half the loss there.
 */
export function lossShare(points: EfficiencyPoints, load: number): number {
  const at10 = points.at10 === undefined ? [] : [[0.1, points.at10] as const];
  const certified = [...at10, [0.2, points.at20], [0.5, points.at50], [1, points.at100]] as const;
  const losses = certified.map(([share, efficiency]) => [share, share / efficiency - share] as const);
  let loss = 0;
  for (const [share, value] of losses) {
    let weight = value;
    for (const [other] of losses) if (other !== share) weight *= (load - other) / (share - other);
    loss += weight;
  }
  const [lowest] = losses;
  const floor = lowest && load < lowest[0] ? lowest[1] / 2 : 0;
  return Math.max(loss, floor);
}

const levels: Readonly<Record<NonNullable<SupplySpec['grade']>, EfficiencyLevel>> = {
  base: 'base',
  bronze: 'Bronze',
  silver: 'Silver',
  gold: 'Gold',
  platinum: 'Platinum',
  titanium: 'Titanium',
};

/** Certified points of a level on a mains voltage; the base level for a supply that states none. */
export function certifiedPoints(grade: SupplySpec['grade'], mains: 115 | 230): EfficiencyPoints {
  const table = mains === 115 ? efficiency115Volt : efficiency230Volt;
  return table.value[levels[grade ?? 'base']];
}

/** Loss of a supply in W at an output in W. */
export function supplyLoss(
  rated: number,
  grade: SupplySpec['grade'],
  output: number,
  mains: 115 | 230,
  factors: { certified: number; unstated: number },
): number {
  const share = lossShare(certifiedPoints(grade, mains), output / rated);
  return rated * share * (grade === undefined ? factors.unstated : factors.certified);
}
