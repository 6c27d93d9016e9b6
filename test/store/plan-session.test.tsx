import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { writePlan } from '../../geometry';
import { closePlanDatabase } from '../../src/store/plan-database';
import { addPlan, findPlan, listPlans, putPlan, rememberLastPlan } from '../../src/store/plan-library';
import {
  adoptPlan,
  deleteStoredPlan,
  duplicateStoredPlan,
  endSession,
  keepMineAsCopy,
  loadTheirs,
  openStoredPlan,
  renameStoredPlan,
  restoreStoredPlan,
  saveNow,
  startSession,
} from '../../src/store/plan-session';
import { editPlan, planStore, showPlan, undo } from '../../src/store/plan-store';
import { readRescues, writeRescue } from '../../src/store/rescue';
import { savingStore } from '../../src/store/saving-store';
import { clearStatus, statusStore } from '../../src/store/status-store';
import { samplePlan } from './sample-plan';

const openName = () => planStore.getState().plan.name;
const openId = () => planStore.getState().planId;
const rename = (name: string) => editPlan((plan) => ({ ...plan, name }));

beforeEach(async () => {
  await closePlanDatabase();
  globalThis.indexedDB = new IDBFactory();
  localStorage.clear();
  clearStatus();
  vi.stubGlobal('fetch', async () => new Response(writePlan({ ...samplePlan(), name: 'Demo' })));
});

afterEach(() => {
  endSession();
  vi.unstubAllGlobals();
});

describe('at the start', () => {
  test('a first visit opens the demo plan and keeps it', async () => {
    await startSession();
    expect(openName()).toBe('Demo');
    await saveNow();
    expect(await listPlans()).toMatchObject([{ id: openId(), name: 'Demo' }]);
  });

  test('a later visit opens the plan that was open last', async () => {
    const first = await addPlan({ ...samplePlan(), name: 'First' });
    await addPlan({ ...samplePlan(), name: 'Second' });
    await rememberLastPlan(first);
    await startSession();
    expect(openName()).toBe('First');
  });

  test('a last plan that cannot be read is left as it is, and the next one opens', async () => {
    const good = await addPlan(samplePlan());
    await putPlan('newer', { ...samplePlan(), format: 99 as 1 }, undefined);
    await rememberLastPlan('newer');
    await startSession();
    expect(openId()).toBe(good);
    expect((await findPlan('newer'))?.plan.format).toBe(99);
  });

  test('without storage the demo plan opens and saving is off', async () => {
    vi.stubGlobal('indexedDB', undefined);
    await startSession();
    await saveNow();
    expect(openName()).toBe('Demo');
    expect(savingStore.getState().kind).toBe('off');
  });

  test('without storage and without the demo plan there is an empty one', async () => {
    vi.stubGlobal('indexedDB', undefined);
    vi.stubGlobal('fetch', async () => new Response('', { status: 404 }));
    await startSession();
    expect(Object.keys(planStore.getState().plan.parts)).toEqual([]);
  });
});

describe('an edit rescued when the page was left', () => {
  const rescued = { ...samplePlan(), name: 'Rescued' };

  test('is taken over when storage holds what it was made from', async () => {
    const id = await addPlan(samplePlan());
    writeRescue({ planId: id, base: 1, plan: rescued });
    await startSession();
    expect(openName()).toBe('Rescued');
    expect((await findPlan(id))?.revision).toBe(2);
    expect(readRescues()).toEqual([]);
  });

  test('of a plan never saved before is saved', async () => {
    writeRescue({ planId: 'new', base: undefined, plan: rescued });
    await startSession();
    expect(openId()).toBe('new');
    expect((await findPlan('new'))?.plan.name).toBe('Rescued');
  });

  test('is no news when its save was finished after all', async () => {
    const id = await addPlan(samplePlan());
    await putPlan(id, rescued, 1);
    writeRescue({ planId: id, base: 1, plan: rescued });
    await startSession();
    expect((await findPlan(id))?.revision).toBe(2);
    expect(statusStore.getState().message).toBe('');
    expect(readRescues()).toEqual([]);
  });

  test('overtaken by another tab is offered as a copy until it is taken, and overwrites nothing', async () => {
    const id = await addPlan(samplePlan());
    await putPlan(id, { ...samplePlan(), name: 'Theirs' }, 1);
    writeRescue({ planId: id, base: 1, plan: rescued });
    await startSession();
    expect(openName()).toBe('Theirs');
    expect(readRescues()).toHaveLength(1);
    statusStore.getState().action?.run();
    await saveNow();
    expect(openName()).toBe('Rescued, copy');
    expect(readRescues()).toEqual([]);
    expect((await findPlan(id))?.plan.name).toBe('Theirs');
  });
});

describe('the library', () => {
  test('an edit made just before another plan opens is not lost', async () => {
    await startSession();
    const first = openId();
    rename('edited');
    const second = await addPlan({ ...samplePlan(), name: 'Second' });
    await openStoredPlan(second);
    expect((await findPlan(first))?.plan.name).toBe('edited');
  });

  test('a plan that cannot be read is refused by field, the open one stays', async () => {
    await startSession();
    await putPlan('bad', { ...samplePlan(), parts: { fan: { spec: { kind: 'fan' } } } } as never, undefined);
    const problems = await openStoredPlan('bad');
    expect(problems.map((problem) => problem.path)).toContain('parts.fan.spec.maker');
    expect(openName()).toBe('Demo');
  });

  test('a deleted plan can be put back, also the open one', async () => {
    await startSession();
    await saveNow();
    const id = openId();
    const record = await deleteStoredPlan(id);
    expect(openId()).not.toBe(id);
    expect(await findPlan(id)).toBeUndefined();
    await restoreStoredPlan(record!);
    expect(await openStoredPlan(id)).toEqual([]);
    expect(openName()).toBe('Demo');
  });

  test('a copy has a name of its own', async () => {
    await startSession();
    await saveNow();
    await duplicateStoredPlan(openId());
    expect((await listPlans()).map((plan) => plan.name).sort()).toEqual(['Demo', 'Demo, copy']);
  });

  test('renaming the open plan is an edit, renaming another one goes to storage', async () => {
    await startSession();
    await renameStoredPlan(openId(), 'Renamed');
    expect((await findPlan(openId()))?.plan.name).toBe('Renamed');
    undo();
    expect(openName()).toBe('Demo');
    const other = await addPlan(samplePlan());
    await renameStoredPlan(other, 'Other name');
    expect((await findPlan(other))?.plan.name).toBe('Other name');
  });
});

describe('overtaken by another tab', () => {
  beforeEach(async () => {
    await startSession();
    await saveNow();
    await putPlan(openId(), { ...samplePlan(), name: 'Theirs' }, 1);
    rename('Mine');
    await saveNow();
    expect(savingStore.getState()).toEqual({ kind: 'overtaken', by: 'newer revision' });
  });

  test('theirs can be loaded, and saving goes on from there', async () => {
    expect(await loadTheirs()).toEqual([]);
    expect(openName()).toBe('Theirs');
    rename('Theirs and mine');
    await saveNow();
    expect((await findPlan(openId()))?.plan.name).toBe('Theirs and mine');
  });

  test('mine can be kept as a copy, and theirs stays', async () => {
    const theirs = openId();
    keepMineAsCopy();
    await saveNow();
    expect(openId()).not.toBe(theirs);
    expect((await findPlan(openId()))?.plan.name).toBe('Mine, copy');
    expect((await findPlan(theirs))?.plan.name).toBe('Theirs');
  });
});

describe('a snapshot', () => {
  test('leaves storage alone until a copy is taken', async () => {
    const own = await addPlan({ ...samplePlan(), name: 'Own' });
    showPlan({ ...samplePlan(), name: 'Sent' });
    await saveNow();
    expect(await listPlans()).toHaveLength(1);
    adoptPlan(planStore.getState().plan);
    await saveNow();
    expect((await listPlans()).map((plan) => plan.name).sort()).toEqual(['Own', 'Sent']);
    expect((await findPlan(own))?.plan.name).toBe('Own');
    expect(planStore.getState().readOnly).toBe(false);
  });
});
