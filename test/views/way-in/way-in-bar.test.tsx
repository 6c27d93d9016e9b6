import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { type Plan, readPlan } from '../../../geometry';
import { openPlan } from '../../../src/store/plan-store';
import { stageStore } from '../../../src/store/stage-store';
import { endPlaying, playPart, useWayWanted } from '../../../src/store/way-in-store';
import { WayInBar } from '../../../src/views/way-in/way-in-bar';
import { eventually, press, render, type } from '../render';

// No worker runs in a test page: the same answers, found at once.
vi.mock('../../../src/workers/assembly-client', async () => {
  const { answerAssembly, answerWay } = await import('../../../src/workers/answer-assembly');
  return {
    knownAssembly: (plan: Plan) => answerAssembly(plan),
    askAssembly: () => () => {},
    askWay: (
      plan: Plan,
      question: Parameters<typeof answerWay>[1],
      { onPath }: { readonly onPath: (path: ReturnType<typeof answerWay>) => void },
    ) => {
      onPath(answerWay(plan, question));
      return () => {};
    },
  };
});

function Playing() {
  const wanted = useWayWanted();
  return wanted ? <WayInBar wanted={wanted} /> : <p>closed</p>;
}

async function playCard(name: string) {
  const read = readPlan(readFileSync(`public/plans/${name}.json`, 'utf8'));
  if (!read.ok) throw new Error(`${name} cannot be read`);
  openPlan(name, read.plan);
  playPart('card');
  const host = await render(<Playing />);
  await eventually(() => expect(host.querySelector('input[type="range"]')).not.toBeNull());
  const slider = host.querySelector<HTMLInputElement>('input[type="range"]');
  if (!slider) throw new Error('no slider');
  return { host, slider };
}

const off = () => Math.hypot(...(stageStore.getState().displacement?.translation ?? []));

beforeEach(() => endPlaying());

describe('how a part goes in', () => {
  test('is dragged along its way: only the pose changes, the stage stays', async () => {
    const { host, slider } = await playCard('tilted');
    expect(host.textContent).toContain('far end first, tilted by up to 44 degrees');
    const { stage } = stageStore.getState();
    expect(stage?.moving.has('card')).toBe(true);
    expect(stage?.absent.has('enclosure/side panel')).toBe(true);
    expect(stage?.swept.length).toBeGreaterThan(0);
    await type(slider, '0');
    expect(off()).toBeGreaterThan(100);
    expect(slider.getAttribute('aria-valuetext')).toMatch(/^Sliding, \d+ mm to go, 0 % of the way$/);
    await type(slider, '1');
    expect(off()).toBeCloseTo(0, 6);
    expect(slider.getAttribute('aria-valuetext')).toBe('Seated, 100 % of the way');
    expect(stageStore.getState().stage).toBe(stage);
    await press(slider, 'Escape');
    expect(host.textContent).toBe('closed');
    expect(stageStore.getState().stage).toBeUndefined();
  });

  test('a way that fails ends where it meets something, and says so in words that claim no proof', async () => {
    const { host, slider } = await playCard('blocked');
    expect(Number(slider.max)).toBeLessThan(1);
    const said = host.querySelector('[role="alert"]')?.textContent ?? '';
    expect(said).toContain('No way in was found for the card within these bounds');
    expect(said).toContain('meets the block crossbar');
    await type(slider, slider.max);
    expect(slider.getAttribute('aria-valuetext')).toMatch(/^Meets the block crossbar/);
    expect(stageStore.getState().stage?.meets).toBe(true);
  });
});
