/** What the reader of spec sheets has to say about a text: facts, questions, and what it did not understand. */
import type { Unit } from '../parts/dimension';
import type { PartKind } from '../parts/part-spec';

/** A stretch of the text as pasted: UTF-16 positions, end exclusive. */
export interface TextSpan {
  readonly start: number;
  readonly end: number;
}

export type SheetValue = number | string | boolean;

/**
 * One value for one field. Paths are those of the spec ('length', 'fan.size'); counts of plugs and sockets go by their
 * type ('plugs.drive power', 'power.card 8-pin'), hole patterns by their name ('patterns.square-75'), and what an
 * enclosure's sheet promises by 'limits.' and its name.
 */
export interface ReadValue {
  readonly path: string;
  /** In the field's unit: mm, g, W, rpm, m³/h, Pa, dB, GB, °C. */
  readonly value: SheetValue;
  readonly plusMinus?: number;
  readonly unit?: Unit;
  /** The phrase it was read from. */
  readonly span: TextSpan;
  /** Why the phrase means this, in words. */
  readonly rule: string;
}

export interface SheetAnswer {
  readonly label: string;
  readonly fills: readonly ReadValue[];
}

/** Something the sheet leaves open: only a person can say which answer holds, or that none does. */
export interface SheetQuestion {
  readonly id: string;
  readonly ask: string;
  readonly span: TextSpan;
  readonly answers: readonly SheetAnswer[];
}

export interface Leftover {
  readonly span: TextSpan;
  readonly why: string;
}

export interface SheetReading {
  readonly kind: PartKind;
  readonly values: readonly ReadValue[];
  readonly questions: readonly SheetQuestion[];
  readonly leftovers: readonly Leftover[];
  /** How many leftovers there were beyond those listed. */
  readonly moreLeftovers: number;
  /** How many characters of the text were read. */
  readonly readTo: number;
  /** Work done, in looks at a token, a word or a rule: grows in step with the text. */
  readonly steps: number;
}

/** Longer texts are no spec sheets: what stands beyond is not read, and the reading says so. */
export const LARGEST_SHEET_TEXT = 60_000;

export const MOST_LEFTOVERS = 300;
