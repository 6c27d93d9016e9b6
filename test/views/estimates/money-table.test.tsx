import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { type Plan, readPlan } from '../../../geometry';
import { openPlan, planStore, undo } from '../../../src/store/plan-store';
import { useSolutionStore } from '../../../src/store/use-store';
import { MoneyTable } from '../../../src/views/estimates/money/money-table';
import { doing, press, render, type } from '../render';

const read = readPlan(readFileSync('public/plans/demo.json', 'utf8'));
if (!read.ok) throw new Error('the demo plan cannot be read');
const demo = read.plan;

function Shown() {
  const plan = useSolutionStore((state) => state.plan);
  return <MoneyTable plan={plan} currency="EUR" />;
}

function field(name: string): HTMLInputElement {
  const found = document.querySelector<HTMLInputElement>(`[aria-label="${name}"]`);
  if (!found) throw new Error(`no field ${name}`);
  return found;
}

async function put(name: string, text: string): Promise<void> {
  await type(field(name), text);
  await press(field(name), 'Enter');
}

const now = (): Plan => planStore.getState().plan;
const sums = () => document.querySelector('.money-sums')?.textContent ?? '';

test('a price is kept with the plan, counted at once, and taken back by one undo', async () => {
  openPlan('demo', demo);
  await render(<Shown />);
  expect(sums()).toContain('Total2414 EUR');
  await put('Price of Board', '310,50');
  expect(now().prices?.board).toBe(310.5);
  expect(sums()).toContain('Total2514.50 EUR');
  expect(sums()).toContain('To spare385.50 EUR');
  await doing(undo);
  expect(now().prices?.board).toBe(210);
});

test('a day, a shop and a currency are kept beside the amount; an empty amount takes all of it away', async () => {
  openPlan('demo', demo);
  await render(<Shown />);
  await put('Day the price of Card was read', '2026-11-20');
  await put('Shop or note for the price of Card', 'corner shop');
  await put('Currency of the price of Card', 'sek');
  expect(now().prices?.card).toEqual({
    amount: 760,
    date: '2026-11-20',
    shop: 'corner shop',
    currency: 'SEK',
  });
  expect(document.querySelector('.money')?.textContent).toContain('SEK');
  await put('Price of Card', '');
  expect(now().prices?.card).toBeUndefined();
  expect(field('Shop or note for the price of Card').disabled).toBe(true);
});

test('what is no amount is refused in words and changes nothing', async () => {
  openPlan('demo', demo);
  await render(<Shown />);
  for (const [text, fault] of [
    ['-3', 'At least 0.'],
    ['dear', 'Not a number.'],
    ['1e9', 'At most 1000000.'],
  ] as const) {
    await put('Price of Board', text);
    expect(field('Price of Board').getAttribute('aria-invalid')).toBe('true');
    expect(document.querySelector('[role="alert"]')?.textContent).toBe(fault);
  }
  expect(now()).toBe(demo);
  await press(field('Price of Board'), 'Escape');
  expect(field('Price of Board').value).toBe('210');
});

test('lines, tax, the day of the quote and wishes are typed, and left out again when emptied', async () => {
  openPlan('bare', { ...demo, quote: undefined, prices: undefined } as unknown as Plan);
  await render(<Shown />);
  await doing(() =>
    [...document.querySelectorAll('button')].find((one) => one.textContent === 'Add a line')?.click(),
  );
  await put('Line 1, amount', '-20');
  await put('Tax, %', '25');
  await put('Day of the quote', '2026-11-01');
  await put('Quote good for, days', '30');
  expect(now().quote).toEqual({
    lines: [{ label: 'Labour', amount: -20 }],
    tax: 0.25,
    date: '2026-11-01',
    validDays: 30,
  });
  expect(sums()).toContain('Quote good until2026-12-01');
  await doing(() =>
    [...document.querySelectorAll('button')].find((one) => one.textContent === 'Add a wish')?.click(),
  );
  await put('Wish 1, sound of the plainer part, dB', '31');
  expect(now().quote?.wishes).toEqual([
    { label: 'A wish', part: 'enclosure', plainPrice: 0, plainDecibels: 31 },
  ]);
  await put('Wish 1, sound of the plainer part, dB', '');
  expect(now().quote?.wishes?.[0]).not.toHaveProperty('plainDecibels');
  await put('Tax, %', '');
  await put('Quote good for, days', '');
  await put('Day of the quote', '');
  for (const name of ['Remove line 1, Labour', 'Remove wish 1, A wish'])
    await doing(() => field(name).click());
  expect(now().quote).toBeUndefined();
});
