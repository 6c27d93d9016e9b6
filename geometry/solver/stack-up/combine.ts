/** The arithmetic of a stack of dimensions, independent and centred, mm. */

/** One dimension's say: the gap changes by `sensitivity` mm for each mm of the dimension. */
export interface StackTerm {
  readonly sensitivity: number;
  readonly plusMinus: number;
  /** How many standard deviations `plusMinus` stands for. */
  readonly sigmas: 2 | 3;
}

export interface StackSpread {
  /** Every dimension at its worst: sum of the shares. */
  readonly worst: number;
  /** Root of the sum of the squared shares. */
  readonly rss: number;
  /** Standard deviation. */
  readonly sigma: number;
}

export function combineTerms(terms: readonly StackTerm[]): StackSpread {
  let worst = 0;
  let squares = 0;
  let variance = 0;
  for (const { sensitivity, plusMinus, sigmas } of terms) {
    const share = Math.abs(sensitivity) * plusMinus;
    worst += share;
    squares += share ** 2;
    variance += (share / sigmas) ** 2;
  }
  return { worst, rss: Math.sqrt(squares), sigma: Math.sqrt(variance) };
}
