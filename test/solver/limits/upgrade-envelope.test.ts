import { describe, expect, it } from 'vitest';
import { addPart } from '../../../geometry/plan/edit-plan';
import { placePlan } from '../../../geometry/plan/place-plan';
import type { Plan } from '../../../geometry/plan/plan-schema';
import { limitOf } from '../../../geometry/solver/limits/limit';
import { trialPart } from '../../../geometry/solver/limits/trial-parts';
import { type MountEnvelope, upgradeEnvelope } from '../../../geometry/solver/limits/upgrade-envelope';
import { planAtValue } from '../../../geometry/solver/limits/varied-scene';
import { solve } from '../../../geometry/solver/solve';
import { examplePlan } from '../stack-up/example-plans';

const plan = examplePlan('demo');
const envelope = upgradeEnvelope(plan);
const mountOf = (on: string, mount: string): MountEnvelope | undefined =>
  envelope.find((row) => row.on === on && row.mount === mount);

function trialOn({ on, mount }: MountEnvelope): { plan: Plan; id: string } {
  const scene = placePlan(plan);
  const offered = scene.parts[scene.indexById.get(on) ?? -1]?.model.mounts.find(({ id }) => id === mount);
  const spec = offered && trialPart(offered);
  if (!spec) throw new RangeError(mount);
  return addPart(plan, spec, { on, mount });
}

const overlapping = (tried: Plan, id: string): boolean =>
  solve(placePlan(tried)).findings.some(({ kind, parts }) => kind === 'interference' && parts.includes(id));

describe('upgrade envelope', () => {
  it('has every mount for cards, memory, coolers, drives, supplies, fans and radiators', () => {
    const mounts = placePlan(plan).parts.flatMap((part) =>
      part.model.mounts.map(({ id }) => `${part.id}/${id}`),
    );
    const missing = mounts.filter((id) => !envelope.some((row) => `${row.on}/${row.mount}` === id));
    // What is left out: the board's place, the processor's socket, and a supply bay bridged by a plate.
    expect(missing.filter((id) => !/board$|processor$|supply/.test(id))).toEqual([]);
  });

  it('gives for a filled mount the limits of what is there', () => {
    const slot = mountOf('board', 'slot 2');
    expect(slot?.filledBy).toBe('card');
    expect(slot?.limits.find(({ path }) => path === 'length')).toEqual(limitOf(plan, 'card', 'length'));
  });

  it('says what is in the way where nothing goes', () => {
    const slot = mountOf('board', 'slot 4');
    expect(slot?.blockedBy).toBe('the card’s bracket');
    expect(slot?.limits).toEqual([]);
  });

  it('promises for certain a little less than by the sheet, never nothing where bands are small', () => {
    const limits = envelope.flatMap(({ limits: ofMount }) => ofMount).filter(({ steps }) => steps.length > 0);
    expect(limits.length).toBeGreaterThan(20);
    for (const { title, steps, withTolerance = Number.NaN } of limits) {
      const byTheSheet = steps[0]?.value ?? Number.NaN;
      expect(withTolerance, title).toBeLessThan(byTheSheet);
      // All bands of the demo plan together are a few mm; an adapter plate that comes to face the card takes 23 mm.
      expect(withTolerance, title).toBeGreaterThan(byTheSheet - 25);
    }
  });

  const bounded = envelope.filter(({ filledBy, limits }) => filledBy === undefined && limits.length > 0);

  it.each(bounded.map((row) => [row.label, row] as const))(
    '%s: what is promised goes in, a hair more does not',
    (_, row) => {
      const trial = trialOn(row);
      for (const { path, steps, ownSheet, overlapsAnyway } of row.limits) {
        const [step] = steps;
        if (!step || ownSheet || overlapsAnyway) continue;
        expect(overlapping(planAtValue(trial.plan, trial.id, path, step.value - 0.01), trial.id), path).toBe(
          false,
        );
        // Where a gap is wanted, contact comes that much later; grown to both sides, twice that.
        if (step.wanted > 0 || step.faces.some(({ box }) => box.includes('space'))) continue;
        expect(overlapping(planAtValue(trial.plan, trial.id, path, step.value + 0.01), trial.id), path).toBe(
          true,
        );
      }
    },
  );
});
