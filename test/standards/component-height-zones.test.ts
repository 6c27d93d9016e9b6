import { describe, expect, it } from 'vitest';
import type { BoardBox } from '../../geometry/standards/board-frame';
import {
  componentHeightZones,
  secondarySideHeights,
  underCardZones,
} from '../../geometry/standards/component-height-zones';

const areaOf = ({ x, y }: BoardBox) => (x[1] - x[0]) * (y[1] - y[0]);
const lowestLimitAt = (form: 'ATX' | 'microATX' | 'Mini-ITX', px: number, py: number) =>
  Math.min(
    ...componentHeightZones(form)
      .filter(
        ({ box: { value } }) => value.x[0] <= px && px < value.x[1] && value.y[0] <= py && py < value.y[1],
      )
      .map(({ box }) => box.value.z[1]),
  );

describe('component-height zones', () => {
  it('limits parts to 71.12, 15.24 and 38.10 on ATX (ATX 2.2 figure 7)', () => {
    expect(lowestLimitAt('ATX', 80, 80)).toBeCloseTo(71.12, 9);
    expect(lowestLimitAt('ATX', 200, 80)).toBeCloseTo(15.24, 9);
    expect(lowestLimitAt('ATX', 80, 200)).toBeCloseTo(38.1, 9);
  });

  it('carries area A on to 7.500 in in the band next to the slots (ATX 2.2 figure 7)', () => {
    expect(lowestLimitAt('ATX', 120, 185)).toBeCloseTo(71.12, 9);
    expect(lowestLimitAt('ATX', 110, 185)).toBeCloseTo(38.1, 9);
    expect(lowestLimitAt('ATX', 120, 192)).toBeCloseTo(38.1, 9);
  });

  it('starts area B 5.800 in from the slot-side edge (ATX 2.2 figure 7)', () => {
    const areaB = componentHeightZones('ATX').find(({ area }) => area === 'B');
    expect(areaB?.box.value.x[0]).toBeCloseTo(157.48, 9);
    expect(areaB?.box.value.x[1]).toBeCloseTo(304.8, 9);
  });

  it('asks 76.20 of the chassis over area A and recommends 88.90 (ATX 2.2 figure 7; microATX 1.2 table 6)', () => {
    for (const form of ['ATX', 'microATX'] as const) {
      const clearances = componentHeightZones(form).filter(({ limits }) => limits === 'chassis clearance');
      const heights = [...new Set(clearances.map(({ box }) => Math.round(box.value.z[1] * 100) / 100))];
      expect(heights).toEqual([76.2, 88.9]);
    }
  });

  it.each([
    // Mini-ITX Addendum 1.1, figure 4, through two transcriptions: heights 57, 16, 38, 39; B 15 wide, C 30, D 27 deep
    ['A', 85, 80, 57],
    ['B', 160, 80, 16],
    ['C', 85, 141, 38],
    ['D', 85, 26, 39],
  ] as const)('limits Mini-ITX area %s', (_area, x, y, height) => {
    expect(lowestLimitAt('Mini-ITX', x, y)).toBe(height);
  });

  it.each([
    ['ATX', 304.8 * 243.84],
    ['microATX', 243.84 * 243.84],
    ['Mini-ITX', 170 * 170],
  ] as const)('covers the whole %s board once', (form, area) => {
    const zones = componentHeightZones(form).filter(({ limits }) => limits === 'board component');
    expect(zones.reduce((sum, { box }) => sum + areaOf(box.value), 0)).toBeCloseTo(area, 6);
  });

  it('has nothing to say on forms whose figure was not read', () => {
    expect(componentHeightZones('FlexATX')).toEqual([]);
  });
});

describe('under a seated card (CEM 3.0 figure 9-20)', () => {
  it('leaves 5.08 to y 15.25, then 15.24, and 6.35 in the 2.50 x 10.30 strip behind the connector', () => {
    const [rear, front, strip] = underCardZones(1, 243.84);
    expect(rear?.box.value.z[1]).toBeCloseTo(5.08, 9);
    expect(rear?.box.value.y[1]).toBe(15.25);
    expect(front?.box.value.z[1]).toBeCloseTo(15.24, 9);
    expect(strip?.box.value.z[1]).toBe(6.35);
    expect(strip?.box.value.y[1]).toBeCloseTo(42.6, 2);
    expect(strip && areaOf(strip.box.value)).toBeCloseTo(2.5 * 10.3, 9);
  });
});

it('prints the secondary-side heights of ATX 2.2 section 3.4.2', () => {
  expect(secondarySideHeights.inContactSquare.value).toBeCloseTo(0.25, 2);
  expect(secondarySideHeights.conductiveLeads.value).toBeCloseTo(2.49, 2);
  expect(secondarySideHeights.nonConductivePins.value).toBeCloseTo(3.05, 2);
  expect(secondarySideHeights.retentionDevices.value).toBeCloseTo(5.08, 9);
  expect(secondarySideHeights.chassisClearSpace.value).toBeCloseTo(6.35, 9);
});
