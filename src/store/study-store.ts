/** What is known about the dimensions behind the clearances; found beside the page, a moment after every change. */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Band, Clearance, Plan, StackUp } from '../../geometry';

interface StudyState {
  /** The plan that all the stack-ups were found for; undefined before the first are there. */
  readonly plan: Plan | undefined;
  /** By id of the clearance. While a newer plan is worked on they are those of the one before. */
  readonly stackUps: ReadonlyMap<string, StackUp>;
  /** Why there are none, when the kernel could not say. */
  readonly problem: string | undefined;
}

export const studyStore = createStore<StudyState>()(() => ({
  plan: undefined,
  stackUps: new Map(),
  problem: undefined,
}));

/** The stack-up last found for a clearance, perhaps of the plan a moment ago. */
export function useStackUp(clearance: string): StackUp | undefined {
  return useStore(studyStore, ({ stackUps }) => stackUps.get(clearance));
}

export function useStudyProblem(): string | undefined {
  return useStore(studyStore, ({ problem }) => problem);
}

/**
 * The band about the gap as it stands. A gap that changes under the pointer takes its band along until the kernel has
 * looked again: bands depend little on where a part stands.
 */
export function bandAbout({ millimetres }: Clearance, { nominal, worstCase }: StackUp): Band {
  const by = millimetres - nominal;
  return [worstCase[0] + by, worstCase[1] + by];
}
