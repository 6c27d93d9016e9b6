/** Answers one request about the shelf at a time. Runs in the worker, or on the page where there is none. */
import { SeatTrials } from './seat-in-plan';
import type { SeatVerdict, ShelfReply, ShelfRequest } from './shelf-request';

let trials: { readonly planNumber: number; readonly seats: SeatTrials } | undefined;

/** Throws RangeError when it is asked about a plan that it has never been given. */
export function answerShelf(request: ShelfRequest): ShelfReply {
  const { number, planNumber, plan, selected, candidates, budget } = request;
  const end = performance.now() + budget;
  if (trials?.planNumber !== planNumber) {
    if (!plan) throw new RangeError(`plan ${planNumber} was never given`);
    trials = { planNumber, seats: new SeatTrials(plan) };
  }
  const verdicts: SeatVerdict[] = [];
  for (const { spec } of candidates) {
    if (verdicts.length > 0 && performance.now() > end) break;
    verdicts.push(trials.seats.judge(spec, selected));
  }
  return { number, verdicts };
}
