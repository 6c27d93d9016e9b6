import { describe, expect, test } from 'vitest';
import type { Change } from '../../../geometry';
import { applyChange } from '../../../src/store/apply-change';
import { openPlan, planStore, undo } from '../../../src/store/plan-store';
import {
  alsoGone,
  gapWords,
  isWorthSaying,
  marginWords,
} from '../../../src/views/what-to-change/change-words';
import { samplePlan } from '../../store/sample-plan';

const change = (more: Partial<Change>): Change => ({
  id: 'adjust/fan',
  kind: 'adjust',
  part: 'fan',
  title: 'Raise the fan',
  size: 8,
  plan: samplePlan(),
  solves: true,
  before: -6,
  after: 1.5,
  effects: { fixed: [], caused: [], margins: [] },
  ...more,
});

describe('what a change does', () => {
  test('is said as the gap before and after', () => {
    expect(gapWords(change({}))).toBe('−6.0 → 1.5 mm');
    expect(gapWords(change({ after: undefined }))).toBe('was −6.0 mm');
    expect(gapWords(change({ before: undefined }))).toBeUndefined();
  });

  test('names margins that shrink to little, not those that grow or stay wide', () => {
    const margin = { id: 'm', title: 'Cooler to rear fan', before: 20, after: 5, wanted: 1 };
    expect(isWorthSaying(margin)).toBe(true);
    expect(isWorthSaying({ ...margin, before: 4 }), 'grows').toBe(false);
    expect(isWorthSaying({ ...margin, before: 80, after: 60 }), 'stays wide').toBe(false);
    expect(marginWords(margin)).toBe('Cooler to rear fan: 20.0 → 5.0 mm');
  });

  test('tells what else goes, without the finding asked about, notes only as a number', () => {
    const finding = (id: string, weight: 'fault' | 'note') => ({ id, weight, parts: ['fan'], sentence: id });
    const fixed = [
      finding('asked', 'fault'),
      finding('b', 'note'),
      finding('c', 'fault'),
      finding('d', 'note'),
    ];
    expect(alsoGone(fixed, 'asked')).toEqual({ told: [finding('c', 'fault')], more: 2 });
    expect(alsoGone([finding('tight/gap', 'fault')], 'gap')).toEqual({ told: [], more: 0 });
  });
});

describe('applying a way out', () => {
  test('is one step, keeps what did not change, and one undo takes it back', () => {
    openPlan('one', samplePlan());
    const { plan } = planStore.getState();
    const { fan: _, ...others } = structuredClone(plan).parts;
    expect(applyChange(plan, change({ plan: { ...structuredClone(plan), parts: others } }))).toBe(true);
    const after = planStore.getState().plan;
    expect(after.parts.fan).toBeUndefined();
    expect(after.parts.board).toBe(plan.parts.board);
    undo();
    expect(planStore.getState().plan).toBe(plan);
  });

  test('is refused once the plan has gone on', () => {
    openPlan('one', samplePlan());
    const { plan } = planStore.getState();
    openPlan('one', { ...plan, name: 'Renamed' });
    expect(applyChange(plan, change({}))).toBe(false);
    expect(planStore.getState().plan.name).toBe('Renamed');
  });
});
