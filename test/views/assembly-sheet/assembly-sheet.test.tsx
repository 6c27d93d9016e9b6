import { readFileSync } from 'node:fs';
import { beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { readPlan } from '../../../geometry';
import { emptyPlan, openPlan } from '../../../src/store/plan-store';
import { viewStore } from '../../../src/store/view-store';
import { AssemblyDialog } from '../../../src/views/assembly-sheet/assembly-dialog';
import { SheetPage } from '../../../src/views/assembly-sheet/sheet-page';
import { answerAssembly } from '../../../src/workers/answer-assembly';
import type { AssemblyAnswer, AssemblyProgress } from '../../../src/workers/assembly-request';
import { doing, render } from '../render';

const read = readPlan(readFileSync('public/plans/demo.json', 'utf8'));
if (!read.ok) throw new Error('the demo plan cannot be read');
const demo = read.plan;

let answer: AssemblyAnswer;
const told: AssemblyProgress[] = [];

beforeAll(() => {
  answer = answerAssembly(demo, (progress) => told.push(progress));
});

beforeEach(() => openPlan('demo', demo));

const nothing = () => {};
const page = (of: AssemblyAnswer, ticks: readonly string[] = []) =>
  render(<SheetPage answer={of} ticks={new Set(ticks)} onTick={nothing} onShow={nothing} />);

/** The section under a heading. */
function sectionOf(host: HTMLElement, title: RegExp): HTMLElement {
  const heading = [...host.querySelectorAll('h3')].find(({ textContent }) => title.test(textContent ?? ''));
  const section = heading?.closest('section');
  if (!section) throw new Error(`no section ${title}`);
  return section;
}

const stepOf = (host: HTMLElement, title: RegExp) =>
  [...host.querySelectorAll<HTMLElement>('.assembly-step')].find((step) =>
    title.test(step.querySelector('label')?.textContent ?? ''),
  )!;

describe('the sheet of the demo plan', () => {
  test('tells how far it is, forwards, through all that it does', () => {
    const shares = told.map(({ share }) => share);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(new Set(told.map(({ phase }) => phase))).toEqual(
      new Set(['machine', 'order', 'leads', 'service']),
    );
  });

  // What the sheets of the trade warn of: common practice, no source.
  test('warns first of mains, supply, static, edges, glass, weight, coolant and what prevails', async () => {
    const host = await page(answer);
    expect(host.querySelector('section')).toBe(sectionOf(host, /^Before anything else$/));
    const words = sectionOf(host, /^Before anything else$/).textContent ?? '';
    for (const warning of [
      /unplug/,
      /never opened/,
      /earthed/,
      /sharp/,
      /Glass/,
      /lifted by two/,
      /coolant/,
      /manuals .* prevail/,
      /local code/,
    ])
      expect(words).toMatch(warning);
  });

  test('numbers the steps; each says what, how, with what, why now and what to look at', async () => {
    const host = await page(answer);
    const titles = [...host.querySelectorAll('.assembly-step label')].map(({ textContent }) => textContent);
    expect(titles).toEqual(answer.sheet.steps.map(({ number, title }) => `${number}. ${title}`));
    // No builder can fit a processor under its cooler, and none fastens the sink before the drive it lies on.
    const place = (title: RegExp) => titles.findIndex((text) => title.test(text ?? ''));
    expect(place(/Fit the processor$/)).toBeGreaterThan(-1);
    expect(place(/Fit the processor$/)).toBeLessThan(place(/Put in the cooler$/));
    expect(place(/Fit drive 1$/)).toBeLessThan(place(/Fit the sink/));
    const drive = stepOf(host, /Fit drive 1$/).textContent ?? '';
    expect(drive).toMatch(/Tilted in .*; on the bench, on the board\./);
    expect(drive).toMatch(/1 × M2 × 3/);
    expect(drive).toMatch(/precision screwdriver/);
    expect(drive).toMatch(/Why now.*before the sink/);
    expect(drive).toMatch(/Check.*pushed in as far as it goes/);
    expect(stepOf(host, /Take off the side panel/).textContent).toMatch(/Caution.*Glass/);
  });

  test('compares the leads, and says in words which are too short', async () => {
    const host = await page(answer);
    const rows = [...sectionOf(host, /^Leads$/).querySelectorAll('tbody tr')];
    expect(rows).toHaveLength(answer.sheet.leadList.leads.length);
    for (const row of rows) {
      const [needed, available] = [...row.querySelectorAll('td')].map((cell) => Number(cell.textContent));
      if (!Number.isFinite(needed)) continue;
      // Either length is rounded to a millimetre.
      const spare = available! - needed!;
      if (Math.abs(spare) < 2) continue;
      expect(/too short/.test(row.textContent ?? ''), row.textContent ?? '').toBe(spare < 0);
    }
  });

  test('says of every part what comes out first', async () => {
    const host = await page(answer);
    const rows = [...sectionOf(host, /^To change a part/).querySelectorAll('tbody tr')];
    const processor = rows.find((row) => /^The processor/.test(row.textContent ?? ''));
    expect(processor?.textContent).toMatch(/the cooler/);
    expect(rows).toHaveLength(answer.service.length);
  });

  test('shows the part of a step in the drawing', async () => {
    const shown = vi.fn();
    const host = await render(
      <SheetPage answer={answer} ticks={new Set()} onTick={nothing} onShow={shown} />,
    );
    await doing(() =>
      stepOf(host, /Put in the cooler$/)
        .querySelector<HTMLButtonElement>('button[aria-label^="Show"]')
        ?.click(),
    );
    expect(viewStore.getState().selectedPart).toBe('cooler');
    expect(shown).toHaveBeenCalledOnce();
  });

  test('shows what is ticked, and asks for a tick by the key of the step', async () => {
    const ticked = vi.fn();
    const { key } = answer.subjects[0]!;
    const host = await render(
      <SheetPage answer={answer} ticks={new Set([key])} onTick={ticked} onShow={nothing} />,
    );
    const boxes = [...host.querySelectorAll<HTMLInputElement>('input[type="checkbox"]')];
    expect(boxes.filter(({ checked }) => checked)).toEqual([boxes[0]]);
    expect(host.textContent).toContain(`1 of ${boxes.length} done`);
    await doing(() => boxes[1]?.click());
    expect(ticked).toHaveBeenCalledWith(answer.subjects[1]!.key, true);
    expect(new Set(answer.subjects.map((subject) => subject.key)).size, 'keys differ').toBe(boxes.length);
  });
});

test('a plan that cannot be built says who holds whom and what would free them', async () => {
  const host = await page({
    ...answer,
    sheet: { ...answer.sheet, buildable: false, problem: 'Stuck.', unproved: ['No room at a screw.'] },
    knot: {
      knots: [
        { units: ['cooler', 'card'], sentence: 'Two block each other.', pairs: ['They overlap by 4.0 mm.'] },
      ],
      waiting: ['memory'],
      openings: [],
      freeing: [['card']],
      sentence: 'Stuck.',
    },
  });
  const words = sectionOf(host, /cannot be put together/).textContent ?? '';
  expect(words).toContain('Two block each other.');
  expect(words).toContain('They overlap by 4.0 mm.');
  expect(words).toContain('Without the card the rest goes together.');
  expect(words).toContain('Only waiting for that: memory 1.');
  expect(sectionOf(host, /^Unproved/).textContent).toContain('No room at a screw.');
});

test('a plan with nothing in it says so and asks nothing', async () => {
  openPlan('empty', emptyPlan);
  await render(<AssemblyDialog onClose={nothing} />);
  expect(document.querySelector('dialog .assembly')?.textContent).toMatch(/Nothing is placed yet/);
});
