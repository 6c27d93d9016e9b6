import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, test } from 'vitest';
import type { PartSpec } from '../../../geometry';
import { verdictStore } from '../../../src/shelf/seat-verdicts';
import { shelfStore } from '../../../src/shelf/shelf-store';
import { closePlanDatabase } from '../../../src/store/plan-database';
import { openPlan, planStore } from '../../../src/store/plan-store';
import { selectPart } from '../../../src/store/view-store';
import { gapOfSeat, sentencesOfSeat, toneOfSeat, wordOfSeat } from '../../../src/views/shelf-list/seat-words';
import { ShelfList } from '../../../src/views/shelf-list/shelf-list';
import type { SeatVerdict } from '../../../src/workers/shelf-request';
import { samplePlan } from '../../store/sample-plan';
import { doing, eventually, press, render, type } from '../render';

const drag = { begin: () => {}, move: () => {}, drop: () => {}, cancel: () => {} };
const fan = (index: number, size: 120 | 140 = 120): PartSpec => ({
  kind: 'fan',
  maker: 'Quayside',
  model: `Breeze ${index}`,
  size,
});
const fans = (count: number) =>
  Array.from({ length: count }, (_, index) => ({ id: `fan-${index}`, spec: fan(index) }));

beforeEach(async () => {
  await closePlanDatabase();
  globalThis.indexedDB = new IDBFactory();
  openPlan('one', samplePlan());
  selectPart(undefined);
  verdictStore.setState({ verdicts: new Map() });
  shelfStore.setState({ entries: fans(5), remarks: new Map(), loaded: true });
});

const rows = (host: HTMLElement) => [...host.querySelectorAll<HTMLElement>('[aria-label="Shelf"] > li')];
const button = (host: HTMLElement, name: string) =>
  [...host.querySelectorAll<HTMLElement>('button')].find(
    (one) => (one.getAttribute('aria-label') ?? one.textContent) === name,
  )!;
const search = (host: HTMLElement) => host.querySelector<HTMLInputElement>('input[type="search"]')!;

describe('the list', () => {
  test('says of each row which of how many it is', async () => {
    const host = await render(<ShelfList drag={drag} />);
    expect(
      rows(host).map((row) => [row.getAttribute('aria-posinset'), row.getAttribute('aria-setsize')]),
    ).toEqual([1, 2, 3, 4, 5].map((place) => [String(place), '5']));
    expect(host.querySelector('[role="status"]')?.textContent).toBe('5 parts');
  });

  test('narrows down as a person types, and says to how many', async () => {
    const host = await render(<ShelfList drag={drag} />);
    await type(search(host), 'breze 3');
    expect(rows(host).map((row) => row.dataset.shelfId)).toEqual(['fan-3']);
    expect(host.querySelector('[role="status"]')?.textContent).toBe('1 of 5 parts');
    await type(search(host), 'nothing of the kind');
    expect(host.textContent).toContain('Nothing on the shelf matches.');
  });

  test('is walked by arrow keys on the same button, and the Tab key reaches one row', async () => {
    const host = await render(<ShelfList drag={drag} />);
    const place = (index: number) => button(host, `Place Quayside Breeze ${index}`);
    expect(place(0).tabIndex).toBe(0);
    expect(place(1).tabIndex).toBe(-1);
    await doing(() => place(0).focus());
    await press(place(0), 'ArrowDown');
    expect(document.activeElement).toBe(place(1));
    await press(place(1), 'End');
    expect(document.activeElement).toBe(place(4));
    await press(place(4), 'ArrowDown');
    expect(document.activeElement).toBe(place(4));
    await press(place(4), 'Home');
    expect(document.activeElement).toBe(place(0));
    expect(
      [...host.querySelectorAll<HTMLElement>('li button')].filter(({ tabIndex }) => tabIndex === 0),
    ).toHaveLength(3);
  });

  test('of fifty thousand puts only a few into the page, and finds one of them', async () => {
    shelfStore.setState({ entries: fans(50_000) });
    const host = await render(<ShelfList drag={drag} />);
    expect(rows(host).length).toBeLessThan(60);
    expect(host.querySelector('[role="status"]')?.textContent).toBe('50000 parts');
    await type(search(host), 'Breeze 49999');
    await eventually(() => expect(rows(host).map((row) => row.dataset.shelfId)).toEqual(['fan-49999']));
  });

  test('marks a favourite, keeps it, and shows only those when asked', async () => {
    const host = await render(<ShelfList drag={drag} />);
    await doing(() => button(host, 'Favourite: Quayside Breeze 2').click());
    await eventually(() =>
      expect(button(host, 'Favourite: Quayside Breeze 2').getAttribute('aria-pressed')).toBe('true'),
    );
    await doing(() => button(host, 'More').click());
    const box = [...host.querySelectorAll('label')].find((label) => label.textContent === 'Favourites');
    await doing(() => box?.querySelector('input')?.click());
    expect(rows(host).map((row) => row.dataset.shelfId)).toEqual(['fan-2']);
  });
});

describe('how each would sit', () => {
  const verdict = (fits: boolean, more: Partial<SeatVerdict> = {}) => ({
    seat: 'mount' as const,
    where: 'Rear on Enclosure',
    fits,
    faults: [],
    covers: [],
    fresh: true,
    ...more,
  });

  test('is found beside the page and shown in the row', async () => {
    const host = await render(<ShelfList drag={drag} />);
    await eventually(() => expect(rows(host)[0]?.querySelector('.fit-mark')).not.toBeNull());
    expect(rows(host)[0]?.querySelector('.seat-line')?.textContent).toMatch(/mm|no mount|nothing near/);
  });

  test('what is placed goes where the verdict says', async () => {
    const host = await render(<ShelfList drag={drag} />);
    const placement = { at: [1, 2, 3] as [number, number, number] };
    // At once, before the verdict that is really found takes its place.
    await doing(() => {
      verdictStore.setState({ verdicts: new Map([['fan-0', verdict(true, { placement })]]) });
      button(host, 'Place Quayside Breeze 0').click();
    });
    const placed = Object.values(planStore.getState().plan.parts).find(({ shelf }) => shelf === 'fan-0');
    expect(placed?.placement).toEqual(placement);
  });

  test('what is placed brings its price along', async () => {
    shelfStore.setState({ remarks: new Map([['fan-1', { entry: 'fan-1', price: { amount: 12.5 } }]]) });
    const host = await render(<ShelfList drag={drag} />);
    await doing(() => button(host, 'Place Quayside Breeze 1').click());
    expect(Object.values(planStore.getState().plan.prices ?? {})).toEqual([{ amount: 12.5 }]);
  });

  test.each<[string, SeatVerdict, string, string, string]>([
    [
      'with room',
      verdict(true, { tightest: { millimetres: 7.04, between: 'to side panel', wanted: 3 } }),
      'clearance',
      'Fits',
      '7.0 mm to side panel',
    ],
    [
      'with less than wanted',
      verdict(true, { tightest: { millimetres: 2.7, between: 'to side panel', wanted: 3 } }),
      'transition',
      'Fits tightly',
      '2.7 mm to side panel',
    ],
    [
      'overlapping',
      verdict(false, {
        tightest: { millimetres: -4.2, between: 'to card', wanted: 1 },
        faults: ['Fan overlaps card by 4.2 mm.'],
      }),
      'interference',
      'Does not fit',
      '−4.2 mm to card',
    ],
    [
      'against a plug',
      verdict(false, {
        tightest: { millimetres: 4, between: 'to card', wanted: 1 },
        faults: ['The plug has no room.'],
      }),
      'interference',
      'Does not fit',
      'The plug has no room.',
    ],
    ['without a seat', { ...verdict(false), seat: 'none' }, 'note', 'No seat', 'no mount here takes it'],
    [
      'that cannot be built',
      { ...verdict(false), seat: 'unbuildable' },
      'interference',
      'Does not fit',
      'its sheet contradicts itself',
    ],
    ['with nothing near', verdict(true), 'clearance', 'Fits', 'nothing near it'],
  ])('%s is put in words', (_, given, tone, word, gap) => {
    expect(toneOfSeat(given)).toBe(tone);
    expect(wordOfSeat(given)).toBe(word);
    expect(gapOfSeat(given)).toBe(gap);
    expect(sentencesOfSeat(given).join(' ')).not.toMatch(/undefined|NaN/);
  });
});
