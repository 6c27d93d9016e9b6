/** The estimates of a plan as they cross from the worker: plain data, without the placed bodies. */
import type { Load, Plan, PlanEstimates } from '../../geometry';

export interface EstimatesRequest {
  readonly plan: Plan;
  readonly load: Load;
  /** ISO date, to let a quote run out. */
  readonly today: string;
}

export interface FanRow {
  readonly stream: string;
  readonly label: string;
  /** Share of top speed, 0 to 1. */
  readonly share: number;
  /** Where the fan works, m³/h and Pa. */
  readonly flow: number;
  readonly pressure: number;
}

export interface SoundRow {
  readonly id: string;
  readonly label: string;
  /** dB at 1 m from the machine. */
  readonly atOneMetre: number;
  readonly share?: number;
  readonly starved: boolean;
}

export interface EstimatesAnswer extends Pick<PlanEstimates, 'topics' | 'wishes' | 'refused'> {
  /** Nothing is placed, so there is nothing to estimate. */
  readonly empty: boolean;
  readonly load: Load;
  readonly power: Omit<PlanEstimates['power'], 'cards'>;
  /** Loudest first; absent when the machine cannot be run. */
  readonly running?: { readonly fans: readonly FanRow[]; readonly sounds: readonly SoundRow[] };
}

export type EstimatesReply =
  | { readonly ok: true; readonly answer: EstimatesAnswer }
  | { readonly ok: false; readonly message: string };
