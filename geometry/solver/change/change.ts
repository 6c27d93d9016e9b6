/** A way out that has been tried on the model, with all it does. */
import type { Plan } from '../../plan/plan-schema';
import type { Weight } from '../finding';

/** What is done, the least disturbing first; to swap a carrier is to build the machine anew. */
export const changeKinds = [
  'adjust',
  'move',
  'turn',
  'mount by another side',
  'mount elsewhere',
  'leave out',
  'measure',
  'swap',
  'swap carrier',
] as const;
export type ChangeKind = (typeof changeKinds)[number];

/** One thing that could be done, before it has been tried. */
export interface Proposal {
  readonly kind: ChangeKind;
  /** Id of the part it is done to. */
  readonly part: string;
  /** 'Raise the front fan by 8 mm' */
  readonly title: string;
  readonly plan: Plan;
  /** How far from what there is now, to prefer the smaller of like changes; mm, degrees or whatever the kind has. */
  readonly size: number;
}

/** A finding that comes or goes. */
export interface FindingChange {
  readonly id: string;
  readonly weight: Weight;
  readonly parts: readonly string[];
  readonly sentence: string;
}

/** A clearance that is not what it was. */
export interface MarginChange {
  readonly id: string;
  /** 'Cooler to side panel' */
  readonly title: string;
  /** mm; undefined where there is no such clearance. */
  readonly before: number | undefined;
  readonly after: number | undefined;
  readonly wanted: number;
}

export interface Effects {
  readonly fixed: readonly FindingChange[];
  readonly caused: readonly FindingChange[];
  readonly margins: readonly MarginChange[];
}

export interface Change {
  /** Stable for the same plan and target. */
  readonly id: string;
  readonly kind: ChangeKind;
  readonly part: string;
  readonly title: string;
  /** How far from what there is now, to prefer the smaller of like changes; mm, degrees or whatever the kind has. */
  readonly size: number;
  /** The plan with the change made. */
  readonly plan: Plan;
  /** What it was asked to do is done, and nothing as bad between the same parts has come of it. */
  readonly solves: boolean;
  /** mm of the gap (or overlap) asked about, where it has a number. */
  readonly before: number | undefined;
  readonly after: number | undefined;
  readonly effects: Effects;
}

/** A part that could be had instead. */
export interface ShelfPart {
  readonly id: string;
  readonly spec: Plan['parts'][string]['spec'];
}
