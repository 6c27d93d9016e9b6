/**
 * A published number and where it comes from.
 *
 * Every table in this folder is made of these. Lengths are millimetres, masses kilograms, angles degrees,
 * currents ampere, powers watt. A value without a document behind it says so in its confidence.
 */

/**
 * How far a value can be trusted.
 * - `primary`: read in the text or figure of the document itself.
 * - `near-primary`: the document's table copied row by row by another hand, with row numbers.
 * - `two sources`: two or more independent transcriptions agree; `one source`: a single transcription.
 * - `derived`: arithmetic on other published values; the arithmetic stands in the note or in the code.
 * - `measured`: read from the coordinates of an openly published part or board.
 * - `common practice`: what builders do; no document. `memory`: believed right, found in no document.
 */
export type Confidence =
  | 'primary'
  | 'near-primary'
  | 'two sources'
  | 'one source'
  | 'derived'
  | 'measured'
  | 'common practice'
  | 'memory';

/** A document that can be cited; `publisher` stands only here, never in the name of a value. */
export interface CitedDocument {
  readonly document: string;
  readonly publisher?: string;
  readonly revision?: string;
}

/** The place inside a document: figure, table, section or page, and the hands it came through, if any. */
export interface Source extends CitedDocument {
  readonly figure?: string;
  readonly via?: string;
}

/** One value with its source. `plusMinus` is the document's own tolerance, in the unit of the value. */
export interface Published<T> {
  readonly value: T;
  readonly source: Source;
  readonly confidence: Confidence;
  readonly plusMinus?: number;
  readonly note?: string;
}

/** Smallest and largest value of a range, in that order. */
export type Range = readonly [from: number, to: number];

/** What else a document says about a value. */
export interface Remarks {
  readonly plusMinus?: number;
  readonly note?: string;
  readonly via?: string;
}

/** Writes one row of a table: value, how sure, where in the document, anything else. */
export type Citation = <T>(
  value: T,
  confidence: Confidence,
  figure?: string,
  remarks?: Remarks,
) => Published<T>;

/** Millimetres in an inch, exactly (ISO 80000-3). */
export const MILLIMETRES_PER_INCH = 25.4;

/** Millimetres of a length printed in inches. */
export function inches(length: number): number {
  return length * MILLIMETRES_PER_INCH;
}

/**
 * Starts a table from one document: `const cem = citing(cardElectromechanical)`, then
 * `cem(18.42, 'primary', 'figure 9-5', { plusMinus: 0.25 })` for each row.
 */
export function citing(document: CitedDocument): Citation {
  return (value, confidence, figure, remarks = {}) => {
    const { via, ...rest } = remarks;
    const source: Source = {
      ...document,
      ...(figure === undefined ? {} : { figure }),
      ...(via === undefined ? {} : { via }),
    };
    return { value, source, confidence, ...rest };
  };
}
