/** What crosses to the worker that finds how a plan is put together, and what comes back; all of it plain data. */
import type {
  AssemblySheet,
  InsertionPath,
  KnotReport,
  LeadWaypoint,
  Motion,
  Plan,
  ServiceEntry,
} from '../../geometry';

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
  /** Id of the unit, of those that travel with it, and of what it is put on on the bench. */
  readonly unit: string;
  readonly with: readonly string[];
  readonly bench?: string;
  /** Way into its seat that the order has found, for what is taken off too. */
  readonly words: string;
  readonly motions: readonly Motion[];
  /** Whether it is taken off instead. */
  readonly takenOff: boolean;
}

/** A part, or a piece of one, that moves by itself: what the drawing shows or leaves out. */
export interface UnitOutline {
  readonly id: string;
  readonly name: string;
  /** Id of the part in the plan, and which boxes of its body. */
  readonly part: string;
  readonly boxes: readonly number[];
  /** Unit it sits on. */
  readonly on?: string;
  /** Panels and covers are off while something goes in. */
  readonly covers: boolean;
  readonly isPlug: boolean;
}

export interface AssemblyAnswer {
  readonly sheet: AssemblySheet;
  /** One for each step of the sheet, in its order. */
  readonly subjects: readonly StepSubject[];
  readonly units: readonly UnitOutline[];
  /** Places a lead can be pinned to. */
  readonly waypoints: readonly LeadWaypoint[];
  readonly service: readonly ServiceEntry[];
  /** When the plan cannot be built. */
  readonly knot?: KnotReport;
  /** How each unit is called in a sentence, by its id. */
  readonly unitNames: Readonly<Record<string, string>>;
}

/** The way in of one unit past what is present; see `PathOptions` of the kernel. */
export interface WayQuestion {
  readonly unit: string;
  readonly present?: readonly string[];
  readonly with?: readonly string[];
  readonly onBench?: boolean;
  readonly known?: { readonly words: string; readonly motions: readonly Motion[] };
}

/** `number` tells questions apart. */
export type AssemblyRequest =
  | { readonly kind: 'sheet'; readonly number: number; readonly plan: Plan }
  | { readonly kind: 'way'; readonly number: number; readonly plan: Plan; readonly question: WayQuestion };

export type AssemblyReply = { readonly number: number } & (
  | { readonly kind: 'progress'; readonly progress: AssemblyProgress }
  | { readonly kind: 'answer'; readonly answer: AssemblyAnswer }
  | { readonly kind: 'path'; readonly path: InsertionPath }
  | { readonly kind: 'problem'; readonly message: string }
);
