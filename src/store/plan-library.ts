/** The person's own plans in storage. */
import type { Plan } from '../../geometry';
import { newKey, planDatabase, type StoredPlan } from './plan-database';

export interface PlanListing {
  readonly id: string;
  readonly name: string;
  readonly savedAt: number;
  readonly revision: number;
  readonly parts: number;
}

/** Newest first. Says only what can be said without trusting the content. */
export async function listPlans(): Promise<readonly PlanListing[]> {
  const records = await (await planDatabase()).getAll('plans');
  return records
    .map((record) => ({
      id: record.id,
      name: typeof record.plan?.name === 'string' ? record.plan.name : 'Unreadable plan',
      savedAt: record.savedAt,
      revision: record.revision,
      parts: Object.keys(record.plan?.parts ?? {}).length,
    }))
    .sort((a, b) => b.savedAt - a.savedAt);
}

export async function findPlan(id: string): Promise<StoredPlan | undefined> {
  return (await planDatabase()).get('plans', id);
}

export type PutResult =
  | { readonly saved: true; readonly revision: number }
  /** What stands in storage instead; no revision when the plan is gone. */
  | { readonly saved: false; readonly found: number | undefined };

/**
 * Writes a plan over the revision it was read at, or anew when `base` is undefined. Looks and writes in one
 * transaction, so that of two tabs only one can win.
 */
export async function putPlan(id: string, plan: Plan, base: number | undefined): Promise<PutResult> {
  const transaction = (await planDatabase()).transaction('plans', 'readwrite');
  const found = (await transaction.store.get(id))?.revision;
  if (found !== base) {
    await transaction.done;
    return { saved: false, found };
  }
  const revision = (base ?? 0) + 1;
  await Promise.all([transaction.store.put({ id, revision, savedAt: Date.now(), plan }), transaction.done]);
  return { saved: true, revision };
}

/** Stores a plan under a key of its own and returns that key. */
export async function addPlan(plan: Plan): Promise<string> {
  const id = newKey();
  await putPlan(id, plan, undefined);
  return id;
}

/** Takes a plan out of storage and returns what was there, so that it can be put back. */
export async function takePlan(id: string): Promise<StoredPlan | undefined> {
  const transaction = (await planDatabase()).transaction('plans', 'readwrite');
  const record = await transaction.store.get(id);
  await Promise.all([transaction.store.delete(id), transaction.done]);
  return record;
}

export async function putBackPlan(record: StoredPlan): Promise<void> {
  await (await planDatabase()).put('plans', record);
}

const LAST_PLAN = 'last plan';

export async function lastPlanId(): Promise<string | undefined> {
  return (await planDatabase()).get('settings', LAST_PLAN);
}

export async function rememberLastPlan(id: string): Promise<void> {
  await (await planDatabase()).put('settings', id, LAST_PLAN);
}
