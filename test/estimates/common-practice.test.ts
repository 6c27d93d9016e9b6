/**
 * Facts of the trade, common practice, no source. No constant was chosen to meet them: each assumption says where it
 * comes from, and the same ones serve every plan.
 */
import { describe, expect, it } from 'vitest';
import type { Estimate } from '../../geometry/estimates/estimate';
import { estimatePlan } from '../../geometry/estimates/estimate-plan';
import { wordForLevel } from '../../geometry/estimates/sound/levels';
import { commonPracticePlan } from './example-plan';

const { plan, scene } = commonPracticePlan();
const answers = estimatePlan(plan, scene, { load: 'game' });
const all = Object.values(answers.topics).flatMap(({ estimates }) => estimates);

function known(id: string): Required<Pick<Estimate, 'value' | 'low' | 'high'>> & Estimate {
  const estimate = all.find((one) => one.id === id);
  if (estimate?.value === undefined || estimate.low === undefined || estimate.high === undefined)
    throw new Error(`${id}: ${estimate?.sentence ?? 'no such estimate'}`);
  return { ...estimate, value: estimate.value, low: estimate.low, high: estimate.high };
}

describe('a six-core 105 W-class processor and a 260 W card with two 8-pin plugs', () => {
  it('are amply served by 850 W: every row is met with the whole band, and a smaller rating would do', () => {
    const rows = all.filter(({ id }) => id.startsWith('power excursion') || id === 'power sustained');
    expect(rows.length).toBe(6);
    for (const row of rows) expect(row.standing, row.sentence).toBe('met');
    expect(known('power suggested rating').value).toBeLessThanOrEqual(850);
    expect(known('power sustained').high).toBeLessThan(0.8 * 850);
  });

  it('the card stays within slot and plugs, 375 W', () => {
    expect(known('power connectors card').limit?.value).toBe(375);
    expect(known('power connectors card').standing).toBe('met');
  });

  it('under games the processor in the high 70s with a twin tower of 120 mm is inside the band', () => {
    const { low, high } = known('heat of processor');
    expect(low).toBeLessThan(76);
    expect(high).toBeGreaterThan(79);
  });

  it('that band is narrow enough to mean something: less than 40 K', () => {
    const { low, high } = known('heat of processor');
    expect(high - low).toBeLessThan(40);
  });
});

it('about 37 dB beside the machine reads as quiet, and the machine comes within its band of it', () => {
  expect(wordForLevel(37)).toBe('quiet');
  expect(wordForLevel(46)).toBe('loud');
  const { low, high } = known('sound at the ear');
  expect(low).toBeLessThan(37);
  expect(high).toBeGreaterThan(37);
});
