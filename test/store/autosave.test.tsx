import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { type Autosave, startAutosave } from '../../src/store/autosave';
import { closePlanDatabase } from '../../src/store/plan-database';
import { findPlan, putPlan } from '../../src/store/plan-library';
import { editPlan, openPlan, planStore, showPlan } from '../../src/store/plan-store';
import { readRescues } from '../../src/store/rescue';
import { savingStore } from '../../src/store/saving-store';
import { samplePlan } from './sample-plan';

let autosave: Autosave;
const rename = (name: string) => editPlan((plan) => ({ ...plan, name }));
const storedName = async () => (await findPlan('one'))?.plan.name;
const saving = () => savingStore.getState();

beforeEach(async () => {
  await closePlanDatabase();
  globalThis.indexedDB = new IDBFactory();
  autosave = startAutosave();
  const plan = samplePlan();
  await putPlan('one', plan, undefined);
  openPlan('one', plan);
  autosave.setBase('one', plan, 1);
});

afterEach(() => autosave.stop());

describe('autosave', () => {
  test('writes a little after the last edit, once', async () => {
    rename('first');
    rename('second');
    expect(saving().kind).toBe('saving');
    expect(await storedName()).toBe('Harbour office');
    await vi.waitFor(async () => expect(await storedName()).toBe('second'), { timeout: 3000 });
    expect((await findPlan('one'))?.revision).toBe(2);
    expect(saving().kind).toBe('saved');
  });

  test('writes at once when the page is left', async () => {
    rename('leaving');
    window.dispatchEvent(new Event('pagehide'));
    await vi.waitFor(async () => expect(await storedName()).toBe('leaving'), { timeout: 300, interval: 5 });
  });

  test('an edit during a save is saved after it', async () => {
    rename('first');
    const first = autosave.flush();
    // One turn of the microtask queue: the save has taken its plan and is on its way.
    await Promise.resolve();
    rename('second');
    await first;
    expect(await storedName()).toBe('first');
    await autosave.flush();
    expect(await storedName()).toBe('second');
    expect((await findPlan('one'))?.revision).toBe(3);
  });

  test('a preview is never written', async () => {
    planStore.setState({ preview: { ...samplePlan(), name: 'preview' } });
    await autosave.flush();
    expect((await findPlan('one'))?.revision).toBe(1);
  });

  test("someone else's plan is never written", async () => {
    showPlan({ ...samplePlan(), name: 'theirs' });
    await autosave.flush();
    expect(await storedName()).toBe('Harbour office');
  });
});

describe('an edit just before the page is left', () => {
  beforeEach(() => localStorage.clear());

  test('is rescued at once, before storage has had its turn, and let go once it is saved', async () => {
    rename('leaving');
    window.dispatchEvent(new Event('pagehide'));
    expect(readRescues()).toMatchObject([{ planId: 'one', base: 1, plan: { name: 'leaving' } }]);
    await vi.waitFor(() => expect(readRescues()).toEqual([]));
    expect(await storedName()).toBe('leaving');
  });

  test('stays rescued when the save is refused', async () => {
    await putPlan('one', { ...samplePlan(), name: 'theirs' }, 1);
    rename('mine');
    window.dispatchEvent(new Event('pagehide'));
    await vi.waitFor(() => expect(saving().kind).toBe('overtaken'));
    expect(readRescues()).toMatchObject([{ base: 1, plan: { name: 'mine' } }]);
  });

  test('leaves nothing behind when there was no edit', () => {
    window.dispatchEvent(new Event('pagehide'));
    expect(readRescues()).toEqual([]);
  });

  test.each([
    ['text', 'nonsense'],
    ['another shape', '{"planId":"one"}'],
    [
      'a plan that is none',
      JSON.stringify({ planId: 'one', base: 1, rescuedAt: Date.now(), plan: { format: 1 } }),
    ],
    ['another key', JSON.stringify({ planId: 'two', base: 1, rescuedAt: Date.now(), plan: samplePlan() })],
    ['an edit of long ago', JSON.stringify({ planId: 'one', base: 1, rescuedAt: 0, plan: samplePlan() })],
  ])('%s in its place is thrown away', (_, text) => {
    localStorage.setItem('elbowroom rescue one', text);
    localStorage.setItem('another page', 'stays');
    expect(readRescues()).toEqual([]);
    expect(localStorage.getItem('elbowroom rescue one')).toBeNull();
    expect(localStorage.getItem('another page')).toBe('stays');
  });

  test('without room for it nothing happens', () => {
    const full = vi.spyOn(Storage.prototype, 'setItem').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    rename('leaving');
    expect(() => window.dispatchEvent(new Event('pagehide'))).not.toThrow();
    full.mockRestore();
  });
});

describe('another tab', () => {
  test('that saved first is not overwritten, and nothing more is saved here', async () => {
    await putPlan('one', { ...samplePlan(), name: 'theirs' }, 1);
    rename('mine');
    await autosave.flush();
    expect(saving()).toEqual({ kind: 'overtaken', by: 'newer revision' });
    rename('mine again');
    await autosave.flush();
    expect(await storedName()).toBe('theirs');
    expect(planStore.getState().plan.name).toBe('mine again');
  });

  test('that tells of its save is heard before anything is edited here', async () => {
    const theirs = startAutosave();
    const channel = new BroadcastChannel('elbowroom plans');
    channel.postMessage({ planId: 'one', revision: 2 });
    await vi.waitFor(() => expect(saving()).toEqual({ kind: 'overtaken', by: 'newer revision' }));
    channel.close();
    theirs.stop();
  });

  test('that deleted the plan is named', async () => {
    const channel = new BroadcastChannel('elbowroom plans');
    channel.postMessage({ planId: 'one', revision: undefined });
    await vi.waitFor(() => expect(saving()).toEqual({ kind: 'overtaken', by: 'deletion' }));
    channel.close();
  });

  test('that works on another plan does not matter', async () => {
    const channel = new BroadcastChannel('elbowroom plans');
    channel.postMessage({ planId: 'two', revision: 9 });
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(saving().kind).toBe('saved');
    channel.close();
  });
});

describe('storage that fails', () => {
  test('is said, the plan stays, and a later save that works says so', async () => {
    await closePlanDatabase();
    const works = globalThis.indexedDB;
    globalThis.indexedDB = {
      open: () => {
        throw new DOMException('no', 'QuotaExceededError');
      },
    } as unknown as IDBFactory;
    rename('kept in the tab');
    await autosave.flush();
    expect(saving()).toEqual({ kind: 'off', why: 'the browser’s storage is full' });
    expect(planStore.getState().plan.name).toBe('kept in the tab');
    globalThis.indexedDB = works;
    rename('kept in the tab, still');
    await autosave.flush();
    expect(saving().kind).toBe('saved');
    expect(await storedName()).toBe('kept in the tab, still');
  });
});
