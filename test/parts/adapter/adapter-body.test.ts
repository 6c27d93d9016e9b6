import { describe, expect, it } from 'vitest';
import { buildAdapter } from '../../../geometry/parts/adapter/adapter';
import { adapterSpecSchema } from '../../../geometry/parts/adapter/spec';
import { buildBoard } from '../../../geometry/parts/board/board';
import { buildCard } from '../../../geometry/parts/card/card';
import { cardSpecSchema } from '../../../geometry/parts/card/spec';
import { buildEnclosure } from '../../../geometry/parts/enclosure/enclosure';
import { supplySpecSchema } from '../../../geometry/parts/supply/spec';
import { buildSupply } from '../../../geometry/parts/supply/supply';
import { footFits, matchHoles } from '../../../geometry/plan/mounting';
import { volumeOfBox } from '../../../geometry/space/oriented-box';
import { microAtxBoard } from '../board/sample-boards';
import { clashes, seat, standing } from '../enclosure/placed';
import { atxTower } from '../enclosure/sample-enclosures';
import { expectSoundModel, solidSpan } from '../model-rules';

const named = { kind: 'adapter', maker: 'Generic', model: 'Sample' };
const plate = (change: Record<string, unknown> = {}) =>
  adapterSpecSchema.parse({ ...named, form: 'supply plate', opening: 'ATX', takes: 'SFX-L', ...change });
const supply = (form: string) =>
  buildSupply(
    supplySpecSchema.parse({
      kind: 'supply',
      maker: 'Generic',
      model: 'Sample',
      form,
      plugs: [{ type: 'main 24-pin', count: 1, sockets: 1 }],
      modular: true,
      watts: 600,
    }),
  );

describe('a plate that carries SFX in an ATX opening', () => {
  const enclosure = standing(buildEnclosure(atxTower));
  const seated = seat(buildAdapter(plate({ thickness: 1.5 })), enclosure, 'supply floor');

  it('is 150 x 86 mm less the opening', () => {
    expectSoundModel(seated.model);
    const span = solidSpan(seated.model);
    expect(span.max).toEqual([1.5, 86, 150]);
    const volume = seated.model.boxes.reduce((sum, body) => sum + volumeOfBox(body.box), 0);
    // Face of 125 x 63.5 mm, open but for a rim of 10 mm.
    expect(volume).toBeCloseTo((150 * 86 - 105 * 43.5) * 1.5, 6);
  });

  it('moves the supply inwards by its thickness and centres it in the opening', () => {
    const small = seat(supply('SFX-L'), seated, 'supply');
    expect(small.pose.translation[0]).toBeCloseTo(1.5, 9);
    expect(small.pose.translation[1]).toBeCloseTo(50 - 63.5 / 2, 9);
    expect(small.pose.translation[2]).toBeCloseTo(85 - 125 / 2, 9);
    expect(clashes(small, seated)).toEqual([]);
    expect(clashes(small, enclosure)).toEqual([]);
    expect(clashes(seated, enclosure)).toEqual([]);
  });

  it('hangs the supply off centre where the sheet says so, up and to the right seen from outside', () => {
    const offset = seat(
      buildAdapter(plate({ thickness: 1.5, offset: [11.25, -12.5] })),
      enclosure,
      'supply floor',
    );
    const small = seat(supply('SFX-L'), offset, 'supply');
    expect(small.pose.translation[1]).toBeCloseTo(50 + 43 - 63.5, 9);
    expect(small.pose.translation[2]).toBeCloseTo(85 - 75, 9);
  });

  it('meets the four ATX holes and offers the SFX ones, either way up', () => {
    const bay = enclosure.model.mounts.find((mount) => mount.id === 'supply floor');
    const foot = seated.model.feet[0];
    const opening = seated.model.mounts[0];
    const face = supply('SFX-L').feet[0];
    if (!bay || !foot || !opening || !face) throw new Error('mount or foot is missing');
    expect(matchHoles(bay, foot).missing).toEqual([]);
    for (const turn of [0, 180]) expect(matchHoles(opening, face, turn).missing).toEqual([]);
  });

  it('is the only way for an SFX-L supply into an ATX opening (common practice, no source)', () => {
    const bay = enclosure.model.mounts.find((mount) => mount.id === 'supply floor');
    const foot = supply('SFX-L').feet[0];
    if (!bay || !foot) throw new Error('mount or foot is missing');
    expect(footFits(bay, foot)).toBe(false);
    // And it leaves more room before its plugs than an ATX supply of ordinary length: 1.5 + 130 < 140.
    const small = seat(supply('SFX-L'), seated, 'supply');
    const large = seat(supply('ATX'), enclosure, 'supply floor');
    const end = (placed: typeof small) => placed.pose.translation[0] + solidSpan(placed.model).max[0];
    expect(end(small)).toBeCloseTo(131.5, 9);
    expect(end(large)).toBeCloseTo(140, 9);
  });

  it('is refused when the supply is larger than the opening, or hangs beyond the plate', () => {
    const refused = (change: Record<string, unknown>) =>
      adapterSpecSchema.safeParse({ ...plate(), ...change }).error?.issues.map((issue) => issue.message) ??
      [];
    expect(refused({ opening: 'SFX', takes: 'ATX' }).join()).toMatch(
      /Takes a supply of.*Fills an opening for/,
    );
    // Free height 86 - 63.5 = 22.5: 11.25 up or down.
    expect(refused({ offset: [11.26, 0] }).join()).toMatch(/Offset.*11.25/);
    expect(refused({ offset: [11.25, 12.5] })).toEqual([]);
  });
});

describe('a riser', () => {
  const board = standing(buildBoard(microAtxBoard));
  const plug = buildAdapter(adapterSpecSchema.parse({ ...named, form: 'riser plug', height: 15, bend: 25 }));
  const socket = standing(
    buildAdapter(adapterSpecSchema.parse({ ...named, form: 'riser socket', boardHeight: 10 })),
  );

  it('plugs into a x16 slot and no smaller one', () => {
    expectSoundModel(plug);
    const fits = board.model.mounts.filter((mount) => plug.feet.some((foot) => footFits(mount, foot)));
    expect(fits.map((mount) => mount.id)).toEqual(['slot 2']);
    const seated = seat(plug, board, 'slot 2');
    expect(clashes(seated, board)).toEqual([]);
    // Connector 11.25 high (CEM 3.0 figure 6-1), 15 mm of plug above it.
    expect(seated.pose.translation[2] + solidSpan(plug).max[2]).toBeCloseTo(11.25 + 15, 9);
  });

  it('carries any card up to x16, seated 3.40 mm above its circuit board (CEM 3.0 figure 6-1)', () => {
    expectSoundModel(socket.model);
    for (const size of ['x1', 'x4', 'x8', 'x16']) {
      const card = buildCard(
        cardSpecSchema.parse({
          kind: 'card',
          maker: 'Generic',
          model: 'Sample',
          interface: size,
          length: 167.65,
          height: 111.15,
          thickness: 18.71,
          bracketSlots: 1,
        }),
      );
      const seated = seat(card, socket, 'slot 1');
      expect(clashes(seated, socket)).toEqual([]);
      expect(solidSpan(socket.model, (body) => body.element === 'riser').max[2]).toBeCloseTo(-3.4, 9);
    }
    expect(solidSpan(socket.model).min[2]).toBeCloseTo(-13.4, 9);
  });
});
