import { expect, test } from 'vitest';
import { keepIdentity } from '../../src/workers/keep-identity';
import { samplePlan } from '../store/sample-plan';

test('a plan that says the same is the one before', () => {
  const plan = samplePlan();
  expect(keepIdentity(plan, structuredClone(plan))).toBe(plan);
});

test('parts and sheets that say the same are those before; what changed is new', () => {
  const plan = samplePlan();
  const copy = structuredClone(plan);
  const moved = {
    ...copy,
    parts: {
      ...copy.parts,
      fan: { ...copy.parts.fan!, placement: { at: [1, 2, 3] as [number, number, number] } },
    },
  };
  const kept = keepIdentity(plan, moved);
  expect(kept).toEqual(moved);
  expect(kept.parts.board).toBe(plan.parts.board);
  expect(kept.parts.fan).not.toBe(plan.parts.fan);
  expect(kept.parts.fan?.spec).toBe(plan.parts.fan?.spec);
});

test('a part that is gone stays gone, and one that is new is taken as it is', () => {
  const plan = samplePlan();
  const { fan, ...others } = structuredClone(plan).parts;
  const next = { ...plan, parts: { ...others, 'fan-2': fan! } };
  expect(Object.keys(keepIdentity(plan, next).parts)).toEqual(Object.keys(next.parts));
});
