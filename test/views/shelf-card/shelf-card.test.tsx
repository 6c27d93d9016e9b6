import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, test } from 'vitest';
import type { PartSpec } from '../../../geometry';
import { changeOwnPart, keepOwnPart, shelfStore } from '../../../src/shelf/shelf-store';
import { closePlanDatabase } from '../../../src/store/plan-database';
import { openPlan, planStore, undo } from '../../../src/store/plan-store';
import { selectPart } from '../../../src/store/view-store';
import { SelectionDetails } from '../../../src/views/part-details/selection-details';
import { ShelfCard } from '../../../src/views/shelf-card/shelf-card-dialog';
import { samplePlan } from '../../store/sample-plan';
import { doing, eventually, render, type } from '../render';

const fan = (thickness: number): PartSpec => ({
  kind: 'fan',
  maker: 'Quayside',
  model: 'Breeze',
  size: 120,
  thickness,
});
const button = (name: RegExp) =>
  [...document.querySelectorAll<HTMLButtonElement>('button')].find((one) =>
    name.test(one.getAttribute('aria-label') ?? one.textContent ?? ''),
  )!;
const field = (label: string) =>
  [...document.querySelectorAll('label')]
    .find((one) => one.textContent?.startsWith(label))
    ?.querySelector<HTMLInputElement>('input, textarea') as HTMLInputElement;

beforeEach(async () => {
  await closePlanDatabase();
  globalThis.indexedDB = new IDBFactory();
  shelfStore.setState({ entries: [], remarks: new Map(), loaded: true });
  openPlan('one', samplePlan());
});

describe('the card of an own part', () => {
  test('keeps price and mass, refuses what is no number', async () => {
    const { id } = await keepOwnPart(fan(25));
    await render(<ShelfCard id={id} onClose={() => {}} />);
    await type(field('Price'), '12,50');
    await type(field('Mass'), 'heavy');
    await doing(() => button(/^Keep$/).click());
    expect(document.querySelector('[role="alert"]')?.textContent).toMatch(/mass is not a number/);
    await type(field('Mass'), '148');
    await doing(() => button(/^Keep$/).click());
    await eventually(() =>
      expect(shelfStore.getState().remarks.get(id)).toEqual({
        entry: id,
        price: { amount: 12.5 },
        mass: 148,
      }),
    );
  });

  test('keeps a measurement with who and how, and puts it into the sheet', async () => {
    const { id } = await keepOwnPart(fan(25));
    await render(<ShelfCard id={id} onClose={() => {}} />);
    await doing(() => button(/Add a measurement/).click());
    await type(field('Measured, mm'), '25.3');
    await type(field('Who'), 'M.');
    await type(field('How'), 'caliper');
    await doing(() => button(/Keep the measurement/).click());
    await eventually(() =>
      expect(shelfStore.getState().remarks.get(id)?.evidence).toMatchObject([
        { value: 25.3, unit: 'mm', who: 'M.', how: 'caliper' },
      ]),
    );
    expect(shelfStore.getState().entries[0]).toMatchObject({ revision: 2 });
    await eventually(() => expect(document.body.textContent).toContain('Changed from version 1'));
    await doing(() => button(/Go back to version 1/).click());
    await eventually(() => expect(shelfStore.getState().entries[0]?.spec).toEqual(fan(25)));
    expect(shelfStore.getState().entries[0]?.revision).toBe(3);
  });
});

describe('the details of a part in the plan', () => {
  test('say that it has changed on the shelf, and take that over', async () => {
    const { id, spec } = await keepOwnPart(fan(25));
    const plan = samplePlan();
    const old = plan.parts.fan!;
    openPlan('two', { ...plan, parts: { ...plan.parts, fan: { ...old, spec, shelf: id } } });
    await changeOwnPart(id, fan(28), 1);
    selectPart('fan');
    const host = await render(<SelectionDetails />);
    await eventually(() => expect(host.textContent).toContain('has changed on the shelf'));
    expect(host.querySelector('.shelf-change')?.textContent).toMatch(/Thickness: 25 28/);
    await doing(() => button(/Take over/).click());
    expect(planStore.getState().plan.parts.fan).toMatchObject({ spec: fan(28), shelf: id });
    await eventually(() => expect(host.querySelector('.shelf-change')).toBeNull());
    await doing(undo);
    expect(planStore.getState().plan.parts.fan?.spec).toEqual(spec);
  });
});
