import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test } from 'vitest';
import { planSchema, readPlan, wantedGapSettings } from '../../../geometry';
import { openPlan, planStore, undo } from '../../../src/store/plan-store';
import { solutionStore } from '../../../src/store/solution-store';
import { WantedGapsDialog } from '../../../src/views/wanted-gaps/wanted-gaps-dialog';
import { doing, press, render, type } from '../render';

const read = readPlan(readFileSync('public/plans/demo.json', 'utf8'));
if (!read.ok) throw new Error('the demo plan cannot be read');
const demo = read.plan;
const PAIR = 'cooler to side panel';

beforeEach(() => openPlan('demo', demo));

async function open(): Promise<HTMLElement> {
  await render(<WantedGapsDialog onClose={() => undefined} />);
  const dialogs = document.querySelectorAll<HTMLElement>('dialog');
  const last = dialogs[dialogs.length - 1];
  if (!last) throw new Error('no dialog');
  return last;
}

const rowOf = (dialog: HTMLElement, pair: string) =>
  [...dialog.querySelectorAll('tbody tr')].find(
    (row) => row.querySelector('th[scope="row"]')?.textContent?.toLowerCase() === pair.toLowerCase(),
  )!;
const fieldOf = (row: Element) => row.querySelector<HTMLInputElement>('input')!;
const wantedIn = () => solutionStore.getState().solution.clearances.find(({ rule }) => rule === PAIR)?.wanted;

describe('the wanted gaps', () => {
  test('stand in one list, each with its default and its reason', async () => {
    const dialog = await open();
    const settings = wantedGapSettings();
    expect(dialog.querySelectorAll('input')).toHaveLength(settings.length);
    for (const { rule, reason, byDefault } of settings) {
      const row = rowOf(dialog, rule);
      expect(row.textContent).toContain(reason);
      expect(Number(fieldOf(row).value)).toBe(demo.gaps?.[rule] ?? byDefault);
    }
  });

  test('are kept in the plan in one step each, taken back by undo and by the default', async () => {
    const dialog = await open();
    await type(fieldOf(rowOf(dialog, PAIR)), '2,5');
    await press(fieldOf(rowOf(dialog, PAIR)), 'Enter');
    expect(planStore.getState().plan.gaps).toMatchObject({ [PAIR]: 2.5 });
    expect(planSchema.safeParse(planStore.getState().plan).success).toBe(true);
    expect(wantedIn()).toBe(2.5);
    await doing(undo);
    expect(planStore.getState().plan).toBe(demo);
    expect(wantedIn()).toBe(3);
    await type(fieldOf(rowOf(dialog, PAIR)), '4');
    await press(fieldOf(rowOf(dialog, PAIR)), 'Enter');
    await doing(() => rowOf(dialog, PAIR).querySelector<HTMLButtonElement>('button')?.click());
    expect(planStore.getState().plan).toEqual(demo);
  });

  test('are refused when they are no gap', async () => {
    const dialog = await open();
    await type(fieldOf(rowOf(dialog, PAIR)), '-1');
    await press(fieldOf(rowOf(dialog, PAIR)), 'Enter');
    expect(rowOf(dialog, PAIR).querySelector('[role="alert"]')?.textContent).toBe('At least 0.');
    expect(planStore.getState().plan).toBe(demo);
  });
});
