import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildBoard } from '../../../geometry/parts/board/board';
import { type BoardSpec, boardSpecSchema } from '../../../geometry/parts/board/spec';
import { buildCard } from '../../../geometry/parts/card/card';
import { cardSpecSchema } from '../../../geometry/parts/card/spec';
import { buildDrive } from '../../../geometry/parts/drive/drive';
import { driveSpecSchema } from '../../../geometry/parts/drive/spec';
import { buildMemory } from '../../../geometry/parts/memory/memory';
import { memorySpecSchema } from '../../../geometry/parts/memory/spec';
import { buildProcessor } from '../../../geometry/parts/processor/processor';
import { processorSpecSchema } from '../../../geometry/parts/processor/spec';
import { boundsOfBox, transformBox } from '../../../geometry/space/oriented-box';
import { separateBoxes } from '../../../geometry/space/separation';
import { clashes, type Placed, seat, standing } from '../enclosure/placed';
import { expectSoundModel, spanOf } from '../model-rules';
import { atxBoard, microAtxBoard, miniItxBoard } from './sample-boards';

const inch = 25.4;
const named = { maker: 'Generic', model: 'Sample' };

const memory = (thickness = 3.9) =>
  buildMemory(memorySpecSchema.parse({ kind: 'memory', ...named, form: 'DIMM', thickness }));
const card = (size: string, thickness = 18.71, bracketSlots = 1) =>
  buildCard(
    cardSpecSchema.parse({
      kind: 'card',
      ...named,
      interface: size,
      length: 167.65,
      height: 111.15,
      thickness,
      bracketSlots,
    }),
  );
const drive = (length: number, sink?: number) =>
  buildDrive(
    driveSpecSchema.parse({ kind: 'drive', ...named, form: 'M.2', length, ...(sink ? { sink } : {}) }),
  );

/** Whether a solid of a seated part stands in a named box of the board. */
function standsIn(guest: Placed, board: Placed, name: string): boolean {
  const target = board.model.boxes.find((body) => body.name === name);
  if (!target) throw new Error(`no box ${name}`);
  const room = transformBox(board.pose, target.box);
  return guest.model.boxes.some(
    (body) =>
      body.role === 'solid' && separateBoxes(transformBox(guest.pose, body.box), room).distance < -1e-6,
  );
}

describe.each([
  ['microATX', microAtxBoard, 9.6, 9.6],
  ['ATX', atxBoard, 12, 9.6],
] as const)('a %s board', (_, spec, width, depth) => {
  const model = buildBoard(spec);

  it('is a sound body', () => expectSoundModel(model));

  it('has the outline of microATX 1.2 table 3 and a sheet of 0.062 in', () => {
    const sheet = spanOf(model, 'circuit board');
    expect(sheet.min[0]).toBe(0);
    expect(sheet.max[0]).toBeCloseTo(width * inch, 9);
    expect(sheet.max[1]).toBeCloseTo(depth * inch, 9);
    expect(sheet.max[2]).toBe(0);
    expect(sheet.min[2]).toBeCloseTo(-0.062 * inch, 9);
  });

  it('shows its connectors 0.445 in behind the hole row (microATX 1.2 figure 5 note), within the aperture', () => {
    const block = spanOf(model, 'rear connectors 1');
    expect(block.min[1]).toBeCloseTo((0.4 - 0.445) * inch, 9);
    expect(block.max[0] - block.min[0]).toBeCloseTo(5.99 * inch, 9);
    expect(block.max[2]).toBeLessThan(1.6 * inch);
    expect(block.min[0]).toBeGreaterThan(-0.096 * inch);
    expect(block.max[0]).toBeLessThan(6.154 * inch);
  });

  it('lays every mount and foot in an orthonormal frame on the underside', () => {
    const foot = model.feet[0];
    expect(foot?.pattern).toBe('board');
    expect(foot?.frame.translation[2]).toBeCloseTo(-0.062 * inch, 9);
  });
});

describe('a Mini-ITX board', () => {
  const model = buildBoard(miniItxBoard);

  it('is a sound body', () => expectSoundModel(model));

  it('of 170.00 mm starts 0.18 mm below the shared corner and ends at 6.7 in', () => {
    const sheet = spanOf(model, 'circuit board');
    expect(sheet.min[0]).toBeCloseTo(0.18, 2);
    expect(sheet.max[0]).toBeCloseTo(170.18, 9);
  });

  it('needs its four holes C, F, H, J', () => {
    expect(model.feet[0]?.points?.map((point) => [point.id, point.needed])).toEqual([
      ['C', true],
      ['F', true],
      ['H', true],
      ['J', true],
    ]);
  });

  it('has a socket on its back whose drive hangs below the board', () => {
    const board = standing(model);
    const seated = seat(drive(80), board, 'm2 back');
    expect(clashes(seated, board)).toEqual([]);
    for (const body of seated.model.boxes) {
      expect(boundsOfBox(transformBox(seated.pose, body.box)).max[2]).toBeLessThan(-0.062 * inch);
    }
  });
});

describe('holes of a microATX board', () => {
  const holes = (change: Partial<BoardSpec>) =>
    buildBoard({ ...microAtxBoard, ...change })
      .feet[0]?.points?.map((point) => point.id)
      .sort();

  it('are those of figure 2, R required and S optional', () => {
    expect(holes({})).toEqual([...'BCFHJLMRS']);
    const optional = buildBoard(microAtxBoard).feet[0]?.points?.filter((point) => !point.needed);
    expect(optional?.map((point) => point.id)).toEqual(['S']);
  });

  it('are those that lie on a narrower and shallower board', () => {
    // 8.0 x 6.75 in: B, S (8.25), R (9.05) and the row at 9.35 in are beyond it.
    expect(holes({ width: 8 * inch, depth: 6.75 * inch })).toEqual([...'CFHJ']);
  });

  it('are those the sheet states', () => {
    expect(holes({ holes: 'BCFHJ' })).toEqual([...'BCFHJ']);
  });
});

describe('slots', () => {
  const board = standing(buildBoard(microAtxBoard));

  it('take every edge no longer than the connector', () => {
    const patterns = (id: string) => board.model.mounts.find((mount) => mount.id === id)?.patterns;
    expect(patterns('slot 1')).toEqual(['slot x1']);
    expect(patterns('slot 4')).toEqual(['slot x1', 'slot x4']);
    expect(patterns('slot 2')).toEqual(['slot x1', 'slot x4', 'slot x8', 'slot x16']);
  });

  it('have connectors 25, 39 and 89 mm long from 14.5 mm behind the key (CEM 3.0 figure 6-1)', () => {
    for (const [id, length] of [
      ['slot 1', 25],
      ['slot 4', 39],
      ['slot 2', 89],
    ] as const) {
      const connector = spanOf(board.model, id);
      expect(connector.min[1]).toBeCloseTo(57.1 - 14.5, 2);
      expect(connector.max[1] - connector.min[1]).toBeCloseTo(length, 9);
      expect(connector.max[2]).toBeCloseTo(11.25, 9);
    }
  });

  it('hold a card without a clash', () => {
    expect(clashes(seat(card('x16'), board, 'slot 2'), board)).toEqual([]);
    expect(clashes(seat(card('x1'), board, 'slot 1'), board)).toEqual([]);
  });

  it('a card about three slots thick in the second slot leaves the slot above and covers the one below (common practice, no source)', () => {
    const seated = seat(card('x16', 61, 3), board, 'slot 2');
    expect(standsIn(seated, board, 'slot 1 card space')).toBe(false);
    expect(standsIn(seated, board, 'slot 3 card space')).toBe(true);
    expect(standsIn(seated, board, 'slot 4 card space')).toBe(true);
  });

  it('a card of one slot covers no neighbour: envelopes are 18.71 of 20.32 mm (CEM 3.0 figure 9-1)', () => {
    const seated = seat(card('x16'), board, 'slot 2');
    expect(standsIn(seated, board, 'slot 1 card space')).toBe(false);
    expect(standsIn(seated, board, 'slot 3 card space')).toBe(false);
  });
});

describe('memory', () => {
  const board = standing(buildBoard(microAtxBoard));

  it('is counted away from the processor', () => {
    const y = (id: string) => board.model.mounts.find((mount) => mount.id === id)?.frame.translation[1];
    expect(y('memory 1')).toBeCloseTo(160, 9);
    expect(y('memory 2')).toBeCloseTo(169.5, 9);
    const nearer = buildBoard({ ...microAtxBoard, memory: { ...microAtxBoard.memory, at: [95, 40] } });
    expect(nearer.mounts.find((mount) => mount.id === 'memory 2')?.frame.translation[1]).toBeCloseTo(30.5, 9);
  });

  it('stands 2.50 mm above the board, so a bare module reaches 33.75', () => {
    const seated = seat(memory(), board, 'memory 1');
    expect(clashes(seated, board)).toEqual([]);
    const tops = seated.model.boxes.map((body) => boundsOfBox(transformBox(seated.pose, body.box)).max[2]);
    expect(Math.max(...tops)).toBeCloseTo(33.75, 9);
  });

  // 16 mm thick reaches 8 mm to either side; the bare neighbour (3.9 mm) begins 7.55 mm away.
  it('dressed modules side by side do not cover each other at 9.5 mm', () => {
    const seated = seat(memory(8), board, 'memory 1');
    expect(standsIn(seated, board, 'memory 2 module space')).toBe(false);
    expect(standsIn(seat(memory(16), board, 'memory 1'), board, 'memory 2 module space')).toBe(true);
  });

  it('runs along y when the sheet says so', () => {
    const model = buildBoard({
      ...microAtxBoard,
      memory: { ...microAtxBoard.memory, at: [130, 150], along: 'y' },
    });
    const slot = spanOf(model, 'memory 1 slot');
    expect(slot.max[1] - slot.min[1]).toBeCloseTo(142, 9);
    expect(model.mounts.find((mount) => mount.id === 'memory 2')?.frame.translation[0]).toBeCloseTo(139.5, 9);
  });
});

describe('processor and M.2 drives', () => {
  const board = standing(buildBoard(microAtxBoard));

  it('puts a 4.381 mm package on a 3.4 mm seat: the lid lies at 7.781 mm (LGA1155 guide table 5-2)', () => {
    const processor = buildProcessor(
      processorSpecSchema.parse({
        kind: 'processor',
        ...named,
        socket: 'square-78',
        width: 37.5,
        depth: 45,
        height: 4.381,
        class: 65,
      }),
    );
    const seated = seat(processor, board, 'processor');
    expect(clashes(seated, board)).toEqual([]);
    const top = boundsOfBox(transformBox(seated.pose, processor.boxes[0]?.box ?? board.model.boxes[0]!.box))
      .max[2];
    expect(top).toBeCloseTo(7.781, 9);
  });

  it('leaves a bare drive free under its sink and refuses one with a sink of its own', () => {
    expect(clashes(seat(drive(80), board, 'm2 A'), board)).toEqual([]);
    expect(clashes(seat(drive(60), board, 'm2 A'), board)).toEqual([]);
    expect(clashes(seat(drive(80, 8), board, 'm2 A'), board)).not.toEqual([]);
    expect(clashes(seat(drive(80, 8), board, 'm2 B'), board)).toEqual([]);
  });

  it('seats only the lengths the sheet lists', () => {
    expect(board.model.mounts.find((mount) => mount.id === 'm2 B')?.patterns).toEqual([
      'M.2 22x42',
      'M.2 22x80',
    ]);
  });
});

describe('headers', () => {
  const model = buildBoard(microAtxBoard);
  const feature = (id: string) => model.features.find((candidate) => candidate.id === id);

  it('have stable ids, numbered from the second of a type', () => {
    expect(feature('header:USB 3 20-pin')?.label).toBe('USB 3 20-pin');
    expect(feature('header:fan 4-pin')).toBeDefined();
    expect(feature('header:fan 4-pin 2')).toBeDefined();
  });

  it('without which the machine does not run are required, and only those', () => {
    const required = model.features
      .filter((candidate) => candidate.required)
      .map((candidate) => candidate.id);
    expect(required).toEqual(['header:main 24-pin', 'header:processor 8-pin']);
  });

  it('24-pin: header 51.6 mm long along x, plug 10.7 mm above it, 30 to 35 with its leads (common practice)', () => {
    const header = spanOf(model, 'header main 24-pin');
    expect(header.max[0] - header.min[0]).toBeCloseTo(51.6, 9);
    const plug = spanOf(model, 'plug of main 24-pin');
    expect(plug.min[2]).toBeCloseTo(header.max[2], 9);
    expect(plug.max[2] - plug.min[2]).toBeCloseTo(10.7, 9);
    const bend = spanOf(model, 'bend of main 24-pin');
    expect(bend.max[2]).toBeGreaterThanOrEqual(30);
    expect(bend.max[2]).toBeLessThanOrEqual(35);
  });

  it('USB 3: the plug exceeds 20 mm above the board (Thin Mini-ITX guide 2.5.4.1)', () => {
    expect(spanOf(model, 'plug of USB 3 20-pin').max[2]).toBeGreaterThan(20);
  });

  it('angled SATA leaves forward over the board edge, 20 to 25 mm beyond the header (common practice)', () => {
    const header = spanOf(model, 'header SATA angled');
    const plug = spanOf(model, 'plug of SATA angled');
    expect(header.min[2]).toBeCloseTo(0, 9);
    expect(plug.min[1]).toBeCloseTo(header.max[1], 9);
    expect(plug.max[1] - header.max[1]).toBeGreaterThanOrEqual(20);
    expect(plug.max[1] - header.max[1]).toBeLessThanOrEqual(25);
    expect(plug.min[2]).toBeGreaterThanOrEqual(-1e-9);
  });

  it.each(['+x', '-x', '+y', '-y'] as const)('an angled header faces %s with its plug beyond it', (faces) => {
    const angled = buildBoard({
      ...microAtxBoard,
      headers: [{ type: 'SATA angled', at: [120, 120], faces }],
    });
    const axis = faces.endsWith('x') ? 0 : 1;
    const [header, plug] = [spanOf(angled, 'header SATA angled'), spanOf(angled, 'plug of SATA angled')];
    if (faces.startsWith('+')) expect(plug.min[axis]).toBeCloseTo(header.max[axis], 9);
    else expect(plug.max[axis]).toBeCloseTo(header.min[axis], 9);
    expect(header.min[2]).toBeCloseTo(0, 9);
  });

  it('a main power header laid over keeps its plug above the board', () => {
    const angled = buildBoard({
      ...microAtxBoard,
      headers: [{ type: 'main 24-pin', at: [68, 230], faces: '+y' }],
    });
    expect(spanOf(angled, 'plug of main 24-pin').min[2]).toBeCloseTo(0, 9);
    expect(spanOf(angled, 'plug of main 24-pin').max[1]).toBeGreaterThan(
      spanOf(angled, 'header main 24-pin').max[1],
    );
  });
});

describe('component-height zones', () => {
  const zones = buildBoard(microAtxBoard).boxes.filter((body) => body.role === 'zone');

  it('name area, limit and height: 76.20 required over the processor (microATX 1.2 table 6), 15.24 under cards', () => {
    const names = zones.map((zone) => zone.name);
    expect(names).toContain('zone A required, chassis clearance, 76.20 mm');
    expect(names).toContain('zone B, board component, 15.24 mm');
    expect(names).toContain('zone slot 2 under card, rear, board component, 5.08 mm');
    expect(names).toContain('zone underside, chassis clearance, 6.35 mm');
  });

  it('of board components end at the board', () => {
    for (const zone of zones.filter((body) => body.name.includes('board component'))) {
      const { min, max } = boundsOfBox(zone.box);
      expect(min[0]).toBeGreaterThanOrEqual(0);
      expect(max[0]).toBeLessThanOrEqual(9.6 * inch + 1e-9);
      expect(max[1]).toBeLessThanOrEqual(9.6 * inch + 1e-9);
    }
  });
});

describe('what a board sheet may not say', () => {
  const issues = (change: Record<string, unknown>) => {
    const result = boardSpecSchema.safeParse({ ...microAtxBoard, ...change });
    return result.success
      ? []
      : result.error.issues.map((issue) => `${issue.path.join('.')}: ${issue.message}`);
  };
  const cases: [string, Record<string, unknown>, string, RegExp][] = [
    [
      'a socket beyond the edge',
      { socket: { pattern: 'square-78', at: [300, 100] } },
      'socket.at',
      /Processor socket.*Width/,
    ],
    ['a slot beyond a narrow board', { width: 200 }, 'slots.2.position', /position 3.*Width/],
    [
      'two slots in one position',
      { slots: [1, 1].map((position) => ({ position, size: 'x1' })) },
      'slots.1.position',
      /twice/,
    ],
    [
      'slots closer than they are wide',
      { memory: { ...microAtxBoard.memory, pitch: 5 } },
      'memory.pitch',
      /Slot pitch.*width/,
    ],
    [
      'a sink inside its drive',
      { m2: [{ id: 'A', at: [145, 40], towards: '+y', lengths: [80], sink: 4 }] },
      'm2.0.sink',
      /Sink height/,
    ],
    [
      'a drive over the edge',
      { m2: [{ id: 'A', at: [145, 200], towards: '+y', lengths: [80] }] },
      'm2.0.lengths',
      /80 mm.*Depth/,
    ],
    [
      'a plug along its own row',
      { headers: [{ type: 'SATA angled', at: [200, 235], along: 'y' }] },
      'headers.0.along',
      /Runs along.*leaves/,
    ],
    ['a hole no form has', { holes: 'BCZQ' }, 'holes', /Q/],
    [
      'a sink without area',
      { sinks: [{ id: 'a', from: [10, 10], to: [10, 40], height: 20 }] },
      'sinks.0.to',
      /no area/,
    ],
    [
      'two sockets of one name',
      { m2: [40, 100].map((x) => ({ id: 'A', at: [x, 60], towards: '+y', lengths: [80] })) },
      'm2.1.id',
      /twice/,
    ],
  ];

  it.each(cases)('%s', (_, change, path, message) => {
    const found = issues(change);
    expect(
      found.some((text) => text.startsWith(`${path}: `) && message.test(text)),
      found.join('\n'),
    ).toBe(true);
  });
});

describe('any board the schema lets through', () => {
  const place = fc.tuple(fc.integer({ min: 0, max: 300 }), fc.integer({ min: 0, max: 240 }));
  const directions = fc.constantFrom('+x', '-x', '+y', '-y');
  const anyBoard = fc.record(
    {
      kind: fc.constant('board'),
      maker: fc.constant('Generic'),
      model: fc.constant('Any'),
      form: fc.constantFrom('ATX', 'microATX', 'Mini-ITX', 'FlexATX', 'Mini-DTX', 'SSI-EEB'),
      socket: fc.record({ pattern: fc.constantFrom('square-75', 'square-80', 'rectangle-54x90'), at: place }),
      memory: fc.record({
        form: fc.constantFrom('DIMM', 'SO-DIMM'),
        count: fc.integer({ min: 1, max: 8 }),
        at: place,
        along: fc.constantFrom('x', 'y'),
      }),
      slots: fc.uniqueArray(
        fc.record({
          position: fc.integer({ min: 1, max: 7 }),
          size: fc.constantFrom('x1', 'x4', 'x8', 'x16'),
        }),
        { maxLength: 3, selector: (slot) => slot.position },
      ),
      m2: fc.uniqueArray(
        fc.record({
          id: fc.constantFrom('A', 'B'),
          at: place,
          towards: directions,
          lengths: fc.constant([42, 60]),
          behind: fc.boolean(),
        }),
        { maxLength: 2, selector: (m2) => m2.id },
      ),
      headers: fc.array(
        fc.record({
          type: fc.constantFrom('main 24-pin', 'fan 4-pin', 'SATA angled', 'USB 3 20-pin', 'clear settings'),
          at: place,
          faces: fc.oneof(fc.constant('up'), directions),
        }),
        { maxLength: 6 },
      ),
      coinCell: place,
    },
    { requiredKeys: ['kind', 'maker', 'model', 'form', 'socket', 'memory', 'slots'] },
  );

  it('has finite boxes, unique names and mounts, and features that name its boxes', () => {
    let built = 0;
    fc.assert(
      fc.property(anyBoard, (draft) => {
        const parsed = boardSpecSchema.safeParse(draft);
        if (!parsed.success) return;
        built++;
        const model = buildBoard(parsed.data);
        // What stands on a board at random may overlap; that is no rule of the body.
        expectSoundModel({
          ...model,
          boxes: model.boxes.map((body) => ({ ...body, role: body.role === 'solid' ? 'zone' : body.role })),
        });
      }),
      { numRuns: 500, seed: 20261124 },
    );
    expect(built).toBeGreaterThan(50);
  });
});
