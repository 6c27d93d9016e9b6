import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test } from 'vitest';
import { readPlan, writePlan } from '../../../geometry';
import { openPlan, planStore, undo } from '../../../src/store/plan-store';
import { LeadTable } from '../../../src/views/assembly-sheet/lead-table';
import { answerAssembly } from '../../../src/workers/answer-assembly';
import { doing, render, type } from '../render';

const read = readPlan(readFileSync('public/plans/demo.json', 'utf8'));
if (!read.ok) throw new Error('the demo plan cannot be read');
const demo = read.plan;
const before = answerAssembly(demo);

beforeEach(() => openPlan('demo', demo));

async function editor(answer: typeof before, lead: string) {
  const host = await render(<LeadTable plan={answer.sheet.leadList} waypoints={answer.waypoints} />);
  await doing(() => host.querySelector<HTMLElement>(`button[aria-label="Pin or measure ${lead}"]`)?.click());
  return host;
}

describe('a lead by hand', () => {
  test('is pinned to a place from a list, goes through it, and tells what that costs', async () => {
    const host = await editor(before, 'the processor lead');
    const places = host.querySelector('select');
    if (!places) throw new Error('no places to choose from');
    await type(places, 'clip before the board, high');
    const { plan } = planStore.getState();
    const kept = plan.leads?.['processor 8-pin']?.through;
    expect(kept).toHaveLength(1);
    // What is kept is part of the plan, and reads back.
    const again = readPlan(writePlan(plan));
    expect(again.ok && again.plan.leads).toEqual(plan.leads);

    const after = answerAssembly(plan);
    const lead = after.sheet.leadList.leads.find(({ id }) => id === 'processor 8-pin');
    const free = before.sheet.leadList.leads.find(({ id }) => id === 'processor 8-pin');
    expect(
      lead?.points.some((point) => Math.hypot(...point.map((v, k) => v - (kept?.[0]?.[k] ?? 0))) < 1e-9),
    ).toBe(true);
    expect(lead?.unpinned).toBe(free?.needed);
    const shown = await editor(after, 'the processor lead');
    expect(shown.textContent).toContain('Clip before the board, high');
    expect(shown.textContent).toMatch(/The pins make it need \d+ mm more\./);

    undo();
    expect(planStore.getState().plan.leads).toBeUndefined();
  });

  test('has the length that was measured, and can go back to the usual one', async () => {
    const host = await editor(before, 'the 24-pin lead');
    const field = host.querySelector<HTMLInputElement>('.lead-length input');
    if (!field) throw new Error('no field for the length');
    await type(field, '600');
    await doing(() => field.dispatchEvent(new FocusEvent('focusout', { bubbles: true })));
    expect(planStore.getState().plan.leads).toEqual({ 'main 24-pin': { length: 600 } });
    const lead = answerAssembly(planStore.getState().plan).sheet.leadList.leads.find(
      ({ id }) => id === 'main 24-pin',
    );
    expect(lead).toMatchObject({ available: 600, measured: true });
    expect(lead?.spare).toBeGreaterThan(0);
  });
});
