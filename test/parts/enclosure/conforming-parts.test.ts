import { describe, expect, it } from 'vitest';
import { buildAdapter } from '../../../geometry/parts/adapter/adapter';
import { adapterSpecSchema } from '../../../geometry/parts/adapter/spec';
import { buildBoard } from '../../../geometry/parts/board/board';
import { buildCard } from '../../../geometry/parts/card/card';
import { cardSpecSchema } from '../../../geometry/parts/card/spec';
import { buildEnclosure } from '../../../geometry/parts/enclosure/enclosure';
import { supplySpecSchema } from '../../../geometry/parts/supply/spec';
import { buildSupply } from '../../../geometry/parts/supply/supply';
import { atxBoard, microAtxBoard, miniItxBoard } from '../board/sample-boards';
import { expectSoundModel } from '../model-rules';
import { clashes, seat, standing } from './placed';
import * as sample from './sample-enclosures';

const card = (bracketSlots: number) =>
  buildCard(
    cardSpecSchema.parse({
      kind: 'card',
      maker: 'Generic',
      model: 'Full-height card',
      interface: 'x16',
      length: 167.65,
      height: 111.15,
      thickness: 18.71 + 20.32 * (bracketSlots - 1),
      bracketSlots,
    }),
  );

const layouts = [
  ['microATX tower', sample.microAtxTower, microAtxBoard],
  ['ATX tower', sample.atxTower, atxBoard],
  ['ATX tower with a microATX board', sample.atxTower, microAtxBoard],
  ['ATX tower with a Mini-ITX board', sample.atxTower, miniItxBoard],
  ['flat cube', sample.flatCube, miniItxBoard],
  ['upside down', sample.upsideDown, microAtxBoard],
  ['chimney', sample.chimney, miniItxBoard],
  ['sandwich', sample.sandwich, miniItxBoard],
] as const;

describe.each(layouts)('%s', (_, enclosureSpec, boardSpec) => {
  const enclosure = standing(buildEnclosure(enclosureSpec));
  const board = seat(buildBoard(boardSpec), enclosure, 'board');

  it('has sheets that meet and never share volume', () => {
    expectSoundModel(enclosure.model);
  });

  it('takes a board that keeps to its form without touching it', () => {
    expect(clashes(board, enclosure)).toEqual([]);
  });

  it('takes a card in every slot it has an opening for', () => {
    const slots = boardSpec.slots.filter(
      ({ position, size }) => size === 'x16' && position <= enclosureSpec.board.slots,
    );
    for (const { position } of slots) {
      const seated = seat(card(1), board, `slot ${position}`);
      expect(clashes(seated, enclosure)).toEqual([]);
    }
  });
});

describe('cards of several slots', () => {
  it.each([2, 3])('a bracket of %i slots goes into the tower', (slots) => {
    const enclosure = standing(buildEnclosure(sample.microAtxTower));
    const board = seat(buildBoard(microAtxBoard), enclosure, 'board');
    expect(clashes(seat(card(slots), board, 'slot 2'), enclosure)).toEqual([]);
  });

  it('a bracket of 3 slots does not go where the enclosure ends after 2', () => {
    const enclosure = standing(
      buildEnclosure({ ...sample.microAtxTower, board: { ...sample.microAtxTower.board, slots: 2 } }),
    );
    const board = seat(buildBoard(microAtxBoard), enclosure, 'board');
    expect(clashes(seat(card(3), board, 'slot 2'), enclosure)).not.toEqual([]);
  });

  it('a card on a riser behind the tray meets its own openings', () => {
    const enclosure = standing(buildEnclosure(sample.sandwich));
    const riser = seat(
      buildAdapter(
        adapterSpecSchema.parse({ kind: 'adapter', form: 'riser socket', maker: 'Generic', model: 'Riser' }),
      ),
      enclosure,
      'riser',
    );
    expect(clashes(riser, enclosure)).toEqual([]);
    for (const slots of [1, 2, 3]) {
      const seated = seat(card(slots), riser, 'slot 1');
      expect(clashes(seated, enclosure)).toEqual([]);
      expect(clashes(seated, riser)).toEqual([]);
    }
  });
});

describe('a supply in its bay', () => {
  const supply = buildSupply(
    supplySpecSchema.parse({
      kind: 'supply',
      maker: 'Generic',
      model: 'ATX supply',
      form: 'ATX',
      plugs: [{ type: 'main 24-pin', count: 1 }],
      modular: false,
      watts: 500,
    }),
  );

  it('stands inside, its screw face on the wall, width across and height up', () => {
    const enclosure = standing(buildEnclosure(sample.atxTower));
    const seated = seat(supply, enclosure, 'supply floor');
    expect(clashes(seated, enclosure)).toEqual([]);
    // The lower left corner seen from outside: 43 below and 75 to the left of (50, 85) on the rear wall.
    expect(seated.pose.translation[0]).toBeCloseTo(0, 9);
    expect(seated.pose.translation[1]).toBeCloseTo(50 - 43, 9);
    expect(seated.pose.translation[2]).toBeCloseTo(85 - 75, 9);
  });
});
