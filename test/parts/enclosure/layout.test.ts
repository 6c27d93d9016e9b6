import { describe, expect, it } from 'vitest';
import { buildEnclosure } from '../../../geometry/parts/enclosure/enclosure';
import { interiorOf } from '../../../geometry/parts/enclosure/layout';
import { outerSizeOf } from '../../../geometry/parts/enclosure/outer-size';
import { enclosureSpecSchema } from '../../../geometry/parts/enclosure/spec';
import { volumeOfBox } from '../../../geometry/space/oriented-box';
import { transformDirection, transformPoint } from '../../../geometry/space/transform';
import { spanOf } from '../model-rules';
import { flatCube, microAtxTower } from './sample-enclosures';

describe('an upright enclosure', () => {
  const model = buildEnclosure(microAtxTower);
  const byElement = (element: string) => model.boxes.filter((body) => body.element === element);

  it('has the inside its sheet states, from the wall faces and the tray', () => {
    expect(interiorOf(microAtxTower)).toEqual({ min: [0, 0, -23], max: [380, 380, 175] });
    expect(spanOf(model, 'side panel').min[2]).toBe(175);
    expect(spanOf(model, 'back panel').max[2]).toBe(-23);
    for (const piece of byElement('tray')) {
      expect(piece.box.centre[2]).toBeCloseTo(-0.5, 12);
      expect(piece.box.half[2]).toBeCloseTo(0.5, 12);
    }
  });

  it('measures 382 x 382 x 203 mm outside, 29.62 litres, and more with feet and handle', () => {
    const size = outerSizeOf(microAtxTower);
    expect(size.walls).toEqual({ min: [-1, -1, -24], max: [381, 381, 179] });
    // 38.2 x 38.2 x 20.3 cm
    expect(size.litres).toBeCloseTo(29.6226, 4);
    expect(size.overall.min[1]).toBe(-13);
    expect(size.overall.max[1]).toBe(421);
    expect(size.litresOverall).toBeCloseTo(38.2 * 43.4 * 20.3 * 1e-3, 6);
  });

  it('loses no sheet but its openings', () => {
    // Floor: 382 x 198 mm of 1 mm sheet, 140 x 150 of it mesh, no opening.
    const volume = byElement('floor').reduce((sum, body) => sum + volumeOfBox(body.box), 0);
    expect(volume).toBeCloseTo(382 * 198 - 140 * 150, 6);
    const vent = model.boxes.find((body) => body.name === 'floor vent 1');
    expect(vent?.material).toBe('mesh');
    expect(vent && volumeOfBox(vent.box)).toBeCloseTo(140 * 150, 6);
    // Tray: 380 x 380, less a cut-out of 120 x 120, an opening of 25 x 190 and the tongue wells at the rear.
    const tray = byElement('tray').reduce((sum, body) => sum + volumeOfBox(body.box), 0);
    const wells = 380 * 380 - 120 * 120 - 25 * 190 - tray;
    // Four wells: 10.19 mm and a millimetre on either side, from the rear wall to the board's edge, 0.083 in away.
    expect(wells).toBeCloseTo(4 * 12.19 * 0.083 * 25.4, 1);
  });

  it('takes off the panels builders take off, and the covers above the slots', () => {
    const off = model.boxes.filter((body) => body.removable).map((body) => body.element);
    expect(new Set(off)).toEqual(new Set(['side panel', 'back panel', 'rear wall']));
    expect(model.boxes.find((body) => body.name === 'slot cover')?.removable).toBe(true);
  });

  it('seats face inwards, an outside seat outwards', () => {
    const inwards = (id: string) => {
      const mount = model.mounts.find((candidate) => candidate.id === id);
      if (!mount) throw new Error(`no mount ${id}`);
      return { origin: mount.frame.translation, z: transformDirection(mount.frame, [0, 0, 1]) };
    };
    expect(inwards('fan front low')).toEqual({ origin: [380, 80, 90], z: [-1, 0, 0] });
    expect(inwards('fan rear')).toEqual({ origin: [0, 290, 115], z: [1, 0, 0] });
    expect(inwards('fan top')).toEqual({ origin: [150, 381, 90], z: [0, 1, 0] });
    expect(inwards('drive behind')).toEqual({ origin: [300, 60, -1], z: [0, 0, -1] });
  });

  it('turns a seat about its own axis: a row of fans stands upright on the front at 90 degrees', () => {
    const at = (turn: 0 | 90) => {
      const rails = [
        { id: 'f', rows: ['240' as const], face: 'front' as const, at: [150, 90] as [number, number], turn },
      ];
      const rail = buildEnclosure({ ...microAtxTower, radiatorRails: rails }).mounts.find(
        (mount) => mount.id === 'radiator f',
      );
      if (!rail) throw new Error('no rail');
      return transformDirection(rail.frame, [1, 0, 0]);
    };
    expect(at(0)).toEqual([0, 1, 0]);
    expect(Math.abs(at(90)[2])).toBe(1);
  });
});

describe('a board laid flat', () => {
  const mount = buildEnclosure(flatCube).mounts.find((candidate) => candidate.id === 'board');
  if (!mount) throw new Error('no board mount');

  it('looks up, its rear edge at the rear wall', () => {
    expect(transformDirection(mount.frame, [0, 0, 1])).toEqual([0, 1, 0]);
    expect(transformDirection(mount.frame, [0, 1, 0])).toEqual([1, 0, 0]);
    expect(transformPoint(mount.frame, [0, 0, -6.5])[1]).toBeCloseTo(95, 9);
  });

  it('has its tray under it', () => {
    const tray = buildEnclosure(flatCube).boxes.filter((body) => body.element === 'tray');
    for (const piece of tray) expect(piece.box.centre[1] + piece.box.half[1]).toBeCloseTo(95, 9);
  });
});

describe('what an enclosure sheet may not say', () => {
  const issues = (change: Record<string, unknown>) => {
    const result = enclosureSpecSchema.safeParse({ ...microAtxTower, ...change });
    return result.success
      ? []
      : result.error.issues.map((issue) => `${issue.path.join('.')}: ${issue.message}`);
  };
  const board = microAtxTower.board;
  const cases: [string, Record<string, unknown>, string, RegExp][] = [
    [
      'a corner and a distance from the top',
      { board: { ...board, corner: [2, 300, 0] } },
      'board.fromTop',
      /Rear top corner.*Top wall/,
    ],
    [
      'a crooked board',
      { board: { ...board, corner: [2, 300, 0], fromTop: undefined, rotate: [0, 0, 10] } },
      'board.rotate',
      /quarters/,
    ],
    [
      'a turned board without a corner',
      { board: { ...board, rotate: [0, 0, 90] } },
      'board.corner',
      /Rear top corner/,
    ],
    [
      'a board through the floor',
      { board: { ...board, fromTop: 300 } },
      'board.fromTop',
      /standoff.*Interior/,
    ],
    [
      'a board off the tray face',
      { board: { ...board, fromTop: undefined, corner: [2.1082, 350, 9] } },
      'board.corner',
      /Tray to side panel/,
    ],
    [
      'an aperture in the top wall',
      { board: { ...board, fromTop: 1 } },
      'board.fromTop',
      /rear aperture.*Interior/,
    ],
    ['an unknown hole', { board: { ...board, holes: 'BCQ' } }, 'board.holes', /Q/],
    ['a hole twice', { board: { ...board, holes: 'BCC' } }, 'board.holes', /more than once/],
    [
      'slots through the floor',
      {
        interior: { ...microAtxTower.interior, height: 340 },
        board: { ...board, fromTop: 90, slots: 8, holes: 'CFHJ' },
      },
      'board.slots',
      /Slot openings.*Interior/,
    ],
    [
      'cards in a flat enclosure',
      { interior: { ...microAtxTower.interior, trayToSide: 60 } },
      'board.slots',
      /Tray to side panel/,
    ],
    [
      'a supply through the floor',
      { supplyBays: [{ id: 'a', form: 'ATX', face: 'rear', at: [30, 85] }] },
      'supplyBays.0.at',
      /Supply bays.*Interior/,
    ],
    [
      'a fan wider than its wall',
      { fanSeats: [{ id: 'a', sizes: [120, 200], face: 'rear', at: [250, 80] }] },
      'fanSeats.0.at',
      /Fan seats.*Interior/,
    ],
    [
      'a vent past its face',
      { vents: [{ face: 'top', from: [300, 0], to: [390, 100], open: 0.4 }] },
      'vents.0.to',
      /Vents.*Interior/,
    ],
    [
      'a vent without area',
      { vents: [{ face: 'top', from: [300, 0], to: [300, 100], open: 0.4 }] },
      'vents.0.to',
      /no area/,
    ],
    [
      'a shroud longer than the inside',
      { shroud: { height: 90, length: 400 } },
      'shroud.length',
      /Inner length/,
    ],
    [
      'a flat block',
      { blocks: [{ id: 'a', from: [0, 0, 0], to: [10, 0, 10] }] },
      'blocks.0.to',
      /no thickness/,
    ],
    [
      'two seats of one name',
      { driveSeats: [0, 1].map(() => ({ id: 'a', form: '2.5', face: 'floor', at: [99, 50] })) },
      'driveSeats.1.id',
      /twice/,
    ],
    [
      'feet that meet',
      { feet: { height: 10, width: 150, length: 40, inset: 5 } },
      'feet.width',
      /do not fit/,
    ],
  ];

  it.each(cases)('%s', (_, change, path, message) => {
    const found = issues(change);
    expect(
      found.some((text) => text.startsWith(`${path}: `) && message.test(text)),
      found.join('\n'),
    ).toBe(true);
  });

  it('but the sample itself is sound', () => {
    expect(issues({})).toEqual([]);
  });
});
