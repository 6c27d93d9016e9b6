/** The revised lifting equation. Distances in centimetres, masses in kilograms, as the document has them. */
import { citing } from './published';

const manual = citing({
  document: 'Applications Manual for the Revised NIOSH Lifting Equation, publication 94-110',
  publisher: 'NIOSH',
  revision: 'September 2021',
});

export const loadConstant = manual(23, 'two sources', undefined, { via: 'the manual and a fact sheet' });

const multipliers = manual(
  {
    horizontal: 25,
    verticalMiddle: 75,
    verticalPerCm: 0.003,
    distance: 0.82,
    distanceShare: 4.5,
    asymmetryPerDegree: 0.0032,
  } as const,
  'memory',
  undefined,
  { note: 'they give the published example, 10.3 kg' },
);

export interface Lift {
  /** Hands to the middle of the ankles, cm. */
  readonly horizontal: number;
  /** Hands above the floor at the start, cm. */
  readonly vertical: number;
  /** How far the hands travel up, cm. */
  readonly travel: number;
  /** Turn of the trunk, degrees. */
  readonly asymmetry?: number;
  readonly frequencyMultiplier?: number;
  readonly couplingMultiplier?: number;
}

/** Recommended weight limit, kg: 23 HM VM DM AM FM CM. */
export function recommendedWeightLimit(lift: Lift): number {
  const m = multipliers.value;
  const horizontal = Math.min(1, m.horizontal / lift.horizontal);
  const vertical = 1 - m.verticalPerCm * Math.abs(lift.vertical - m.verticalMiddle);
  const distance = Math.min(1, m.distance + m.distanceShare / lift.travel);
  const asymmetry = 1 - m.asymmetryPerDegree * (lift.asymmetry ?? 0);
  const rest = (lift.frequencyMultiplier ?? 1) * (lift.couplingMultiplier ?? 1);
  return loadConstant.value * horizontal * vertical * distance * asymmetry * rest;
}
