/** Keeps the stack-ups up with the plan on the screen. */
import type { Plan, StackUp } from '../../geometry';
import { studyClient } from '../workers/study-client';
import { planStore, shownPlan } from './plan-store';
import { studyStore } from './study-store';
import { viewStore } from './view-store';

/**
 * All of them after every step; while something is being dragged, only the one that is looked at. Returns a function
 * that ends it.
 */
export function followStudy(): () => void {
  let asked: Plan | undefined;
  const ask = () => {
    const plan = shownPlan();
    if (plan === asked) return;
    asked = plan;
    void (planStore.getState().preview ? askForSelected(plan) : askForAll(plan));
  };
  ask();
  return planStore.subscribe(ask);
}

async function askForAll(plan: Plan): Promise<void> {
  try {
    const found = await studyClient().ask({ topic: 'stack-ups', plan });
    if (!found) return;
    const stackUps = new Map(found.map((stackUp) => [stackUp.clearance, stackUp]));
    studyStore.setState({ plan, stackUps, problem: undefined });
  } catch (error) {
    const problem = error instanceof Error ? error.message : String(error);
    studyStore.setState({ plan, stackUps: new Map(), problem });
  }
}

async function askForSelected(plan: Plan): Promise<void> {
  const { selectedClearance } = viewStore.getState();
  if (selectedClearance === undefined) return;
  // A dragged part may stand where nothing can be said; the step that ends the drag says why.
  const found = await studyClient()
    .ask({ topic: 'stack-up', plan, clearance: selectedClearance })
    .catch(() => undefined);
  if (found) keepOne(found);
}

function keepOne(stackUp: StackUp): void {
  studyStore.setState(({ stackUps }) => ({ stackUps: new Map(stackUps).set(stackUp.clearance, stackUp) }));
}
