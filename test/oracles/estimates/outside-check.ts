/** A figure written down elsewhere, and what the estimates' own function makes of the same question. */
export interface OutsideCheck {
  /** Where the figure stands. */
  readonly source: string;
  readonly what: string;
  readonly unit: string;
  readonly published: number;
  readonly ours: number;
  /** Half of the last printed digit, or what the source itself grants; in the unit. */
  readonly within: number;
  /** The published figure is known to be wrong: ours must differ by more than `within`. */
  readonly knownWrong?: true;
}

/** Half of a digit after the point. */
export function digit(places: number): number {
  return 0.5 * 10 ** -places * 1.0001;
}

export function agrees({ published, ours, within, knownWrong }: OutsideCheck): boolean {
  const apart = Math.abs(ours - published);
  return knownWrong ? apart > within : apart <= within;
}

/** A check whose difference has to stay within an allowance, in the unit given. */
export function checkRow(
  source: string,
  what: string,
  unit: string,
  published: number,
  ours: number,
  within: number,
): OutsideCheck {
  return { source, what, unit, published, ours, within };
}
