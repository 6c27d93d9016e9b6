import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { migrate } from '../../geometry/plan/migrations';
import { LARGEST_PLAN_TEXT, readPlan, readPlanValue, writePlan } from '../../geometry/plan/read-plan';

const fan = { kind: 'fan', maker: 'Generic', model: '120 x 25', size: 120 };
const plan = (spec: object, extra: object = {}) => ({
  format: 1,
  name: 'Bench',
  parts: { fan: { spec, placement: { at: [0, 0, 0] } } },
  ...extra,
});

function problemsOf(value: unknown): string[] {
  const result = readPlanValue(value);
  return result.ok ? [] : result.problems.map((problem) => `${problem.path} ${problem.message}`);
}

describe('reading a plan', () => {
  it('reads back exactly what was written', () => {
    const read = readPlanValue(plan(fan));
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(readPlan(writePlan(read.plan))).toEqual(read);
  });

  it.each([
    ['negative', -1, 'must be at least 0.01, met -1'],
    ['absurd', 90_000, 'must be at most 2000, met 90000'],
    ['text', '25 mm', "must be a number, met '25 mm'"],
    ['not a number', Number.NaN, 'met NaN'],
    ['infinite', Number.POSITIVE_INFINITY, 'met Infinity'],
  ])('refuses a dimension that is %s and names its field', (_, thickness, message) => {
    const problems = problemsOf(plan({ ...fan, thickness }));
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain('parts.fan.spec.thickness');
    expect(problems[0]).toContain(message);
  });

  it('names the field inside the long form of a dimension', () => {
    const problems = problemsOf(plan({ ...fan, thickness: { value: 25, plusMinus: -3 } }));
    expect(problems[0]).toContain('parts.fan.spec.thickness.plusMinus must be at least 0');
  });

  it('names what is missing and what is unknown', () => {
    const { size: _, ...sizeless } = fan;
    expect(problemsOf(plan(sizeless))[0]).toContain('parts.fan.spec.size');
    expect(problemsOf(plan({ ...fan, colour: 'red' }))[0]).toContain("unknown field 'colour'");
  });

  it.each([
    ['text that is no JSON', '{"format":1,', 'plan is not JSON, or was cut off'],
    ['a list', '[]', 'plan is not a plan object'],
    ['another program’s file', '{"version":"2.0","nodes":[]}', 'format is not the number of a plan format'],
    ['a newer plan', '{"format":99}', 'format is 99, made by a newer version; this version reads up to 1'],
    ['an oversized text', ' '.repeat(LARGEST_PLAN_TEXT + 1), 'characters long'],
    ['deep nesting', '['.repeat(200_000), 'plan is not JSON'],
  ])('refuses %s', (_, text, message) => {
    const result = readPlan(text);
    expect(result.ok).toBe(false);
    if (!result.ok) expect(`${result.problems[0]?.path} ${result.problems[0]?.message}`).toContain(message);
  });

  it('keeps a prototype key from reaching any object', () => {
    const result = readPlan('{"format":1,"name":"x","parts":{},"__proto__":{"polluted":true}}');
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    if (result.ok) expect((result.plan as Record<string, unknown>).polluted).toBeUndefined();
  });

  it('never throws, whatever JSON it meets', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        readPlan(JSON.stringify(value));
        readPlanValue({ format: 1, name: 'x', parts: value });
      }),
      { seed: 7, numRuns: 500 },
    );
  });
});

describe('migrating', () => {
  const steps = {
    1: (old: Readonly<Record<string, unknown>>) => ({ ...old, title: old.name }),
    2: (old: Readonly<Record<string, unknown>>) => ({ ...old, done: true }),
  };

  it('walks every step in order and stamps the number', () => {
    const result = migrate({ format: 1, name: 'x' }, steps, 3);
    expect(result).toEqual({ ok: true, plan: { format: 3, name: 'x', title: 'x', done: true } });
  });

  it('refuses a gap in the steps', () => {
    expect(migrate({ format: 1 }, {}, 2)).toMatchObject({ ok: false });
  });
});
