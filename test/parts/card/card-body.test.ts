import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildCard } from '../../../geometry/parts/card/card';
import { cardSpecSchema } from '../../../geometry/parts/card/spec';
import { expectSoundModel, solidSpan, spanOf } from '../model-rules';

const base = {
  kind: 'card',
  maker: 'Generic',
  model: 'Test',
  interface: 'x16',
  length: 304,
  height: 137,
  thickness: 61,
  bracketSlots: 3,
} as const;

const sizes = fc.record({
  length: fc.double({ min: 120, max: 380, noNaN: true }),
  height: fc.double({ min: 60, max: 160, noNaN: true }),
  thickness: fc.double({ min: 14, max: 80, noNaN: true }),
  bracketSlots: fc.integer({ min: 1, max: 4 }),
  lowProfile: fc.boolean(),
  backplate: fc.double({ min: 0, max: 6, noNaN: true }),
  fans: fc.option(
    fc.record({
      count: fc.integer({ min: 1, max: 4 }),
      diameter: fc.double({ min: 40, max: 100, noNaN: true }),
    }),
    { nil: undefined },
  ),
  power: fc.array(
    fc.record({
      type: fc.constantFrom('card 6-pin', 'card 8-pin', 'card 16-pin'),
      edge: fc.constantFrom('top', 'end', 'bracket end'),
      at: fc.double({ min: 15, max: 300, noNaN: true }),
      recess: fc.double({ min: 0, max: 60, noNaN: true }),
    }),
    { maxLength: 4 },
  ),
});

describe('the body of a card', () => {
  it('never overlaps itself, whatever the sizes, fans and sockets', () => {
    let built = 0;
    fc.assert(
      fc.property(sizes, (random) => {
        const parsed = cardSpecSchema.safeParse({ ...base, ...random });
        if (!parsed.success) return;
        built += 1;
        expectSoundModel(buildCard(parsed.data));
      }),
      { numRuns: 1500, seed: 20 },
    );
    expect(built).toBeGreaterThan(200);
  });

  it('is as thick, high and long as its sheet says', () => {
    const model = buildCard(cardSpecSchema.parse({ ...base, fans: { count: 3, diameter: 90 } }));
    const { min, max } = solidSpan(model, (box) => box.element !== 'card bracket');
    expect(max[1] - min[1]).toBeCloseTo(61, 9);
    expect(max[1]).toBeCloseTo(0.785 + 2.67, 9);
    expect(max[2]).toBeCloseTo(137, 9);
    expect(max[0]).toBeCloseTo(304, 9);
  });

  it('has fans flush with the face of its shroud', () => {
    const model = buildCard(cardSpecSchema.parse({ ...base, fans: { count: 3, diameter: 90 } }));
    const face = solidSpan(model, (box) => box.element === 'card shroud').min[1];
    for (const fan of ['fan 1', 'fan 2', 'fan 3']) expect(spanOf(model, fan).min[1]).toBeCloseTo(face, 9);
  });

  it('wants about 20 mm of air under fans 95 mm across with a 35 mm hub (equal-area gap)', () => {
    const model = buildCard(cardSpecSchema.parse({ ...base, fans: { count: 3, diameter: 95 } }));
    const air = spanOf(model, 'breathing space, fans');
    expect(air.max[1] - air.min[1]).toBeCloseTo((95 ** 2 - 35 ** 2) / (4 * 95), 9);
    expect(air.max[1] - air.min[1]).toBeCloseTo(20.5, 1);
  });

  it('leaves the plug 10.7 above a top edge of 111.15: 125.25 above the board (CEM 3.0)', () => {
    const power = [{ type: 'card 8-pin', edge: 'top', at: 150 }] as const;
    const model = buildCard(cardSpecSchema.parse({ ...base, height: 111.15, power }));
    const plug = spanOf(model, 'plug space, card 8-pin 1');
    expect(plug.max[2] + 3.4).toBeCloseTo(125.25, 9);
    expect(plug.max[0] - plug.min[0]).toBeCloseTo(18, 9);
    // Latch of the mated plug above the circuit board, figures 8-4 to 8-8.
    expect(plug.max[1] - plug.min[1]).toBeCloseTo(14.4, 9);
  });

  it('runs the 16-pin lead straight for 35 mm from the socket (common practice, no source)', () => {
    const power = [{ type: 'card 16-pin', edge: 'top', at: 150, recess: 20 }] as const;
    const model = buildCard(cardSpecSchema.parse({ ...base, power }));
    expect(spanOf(model, 'bend space, card 16-pin 1').max[2]).toBeCloseTo(137 - 20 + 35, 9);
  });

  it('turns a plug at the tip into length', () => {
    const power = [{ type: 'card 8-pin', edge: 'end', at: 60 }] as const;
    const model = buildCard(cardSpecSchema.parse({ ...base, power }));
    expect(spanOf(model, 'plug space, card 8-pin 1').min[0]).toBeCloseTo(304, 9);
    expect(spanOf(model, 'plug space, card 8-pin 1').max[0]).toBeCloseTo(304 + 10.7, 9);
    expect(model.features).toMatchObject([{ id: 'power 1', kind: 'power socket', required: true }]);
  });
});

describe('a card whose sheet contradicts itself', () => {
  const refused = (change: object): string => {
    const result = cardSpecSchema.safeParse({ ...base, ...change });
    return result.success ? 'accepted' : result.error.issues.map((issue) => issue.message).join('; ');
  };
  const top = (at: number) => ({ type: 'card 8-pin', edge: 'top', at }) as const;

  it('is refused with both fields named', () => {
    expect(refused({ power: [top(300)] })).toMatch(/Place along the edge.*Length.*304/);
    expect(refused({ power: [top(100), top(110)] })).toMatch(
      /power socket 2 \(110 mm\).*power socket 1 \(100 mm\)/,
    );
    expect(refused({ power: [{ type: 'card 8-pin', edge: 'end', at: 135 }] })).toMatch(/Height.*137/);
    expect(refused({ boardHeight: 140 })).toMatch(/Circuit board height.*140.*Height.*137/);
    expect(refused({ boardLength: 310 })).toMatch(/Circuit board length.*310.*Length.*304/);
    expect(refused({ fans: { count: 4, diameter: 90 } })).toMatch(/Diameter.*90.*Length.*304/);
    expect(refused({ fans: { count: 1, diameter: 130 } })).toMatch(/Diameter.*130.*Height.*137/);
    expect(refused({ thickness: 4 })).toMatch(/Thickness.*4.*Backplate side/);
    expect(refused({ height: 12 })).toMatch(/Height.*12/);
    expect(refused({ power: [{ type: 'card 8-pin', edge: 'bracket end', at: 60, recess: 5 }] })).toMatch(
      /Set back from the shroud.*bracket end/,
    );
  });

  it('is accepted once the numbers agree', () => {
    expect(refused({ power: [top(100), top(118)] })).toBe('accepted');
    expect(refused({ fans: { count: 3, diameter: 90 } })).toBe('accepted');
  });
});
