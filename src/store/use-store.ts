/** React bindings of the stores. Selectors must return primitives or references that are stable between changes. */
import { useStore } from 'zustand';
import { planStore } from './plan-store';
import { type SavingState, savingStore } from './saving-store';
import { solutionStore } from './solution-store';
import { statusStore } from './status-store';
import { type ViewState, viewStore } from './view-store';

type PlanSnapshot = ReturnType<typeof planStore.getState>;
type SolutionSnapshot = ReturnType<typeof solutionStore.getState>;

export function usePlanStore<T>(selector: (state: PlanSnapshot) => T): T {
  return useStore(planStore, selector);
}

export function useSolutionStore<T>(selector: (state: SolutionSnapshot) => T): T {
  return useStore(solutionStore, selector);
}

export function useViewStore<T>(selector: (state: ViewState) => T): T {
  return useStore(viewStore, selector);
}

export function useSaving(): SavingState {
  return useStore(savingStore);
}

export function useStatus(): ReturnType<typeof statusStore.getState> {
  return useStore(statusStore);
}

/** How many steps can be taken back and forward again. */
export function useUndoSteps(): { readonly past: number; readonly future: number } {
  const past = useStore(planStore.temporal, (state) => state.pastStates.length);
  const future = useStore(planStore.temporal, (state) => state.futureStates.length);
  return { past, future };
}
