/** From the text of a plan to what the command prints and the status it ends with. */
import { placePlan, readPlan, solve } from '../../geometry';
import { textReport } from './text-report';

export const FITS = 0;
export const DOES_NOT_FIT = 1;
export const UNREADABLE = 2;

export interface CheckedPlan {
  readonly output: string;
  /** One line a problem, beginning with the field it is about. */
  readonly errors: readonly string[];
  readonly status: number;
}

/** `json` asks for `{ verdict, findings, clearances }`; otherwise the output is aligned text. */
export function checkPlan(text: string, json: boolean): CheckedPlan {
  const read = readPlan(text);
  if (!read.ok) {
    const errors = read.problems.map(({ path, message }) => `${path}: ${message}`);
    return { output: '', errors, status: UNREADABLE };
  }
  const { verdict, findings, clearances } = solve(placePlan(read.plan));
  return {
    output: json
      ? JSON.stringify({ verdict, findings, clearances }, null, 2)
      : textReport(read.plan.name, { verdict, findings, clearances }),
    errors: [],
    status: verdict.fits ? FITS : DOES_NOT_FIT,
  };
}
