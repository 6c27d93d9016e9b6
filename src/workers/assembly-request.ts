/** What crosses to the worker that finds how a plan is put together, and what comes back; all of it plain data. */
import type { AssemblySheet, KnotReport, Plan, ServiceEntry } from '../../geometry';

export type AssemblyPhase = 'machine' | 'order' | 'leads' | 'service';

export interface AssemblyProgress {
  readonly phase: AssemblyPhase;
  /** Of the whole, 0 to 1. Phases take their share whatever time they need, so it does not run evenly. */
  readonly share: number;
}

/** What the page needs to know of a step besides its words. */
export interface StepSubject {
  /** The same for the same work on the same thing, however the order changes. */
  readonly key: string;
  /** Id of the part in the plan. */
  readonly part: string;
}

export interface AssemblyAnswer {
  readonly sheet: AssemblySheet;
  /** One for each step of the sheet, in its order. */
  readonly subjects: readonly StepSubject[];
  readonly service: readonly ServiceEntry[];
  /** When the plan cannot be built. */
  readonly knot?: KnotReport;
  /** How each unit is called in a sentence, by its id. */
  readonly unitNames: Readonly<Record<string, string>>;
}

export interface AssemblyRequest {
  readonly plan: Plan;
}

export type AssemblyReply =
  | { readonly kind: 'progress'; readonly progress: AssemblyProgress }
  | { readonly kind: 'answer'; readonly answer: AssemblyAnswer }
  | { readonly kind: 'problem'; readonly message: string };
