/** The placed scene and the solver's findings of the plan on the screen; derived, recomputed on every change. */
import { createStore } from 'zustand/vanilla';
import { createSolver, type Plan, placePlan, type Scene, type Solution } from '../../geometry';
import { planStore, shownPlan } from './plan-store';

interface SolutionState {
  readonly plan: Plan;
  readonly scene: Scene;
  readonly solution: Solution;
}

const solver = createSolver();

function derive(plan: Plan): SolutionState {
  const scene = placePlan(plan);
  return { plan, scene, solution: solver.solve(scene) };
}

export const solutionStore = createStore<SolutionState>()(() => derive(shownPlan()));

planStore.subscribe((state) => {
  const plan = shownPlan(state);
  if (plan !== solutionStore.getState().plan) solutionStore.setState(derive(plan));
});
