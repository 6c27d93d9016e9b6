/** What the app may use of the estimates, through the public face alone. */
import { expect, it } from 'vitest';
import { assumptions, compareEstimates, estimatePlan, loads, speedSweep } from '../../geometry';
import { examplePlan } from './example-plan';

it('sweeps fan speeds for a chart, in order, with a level and temperatures at every point', () => {
  const { plan, scene } = examplePlan('demo');
  const sweep = speedSweep(plan, scene, { load: 'game' });
  expect(sweep.length).toBeGreaterThan(5);
  sweep.forEach((point, i) => {
    expect(point.share).toBeGreaterThan(sweep[i - 1]?.share ?? 0);
    expect(point.level).toBeGreaterThan(10);
    expect(point.temperatures.processor).toBeGreaterThan(30);
  });
});

it('compares two rooms: what a warmer one changes is told with its figures', () => {
  const { plan, scene } = examplePlan('demo');
  const answer = (room: number) =>
    estimatePlan(plan, scene, { load: 'game', room }, { bands: false }).topics.heat.estimates;
  const memory = compareEstimates(answer(20), answer(28)).find(({ id }) => id === 'heat of memory');
  expect((memory?.after ?? 0) - (memory?.before ?? 0)).toBeGreaterThan(5);
});

it('every load is worked out, and every assumption has a middle between its ends and a source', () => {
  const { plan, scene } = examplePlan('small');
  for (const load of loads)
    expect(
      estimatePlan(plan, scene, { load }, { bands: false }).topics.heat.estimates.length,
    ).toBeGreaterThan(3);
  for (const { value, low, high, says, source } of Object.values(assumptions)) {
    expect(low, says).toBeLessThanOrEqual(value);
    expect(high, says).toBeGreaterThanOrEqual(value);
    expect(source.length).toBeGreaterThan(5);
  }
});
