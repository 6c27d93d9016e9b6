import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nominal } from '../../../geometry/parts/dimension';
import type { EnclosureSpec } from '../../../geometry/parts/enclosure/fields';
import { outerSizeOf } from '../../../geometry/parts/enclosure/outer-size';
import { enclosureFromLimits } from '../../../geometry/parts/enclosure-from-limits/from-limits';
import {
  enclosureLayoutSchema,
  type PublishedLimits,
} from '../../../geometry/parts/enclosure-from-limits/limits';
import { everyShelfEntry } from '../../views/every-shelf-entry';
import { publishedLimitsOf } from './limits-of-enclosure';

type How = Pick<PublishedLimits, 'layout' | 'boardForm' | 'slots' | 'supply'>;

/** Every enclosure on the shelf, as its maker would describe it. */
const twins: readonly (readonly [id: string, how: How])[] = [
  ['tidewrack-saltpan-26', { layout: 'upright tower', boardForm: 'microATX', slots: 4, supply: 'ATX' }],
  ['skerrow-headland-33', { layout: 'upright tower', boardForm: 'microATX', slots: 4, supply: 'ATX' }],
  ['lowstrand-gannet-16', { layout: 'upright tower', boardForm: 'Mini-ITX', slots: 3 }],
  ['skerrow-cleft-11', { layout: 'card behind the board on a riser', boardForm: 'Mini-ITX', slots: 3 }],
  ['lowstrand-cuddy-23', { layout: 'cube with the board on a shelf', boardForm: 'microATX', slots: 4 }],
  ['lowstrand-tidepole-5', { layout: 'upright tower', boardForm: 'Mini-ITX', slots: 2, supply: 'Flex ATX' }],
  ['skerrow-foreland-42', { layout: 'upright tower', boardForm: 'ATX', slots: 7, supply: 'ATX' }],
  ['tidewrack-carryall-19', { layout: 'upright tower', boardForm: 'Mini-ITX', slots: 3 }],
  ['skerrow-chimney-22', { layout: 'board turned a quarter', boardForm: 'microATX', slots: 4 }],
];

const identity = { maker: 'Test', model: 'Twin' };
const SAME_MM = 0.01;

function enclosureOf(id: string): EnclosureSpec {
  const spec = everyShelfEntry.find(([name]) => name === id)?.[1];
  if (spec?.kind !== 'enclosure') throw new RangeError(id);
  return spec;
}

/** Behind the tray, or under the deck of a board that lies. */
function roomBehind({ interior, board }: EnclosureSpec, layout: How['layout']): number {
  const lies = layout === 'cube with the board on a shelf' || layout === 'board lying flat';
  return lies && board.corner ? nominal(board.corner[1]) - 1 : nominal(interior.behindTray);
}

const numbersOf = (limits: PublishedLimits) =>
  Object.entries(limits).filter((entry): entry is [string, number] => typeof entry[1] === 'number');

test('all enclosures of the shelf are here', () => {
  const shelf = everyShelfEntry.filter(([, spec]) => spec.kind === 'enclosure').map(([id]) => id);
  expect(twins.map(([id]) => id).toSorted()).toEqual(shelf.toSorted());
});

describe.each(twins)('%s rebuilt from nothing but its published limits', (id, how) => {
  const measured = enclosureOf(id);
  const limits = publishedLimitsOf(measured, how);
  const { spec, faces, problems } = enclosureFromLimits(
    { ...limits, behindTray: roomBehind(measured, how.layout) },
    identity,
  );

  test('is an enclosure that can be, and has the same limits again', () => {
    expect(problems).toEqual([]);
    const again = Object.fromEntries(numbersOf(publishedLimitsOf(spec, how)));
    for (const [key, value] of numbersOf(limits)) {
      expect(Math.abs((again[key] ?? Number.NaN) - value), `${key} ${value} -> ${again[key]}`).toBeLessThan(
        SAME_MM,
      );
    }
  });

  test('every wall says how it was found, and what is unknown is assumed with a wide band', () => {
    expect(faces.map(({ face }) => face).toSorted()).toEqual([
      'back',
      'floor',
      'front',
      'rear',
      'side',
      'top',
    ]);
    for (const { found, how: words, plusMinus } of faces) {
      expect(words.length).toBeGreaterThan(10);
      if (found === 'assumed') expect(plusMinus).toBeGreaterThanOrEqual(3);
    }
  });

  test('a wall found by a limit stands where the tape measure finds it', () => {
    const found = (face: string) => faces.find((one) => one.face === face)?.found;
    if (how.layout === 'upright tower' || how.layout === 'card behind the board on a riser') {
      expect(found('side')).toBe('limit');
      expect(
        Math.abs(nominal(spec.interior.trayToSide) - nominal(measured.interior.trayToSide)),
      ).toBeLessThan(SAME_MM);
      expect(found('front')).toBe('limit');
      expect(Math.abs(nominal(spec.interior.length) - nominal(measured.interior.length))).toBeLessThan(
        SAME_MM,
      );
    } else {
      const along = how.layout === 'board turned a quarter' ? 'height' : 'length';
      expect(Math.abs(nominal(spec.interior[along]) - nominal(measured.interior[along]))).toBeLessThan(
        SAME_MM,
      );
    }
  });

  test('with the outer size the unknown walls are found too', () => {
    const { walls } = outerSizeOf(measured);
    const [length, height, width] = [0, 1, 2].map((i) => walls.max[i as 0] - walls.min[i as 0]);
    const sheet = nominal(measured.walls?.sheet ?? 1);
    const own = (wall: 'top' | 'floor' | 'side' | 'back' | 'front' | 'rear') =>
      nominal(measured.walls?.[wall]?.thickness ?? sheet);
    const withOuter = enclosureFromLimits(
      {
        ...how,
        sheet: (own('top') + own('floor')) / 2,
        outerLength: length,
        outerHeight: height,
        outerWidth: width,
      },
      identity,
    );
    if (how.layout === 'upright tower')
      expect(nominal(withOuter.spec.interior.height)).toBeCloseTo(nominal(measured.interior.height), 6);
    const floor = withOuter.faces.find(({ face }) => face === 'floor');
    if (how.layout === 'upright tower') expect(floor?.found).toBe('outer size');
  });
});

/** What sheets print, over the range of enclosures that are sold. */
const anyLimits = fc
  .record({
    layout: fc.constantFrom(...enclosureLayoutSchema.options),
    boardForm: fc.constantFrom('Mini-ITX', 'microATX') as fc.Arbitrary<PublishedLimits['boardForm']>,
    slots: fc.integer({ min: 1, max: 2 }),
    coolerHeight: fc.integer({ min: 1400, max: 1900 }),
    cardLength: fc.integer({ min: 2600, max: 4200 }),
    cardThickness: fc.integer({ min: 1300, max: 1600 }),
    behindTray: fc.integer({ min: 50, max: 400 }),
  })
  .map(
    (whole): PublishedLimits => ({
      ...whole,
      coolerHeight: whole.coolerHeight / 10,
      cardLength: whole.cardLength / 10,
      // Behind a riser only the thickness sets the back panel, elsewhere the board must fit as well.
      cardThickness:
        (whole.layout === 'card behind the board on a riser'
          ? whole.cardThickness - 900
          : whole.cardThickness + 800) / 10,
      behindTray: whole.behindTray / 10,
    }),
  );

describe('limits of any sheet', () => {
  test('come back out of the enclosure made from them', () => {
    fc.assert(
      fc.property(anyLimits, (limits) => {
        const { spec, problems } = enclosureFromLimits(limits, identity);
        expect(problems).toEqual([]);
        const again = publishedLimitsOf(spec, limits);
        for (const key of ['coolerHeight', 'cardLength', 'cardThickness'] as const)
          expect(Math.abs(nominal(again[key] ?? Number.NaN) - nominal(limits[key] ?? 0)), key).toBeLessThan(
            SAME_MM,
          );
      }),
      { numRuns: 40 },
    );
  });

  test('any subset gives an enclosure or says why not, and never throws', () => {
    fc.assert(
      fc.property(
        anyLimits,
        fc.subarray(['coolerHeight', 'cardLength', 'cardThickness', 'behindTray'] as const),
        (limits, left) => {
          const partial: { -readonly [K in keyof PublishedLimits]: PublishedLimits[K] } = { ...limits };
          for (const key of left) delete partial[key];
          const { faces, problems } = enclosureFromLimits(partial, identity);
          // Too little behind the tray for the slots of a card on a riser: said, not bent.
          const isTooShallow =
            limits.layout === 'card behind the board on a riser' &&
            nominal(partial.behindTray ?? 100) < 10 + (limits.slots - 1) * 20.32;
          if (partial.cardThickness === undefined && isTooShallow)
            expect(problems.join()).toMatch(/riser|reach/i);
          else expect(problems).toEqual([]);
          expect(faces).toHaveLength(6);
          // The room above the board is never published: one wall at least is unknown.
          expect(faces.filter(({ found }) => found === 'assumed').length).toBeGreaterThanOrEqual(
            1 + left.filter((key) => key === 'coolerHeight' || key === 'cardLength').length,
          );
        },
      ),
      { numRuns: 100 },
    );
  });
});

describe('what a sheet says beside its limits', () => {
  const tower: PublishedLimits = {
    layout: 'upright tower',
    boardForm: 'microATX',
    slots: 4,
    coolerHeight: 165,
    cardLength: 330,
  };

  test('a card length published with a front fan puts the wall behind the fan', () => {
    const bare = enclosureFromLimits(tower, identity).spec.interior.length;
    const fan = enclosureFromLimits({ ...tower, frontFan: 25 }, identity).spec.interior.length;
    expect(nominal(fan) - nominal(bare)).toBeCloseTo(25, 9);
  });

  // 7.781 is printed in the LGA1155 guide, table 5-2; 0.062 in is the board sheet of the ATX specification.
  test('165 mm of cooler: socket and processor, board sheet and standoff added', () => {
    expect(nominal(enclosureFromLimits(tower, identity).spec.interior.trayToSide)).toBeCloseTo(
      165 + 7.781 + 0.062 * 25.4 + 6.5,
      4,
    );
  });

  test('where the outer size disagrees, the report says by how much', () => {
    // 400 outside, two sheets of 1: 398 inside; the card says 330 + 1.017.
    const { faces } = enclosureFromLimits({ ...tower, outerLength: 400 }, identity);
    expect(faces.find(({ face }) => face === 'front')?.outerSays).toBeCloseTo(398 - 331.0174, 2);
  });

  test('a whole number is no finer than it was printed', () => {
    const { faces } = enclosureFromLimits({ ...tower, coolerHeight: 60 }, identity);
    // 0.5 for the printed 60, 0.335 for the lid, 0.15 for the standoff.
    expect(faces.find(({ face }) => face === 'side')?.plusMinus).toBeCloseTo(0.985, 6);
  });

  test('without a cooler height the height of a card finds the panel: 3.4 (slot seat, CEM 3.0 figure 6-1) above the board', () => {
    const { coolerHeight: _, ...rest } = tower;
    const { spec, faces } = enclosureFromLimits({ ...rest, cardHeight: 140 }, identity);
    expect(nominal(spec.interior.trayToSide)).toBeCloseTo(140 + 3.4 + 0.062 * 25.4 + 6.5, 4);
    expect(faces.find(({ face }) => face === 'side')?.found).toBe('limit');
  });

  test('radiators get rails in the middle of their walls, marked as assumed', () => {
    const { spec, problems } = enclosureFromLimits(
      { ...tower, topRadiator: '240', frontRadiator: '280' },
      identity,
    );
    expect(problems).toEqual([]);
    expect(spec.radiatorRails?.map(({ face, rows }) => [face, rows])).toEqual([
      ['top', ['240']],
      ['front', ['280']],
    ]);
    for (const { at } of spec.radiatorRails ?? [])
      expect(at).toMatchObject([{ source: 'assumed' }, { source: 'assumed' }]);
  });

  test('limits that cannot all be true are named', () => {
    const { problems } = enclosureFromLimits({ ...tower, cardLength: 60 }, identity);
    expect(problems.join()).toMatch(/Interior|outside|beyond/);
  });
});
