/** The form of a rule for sides given together. */
import type { Clause } from './clauses';
import type { Side } from './sides';
import type { Atom } from './words/atoms';

/** mm. */
export interface Measured {
  readonly value: number;
  readonly halfStep: number;
  readonly isConverted: boolean;
}

export interface BoxFill {
  readonly path: string;
  readonly measured: Measured;
  /** Where the field takes something else than the length itself. */
  readonly value?: string | number | boolean;
  readonly isExplicit?: boolean;
}

export interface BoxAnswer {
  readonly fills: readonly BoxFill[];
  readonly because: string;
  /** To be asked even if this is the only answer. */
  readonly ask?: string;
  /** The fields that `ask` is about; all of them when absent. */
  readonly unsure?: readonly string[];
}

export interface BoxRule {
  readonly sides: 2 | 3;
  readonly all: readonly Atom[];
  readonly also: readonly Atom[];
  readonly because: string;
  /** Why nothing was taken, when no arrangement is possible. */
  readonly nothing: string;
  /** Every arrangement that the part could have; one is a fact, several are a question. */
  readonly arrange: (
    set: readonly Measured[],
    sides: readonly Side[],
    clause: Clause,
    context: SheetContext,
  ) => readonly BoxAnswer[];
}

/** What other lines of the sheet say about the whole part. */
export interface SheetContext {
  readonly form: string | undefined;
  readonly style: string | undefined;
}
