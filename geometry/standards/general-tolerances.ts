/** General tolerances for dimensions that carry none of their own, mm. */
import { commonPractice, generalTolerances as iso2768 } from './cited-documents';
import { citing, type Published } from './published';

export type ToleranceClass = 'f' | 'm' | 'c' | 'v';

/** Permissible deviation (plus or minus) for nominal sizes over `over` up to and including `upTo`. */
export interface ToleranceRow {
  readonly over: number;
  readonly upTo: number;
  /** Absent where the class sets no value. */
  readonly f?: number;
  readonly m: number;
  readonly c: number;
  readonly v?: number;
}

/** The first row begins at 0.5 inclusive; smaller sizes want a tolerance beside the dimension. */
export const linearTolerances: Published<readonly ToleranceRow[]> = citing(iso2768)(
  [
    { over: 0.5, upTo: 3, f: 0.05, m: 0.1, c: 0.2 },
    { over: 3, upTo: 6, f: 0.05, m: 0.1, c: 0.3, v: 0.5 },
    { over: 6, upTo: 30, f: 0.1, m: 0.2, c: 0.5, v: 1 },
    { over: 30, upTo: 120, f: 0.15, m: 0.3, c: 0.8, v: 1.5 },
    { over: 120, upTo: 400, f: 0.2, m: 0.5, c: 1.2, v: 2.5 },
    { over: 400, upTo: 1000, f: 0.3, m: 0.8, c: 2, v: 4 },
    { over: 1000, upTo: 2000, f: 0.5, m: 1.2, c: 3, v: 6 },
    { over: 2000, upTo: 4000, m: 2, c: 4, v: 8 },
  ],
  'two sources',
  'table 1',
  { via: 'three reproductions', note: 'a fourth prints 0.15 and 0.2 for the first two rows of class c' },
);

/**
 * Permissible deviation of a length by class; undefined where the class sets none for that size. Sizes below
 * 0.5 mm take the first row and sizes above 4 m the last, where the standard asks for a tolerance of its own.
 * Throws RangeError unless the length is finite.
 */
export function generalTolerance(toleranceClass: ToleranceClass, length: number): number | undefined {
  const size = Math.abs(length);
  if (!Number.isFinite(size)) throw new RangeError(`a length must be finite, not ${length}`);
  const rows = linearTolerances.value;
  const row = rows.find((candidate) => size <= candidate.upTo) ?? rows.at(-1);
  return row?.[toleranceClass];
}

/** What a reading with a hand caliper, or beyond its jaws with a steel rule, is good for. */
const readings = {
  caliper: commonPractice(0.1, { note: 'instrument, hand and a part that gives under the jaws, together' }),
  caliperReach: commonPractice(150, { note: 'jaws of the usual caliper' }),
  steelRule: commonPractice(0.5, { note: 'half a division at either end' }),
} as const;

/** What a builder has at hand to read a length with, and plus or minus how much it is good for, mm. */
export interface Instrument {
  readonly name: 'caliper' | 'steel rule';
  readonly plusMinus: number;
}

export function instrumentFor(length: number): Instrument {
  const { caliper, caliperReach, steelRule } = readings;
  return Math.abs(length) <= caliperReach.value
    ? { name: 'caliper', plusMinus: caliper.value }
    : { name: 'steel rule', plusMinus: steelRule.value };
}

/** Where a dimension of a part came from. */
export type DimensionSource = 'standard' | 'sheet' | 'measured' | 'assumed';

/**
 * Tolerance to assume for a dimension that states none, plus or minus in mm. Our choice:
 * - `measured`: what the instrument is good for, caliper up to its reach, steel rule beyond (common practice);
 * - `standard` without a tolerance of its own, and `sheet`: ISO 2768-1 class m, ordinary workshop accuracy;
 * - `assumed`: class c, because nobody has promised anything.
 * Throws RangeError unless the length is finite.
 */
export function defaultPlusMinus(source: DimensionSource, length: number): number {
  const byClass = generalTolerance(source === 'assumed' ? 'c' : 'm', length) ?? 0;
  return source === 'measured' ? instrumentFor(length).plusMinus : byClass;
}
