import { describe, expect, it } from 'vitest';
import {
  atxSupplyDetails,
  type FaceHole,
  type SupplyForm,
  supplyForms,
} from '../../geometry/standards/supply-forms';

const spacing = (form: SupplyForm, a: FaceHole, b: FaceHole) => {
  const holes = supplyForms[form].holes.value;
  expect(holes).toContainEqual(a);
  expect(holes).toContainEqual(b);
  return Math.hypot(a.u - b.u, a.v - b.v);
};

describe('supply forms', () => {
  it.each([
    // ATX12V Power Supply Design Guide 2.0, figure 8
    ['ATX', 150, 86, 140],
    // two sources each: articles, listings, transcriptions
    ['PS3', 150, 86, 100],
    ['SFX', 125, 63.5, 100],
    ['SFX-L', 125, 63.5, 130],
    ['TFX', 85, 65, 175],
    ['Flex ATX', 81.5, 40.5, 150],
    ['CFX', 150, 86, 96],
    ['LFX', 62, 72, 210],
  ] as const)('%s is %d x %d x %d', (form, width, height, depth) => {
    const supply = supplyForms[form];
    expect([supply.width.value, supply.height.value, supply.depth.value]).toEqual([width, height, depth]);
  });

  it('spaces the ATX holes 138, 64, 114 and 74 (ATX12V guide 2.0 figure 8)', () => {
    expect(spacing('ATX', { u: 6, v: 80 }, { u: 144, v: 80 })).toBe(138);
    expect(spacing('ATX', { u: 6, v: 16 }, { u: 6, v: 80 })).toBe(64);
    const [bottomRight, left, right] = [
      { u: 120, v: 6 },
      { u: 6, v: 16 },
      { u: 144, v: 80 },
    ];
    expect(bottomRight.u - left.u).toBe(114);
    expect(right.v - bottomRight.v).toBe(74);
    expect(supplyForms.ATX.holes.value).toHaveLength(4);
  });

  it('turned over, the ATX pattern does not land on itself (ATX12V guide 2.0 figure 8)', () => {
    const turned = supplyForms.ATX.holes.value.map(({ u, v }) => ({ u: 150 - u, v: 86 - v }));
    const shared = turned.filter((hole) =>
      supplyForms.ATX.holes.value.some((h) => h.u === hole.u && h.v === hole.v),
    );
    expect(shared).toEqual([]);
  });

  it('spaces the SFX holes 113 and 51.5 (three transcriptions; an article prints 51.5)', () => {
    expect(spacing('SFX', { u: 6, v: 6 }, { u: 119, v: 6 })).toBe(113);
    expect(spacing('SFX', { u: 6, v: 6 }, { u: 6, v: 57.5 })).toBe(51.5);
  });

  it("spaces the right-hand Flex ATX pair 32.00 (a maker's face drawing)", () => {
    expect(spacing('Flex ATX', { u: 76, v: 4.1 }, { u: 76, v: 36.1 })).toBeCloseTo(32, 9);
  });

  it.each(Object.keys(supplyForms) as SupplyForm[])('keeps the holes of %s on its face', (form) => {
    const { width, height, holes } = supplyForms[form];
    for (const { u, v } of holes.value) {
      expect(u > 0 && u < width.value && v > 0 && v < height.value).toBe(true);
    }
  });

  it('asks 55 % and 60 % of open area (ATX12V guide 2.0 figures 8 and 9)', () => {
    expect(atxSupplyDetails.rearGrillOpenShare.value).toBe(0.55);
    expect(atxSupplyDetails.topVentOpenShare.value).toBe(0.6);
    expect(atxSupplyDetails.topVent.value).toMatchObject({ width: 114, depth: 80 });
    expect(atxSupplyDetails.harnessExitFromSide.value).toBe(16);
    expect(atxSupplyDetails.harnessExitFromTop.value).toBe(53);
  });
});
