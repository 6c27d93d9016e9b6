/** The open plan, with undo. One call of `editPlan` is one step; a drag previews and commits once. */
import { temporal } from 'zundo';
import { createStore } from 'zustand/vanilla';
import type { Plan } from '../../geometry';

interface PlanState {
  /** Key of the plan in storage. */
  readonly planId: string;
  readonly plan: Plan;
  /** Shown instead of `plan` while a drag or a nudge is under way; never saved, never undone. */
  readonly preview: Plan | undefined;
  /** Someone else's plan from a link: nothing edits it and nothing saves it. */
  readonly readOnly: boolean;
}

/** Steps kept for undo: an afternoon of edits, a few megabytes at the most. */
const STEPS_KEPT = 200;

export const emptyPlan: Plan = { format: 1, name: 'New plan', parts: {} };

export const planStore = createStore<PlanState>()(
  temporal((): PlanState => ({ planId: '', plan: emptyPlan, preview: undefined, readOnly: false }), {
    partialize: (state) => ({ plan: state.plan }),
    equality: (before, after) => before.plan === after.plan,
    limit: STEPS_KEPT,
  }),
);

/** Opens a plan and forgets the steps of the one before. */
export function openPlan(planId: string, plan: Plan): void {
  planStore.setState({ planId, plan, preview: undefined, readOnly: false });
  planStore.temporal.getState().clear();
}

/** Shows a plan that is not the reader's own: it has no place in storage and cannot be edited. */
export function showPlan(plan: Plan): void {
  planStore.setState({ planId: '', plan, preview: undefined, readOnly: true });
  planStore.temporal.getState().clear();
}

/** One undoable step. An edit that returns the same plan leaves no step. */
export function editPlan(edit: (plan: Plan) => Plan): void {
  const { plan, readOnly } = planStore.getState();
  if (readOnly) return;
  planStore.setState({ plan: edit(plan), preview: undefined });
}

/** Goes on with the last step instead of beginning another: one undo takes both back. */
export function continueStep(edit: (plan: Plan) => Plan): void {
  const steps = planStore.temporal.getState();
  steps.pause();
  editPlan(edit);
  steps.resume();
}

/** Shows a plan that is not committed yet (the place under the pointer). */
export function previewPlan(plan: Plan | undefined): void {
  const { preview, readOnly } = planStore.getState();
  if (preview !== plan && !readOnly) planStore.setState({ preview: plan });
}

/** Turns the preview into one step; without a preview nothing happens. */
export function commitPreview(): void {
  const { preview } = planStore.getState();
  if (preview) editPlan(() => preview);
}

export function undo(): void {
  planStore.setState({ preview: undefined });
  planStore.temporal.getState().undo();
}

export function redo(): void {
  planStore.setState({ preview: undefined });
  planStore.temporal.getState().redo();
}

/** The plan on the screen: the preview while there is one. */
export function shownPlan(state: PlanState = planStore.getState()): Plan {
  return state.preview ?? state.plan;
}
