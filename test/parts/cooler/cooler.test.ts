import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildCooler } from '../../../geometry/parts/cooler/cooler';
import { coolerSpecSchema } from '../../../geometry/parts/cooler/spec';
import { expectSoundModel, solidSpan, spanOf } from '../model-rules';

const made = {
  kind: 'cooler',
  maker: 'Generic',
  model: 'Test',
  patterns: ['square-75', 'square-78'],
} as const;
const parse = (spec: object) => coolerSpecSchema.parse({ ...made, ...spec });
const refused = (spec: object): string => {
  const result = coolerSpecSchema.safeParse({ ...made, ...spec });
  return result.success ? 'accepted' : result.error.issues.map((issue) => issue.message).join('; ');
};

const single = {
  style: 'tower',
  height: 155,
  width: 125,
  finBottom: 45,
  stacks: [{ depth: 50 }],
  fans: [{ place: 'front', size: 120, bottom: 33, raise: 20 }],
} as const;
const twin = {
  ...single,
  stacks: [{ depth: 45 }, { depth: 45 }],
  fans: [
    { place: 'front', size: 120, bottom: 33, raise: 20 },
    { place: 'middle', size: 120, bottom: 33 },
  ],
} as const;

describe('a tower cooler', () => {
  it('stands as high as its fins, on one foot for each hole pattern', () => {
    const model = buildCooler(parse(single));
    expectSoundModel(model);
    expect(solidSpan(model).max[2]).toBe(155);
    expect(solidSpan(model).min[2]).toBe(0);
    expect(model.feet.map((foot) => foot.id)).toEqual(['square-75', 'square-78']);
  });

  it('carries its front fan on the forward side, air towards the rear', () => {
    const model = buildCooler(parse(single));
    const fan = spanOf(model, 'front fan');
    expect(fan.min[1]).toBeCloseTo(spanOf(model, 'fin stack 1').max[1], 9);
    expect(fan.max[1] - fan.min[1]).toBeCloseTo(25, 9);
    expect(spanOf(model, 'breathing space, front fan').min[1]).toBeCloseTo(fan.max[1], 9);
  });

  it('leaves room under the fins for memory and regulator sinks', () => {
    const model = buildCooler(parse(twin));
    const low = solidSpan(model, (box) => box.element === 'cooler base');
    const fins = solidSpan(model, (box) => box.element === 'fin stack');
    expect(low.max[2]).toBeLessThanOrEqual(fins.min[2]);
    expect(low.max[0] - low.min[0]).toBeLessThan(0.5 * (fins.max[0] - fins.min[0]));
    expect(low.max[1] - low.min[1]).toBeLessThan(fins.max[1] - fins.min[1]);
  });

  it('grows when its fan is slid up over tall memory, and no further than it can slide', () => {
    const at = (raise: number) => solidSpan(buildCooler(parse(single), { 'front fan raise': raise })).max[2];
    expect(at(0)).toBe(155);
    expect(at(10)).toBe(163);
    expect(at(99)).toBe(33 + 20 + 120);
    expect(buildCooler(parse(single)).adjustments).toMatchObject([
      { id: 'front fan raise', min: 0, max: 20 },
    ]);
  });

  it('keeps the gap of a middle fan and 2 mm between its stacks when the sheet is silent', () => {
    const model = buildCooler(parse(twin));
    const gap = spanOf(model, 'fin stack 1').min[1] - spanOf(model, 'fin stack 2').max[1];
    expect(gap).toBeCloseTo(27, 9);
    expectSoundModel(model);
  });

  it('moves fins and fans, not its base, by a mounting offset', () => {
    const centred = buildCooler(parse(single));
    const shifted = buildCooler(parse({ ...single, offset: [5, -7] }));
    expectSoundModel(shifted);
    expect(spanOf(shifted, 'base')).toEqual(spanOf(centred, 'base'));
    expect(spanOf(shifted, 'fin stack 1').min[1]).toBeCloseTo(spanOf(centred, 'fin stack 1').min[1] - 7, 9);
    expect(spanOf(shifted, 'front fan').min[0]).toBeCloseTo(spanOf(centred, 'front fan').min[0] + 5, 9);
  });

  it('is refused with both fields named when its numbers contradict one another', () => {
    expect(refused({ ...single, finBottom: 160 })).toMatch(/Lower face of the fins.*160.*Height.*155/);
    expect(refused({ ...twin, gap: 20 })).toMatch(/Thickness.*25.*Gap between the stacks.*20/);
    expect(refused({ ...single, fans: [{ place: 'middle', size: 120, bottom: 33 }] })).toMatch(
      /Place.*Fin stacks/,
    );
    const low = { place: 'front', size: 120, bottom: 4 } as const;
    expect(refused({ ...single, stacks: [{ depth: 30 }], fans: [low] })).toMatch(
      /Lower edge above the lid.*4 mm.*Lower face of the fins/,
    );
    expect(refused({ ...single, fans: [single.fans[0], single.fans[0]] })).toMatch(/two fans.*Place/);
  });
});

describe('a top-flow cooler', () => {
  const flat = {
    style: 'top flow',
    height: 67,
    width: 120,
    depth: 120,
    finBottom: 25,
    fan: { size: 120, thickness: 15 },
  } as const;

  it('counts a fan on top in its height and breathes from above', () => {
    const model = buildCooler(parse(flat));
    expectSoundModel(model);
    expect(solidSpan(model).max[2]).toBe(67);
    expect(spanOf(model, 'top fan').min[2]).toBe(52);
    expect(spanOf(model, 'breathing space, top fan').min[2]).toBe(67);
  });

  it('can carry its fan under the fins', () => {
    const model = buildCooler(parse({ ...flat, finBottom: 35, fan: { size: 120, under: true } }));
    expectSoundModel(model);
    expect(spanOf(model, 'top fan').max[2]).toBe(35);
  });

  it('is refused when the fan leaves no fins, or does not go under them', () => {
    expect(refused({ ...flat, height: 38 })).toMatch(/Height.*38.*Lower face of the fins.*25.*Thickness.*15/);
    expect(refused({ ...flat, finBottom: 20, fan: { size: 120, under: true } })).toMatch(
      /Lower face of the fins.*20.*Thickness.*15/,
    );
  });
});

describe('a liquid block', () => {
  const block = {
    style: 'liquid block',
    width: 70,
    depth: 70,
    height: 52,
    tubes: { diameter: 12, length: 400, bendRadius: 45, leaves: '+x' },
  } as const;

  it('keeps the bend radius and half a tube free beyond the stubs, on the side they leave', () => {
    for (const leaves of ['+x', '-x', '+y', '-y'] as const) {
      const model = buildCooler(parse({ ...block, tubes: { ...block.tubes, leaves } }));
      expectSoundModel(model);
      const bend = spanOf(model, 'bend space, tubes');
      const axis = leaves.endsWith('x') ? 0 : 1;
      expect(bend.max[axis] - bend.min[axis]).toBeCloseTo(45 + 6, 9);
      const outside = leaves.startsWith('+') ? bend.min[axis] : -bend.max[axis];
      expect(outside).toBeCloseTo(35 + 15, 9);
      expect(model.features).toMatchObject([{ id: 'tubes', required: true }]);
    }
  });

  it('is refused when its tubes are thicker than it is high or wide', () => {
    const tubes = { ...block.tubes, diameter: 30 };
    expect(refused({ ...block, height: 25, tubes })).toMatch(/Outer diameter.*30.*Block height.*25/);
    expect(refused({ ...block, depth: 70, tubes })).toMatch(/Outer diameter.*30.*Block depth.*70/);
  });
});

describe('coolers of any size', () => {
  const length = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const fan = fc.record({
    place: fc.constantFrom('front', 'middle', 'rear'),
    size: fc.constantFrom(92, 120, 140),
    thickness: length(12, 30),
    bottom: length(0, 60),
    raise: length(0, 30),
  });
  const offset = fc.tuple(length(-12, 12), length(-12, 12));
  const tower = fc.record({
    style: fc.constant('tower'),
    height: length(60, 180),
    width: length(20, 150),
    finBottom: length(0, 70),
    stacks: fc.array(fc.record({ depth: length(10, 90) }), { minLength: 1, maxLength: 2 }),
    offset,
    fans: fc.array(fan, { maxLength: 3 }),
  });
  const topFlow = fc.record({
    style: fc.constant('top flow'),
    height: length(30, 140),
    width: length(60, 150),
    depth: length(60, 150),
    finBottom: length(0, 60),
    offset,
    fan: fc.record({
      size: fc.constantFrom(92, 120, 140),
      thickness: length(10, 30),
      under: fc.boolean(),
    }),
  });

  it('never overlap themselves, fans slid up or not', () => {
    let built = 0;
    fc.assert(
      fc.property(fc.oneof(tower, topFlow), length(0, 30), (random, raise) => {
        const parsed = coolerSpecSchema.safeParse({ ...made, ...random });
        if (!parsed.success) return;
        built += 1;
        const adjust = { 'front fan raise': raise, 'middle fan raise': raise, 'rear fan raise': raise };
        expectSoundModel(buildCooler(parsed.data, adjust));
      }),
      { numRuns: 1500, seed: 7 },
    );
    expect(built).toBeGreaterThan(400);
  });
});
