import { expect, test, vi } from 'vitest';
import { airStore } from '../../src/store/air-store';
import { openPlan } from '../../src/store/plan-store';
import { hideAir, showAir } from '../../src/store/show-air';
import { answerAir } from '../../src/workers/answer-estimates';
import { examplePlan } from '../estimates/example-plan';

const patient = { timeout: 30_000 };
const demo = examplePlan('demo').plan;
const { enclosure: _, ...withoutEnclosure } = demo.parts;

test('the air follows the load and the plan while it is shown, and says why where there is none', async () => {
  openPlan('demo', demo);
  expect(airStore.getState().picture).toBeUndefined();
  showAir();
  await vi.waitFor(() => expect(airStore.getState().picture).toBeDefined(), patient);
  const game = airStore.getState().picture;
  showAir({ load: 'idle' });
  await vi.waitFor(() => expect(airStore.getState().picture).not.toBe(game), patient);
  expect(airStore.getState().picture?.warmest).toBeLessThan(game?.warmest ?? 0);

  openPlan('bare', { ...demo, parts: withoutEnclosure });
  await vi.waitFor(() => expect(airStore.getState().problem).toBe('the plan has no enclosure'), patient);
  expect(airStore.getState().picture).toBeUndefined();

  hideAir();
  openPlan('demo', demo);
  await new Promise((resolve) => setTimeout(resolve, 400));
  expect(airStore.getState().picture).toBeUndefined();
});

test('arrows are plain data: places, ways, flows and temperatures', () => {
  const { picture } = answerAir({ plan: demo, profile: { load: 'game' } });
  expect(structuredClone(picture)).toEqual(picture);
  const fans = picture?.arrows.filter(({ kind }) => kind === 'fan') ?? [];
  expect(fans.map(({ label }) => label)).toContain('Fan 1');
  for (const { along, flow, celsius } of picture?.arrows ?? []) {
    expect(Math.hypot(...along)).toBeCloseTo(1, 9);
    expect(flow).toBeGreaterThan(0);
    expect(celsius).toBeGreaterThanOrEqual(picture?.coldest ?? Number.NaN);
    expect(celsius).toBeLessThanOrEqual(picture?.warmest ?? Number.NaN);
  }
});
