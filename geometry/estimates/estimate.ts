/**
 * What every estimate looks like, whatever its topic, so that one table, one sentence and one detail sheet show any of
 * them. An estimate is a figure from a model with stated assumptions: never a measurement, never a certificate.
 */
import type { DimensionSource } from '../parts/dimension';
import type { Topic } from './assumption';
import type { AssumptionId } from './assumptions';

export type { Topic } from './assumption';

export type EstimateUnit =
  | 'W'
  | 'A'
  | 'V'
  | '%'
  | '°C'
  | 'K'
  | 'm³/h'
  | 'Pa'
  | 'dB'
  | 'g'
  | 'kg'
  | 'N'
  | 'mm'
  | 'mm²'
  | 'l'
  | 'deg'
  | 'times'
  | 'count'
  | 'days'
  | 'money'
  | 'money/l'
  | 'money/dB'
  | 'rpm';

export interface EstimateInput {
  readonly name: string;
  readonly value: number | string;
  readonly unit?: EstimateUnit | 'm' | 'K/W' | 'GB';
  /**
   * `plan`: read off the plan or its scene. `derived`: another estimate. `assumed`: nobody has confirmed it. `asked`: part
   * of what the estimates were asked for.
   */
  readonly source: DimensionSource | 'plan' | 'brief' | 'derived' | 'asked';
  readonly note?: string;
}

/** An assumption that moves the figure, and by how much between its lowest and highest value. */
export interface AssumptionEffect {
  readonly id: AssumptionId;
  /** 'fan grilles are open to 0.6 of their face (0.45 to 0.78)' */
  readonly words: string;
  readonly source: string;
  /** Figure at the assumption's lowest value less the figure at its middle, in the unit of the estimate. */
  readonly atLow: number;
  readonly atHigh: number;
}

export interface Limit {
  readonly kind: 'at most' | 'at least';
  readonly value: number;
  /** Who sets it: 'rating of the supply', 'brief'. */
  readonly from: string;
}

/**
 * `met` when the whole band is inside the limit, `not met` when the middle is outside, `perhaps` when only an end of
 * the band is.
 */
export type Standing = 'met' | 'perhaps' | 'not met' | 'unknown' | 'no limit';

export interface Estimate {
  /** Stable between edits: 'power sustained', 'heat card'. */
  readonly id: string;
  readonly topic: Topic;
  readonly title: string;
  /** Plan part it is about, if one. */
  readonly part?: string;
  readonly unit: EstimateUnit;
  /** Of an amount: three letters. */
  readonly currency?: string;
  /** Middle, lowest and highest; absent when unknown. */
  readonly value?: number;
  readonly low?: number;
  readonly high?: number;
  /** 'unknown, because ...' in full, when there is no value. */
  readonly unknown?: string;
  /** Ratings that are missing and were stood in for by an assumption; they widen the band. */
  readonly missing: readonly string[];
  /** The formula in plain words. */
  readonly formula: string;
  readonly inputs: readonly EstimateInput[];
  /** Those that matter, the strongest first. */
  readonly assumptions: readonly AssumptionEffect[];
  readonly limit?: Limit;
  readonly standing: Standing;
  /** 'Wall power: 402 W (375 to 431 W), an estimate.' */
  readonly sentence: string;
}

/** A figure as a model computes it for one set of assumption values; the band is added by varying them. */
export interface Figure {
  readonly id: string;
  readonly topic: Topic;
  readonly title: string;
  readonly part?: string;
  readonly unit: EstimateUnit;
  readonly currency?: string;
  readonly value?: number;
  /** Clause after 'unknown, because'. */
  readonly because?: string;
  readonly missing?: readonly string[];
  readonly formula: string;
  readonly inputs: readonly EstimateInput[];
  readonly limit?: Limit;
  /** The value stands for itself: typed or counted, no band. */
  readonly exact?: true;
}
