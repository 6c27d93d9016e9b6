/** A way out that was tried beside the page becomes the plan. */
import type { Change, Plan } from '../../geometry';
import { keepIdentity } from '../workers/keep-identity';
import { editPlan, planStore, undo } from './plan-store';
import { announce } from './status-store';

/** One step of undo. Does nothing when the plan has gone on since the way was tried; then returns false. */
export function applyChange(triedOn: Plan, { plan, title }: Change): boolean {
  if (planStore.getState().plan !== triedOn) return false;
  editPlan((before) => keepIdentity(before, plan));
  announce(`${title}: done.`, { label: 'Undo', run: undo });
  return true;
}
