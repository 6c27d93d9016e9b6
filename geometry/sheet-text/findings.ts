/** What one clause has to say before it is held against the others. */
import type { Unit } from '../parts/dimension';
import type { SheetValue, TextSpan } from './reading';

export interface Candidate {
  readonly path: string;
  readonly value: SheetValue;
  /** Half of the last place written, in the field's unit: statements closer than that agree. */
  readonly halfStep: number;
  readonly plusMinus?: number;
  readonly unit?: Unit;
  readonly span: TextSpan;
  readonly rule: string;
  /** The sheet says outright that this is the plain figure: 'without fan'. */
  readonly isExplicit?: boolean;
  /** Written in another unit than the field's. */
  readonly isConverted?: boolean;
}

export type ClauseFinding =
  | { readonly type: 'fact'; readonly candidates: readonly Candidate[] }
  | {
      readonly type: 'open';
      readonly ask: string;
      readonly span: TextSpan;
      readonly answers: readonly (readonly Candidate[])[];
      /** What settles it elsewhere on the sheet: any plain statement, an explicit one, or only one that agrees. */
      readonly yieldsTo: 'any' | 'explicit' | 'agreement';
    }
  /** Perhaps another figure for a field: never taken, but in the way of one that says otherwise. */
  | { readonly type: 'doubt'; readonly candidate: Candidate; readonly why: string }
  | { readonly type: 'left'; readonly span: TextSpan; readonly why: string };

export function left(span: TextSpan, why: string): ClauseFinding {
  return { type: 'left', span, why };
}
