import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { type Clearance, readPlan, stackUpsOf } from '../../../geometry';
import { openPlan, planStore, undo } from '../../../src/store/plan-store';
import { solutionStore } from '../../../src/store/solution-store';
import { studyStore } from '../../../src/store/study-store';
import { viewStore } from '../../../src/store/view-store';
import { ClearanceTable } from '../../../src/views/clearances/clearance-table';
import { StackUpSection } from '../../../src/views/stack-up/stack-up-section';
import { answerStudy } from '../../../src/workers/answer-study';
import type { StudyRequest } from '../../../src/workers/study-request';
import { doing, render, type } from '../render';

// The kernel answers within the step that asks: what comes later, from a worker, is tested where the worker is.
vi.mock('../../../src/workers/study-client', () => ({
  studyClient: () => ({ ask: async (request: StudyRequest) => answerStudy(request) }),
}));

const read = readPlan(readFileSync('public/plans/demo.json', 'utf8'));
if (!read.ok) throw new Error('the demo plan cannot be read');
const demo = read.plan;
const stackUps = new Map(stackUpsOf(demo).map((stackUp) => [stackUp.clearance, stackUp]));

function coolerToPanel(): Clearance {
  const found = solutionStore
    .getState()
    .solution.clearances.find(({ rule }) => rule === 'cooler to side panel');
  if (!found) throw new Error('the demo plan has a cooler under a panel');
  return found;
}

beforeEach(() => {
  openPlan('demo', demo);
  studyStore.setState({ plan: demo, stackUps, problem: undefined });
});

const rowOf = (host: HTMLElement, words: RegExp) =>
  [...host.querySelectorAll<HTMLButtonElement>('.sum button.term')].find((row) =>
    words.test(row.textContent ?? ''),
  )!;

describe('the stack-up on the screen', () => {
  test('is a sum whose rows add up to the gap that the table shows', async () => {
    const clearance = coolerToPanel();
    const host = await render(<StackUpSection clearance={clearance} />);
    const terms = [...host.querySelectorAll('.sum ol li')].map(
      (row) => row.querySelector('.number')?.textContent ?? '',
    );
    expect(terms.length).toBeGreaterThan(3);
    const sum = terms.reduce((total, text) => total + Number(text.replace('− ', '-').replace('+ ', '')), 0);
    // Each row is rounded to a tenth.
    expect(Math.abs(sum - clearance.millimetres)).toBeLessThan(0.05 * terms.length + 0.05);
  });

  test('shows the part and the two faces of a row in the drawing while it is pointed at', async () => {
    const host = await render(<StackUpSection clearance={coolerToPanel()} />);
    const row = rowOf(host, /^Processor, package height/);
    await doing(() => row.focus());
    expect(viewStore.getState().hoveredPart).toBe('processor');
    expect(viewStore.getState().pointedFaces).toEqual([
      { part: 'processor', box: 'package', face: '-z' },
      { part: 'processor', box: 'package', face: '+z' },
    ]);
    await doing(() => row.blur());
    expect(viewStore.getState().hoveredPart).toBeUndefined();
    expect(viewStore.getState().pointedFaces).toEqual([]);
  });

  test('takes a measured value as one step of undo, and refuses one that cannot be true', async () => {
    const host = await render(<StackUpSection clearance={coolerToPanel()} />);
    await doing(() => rowOf(host, /^Cooler, height/).click());
    const [value, band] = host.querySelectorAll<HTMLInputElement>('.measure-form input');
    const take = () => doing(() => host.querySelector<HTMLFormElement>('.measure-form')?.requestSubmit());
    await type(value!, '-3');
    await take();
    expect(host.querySelector('.measure-form .fault')?.textContent).toBeTruthy();
    expect(planStore.getState().plan).toBe(demo);
    await type(value!, '154,8');
    await type(band!, '0.1');
    await take();
    expect(planStore.getState().plan.parts.cooler?.spec).toMatchObject({
      height: { value: 154.8, plusMinus: 0.1, source: 'measured' },
    });
    expect(host.querySelector('.measure-form'), 'the form has closed').toBeNull();
    await doing(undo);
    expect(planStore.getState().plan).toBe(demo);
  });

  test('is not editable in a plan that is not the reader’s own', async () => {
    planStore.setState({ readOnly: true });
    const host = await render(<StackUpSection clearance={coolerToPanel()} />);
    expect(host.querySelectorAll('.term').length).toBeGreaterThan(3);
    expect(host.querySelectorAll('button')).toHaveLength(0);
  });

  test('says why when the kernel cannot tell', async () => {
    studyStore.setState({ stackUps: new Map(), problem: 'the plan has no part 7' });
    const host = await render(<StackUpSection clearance={coolerToPanel()} />);
    expect(host.textContent).toContain('no part 7');
  });
});

test('the table shows the band beside the bar, and a whisker where there is room for it', async () => {
  const host = await render(<ClearanceTable />);
  const row = [...host.querySelectorAll('tbody tr')].find((one) =>
    one.textContent?.includes('to side panel'),
  );
  const { rss } = stackUps.get(coolerToPanel().id)!;
  expect(row?.querySelector('.plus-minus')?.textContent).toBe(`± ${rss.toFixed(1)}`);
  expect(row?.querySelector('.whisker')).not.toBeNull();
});
