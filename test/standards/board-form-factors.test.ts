import { describe, expect, it } from 'vitest';
import {
  boardFormFactors,
  boardSheet,
  ssiEebChassisVolume,
} from '../../geometry/standards/board-form-factors';

describe('outlines of the board form factors', () => {
  it.each([
    // microATX Motherboard Interface Specification 1.2, table 3
    ['ATX', 304.8, 243.84],
    ['microATX', 243.84, 243.84],
    // Mini-ITX Addendum 1.1, table 1
    ['Mini-ITX', 170, 170],
    // FlexATX Addendum 1.0 (9.0 x 7.5 in), through two articles
    ['FlexATX', 228.6, 190.5],
    // DTX Mechanical Interface Specification 1.00, through two articles
    ['Mini-DTX', 203.2, 170.18],
    ['DTX', 203.2, 243.84],
    // SSI Enterprise Electronics Bay Specification 2011, 1.0.1, figure 2
    ['SSI-CEB', 304.8, 266.7],
    ['SSI-EEB', 304.8, 330.2],
  ] as const)('%s is %d by %d mm', (form, alongX, alongY) => {
    expect(boardFormFactors[form].alongX.value).toBeCloseTo(alongX, 9);
    expect(boardFormFactors[form].alongY.value).toBeCloseTo(alongY, 9);
  });

  it('keeps the Mini-ITX slot edge on the 6.7 in grid line (Mini-ITX Addendum 1.1, table 1: 170 mm, 6.7 in)', () => {
    const { topEdgeX, alongX } = boardFormFactors['Mini-ITX'];
    expect(topEdgeX.value + alongX.value).toBeCloseTo(170.18, 9);
  });

  it.each([
    // microATX 1.2, section 2.3.1
    ['microATX', 4],
    // SSI Enterprise Electronics Bay 2011, figure 2
    ['SSI-EEB', 7],
    // encyclopaedia tables, two sources
    ['ATX', 7],
    ['Mini-ITX', 1],
    ['DTX', 2],
  ] as const)('%s provides %d slot positions', (form, slots) => {
    expect(boardFormFactors[form].slots.value).toBe(slots);
  });

  it('prints the sheet as 1.57 mm (microATX 1.2, page 14)', () => {
    expect(boardSheet.thickness.value).toBeCloseTo(1.57, 2);
  });

  it('leaves 5.08 beside and 12.70 before an SSI-EEB board (SSI EEB 2011, figure 16)', () => {
    const board = boardFormFactors['SSI-EEB'];
    expect((ssiEebChassisVolume.alongX.value - board.alongX.value) / 2).toBeCloseTo(5.08, 9);
    expect(ssiEebChassisVolume.alongY.value - board.alongY.value).toBeCloseTo(12.7, 9);
  });
});
