import { describe, expect, it } from 'vitest';
import { placePlan } from '../../../geometry/plan/place-plan';
import type { Plan } from '../../../geometry/plan/plan-schema';
import type { Finding, Solution } from '../../../geometry/solver/finding';
import { type Limit, limitOf } from '../../../geometry/solver/limits/limit';
import { limitsOf } from '../../../geometry/solver/limits/limits-of-plan';
import { planAtValue } from '../../../geometry/solver/limits/varied-scene';
import { solve } from '../../../geometry/solver/solve';
import { stackUpsOf } from '../../../geometry/solver/stack-up/stack-ups';
import { faceCentre, faceNormal } from '../../../geometry/space/oriented-box';
import { dot, subtract } from '../../../geometry/space/vector';
import { smallBuild } from '../../plan/small-build';
import { type ExamplePlan, examplePlan } from '../stack-up/example-plans';

const HAIR_MM = 0.01;

function solvedAt(plan: Plan, { part, path }: Limit, value: number): Solution {
  return solve(placePlan(planAtValue(plan, part, path, value)));
}

/** Overlaps and needed plugs in the way: what no build can have. */
function overlaps({ findings }: Solution): readonly Finding[] {
  return findings.filter(({ kind }) => kind === 'interference' || kind === 'intrusion');
}

/** Distance of the two faces that a limit names, measured on the bodies placed at a value, mm. */
function gapAt(plan: Plan, { part, path, steps }: Limit, value: number): number {
  const [step] = steps;
  if (!step) throw new RangeError('no step');
  const scene = placePlan(planAtValue(plan, part, path, value));
  const [own, binding] = step.faces.map(({ part: id, box: name, face }) => {
    const owner = scene.parts[scene.indexById.get(id) ?? -1];
    const index = owner?.model.boxes.findIndex((body) => body.name === name) ?? -1;
    const placed = owner && scene.boxes[owner.firstBox + index];
    if (!placed || !face) throw new RangeError(`${id} has no ${name}`);
    return { centre: faceCentre(placed.box, face), normal: faceNormal(placed.box, face) };
  });
  if (!own || !binding) throw new RangeError('two faces make a gap');
  return dot(own.normal, subtract(binding.centre, own.centre));
}

const names: readonly ExamplePlan[] = ['demo', 'faults', 'small'];

describe.each(names)('limits of all parts of the plan %s', (name) => {
  const plan = examplePlan(name);
  const limits = limitsOf(plan).filter(({ ownSheet, steps }) => steps.length > 0 && ownSheet === undefined);
  const standing = new Set(overlaps(solve(placePlan(plan))).map(({ id }) => id));

  it('finds some of each kind', () => {
    expect(limits.filter(({ steps }) => steps[0]?.rule !== undefined).length).toBeGreaterThan(5);
    expect(limits.filter(({ steps }) => steps[0]?.rule === undefined).length).toBeGreaterThan(2);
    expect(limits.filter(({ sense }) => sense === 'smallest').length).toBeGreaterThan(1);
  });

  it.each(limits.map((limit) => [`${limit.part} ${limit.path}`, limit] as const))(
    '%s: kept a hair before the limit, broken a hair beyond it',
    (_, limit) => {
      const [step] = limit.steps;
      if (!step) throw new RangeError('no step');
      const hair = limit.sense === 'largest' ? HAIR_MM : -HAIR_MM;
      const before = solvedAt(plan, limit, step.value - hair);
      const beyond = solvedAt(plan, limit, step.value + hair);
      const added = (solution: Solution) => overlaps(solution).filter(({ id }) => !standing.has(id));
      expect(added(before).filter(({ kind }) => kind === 'interference')).toEqual([]);
      if (step.rule === undefined) {
        expect(added(beyond).some(({ parts }) => parts.includes(step.bindingPart))).toBe(true);
        return;
      }
      // The gap at the limit is the wanted one, a hundredth more before it and a hundredth less beyond; centred parts
      // grow to both sides by half.
      const [less, just, more] = [-hair, 0, hair].map((by) => gapAt(plan, limit, step.value + by));
      expect(just).toBeCloseTo(step.wanted, 6);
      expect([HAIR_MM, HAIR_MM / 2].some((by) => Math.abs((less ?? 0) - step.wanted - by) < 1e-6)).toBe(true);
      expect([HAIR_MM, HAIR_MM / 2].some((by) => Math.abs((more ?? 0) - step.wanted + by) < 1e-6)).toBe(true);
    },
  );
});

describe('a limit', () => {
  it('names what binds and what lies behind it', () => {
    const limit = limitOf(examplePlan('faults'), 'card', 'length');
    expect(limit.steps.map(({ binds }) => binds)[0]).toBe('the front lower fan');
    expect(limit.steps.map(({ value }) => value)).toEqual(
      [...limit.steps.map(({ value }) => value)].sort((a, b) => a - b),
    );
    expect(limit.sentence).toMatch(
      /^Length at most [\d.]+ mm keeps the 3\.0 mm wanted; the front lower fan binds; without that/,
    );
  });

  it('with tolerance leaves a worst case of just the wanted gap', () => {
    const plan = examplePlan('demo');
    for (const [part, path, rule] of [
      ['cooler', 'height', 'cooler to side panel'],
      ['card', 'thickness', 'card to what lies below'],
      ['card', 'length', 'card tip'],
    ] as const) {
      const { withTolerance = Number.NaN } = limitOf(plan, part, path);
      const stack = stackUpsOf(planAtValue(plan, part, path, withTolerance)).find(({ clearance }) =>
        clearance.startsWith(`${rule}/${part}/`),
      );
      expect(stack && stack.worstCase[0] - stack.wanted).toBeCloseTo(0, 6);
    }
  });

  it('lies below where things stand when they are too tight already', () => {
    const plan = examplePlan('faults');
    const limit = limitOf(plan, 'cooler', 'height');
    expect(limit.steps[0]?.value).toBeLessThan(limit.standing);
    expect(limit.steps[0]?.binds).toBe('the side panel');
  });

  it('says what stays too near all the same', () => {
    // The middle fan of this cooler stands 0.075 mm too near the panel, however low its fins.
    const limit = limitOf(examplePlan('faults'), 'cooler', 'height');
    expect(limit.sentence).toMatch(/the cooler’s middle fan stays too near/);
    expect(limitOf(examplePlan('demo'), 'cooler', 'height').sentence).not.toMatch(/stays too near/);
  });

  it('says so when nothing binds', () => {
    const plan = smallBuild();
    const { cooler, ...others } = plan.parts;
    const alone: Plan = {
      ...plan,
      parts: { cooler: { ...(cooler ?? others.enclosure), placement: { at: [0, 0, 0] } } } as Plan['parts'],
    };
    const limit = limitOf(alone, 'cooler', 'height');
    expect(limit.steps).toEqual([]);
    expect(limit.withTolerance).toBeUndefined();
    expect(limit.sentence).toBe('Height: nothing binds within 1 m.');
  });

  it('stops where the sheet contradicts itself', () => {
    const limit = limitOf(smallBuild(), 'cooler', 'finBottom');
    expect(limit.ownSheet?.value).toBeCloseTo(150, 1);
    expect(limit.ownSheet?.reason).toContain('"Height" (150 mm)');
  });

  it('is found for parts that stand askew', () => {
    const plan = smallBuild();
    const { card } = plan.parts;
    if (!card) throw new RangeError('no card');
    const askew: Plan = {
      ...plan,
      parts: { ...plan.parts, card: { ...card, placement: { at: [20, 60, 60], rotate: [0, 12, 0] } } },
    };
    const limit = limitOf(askew, 'card', 'length');
    const value = limit.steps[0]?.value ?? Number.NaN;
    const before = solvedAt(askew, limit, value - HAIR_MM);
    const beyond = solvedAt(askew, limit, value + HAIR_MM);
    const worse = (solution: Solution) =>
      solution.findings.filter(
        ({ kind, parts }) => (kind === 'interference' || kind === 'tight') && parts.includes('card'),
      );
    expect(worse(beyond).length).toBeGreaterThan(worse(before).length);
  });

  it('refuses parts and dimensions that are not there', () => {
    expect(() => limitOf(smallBuild(), 'nothing', 'length')).toThrow(RangeError);
    expect(() => limitOf(smallBuild(), 'card', 'nothing')).toThrow(RangeError);
  });
});
