import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, test } from 'vitest';
import { closePlanDatabase, whyNotSaved } from '../../src/store/plan-database';
import {
  addPlan,
  findPlan,
  lastPlanId,
  listPlans,
  putBackPlan,
  putPlan,
  rememberLastPlan,
  takePlan,
} from '../../src/store/plan-library';
import { samplePlan } from './sample-plan';

beforeEach(async () => {
  await closePlanDatabase();
  globalThis.indexedDB = new IDBFactory();
});

describe('storage', () => {
  test('gives back what was put in, with a revision that rises', async () => {
    expect(await putPlan('one', samplePlan(), undefined)).toEqual({ saved: true, revision: 1 });
    expect(await putPlan('one', { ...samplePlan(), name: 'Two' }, 1)).toEqual({ saved: true, revision: 2 });
    expect(await findPlan('one')).toMatchObject({ id: 'one', revision: 2, plan: { name: 'Two' } });
  });

  test('refuses a save that starts from an older revision, and leaves what is there', async () => {
    await putPlan('one', samplePlan(), undefined);
    await putPlan('one', { ...samplePlan(), name: 'Theirs' }, 1);
    expect(await putPlan('one', { ...samplePlan(), name: 'Mine' }, 1)).toEqual({ saved: false, found: 2 });
    expect((await findPlan('one'))?.plan.name).toBe('Theirs');
  });

  test('of two saves from the same revision at once exactly one wins', async () => {
    await putPlan('one', samplePlan(), undefined);
    const results = await Promise.all(
      ['A', 'B', 'C'].map((name) => putPlan('one', { ...samplePlan(), name }, 1)),
    );
    expect(results.filter((result) => result.saved)).toHaveLength(1);
    expect((await findPlan('one'))?.revision).toBe(2);
  });

  test('a tab killed in the middle of a save leaves the plan before it whole', async () => {
    await putPlan('one', samplePlan(), undefined);
    const put = IDBObjectStore.prototype.put;
    // A killed tab aborts what is open: the record was put, the transaction was not committed.
    IDBObjectStore.prototype.put = function (...given) {
      const request = put.apply(this, given);
      request.onsuccess = () => this.transaction.abort();
      return request;
    };
    await expect(putPlan('one', { ...samplePlan(), name: 'Half' }, 1)).rejects.toThrow();
    IDBObjectStore.prototype.put = put;
    await closePlanDatabase();
    expect(await findPlan('one')).toMatchObject({ revision: 1, plan: samplePlan() });
    expect(await putPlan('one', { ...samplePlan(), name: 'Whole' }, 1)).toEqual({ saved: true, revision: 2 });
  });

  test('does not bring a deleted plan back by saving', async () => {
    await putPlan('one', samplePlan(), undefined);
    const record = await takePlan('one');
    expect(await putPlan('one', samplePlan(), 1)).toEqual({ saved: false, found: undefined });
    await putBackPlan(record!);
    expect(await findPlan('one')).toEqual(record);
  });

  test('lists plans newest first, also one whose content it cannot read', async () => {
    const key = await addPlan(samplePlan());
    await putBackPlan({ id: 'odd', revision: 1, savedAt: Date.now() + 1000, plan: {} as never });
    expect(await listPlans()).toMatchObject([
      { id: 'odd', name: 'Unreadable plan', parts: 0 },
      { id: key, name: 'Harbour office', parts: 4 },
    ]);
  });

  test('remembers which plan was open last', async () => {
    expect(await lastPlanId()).toBeUndefined();
    await rememberLastPlan('one');
    expect(await lastPlanId()).toBe('one');
  });

  test('says in words why it cannot keep anything', () => {
    expect(whyNotSaved(new DOMException('', 'QuotaExceededError'))).toMatch(/full/);
    expect(whyNotSaved(new DOMException('', 'InvalidStateError'))).toMatch(/keeps no data/);
    expect(whyNotSaved(new DOMException('', 'VersionError'))).toMatch(/newer version/);
  });
});
