import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { supplySpecSchema } from '../../../geometry/parts/supply/spec';
import { buildSupply } from '../../../geometry/parts/supply/supply';
import { seatPose } from '../../../geometry/plan/mounting';
import { rotationFromAxes } from '../../../geometry/space/rotation';
import { identityTransform, transformPoint } from '../../../geometry/space/transform';
import { expectSoundModel, solidSpan, spanOf } from '../model-rules';

const plugs = [
  { type: 'main 24-pin', count: 1 },
  { type: 'processor 8-pin', count: 1 },
  { type: 'card 16-pin', count: 1 },
  { type: 'drive power', count: 4 },
] as const;
const made = { kind: 'supply', maker: 'Generic', model: 'Test', plugs, modular: true, watts: 750 } as const;
const build = (spec: object) => buildSupply(supplySpecSchema.parse({ ...made, ...spec }));

/** Holes of the screw face in the world, on a rear wall at x = 0: u is world z, v world y, from the lower left corner. */
function holesOnRearWall(spec: object, width: number, height: number, turn = 0) {
  const foot = build(spec).feet[0];
  if (foot === undefined) throw new Error('a supply has a foot');
  const frame = {
    rotation: rotationFromAxes([0, 1, 0], [0, 0, 1], [1, 0, 0]),
    translation: [0, 0, 0],
  } as const;
  const mount = { id: 'bay', label: 'Bay', patterns: [foot.pattern], frame, turns: [0, 180] };
  const pose = seatPose(identityTransform, mount, foot, turn);
  const inPart = (foot.points ?? []).map(({ at }) => transformPoint(foot.frame, [at[0], at[1], 0]));
  return inPart
    .map((point) => transformPoint(pose, point))
    .map(([x, y, z]) => [x, z + width / 2, y + height / 2].map((value) => Number(value.toFixed(6)) + 0));
}

describe('a supply on the rear wall, seen from outside', () => {
  it('has ATX holes at (6, 16) (6, 80) (144, 80) (120, 6) (ATX12V guide 2.0, figure 8)', () => {
    expect(holesOnRearWall({ form: 'ATX' }, 150, 86)).toEqual([
      [0, 6, 16],
      [0, 6, 80],
      [0, 144, 80],
      [0, 120, 6],
    ]);
  });

  it('lands on other holes when turned over', () => {
    expect(holesOnRearWall({ form: 'ATX' }, 150, 86, 180)).toEqual([
      [0, 144, 70],
      [0, 144, 6],
      [0, 6, 6],
      [0, 30, 80],
    ]);
  });

  it('has SFX corner holes 6 from the sides, at 6 and 57.5 up, on both SFX and SFX-L', () => {
    for (const form of ['SFX', 'SFX-L']) {
      const corners = holesOnRearWall({ form }, 125, 63.5).filter(([, , v]) => v !== 31.75);
      expect(corners).toEqual([
        [0, 6, 6],
        [0, 6, 57.5],
        [0, 119, 6],
        [0, 119, 57.5],
      ]);
    }
    expect(build({ form: 'SFX' }).feet[0]?.points?.filter((point) => !point.needed)).toHaveLength(1);
  });
});

describe('the body of a supply', () => {
  it('has the published envelope, width along z, height along y, depth along x', () => {
    for (const [form, depth, height, width] of [
      ['ATX', 140, 86, 150],
      ['SFX', 100, 63.5, 125],
      ['SFX-L', 130, 63.5, 125],
      ['TFX', 175, 65, 85],
      ['Flex ATX', 150, 40.5, 81.5],
    ] as const) {
      expect(solidSpan(build({ form }))).toEqual({ min: [0, 0, 0], max: [depth, height, width] });
    }
  });

  it('keeps 12.7 free before its fan (ATX supply guide 0.9, sections 4.3 and 4.4)', () => {
    for (const [side, axis, reach] of [
      ['-y', 1, -12.7],
      ['+y', 1, 86 + 12.7],
      ['-z', 2, -12.7],
      ['+z', 2, 150 + 12.7],
    ] as const) {
      const air = spanOf(build({ form: 'ATX', fan: { side, size: 80 } }), 'breathing space, fan');
      expect(reach < 0 ? air.min[axis] : air.max[axis]).toBeCloseTo(reach, 9);
      expect(air.max[axis] - air.min[axis]).toBeCloseTo(12.7, 9);
    }
  });

  it('reserves 20 for modular plugs and 15 for their leads to turn, all on its plug face', () => {
    const model = build({ form: 'SFX' });
    expectSoundModel(model);
    const rows = model.features.filter((feature) => feature.id.startsWith('modular row'));
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) {
      const plug = spanOf(model, row.use[0] ?? '');
      expect([plug.min[0], plug.max[0]]).toEqual([100, 120]);
      expect(plug.min[1]).toBeGreaterThanOrEqual(0);
      expect(plug.max[1]).toBeLessThanOrEqual(63.5);
      expect(plug.min[2]).toBeGreaterThanOrEqual(0);
      expect(plug.max[2]).toBeLessThanOrEqual(125);
    }
    expect(spanOf(model, 'bend space, modular leads').max[0]).toBe(135);
  });

  it('keeps the bundle of fixed leads 16 and 53 from side and top, as the ATX outline has it', () => {
    const bundle = spanOf(build({ form: 'ATX', modular: false }), 'bend space, leads');
    expect((bundle.min[2] + bundle.max[2]) / 2).toBeCloseTo(150 - 16, 9);
    expect((bundle.min[1] + bundle.max[1]) / 2).toBeCloseTo(86 - 53, 9);
  });

  it('has its mains plug outside, on the left', () => {
    const plug = spanOf(build({ form: 'ATX' }), 'plug space, mains');
    expect(plug.max[0]).toBe(0);
    expect(plug.max[2]).toBeLessThan(75);
  });

  it('is sound in every form, size and dress', () => {
    const forms = fc.constantFrom('ATX', 'SFX', 'SFX-L', 'TFX', 'Flex ATX');
    const sizes = fc.double({ min: 35, max: 260, noNaN: true });
    let built = 0;
    fc.assert(
      fc.property(
        forms,
        sizes,
        fc.boolean(),
        fc.integer({ min: 1, max: 6 }),
        (form, depth, modular, count) => {
          const spec = { ...made, form, depth, modular, plugs: [...plugs, { type: 'card 8-pin', count }] };
          const parsed = supplySpecSchema.safeParse(spec);
          if (!parsed.success) return;
          built += 1;
          expectSoundModel(buildSupply(parsed.data));
        },
      ),
      { numRuns: 300, seed: 3 },
    );
    expect(built).toBeGreaterThan(150);
  });
});

describe('a supply whose sheet contradicts itself', () => {
  const refused = (spec: object): string => {
    const result = supplySpecSchema.safeParse({ ...made, ...spec });
    return result.success ? 'accepted' : result.error.issues.map((issue) => issue.message).join('; ');
  };

  it('is refused with both fields named', () => {
    expect(refused({ form: 'SFX', fan: { side: '-y', size: 140 } })).toMatch(/Diameter.*140.*Width.*125/);
    expect(refused({ form: 'SFX', fan: { side: '-y', size: 120 } })).toMatch(/Diameter.*120.*Depth.*100/);
    expect(refused({ form: 'SFX', fan: { side: '-z', size: 80 } })).toMatch(/Diameter.*80.*Height.*63.5/);
    expect(refused({ form: 'Flex ATX', plugs: [{ type: 'card 8-pin', count: 12 }] })).toMatch(
      /Plugs it offers.*Height.*40.5/,
    );
  });
});
