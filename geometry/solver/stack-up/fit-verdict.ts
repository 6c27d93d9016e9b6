/** Verdicts on a band of clearance, mm. */
import type { Fit } from '../finding';

export type Band = readonly [least: number, most: number];

/** Roundoff of a sum of dimensions; a band may end on zero by as much, mm. */
const SUM_ROUNDOFF_MM = 1e-9;

/**
 * ISO 286-1:2010, 3.3.1 to 3.3.4: a clearance fit always leaves a gap or, in the extreme case, none; an interference
 * fit always overlaps or, in the extreme case, just touches; a transition fit may do either, depending on the pieces.
 */
export function fitOfBand([least, most]: Band): Fit {
  if (least >= -SUM_ROUNDOFF_MM) return 'clearance fit';
  return most <= SUM_ROUNDOFF_MM ? 'interference fit' : 'transition fit';
}

/** Whether the wanted gap is left whatever pieces one gets. */
export type Kept = 'always' | 'depending on the pieces' | 'never';

export function keptInBand([least, most]: Band, wanted: number): Kept {
  if (least >= wanted - SUM_ROUNDOFF_MM) return 'always';
  return most < wanted - SUM_ROUNDOFF_MM ? 'never' : 'depending on the pieces';
}
