import { describe, expect, test } from 'vitest';
import { type PartSpec, partKinds } from '../../geometry';
import { arrangeShelf, matchShelf, type ShelfWish } from '../../src/shelf/arrange-shelf';
import { longestEdge } from '../../src/shelf/entry-figures';
import { searchShelf } from '../../src/shelf/search-shelf';
import type { ShelfEntry } from '../../src/shelf/shelf-entry';
import type { Remarks } from '../../src/store/stored-records';
import type { SeatVerdict } from '../../src/workers/shelf-request';
import { everyShelfEntry } from '../views/every-shelf-entry';

const fan = (
  id: string,
  model: string,
  more: Partial<PartSpec & { size: 120 | 140; thickness: number }> = {},
) => ({ id, spec: { kind: 'fan', maker: 'Quayside', size: 120, ...more, model } as PartSpec }) as ShelfEntry;

const entries: readonly ShelfEntry[] = [
  fan('breeze', 'Breeze', { mass: 150 }),
  { ...fan('gale', 'Gale', { size: 140, thickness: 30, mass: 120 }), note: 'loud' },
  fan('embarcadero', 'Embarcadero'),
  fan('über', 'Überfahrt'),
];
const found = (typed: string) => searchShelf(entries, typed).map(({ id }) => id);

describe('finding a part', () => {
  test('every word must be there, in any order and any case', () => {
    expect(found('quayside')).toHaveLength(4);
    expect(found('LOUD gale')).toEqual(['gale']);
    expect(found('breeze 140')).toEqual([]);
  });

  test('figures can be searched for, and are never taken for others', () => {
    expect(found('140')).toEqual(['gale']);
    expect(found('30 mm')).toEqual(['gale']);
    expect(found('130')).toEqual([]);
  });

  test.each([
    ['a letter too many', 'embarrcadero'],
    ['a letter missing', 'embarcdero'],
    ['a wrong letter', 'embarkadero'],
    ['two letters changed about', 'embracadero'],
  ])('%s is forgiven', (_, typed) => expect(found(typed)).toEqual(['embarcadero']));

  test('a word with another in it is not a slip', () => expect(found('embargo')).toEqual([]));

  test('accents need not be typed', () => {
    expect(found('uberfahrt')).toEqual(['über']);
    expect(found('Überfahrt')).toEqual(['über']);
  });

  test('what was typed exactly comes before what has a slip', () => {
    const two = [fan('a', 'Gannet'), fan('b', 'Gannett'), fan('c', 'Gamnet')];
    expect(searchShelf(two, 'gamnet').map(({ id }) => id)).toEqual(['c', 'a', 'b']);
  });

  test.each(['-', '"', '(', '\\', '  ', '.*', '-breeze', '\u0000'])('%j does no harm', (typed) => {
    expect(() => found(typed)).not.toThrow();
  });
});

describe('arranging the shelf', () => {
  const everything: ShelfWish = {
    typed: '',
    kind: undefined,
    longest: undefined,
    favourites: false,
    fitting: false,
    order: 'shelf',
  };
  const seat = (fits: boolean, millimetres?: number): SeatVerdict => ({
    seat: 'mount',
    where: '',
    fits,
    faults: [],
    covers: [],
    ...(millimetres === undefined ? {} : { tightest: { millimetres, between: '', wanted: 1 } }),
  });
  const verdicts = new Map([
    ['breeze', seat(true, 5)],
    ['gale', seat(false, -2)],
    ['über', seat(true, 9)],
  ]);
  const remarks = new Map<string, Remarks>([
    ['gale', { entry: 'gale', price: { amount: 20 }, mass: 200 }],
    ['über', { entry: 'über', price: { amount: 9.5 }, favourite: true }],
  ]);
  const shown = (change: Partial<ShelfWish>) => {
    const wish = { ...everything, ...change };
    return arrangeShelf(matchShelf(entries, wish, remarks), wish, { remarks, verdicts }).map(({ id }) => id);
  };

  test('only what fits: what is not known yet is not claimed to fit', () => {
    expect(shown({ fitting: true })).toEqual(['breeze', 'über']);
    expect(matchShelf(entries, everything, remarks)).toHaveLength(4);
  });

  test('by gap, either way, what is not known last', () => {
    expect(shown({ order: 'tightest' })).toEqual(['gale', 'breeze', 'über', 'embarcadero']);
    expect(shown({ order: 'most room' })).toEqual(['über', 'breeze', 'gale', 'embarcadero']);
  });

  test('by price, and by mass as weighed before mass as stated', () => {
    expect(shown({ order: 'price' })).toEqual(['über', 'gale', 'breeze', 'embarcadero']);
    expect(shown({ order: 'mass' })).toEqual(['breeze', 'gale', 'embarcadero', 'über']);
  });

  test('by the longest edge, and no longer than wanted', () => {
    expect(shown({ order: 'length' }).at(-1)).toBe('gale');
    expect(shown({ longest: 120 })).not.toContain('gale');
    expect(shown({ longest: 140 })).toContain('gale');
  });

  test('favourites, and one kind', () => {
    expect(shown({ favourites: true })).toEqual(['über']);
    expect(shown({ kind: 'cooler' })).toEqual([]);
  });
});

describe('the longest edge', () => {
  test.each(everyShelfEntry)('of %s is a length', (_, spec) => {
    expect(longestEdge(spec)).toBeGreaterThan(10);
    expect(longestEdge(spec)).toBeLessThan(700);
  });

  test('of a microATX board is that of its outline, with the sockets that stand out of its edge', () => {
    // microATX 1.2: 9.6 inch = 243.84 mm. How far sockets stand out: common practice, no source.
    const board = everyShelfEntry.find(([id]) => id === 'generic-board-microatx');
    expect(longestEdge(board![1])).toBeGreaterThanOrEqual(243.84);
    expect(longestEdge(board![1])).toBeLessThan(243.84 + 5);
  });

  test('every kind is on the shelf that was looked at', () => {
    expect(new Set(everyShelfEntry.map(([, { kind }]) => kind)).size).toBe(partKinds.length);
  });
});
