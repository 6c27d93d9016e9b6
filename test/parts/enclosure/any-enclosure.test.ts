import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildEnclosure } from '../../../geometry/parts/enclosure/enclosure';
import { interiorOf } from '../../../geometry/parts/enclosure/layout';
import { type EnclosureSpec, enclosureSpecSchema } from '../../../geometry/parts/enclosure/spec';
import { boundsOfBox } from '../../../geometry/space/oriented-box';
import { expectSoundModel } from '../model-rules';

const mm = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true, noDefaultInfinity: true }).map((value) => Math.round(value * 100) / 100);
const face = fc.constantFrom('rear', 'front', 'top', 'floor', 'side', 'back', 'tray', 'tray back');
const place = fc.tuple(mm(40, 220), mm(30, 130));
const turn = fc.constantFrom(0, 90, 180, 270);

/** Corners of boards turned about each axis, where a small board finds room in most of the interiors below. */
const turnedPlaces = [
  { rotate: [-90, 0, 0], corner: [mm(1, 4), mm(20, 120), mm(-10, 10)] },
  { rotate: [180, 0, 0], corner: [mm(1, 4), mm(5, 60), mm(60, 90)] },
  { rotate: [0, 0, -90], corner: [mm(200, 245), mm(240, 258), fc.constant(0)] },
  { rotate: [0, 0, 180], corner: [mm(180, 250), mm(5, 60), fc.constant(0)] },
  { rotate: [0, 90, 0], corner: [mm(5, 60), mm(200, 250), mm(60, 90)] },
] as const;

/** Sane sheets; what the schema refuses is not built, and at least some of every kind must pass. */
const anyEnclosure = fc.record(
  {
    kind: fc.constant('enclosure'),
    maker: fc.constant('Generic'),
    model: fc.constant('Any'),
    interior: fc.record({
      length: mm(250, 500),
      height: mm(260, 500),
      trayToSide: mm(90, 250),
      behindTray: mm(0, 60),
    }),
    walls: fc.record({ sheet: mm(0.6, 6) }),
    tray: fc.record({
      thickness: mm(0.6, 3),
      cutout: fc.record({
        from: fc.tuple(mm(20, 60), mm(100, 150)),
        to: fc.tuple(mm(90, 180), mm(160, 260)),
      }),
    }),
    board: fc.oneof(
      fc.record({
        fromTop: mm(3, 120),
        standoff: mm(5, 12),
        holes: fc.constantFrom('CFHJ', 'BCFHJLMRS', 'ACFGHJKLM'),
        slots: fc.integer({ min: 0, max: 7 }),
      }),
      ...turnedPlaces.map(({ rotate, corner }) =>
        fc.record({
          rotate: fc.constant(rotate),
          corner: fc.tuple(corner[0], corner[1], corner[2]),
          standoff: mm(5, 12),
          holes: fc.constant('CFHJ'),
          slots: fc.integer({ min: 0, max: 2 }),
        }),
      ),
    ),
    supplyBays: fc.array(
      fc.record({
        id: fc.constant('a'),
        form: fc.constantFrom('ATX', 'SFX', 'SFX-L', 'TFX', 'Flex ATX'),
        face,
        at: place,
        turn,
      }),
      { maxLength: 1 },
    ),
    fanSeats: fc.uniqueArray(
      fc.record({ id: fc.constantFrom('a', 'b', 'c'), sizes: fc.constant([92, 120]), face, at: place }),
      { maxLength: 3, selector: (seat) => seat.id },
    ),
    vents: fc.array(
      fc.record({
        face,
        from: fc.tuple(mm(5, 60), mm(5, 40)),
        to: fc.tuple(mm(61, 240), mm(41, 85)),
        open: fc.constant(0.5),
      }),
      { maxLength: 2 },
    ),
    feet: fc.record({ height: mm(3, 30), width: mm(10, 30), length: mm(10, 60), inset: mm(0, 20) }),
    handle: fc.record({ height: mm(20, 60), length: mm(80, 200), width: mm(10, 40) }),
  },
  { requiredKeys: ['kind', 'maker', 'model', 'interior', 'board', 'supplyBays'] },
);

describe('any enclosure the schema lets through', () => {
  it('has finite sheets that do not overlap, unique names, and walls round its inside', () => {
    const built = { upright: 0, turned: 0 };
    fc.assert(
      fc.property(anyEnclosure, (draft) => {
        const parsed = enclosureSpecSchema.safeParse(draft);
        if (!parsed.success) return;
        const spec: EnclosureSpec = parsed.data;
        built[spec.board.rotate?.some((degrees) => degrees !== 0) ? 'turned' : 'upright']++;
        const model = buildEnclosure(spec);
        // Standoffs of a short tray may stand on air or in a wall's way: their own affair, so sheets alone are compared.
        const sheets = model.boxes.filter((body) => body.element !== 'standoff');
        expectSoundModel({ ...model, boxes: sheets });
        expectSoundModel({ ...model, boxes: model.boxes.filter((body) => body.element === 'standoff') });
        const { min, max } = interiorOf(spec);
        for (const body of sheets) {
          // The tray stands inside, and so does mesh set into it.
          if (body.element === 'tray' || body.element === 'vent') continue;
          const bounds = boundsOfBox(body.box);
          const inside = ([0, 1, 2] as const).every(
            (axis) => Math.min(bounds.max[axis], max[axis]) - Math.max(bounds.min[axis], min[axis]) > 1e-6,
          );
          expect(inside, body.name).toBe(false);
        }
      }),
      { numRuns: 1000, seed: 20261124 },
    );
    expect(built.upright).toBeGreaterThan(30);
    expect(built.turned).toBeGreaterThan(10);
  });
});
