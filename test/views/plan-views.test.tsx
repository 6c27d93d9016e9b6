import { beforeEach, describe, expect, test } from 'vitest';
import { openPlan, planStore } from '../../src/store/plan-store';
import { solutionStore } from '../../src/store/solution-store';
import { selectPart, viewStore } from '../../src/store/view-store';
import { ClearanceTable } from '../../src/views/clearances/clearance-table';
import { directionWords } from '../../src/views/clearances/direction-words';
import { FindingsList } from '../../src/views/findings/findings-list';
import { clearanceMark, verdictMark } from '../../src/views/findings/weight-tone';
import { SelectionDetails } from '../../src/views/part-details/selection-details';
import { PlanTree } from '../../src/views/plan-tree/plan-tree';
import { samplePlan } from '../store/sample-plan';
import { doing, press, render, type } from './render';

beforeEach(() => {
  openPlan('one', samplePlan());
  selectPart(undefined);
});

describe('the mounting tree', () => {
  test('shows what is mounted on what, and a free part on its own', async () => {
    const host = await render(<PlanTree />);
    const rows = [...host.querySelectorAll('[role="treeitem"]')].map((row) => [
      row.querySelector('.tree-label')?.textContent,
      row.getAttribute('aria-level'),
    ]);
    expect(rows).toEqual([
      ['Enclosure', '1'],
      ['Board', '2'],
      ['Processor', '3'],
      ['Fan', '1'],
    ]);
  });

  test('is walked by the keyboard, and the selection goes along', async () => {
    const host = await render(<PlanTree />);
    const row = (id: string) => host.querySelector(`[data-item="${id}"]`)!;
    await press(row('enclosure'), 'ArrowDown');
    expect(viewStore.getState().selectedPart).toBe('board');
    await press(row('board'), 'ArrowRight');
    expect(viewStore.getState().selectedPart).toBe('processor');
    await press(row('processor'), 'ArrowLeft');
    await press(row('board'), 'ArrowLeft');
    expect(host.querySelector('[data-item="processor"]')).toBeNull();
    expect(row('board').getAttribute('aria-expanded')).toBe('false');
    await press(row('board'), 'End');
    expect(viewStore.getState().selectedPart).toBe('fan');
  });

  test('has one stop of the Tab key', async () => {
    const host = await render(<PlanTree />);
    expect(host.querySelectorAll('[role="treeitem"][tabindex="0"]')).toHaveLength(1);
  });
});

describe('the clearances', () => {
  test('stand tightest first, one row for each the solver names, with its number', async () => {
    const host = await render(<ClearanceTable />);
    const { clearances } = solutionStore.getState().solution;
    expect(host.querySelectorAll('tbody tr')).toHaveLength(clearances.length);
    const gaps = clearances.map((clearance) => clearance.millimetres);
    expect(gaps).toEqual([...gaps].sort((a, b) => a - b));
  });

  test('are marked by fit, and a gap below the wanted one is marked apart', () => {
    const base = { fit: 'clearance fit', millimetres: 2, wanted: 3 } as Parameters<typeof clearanceMark>[0];
    expect(clearanceMark(base)).toMatchObject({
      tone: 'transition',
      word: 'clearance fit, less than wanted',
    });
    expect(clearanceMark({ ...base, millimetres: 3 })).toMatchObject({ tone: 'clearance' });
    expect(clearanceMark({ ...base, fit: 'interference fit', millimetres: -1 })).toMatchObject({
      tone: 'interference',
    });
  });

  test('name their direction in the words of the enclosure', () => {
    expect(directionWords([0, 0, 1])).toBe('to the side panel');
    expect(directionWords([-1, 0, 0])).toBe('to the rear');
    expect(directionWords([Math.SQRT1_2, Math.SQRT1_2, 0])).toMatch(/slanted/);
  });
});

describe('the verdict', () => {
  const verdict = { fits: true, faults: 0, cautions: 0, headline: '', detail: '' };
  test('has a word, a shape and a colour for each of three states', () => {
    expect(verdictMark(verdict).tone).toBe('clearance');
    expect(verdictMark({ ...verdict, cautions: 1 }).tone).toBe('transition');
    expect(verdictMark({ ...verdict, fits: false, faults: 1 }).tone).toBe('interference');
  });
});

describe('the findings', () => {
  test('choosing one selects it for the drawing too', async () => {
    // A second fan in the same place overlaps the first.
    const plan = samplePlan();
    const { fan } = plan.parts;
    openPlan('two', { ...plan, parts: { ...plan.parts, ...(fan ? { 'fan-2': fan } : {}) } });
    const host = await render(<FindingsList />);
    const first = solutionStore.getState().solution.findings[0];
    expect(first?.weight).toBe('fault');
    await doing(() => host.querySelector<HTMLButtonElement>('button')?.click());
    expect(viewStore.getState().selectedFinding).toBe(first?.id);
  });
});

describe('details of a part', () => {
  const field = (host: HTMLElement, label: string) => {
    const row = [...host.querySelectorAll('label')].find(
      (one) => one.querySelector('span')?.textContent === label,
    );
    const input = row?.querySelector<HTMLInputElement>('input, select');
    if (!input) throw new Error(`no field ${label}`);
    return input;
  };

  test('a typed position moves a free part, as one step', async () => {
    selectPart('fan');
    const host = await render(<SelectionDetails />);
    await type(field(host, 'At x, mm'), '310,5');
    await press(field(host, 'At x, mm'), 'Enter');
    expect(planStore.getState().plan.parts.fan?.placement).toEqual({ at: [310.5, 200, 80] });
    expect(planStore.temporal.getState().pastStates).toHaveLength(1);
  });

  test('arrow keys in a number field step by 1 and 0.1', async () => {
    selectPart('fan');
    const host = await render(<SelectionDetails />);
    await press(field(host, 'At y, mm'), 'ArrowUp');
    await press(field(host, 'At y, mm'), 'ArrowDown', { shiftKey: true });
    expect(planStore.getState().plan.parts.fan?.placement).toEqual({ at: [300, 200.9, 80] });
  });

  test('what is no number is refused and changes nothing', async () => {
    selectPart('fan');
    const host = await render(<SelectionDetails />);
    await type(field(host, 'At x, mm'), 'far');
    await press(field(host, 'At x, mm'), 'Enter');
    expect(host.querySelector('[role="alert"]')?.textContent).toBe('Not a number.');
    expect(planStore.getState().plan.parts.fan?.placement).toEqual({ at: [300, 200, 80] });
  });

  test('a mount is chosen from those that take the part', async () => {
    selectPart('fan');
    const host = await render(<SelectionDetails />);
    const select = field(host, 'Sits on') as unknown as HTMLSelectElement;
    const seat = [...select.options].find((option) => option.value.startsWith('enclosure/'));
    expect(seat).toBeDefined();
    await type(select, seat?.value ?? '');
    expect(planStore.getState().plan.parts.fan?.placement).toMatchObject({ on: 'enclosure' });
  });
});
