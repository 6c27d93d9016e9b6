/**
 * A dimension or rating as a spec states it.
 *
 * Written as a bare number when it comes from a maker's sheet with no tolerance of its own; otherwise as an
 * object that also says how far it may be off and where it comes from. The document keeps whichever form was
 * typed, so that a plan stays short and nothing is invented on the way.
 */
import { z } from 'zod';

/** Where a value comes from. `assumed` is a default nobody has confirmed. */
export const dimensionSourceSchema = z.enum(['standard', 'sheet', 'measured', 'assumed']);
export type DimensionSource = z.infer<typeof dimensionSourceSchema>;

/** The long form of a dimension: value in the field's unit, half-width of its band, source, free remark. */
export interface StatedDimension {
  readonly value: number;
  readonly plusMinus?: number | undefined;
  /** How many standard deviations `plusMinus` stands for; see `sigmasOf`. */
  readonly sigmas?: 2 | 3 | undefined;
  readonly source?: DimensionSource | undefined;
  readonly note?: string | undefined;
}

export type Dimension = number | StatedDimension;

/** Units a field may carry; the form shows them beside the field. */
export type Unit =
  | 'mm'
  | 'g'
  | 'W'
  | 'rpm'
  | 'm³/h'
  | 'Pa'
  | 'dB'
  | 'deg'
  | 'GB'
  | 'count'
  | '%'
  | 'share'
  | 'K/W'
  | '°C';

/** What a form needs to know about a field; kept on the schema itself so that there is one place for it. */
export interface FieldFacts {
  readonly title: string;
  readonly unit?: Unit;
  /** The faces or points the value is measured between. */
  readonly datum?: string;
  readonly help?: string;
  /** What is used when the field is left empty, in words or in the field's unit. */
  readonly fallback?: string | number;
}

interface Bounds {
  readonly min?: number;
  readonly max?: number;
  /** Widest half-width of a band. */
  readonly widest?: number;
}

/** No single edge of a compact machine is longer than this; a larger number is a slip of the keyboard. */
export const LARGEST_DIMENSION_MM = 2000;

function quantity(facts: FieldFacts, { min = 0, max = LARGEST_DIMENSION_MM, widest = 100 }: Bounds) {
  const value = z.number().min(min).max(max);
  return z
    .union([
      value,
      z.strictObject({
        value,
        plusMinus: z.number().min(0).max(widest).optional(),
        sigmas: z.union([z.literal(2), z.literal(3)]).optional(),
        source: dimensionSourceSchema.optional(),
        note: z.string().max(200).optional(),
      }),
    ])
    .meta({ ...facts, quantity: true });
}

/** A length in millimetres. Zero is allowed only where `min` says so (the default lower bound is 0.01 mm). */
export function millimetres(title: string, facts: Omit<FieldFacts, 'title' | 'unit'> & Bounds = {}) {
  const { min = 0.01, max, ...rest } = facts;
  return quantity({ title, unit: 'mm', ...rest }, max === undefined ? { min } : { min, max });
}

/** A signed position in millimetres along an axis of the part's frame. */
export function position(title: string, facts: Omit<FieldFacts, 'title' | 'unit'> = {}) {
  return quantity({ title, unit: 'mm', ...facts }, { min: -LARGEST_DIMENSION_MM, max: LARGEST_DIMENSION_MM });
}

/** A rating in a unit other than millimetres (watts, revolutions a minute, decibels, grams ...). */
export function rating(title: string, unit: Exclude<Unit, 'mm'>, bounds: Bounds = {}) {
  const max = bounds.max ?? 100_000;
  // A tenth of a speed or a mass is soon more than a hundred of its unit.
  return quantity({ title, unit }, { min: bounds.min ?? 0, max, widest: Math.max(100, max / 2) });
}

/** The value of a dimension in its field's unit. */
export function nominal(dimension: Dimension): number {
  return typeof dimension === 'number' ? dimension : dimension.value;
}

/** The value, or the fallback when the sheet is silent. */
export function nominalOr(dimension: Dimension | undefined, fallback: number): number {
  return dimension === undefined ? fallback : nominal(dimension);
}

/** Where the value comes from; a bare number is a maker's sheet. */
export function sourceOf(dimension: Dimension): DimensionSource {
  return typeof dimension === 'number' ? 'sheet' : (dimension.source ?? 'sheet');
}

/**
 * How many standard deviations the band of a dimension stands for, unless it says so itself: three for a tolerance
 * (a process that just fills it has a capability index of 1: common practice), two for a reading (the usual coverage
 * factor of an expanded uncertainty, JCGM 100:2008, 6.2 and 6.3).
 */
export function sigmasOf(dimension: Dimension): 2 | 3 {
  const stated = typeof dimension === 'number' ? undefined : dimension.sigmas;
  return stated ?? (sourceOf(dimension) === 'measured' ? 2 : 3);
}

/** The same dimension with another value, its band and source kept. */
export function withValue(dimension: Dimension, value: number): Dimension {
  return typeof dimension === 'number' ? value : { ...dimension, value };
}
