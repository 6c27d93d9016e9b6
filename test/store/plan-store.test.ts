import { beforeEach, describe, expect, test } from 'vitest';
import {
  commitPreview,
  continueStep,
  editPlan,
  openPlan,
  planStore,
  previewPlan,
  redo,
  showPlan,
  undo,
} from '../../src/store/plan-store';
import { samplePlan } from './sample-plan';

const rename = (name: string) => editPlan((plan) => ({ ...plan, name }));
const nameNow = () => planStore.getState().plan.name;
const steps = () => planStore.temporal.getState().pastStates.length;

beforeEach(() => openPlan('one', samplePlan()));

describe('undo', () => {
  test('takes edits back one by one and forth again', () => {
    rename('first');
    rename('second');
    undo();
    expect(nameNow()).toBe('first');
    undo();
    expect(nameNow()).toBe('Harbour office');
    redo();
    redo();
    expect(nameNow()).toBe('second');
  });

  test('a new edit forgets what could have been redone', () => {
    rename('first');
    undo();
    rename('other');
    redo();
    expect(nameNow()).toBe('other');
  });

  test('an edit that changes nothing is no step', () => {
    editPlan((plan) => plan);
    expect(steps()).toBe(0);
  });

  test('a drag is one step, however often it was previewed', () => {
    for (const name of ['a', 'b', 'c']) previewPlan({ ...planStore.getState().plan, name });
    commitPreview();
    expect([nameNow(), steps()]).toEqual(['c', 1]);
    undo();
    expect(nameNow()).toBe('Harbour office');
  });

  test('a continued step is taken back with the one it goes on from', () => {
    rename('first');
    continueStep((plan) => ({ ...plan, name: 'first and more' }));
    expect([nameNow(), steps()]).toEqual(['first and more', 1]);
    undo();
    expect(nameNow()).toBe('Harbour office');
    redo();
    expect(nameNow()).toBe('first and more');
  });

  test('opening another plan forgets the steps of the one before', () => {
    rename('first');
    openPlan('two', samplePlan());
    undo();
    expect(planStore.getState()).toMatchObject({ planId: 'two', plan: { name: 'Harbour office' } });
  });
});

describe("someone else's plan", () => {
  test('cannot be edited or previewed, and is none of the stored ones', () => {
    const plan = samplePlan();
    showPlan(plan);
    rename('mine now');
    previewPlan({ ...plan, name: 'preview' });
    continueStep((before) => ({ ...before, name: 'further' }));
    expect(planStore.getState()).toMatchObject({ planId: '', plan, preview: undefined });
  });
});
