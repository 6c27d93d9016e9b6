import { describe, expect, it } from 'vitest';
import { estimatePlan } from '../../geometry/estimates/estimate-plan';
import { readPlanValue } from '../../geometry/plan/read-plan';
import { examplePlan } from './example-plan';

function answersOf(placed: ReturnType<typeof examplePlan>, bands = true) {
  const answers = estimatePlan(placed.plan, placed.scene, { load: 'game' }, { bands });
  const all = Object.values(answers.topics).flatMap(({ estimates }) => estimates);
  return { answers, find: (id: string) => all.find((estimate) => estimate.id === id) };
}

function width(estimate: { low?: number; high?: number } | undefined): number {
  return (estimate?.high ?? Number.NaN) - (estimate?.low ?? Number.NaN);
}

describe('what is not stated', () => {
  it('a card without a rating is no zero: it counts by its connectors, is named, and widens the band', () => {
    const silent = examplePlan('demo', (parts) => {
      delete parts.card?.spec.sustained;
      delete parts.card?.spec.peak;
    });
    const stated = answersOf(examplePlan('demo'));
    const unstated = answersOf(silent);
    const card = unstated.find('power of card');
    expect(card?.value).toBeGreaterThan(100);
    expect(card?.missing).toContain('the sheet of Card states no sustained power');
    expect(width(unstated.find('power sustained'))).toBeGreaterThan(
      2 * width(stated.find('power sustained')),
    );
  });

  it('a cooler without a rating leaves the processor unknown, and says why', () => {
    const { find, answers } = answersOf(
      examplePlan('demo', (parts) => delete parts.cooler?.spec.watts),
      false,
    );
    expect(find('heat of processor')?.value).toBeUndefined();
    expect(find('heat of processor')?.unknown).toBe(
      'unknown, because the sheet of Cooler states neither a heat resistance nor the heat it is made for',
    );
    expect(answers.wishes.find(({ id }) => id === 'heat')?.standing).toBe('unknown');
  });

  it('a machine without cooler, supply or enclosure says so, topic by topic', () => {
    const bare = examplePlan('demo', (parts) => {
      for (const id of ['cooler', 'supply', 'adapter']) delete parts[id];
    });
    const { find } = answersOf(bare, false);
    expect(find('heat of processor')?.unknown).toContain('Processor has no cooler');
    expect(find('power wall')?.unknown).toContain('the plan has no supply');
    expect(find('power sustained')?.standing).toBe('no limit');
    const open = examplePlan('demo', (parts) => {
      for (const id of Object.keys(parts)) if (id !== 'supply') delete parts[id];
      Object.assign(parts.supply ?? {}, { placement: { at: [0, 0, 0] } });
    });
    expect(answersOf(open, false).find('air drawn in')?.unknown).toBe(
      'unknown, because the plan has no enclosure',
    );
  });

  it('an enclosure without a mass leaves the mass unknown, not light', () => {
    const { find } = answersOf(
      examplePlan('demo', (parts) => delete parts.enclosure?.spec.mass),
      false,
    );
    expect(find('mass')?.unknown).toBe('unknown, because the sheet of Enclosure states no mass');
    expect(find('mass lifting index')).toBeUndefined();
  });

  it('an empty plan throws nothing', () => {
    const empty = examplePlan('demo', (parts) => {
      for (const id of Object.keys(parts)) delete parts[id];
    });
    const { answers, find } = answersOf(empty);
    expect(find('power sustained')?.value).toBeUndefined();
    expect(answers.running).toBeUndefined();
  });
});

describe('what cannot be', () => {
  it('an enclosure of closed sheet has no path for air, and no temperatures are made up', () => {
    const closed = examplePlan('small', (parts) => {
      const spec = parts.enclosure?.spec ?? {};
      delete spec.vents;
      spec.walls = { sheet: 1.2 };
      for (const id of ['card', 'supply', 'adapter', 'adapter-2']) delete parts[id];
    });
    const { find } = answersOf(closed, false);
    expect(find('air drawn in')?.unknown).toContain(
      'no path for air: Enclosure states no vent, grille or mesh',
    );
    expect(find('heat of processor')).toBeUndefined();
  });

  it('ratings that contradict one another or physics are refused by name and not used', () => {
    const absurd = examplePlan('demo', (parts) => {
      if (parts.card) parts.card.spec.peak = 100;
      if (parts.fan) parts.fan.spec.flow = 999;
    });
    const { answers, find } = answersOf(absurd, false);
    const said = answers.refused.map(({ message }) => message);
    expect(said).toContain('the peak power of Card, 100 W, cannot be (285 to 2000 W)');
    expect(said.some((text) => text.startsWith('the free flow of Fan 1, 999 m³/h, cannot be'))).toBe(true);
    expect(find('power excursion 100 µs')?.value).toBeGreaterThan(285);
    expect(find('air through fan')?.value).toBeLessThan(120);
    expect(find('air drawn in')?.missing.some((text) => text.includes('free flow of Fan 1'))).toBe(true);
  });

  it('negative ratings never get past the schema', () => {
    const { plan } = examplePlan('demo');
    const negative = JSON.parse(JSON.stringify(plan));
    negative.parts.card.spec.sustained = -5;
    const read = readPlanValue(negative);
    expect(read.ok).toBe(false);
  });
});
