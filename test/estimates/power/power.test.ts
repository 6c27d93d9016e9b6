import { describe, expect, it } from 'vitest';
import { middleValues } from '../../../geometry/estimates/assumptions';
import { estimatePlan } from '../../../geometry/estimates/estimate-plan';
import { demandsOf } from '../../../geometry/estimates/power/demand';
import {
  durationName,
  excursionRows,
  ridesLargerExcursions,
} from '../../../geometry/estimates/power/excursions';
import { plugRows, sharedLeads } from '../../../geometry/estimates/power/plugs';
import { powerModel } from '../../../geometry/estimates/power/power-figures';
import { suggestRating } from '../../../geometry/estimates/power/supply-rating';
import { examplePlan } from '../example-plan';

function plugsOf(placed: ReturnType<typeof examplePlan>) {
  const supply = placed.scene.parts.find(({ kind }) => kind === 'supply');
  if (supply?.spec.kind !== 'supply') throw new Error('no supply');
  return { rows: plugRows(placed.scene, supply.spec), shared: sharedLeads(placed.scene, supply) };
}

describe('excursions (document 613768, table 3-3)', () => {
  it('asks the larger ones only above 450 W and with the 16-pin plug', () => {
    expect(ridesLargerExcursions(450, true)).toBe(false);
    expect(ridesLargerExcursions(451, true)).toBe(true);
    expect(ridesLargerExcursions(850, false)).toBe(false);
    const shares = (larger: boolean) => excursionRows([], 0, larger).map(({ allowedShare }) => allowedShare);
    expect(shares(true)).toEqual([2, 1.8, 1.6, 1.2, 1]);
    expect(shares(false)).toEqual([1.5, 1.45, 1.35, 1.1, 1]);
  });

  it('adds the peaks of all parts, which fade with their duration', () => {
    const demands = demandsOf(examplePlan('demo').scene, middleValues);
    const loads = excursionRows(demands, 0, true).map(({ load }) => load);
    const peaks = demands.reduce((sum, { peak }) => sum + peak, 0);
    expect(loads[0]).toBeCloseTo(peaks, 9);
    expect(loads.at(-1)).toBeCloseTo(
      demands.reduce((sum, { sustained }) => sum + sustained, 0),
      9,
    );
    for (let i = 1; i < loads.length; i++) expect(loads[i]).toBeLessThanOrEqual(loads[i - 1] ?? 0);
    expect([100, 10_000, Number.POSITIVE_INFINITY].map(durationName)).toEqual([
      '100 µs',
      '10 ms',
      'continuous',
    ]);
  });
});

describe('plugs', () => {
  it('names what is missing, and the adapter that would do', () => {
    const { rows } = plugsOf(examplePlan('small'));
    const missing = rows.filter((row) => row.missing > 0);
    expect(missing.map(({ type }) => type)).toEqual(['card 16-pin']);
    expect(missing[0]?.sentence).toMatch(
      /^Card wants 1 card 16-pin plug; the supply has none: 1 missing\. An adapter/,
    );
  });

  it('is no power for the work while a plug is missing', () => {
    const wish = (name: 'demo' | 'small') => {
      const { plan, scene } = examplePlan(name);
      const { wishes } = estimatePlan(plan, scene, { load: 'game' }, { bands: false });
      return wishes.find(({ id }) => id === 'power');
    };
    expect(wish('demo')?.standing).toBe('met');
    expect(wish('small')?.standing).toBe('not met');
    expect(wish('small')?.says).toContain('16-pin');
  });

  it('lets an 8-pin plug stand in for a 6-pin one, each once', () => {
    const plan = examplePlan('faults', (parts) => {
      if (!parts.card || !parts.supply) return;
      parts.card.spec.power = [
        { type: 'card 6-pin', edge: 'top', at: 160 },
        { type: 'card 8-pin', edge: 'top', at: 188 },
      ];
      const plugs = parts.supply.spec.plugs as { type: string; count: number }[];
      for (const plug of plugs) if (plug.type === 'card 8-pin') plug.count = 1;
    });
    const six = plugsOf(plan).rows.find(({ type }) => type === 'card 6-pin');
    expect(six).toMatchObject({ standsIn: 0, missing: 1 });
  });

  it('warns of two plugs on one lead', () => {
    const plan = examplePlan('faults', (parts) => {
      const plugs = parts.supply?.spec.plugs as { type: string; sockets?: number }[];
      for (const plug of plugs) if (plug.type === 'card 8-pin') plug.sockets = 1;
    });
    expect(plugsOf(plan).shared[0]?.sentence).toContain('one lead then carries up to 300 W');
    expect(plugsOf(examplePlan('faults')).shared).toEqual([]);
  });
});

describe('the suggested rating', () => {
  const demands = demandsOf(examplePlan('demo').scene, middleValues);

  it('is the least that satisfies all, and the next smaller fails for the reason given', () => {
    const suggestion = suggestRating(demands, 5, 0.8);
    expect(suggestion?.watts).toBe(550);
    expect(suggestion?.binds).toBe('sustained load: 428 W against 80 % of 500 W');
    expect(428).toBeGreaterThan(0.8 * 500);
    expect(428).toBeLessThanOrEqual(0.8 * 550);
  });

  it('never falls to 450 W where the 16-pin plug is wanted', () => {
    const light = demands.map((demand) => ({ ...demand, sustained: 1, peak: 1 }));
    expect(suggestRating(light, 0, 0.8)).toEqual({
      watts: 500,
      binds: 'the 16-pin plug: it is required of supplies above 450 W only',
    });
  });
});

it('adds up: parts to the sum, rails to the sum, and what comes from the wall to output and loss', () => {
  const { plan, scene } = examplePlan('faults');
  const { figures } = powerModel(plan, scene, { load: 'worst' }, middleValues);
  const value = (id: string) => figures.find((figure) => figure.id === id)?.value ?? Number.NaN;
  const parts = figures
    .filter(({ id }) => id.startsWith('power of '))
    .reduce((sum, one) => sum + (one.value ?? 0), 0);
  expect(parts + middleValues.extrasWatts).toBeCloseTo(value('power sustained'), 9);
  const rails = ['12 V', '5 V', '3.3 V'].reduce((sum, rail) => sum + value(`power rail ${rail}`), 0);
  expect(rails).toBeCloseTo(parts, 9);
  expect(value('power wall')).toBeCloseTo(value('power at load') + value('power supply loss'), 9);
  expect(value('power current 115 V') / value('power current 230 V')).toBeGreaterThan(2);
});

it('an overloaded supply is said in the one line', () => {
  const { plan, scene } = examplePlan('demo', (parts) => {
    if (parts.supply) parts.supply.spec.watts = 300;
  });
  const { topics } = estimatePlan(plan, scene, { load: 'game' }, { bands: false });
  expect(topics.power.answer).toContain('is more than 300 W, rating of the supply');
});
