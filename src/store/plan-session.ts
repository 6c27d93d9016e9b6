/** Which plan is open, and the way from one to another. Nothing of the plan at hand is lost on that way. */
import { type Plan, type Problem, readPlanValue } from '../../geometry';
import { type Autosave, startAutosave } from './autosave';
import { DEMO_PLAN, fetchExample } from './example-plans';
import { newKey, type StoredPlan, whyNotSaved } from './plan-database';
import {
  addPlan,
  findPlan,
  lastPlanId,
  listPlans,
  putBackPlan,
  putPlan,
  rememberLastPlan,
  takePlan,
} from './plan-library';
import { editPlan, emptyPlan, openPlan, planStore } from './plan-store';
import { clearRescue, readRescues } from './rescue';
import { setSaving } from './saving-store';
import { announce } from './status-store';
import { resetView } from './view-store';

let autosave: Autosave | undefined;

/** Opens what was open last; on the first visit, the demo plan. */
export async function startSession(): Promise<void> {
  autosave ??= startAutosave();
  try {
    await takeRescues();
    const last = await lastPlanId();
    const known = await listPlans();
    const candidates = [last, ...known.map((plan) => plan.id)].filter((id) => id !== undefined);
    for (const id of candidates) if ((await openStoredPlan(id)).length === 0) return;
  } catch (error) {
    setSaving({ kind: 'off', why: whyNotSaved(error) });
  }
  await openExample(DEMO_PLAN).catch((error: Error) => {
    announce(error.message);
    openNewPlan(emptyPlan);
  });
}

/** Edits made just before the page was left go into storage; one that was overtaken there is offered as a copy. */
async function takeRescues(): Promise<void> {
  for (const { planId, base, plan } of readRescues()) {
    const stored = await findPlan(planId);
    // Its save was finished after all; only the word of it did not come back.
    const isThere = stored && JSON.stringify(stored.plan) === JSON.stringify(plan);
    if (isThere || (await putPlan(planId, plan, base)).saved) clearRescue(planId);
    else
      announce(`An edit of '${plan.name}' was not saved: another tab was first.`, {
        label: 'Open it as a copy',
        run: () => {
          clearRescue(planId);
          openNewPlan({ ...plan, name: copyName(plan.name) });
        },
      });
  }
}

/** Takes someone else's plan as one's own: a copy, saved beside what was there. */
export function adoptPlan(plan: Plan): void {
  autosave ??= startAutosave();
  openNewPlan(plan);
}

/** Stops saving and listening; used when the page turns to someone else's plan. */
export function endSession(): void {
  void autosave?.flush();
  autosave?.stop();
  autosave = undefined;
  setSaving({ kind: 'idle' });
}

/** Writes what is not written yet. */
export async function saveNow(): Promise<void> {
  await autosave?.flush();
}

/** Opens a plan from storage; returns what is wrong with it, and then leaves the open plan as it is. */
export async function openStoredPlan(id: string): Promise<readonly Problem[]> {
  const record = await findPlan(id);
  if (!record) return [{ path: 'plan', message: 'is no longer in storage' }];
  const read = readPlanValue(record.plan);
  if (!read.ok) return read.problems;
  await saveNow();
  openPlan(id, read.plan);
  resetView();
  autosave?.setBase(id, read.plan, record.revision);
  await rememberLastPlan(id);
  return [];
}

/** Opens a plan that is not in storage yet, and saves it. */
export function openNewPlan(plan: Plan): void {
  void saveNow();
  const id = newKey();
  openPlan(id, plan);
  resetView();
  autosave?.setBase(id, plan, undefined);
  void saveNow()
    .then(() => rememberLastPlan(id))
    .catch(() => undefined);
}

export async function openExample(file: string): Promise<void> {
  openNewPlan(await fetchExample(file));
}

export async function duplicateStoredPlan(id: string): Promise<void> {
  await saveNow();
  const record = await findPlan(id);
  const read = record && readPlanValue(record.plan);
  if (read?.ok) await addPlan({ ...read.plan, name: copyName(read.plan.name) });
}

/** Renames a plan in storage; the open one is renamed as an edit, so that it can be undone. */
export async function renameStoredPlan(id: string, name: string): Promise<void> {
  if (planStore.getState().planId === id) {
    editPlan((plan) => ({ ...plan, name }));
    return saveNow();
  }
  const record = await findPlan(id);
  if (record) await putPlan(id, { ...record.plan, name }, record.revision);
}

/** Deletes a plan; when it is the open one, the next newest opens. Returns it so that it can be put back. */
export async function deleteStoredPlan(id: string): Promise<StoredPlan | undefined> {
  const isOpen = planStore.getState().planId === id;
  if (isOpen) await saveNow();
  const record = await takePlan(id);
  autosave?.tellDeleted(id);
  if (isOpen) {
    const [next] = await listPlans();
    if (!next || (await openStoredPlan(next.id)).length > 0) openNewPlan(emptyPlan);
  }
  return record;
}

export async function restoreStoredPlan(record: StoredPlan): Promise<void> {
  await putBackPlan(record);
}

/** After another tab has overtaken this one: take what is in storage, and let go of what is here. */
export async function loadTheirs(): Promise<readonly Problem[]> {
  const { planId } = planStore.getState();
  const record = await findPlan(planId);
  const read = record && readPlanValue(record.plan);
  if (!record || !read) return [{ path: 'plan', message: 'is no longer in storage' }];
  if (!read.ok) return read.problems;
  openPlan(planId, read.plan);
  autosave?.setBase(planId, read.plan, record.revision);
  return [];
}

/** After storage was changed as a whole: shows what it holds of the open plan now or, if that is gone, the newest. */
export async function reopenFromStorage(): Promise<void> {
  const { planId } = planStore.getState();
  const known = await listPlans();
  for (const id of [planId, ...known.map((plan) => plan.id)]) {
    const record = await findPlan(id);
    const read = record && readPlanValue(record.plan);
    if (!record || !read?.ok) continue;
    openPlan(id, read.plan);
    resetView();
    autosave?.setBase(id, read.plan, record.revision);
    for (const plan of known) autosave?.tellChanged(plan.id, plan.revision);
    return rememberLastPlan(id);
  }
  openNewPlan(emptyPlan);
}

/** After another tab has overtaken this one: keep what is here as a plan of its own. */
export function keepMineAsCopy(): void {
  const { plan } = planStore.getState();
  openNewPlan({ ...plan, name: copyName(plan.name) });
}

/** 'Studio, copy'; cut so that a name stays within the schema's 120 characters. */
export function copyName(name: string): string {
  return `${name.slice(0, 112)}, copy`;
}
