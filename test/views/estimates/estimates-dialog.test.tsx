import { readFileSync } from 'node:fs';
import { expect, test, vi } from 'vitest';
import { readPlan } from '../../../geometry';
import { openPlan } from '../../../src/store/plan-store';
import { solutionStore } from '../../../src/store/solution-store';
import { EstimatesDialog } from '../../../src/views/estimates/estimates-dialog';
import { answerEstimates } from '../../../src/workers/answer-estimates';
import { doing, render } from '../render';

const read = readPlan(readFileSync('public/plans/demo.json', 'utf8'));
if (!read.ok) throw new Error('the demo plan cannot be read');
const demo = read.plan;

const topicsOnScreen = () => [...document.querySelectorAll('.estimates-topic')];
const lineOf = (name: string) =>
  topicsOnScreen()
    .map((topic) => topic.querySelector('summary')?.textContent ?? '')
    .find((text) => text.startsWith(name)) ?? '';

async function settled(load: string): Promise<void> {
  await vi.waitFor(
    async () => {
      await doing(() => undefined);
      expect(document.querySelector('.estimates')?.getAttribute('aria-busy')).toBe('false');
      expect(document.querySelector('.estimates-profile-printed')?.textContent).toContain(load);
    },
    { timeout: 50_000 },
  );
}

test('shows a line a topic, every known figure as an estimate, and other figures for another load', async () => {
  openPlan('demo', demo);
  await render(<EstimatesDialog onClose={() => undefined} />);
  await settled('Game');
  expect(topicsOnScreen()).toHaveLength(8);
  expect(lineOf('Power')).toContain('an estimate');
  const figures = [...document.querySelectorAll('.estimates-figure > summary')];
  expect(figures.length).toBeGreaterThan(20);
  const unlabelled = figures
    .map(({ textContent }) => textContent ?? '')
    .filter((text) => !text.includes('an estimate') && !text.includes('unknown, because'));
  expect(unlabelled).toEqual([]);
  const heatOfGame = lineOf('Heat');
  const idle = [...document.querySelectorAll('button')].find(({ textContent }) => textContent === 'Idle');
  await doing(() => idle?.click());
  await settled('Idle');
  expect(lineOf('Heat')).not.toBe(heatOfGame);
});

test('says so when nothing is placed', async () => {
  openPlan('empty', { ...demo, parts: {} });
  expect(solutionStore.getState().scene.parts).toHaveLength(0);
  await render(<EstimatesDialog onClose={() => undefined} />);
  await settled('Game');
  expect(document.querySelector('.estimates')?.textContent).toContain('nothing to estimate yet');
  expect(topicsOnScreen()).toHaveLength(0);
});

test('the answer is plain data that crosses to the page whole', () => {
  const answer = answerEstimates({ plan: demo, profile: { load: 'worst' }, today: '2026-01-01' });
  expect(structuredClone(answer)).toEqual(answer);
  const levels = answer.running?.sounds.map(({ atOneMetre }) => atOneMetre) ?? [];
  expect(levels.length).toBeGreaterThan(1);
  expect(levels).toEqual([...levels].sort((a, b) => b - a));
});
