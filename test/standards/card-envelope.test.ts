import { describe, expect, it } from 'vitest';
import { bracketAcross, bracketPlateY, bracketSizes, bracketZ } from '../../geometry/standards/card-bracket';
import {
  cardEnvelopeAcross,
  cardEnvelopeThickness,
  cardOutline,
  cardPartHeights,
  cardRearEdgeY,
  chassisSlotOpening,
  seatedCardZ,
  slotsTaken,
} from '../../geometry/standards/card-envelope';
import { rearPanelInnerFaceY } from '../../geometry/standards/rear-aperture';

// Everything here: PCI Express Card Electromechanical Specification 3.0, figures named beside the check.

describe('card envelope', () => {
  it.each([
    [1, 2.67 + 1.57 + 14.47, 18.71],
    [2, 2.67 + 1.57 + 34.8, 39.04],
    [3, 2.67 + 1.57 + 55.12, 59.36],
  ] as const)('%d slots: figure 9-1 adds up', (width, sum, thickness) => {
    expect(cardEnvelopeThickness(width)).toBeCloseTo(sum, 9);
    expect(cardEnvelopeThickness(width)).toBeCloseTo(thickness, 9);
    const [from, to] = cardEnvelopeAcross(width);
    expect(to - from).toBeCloseTo(thickness, 9);
  });

  it('prints dual and triple heights 0.01 above the slot-pitch rule (figure 9-1 table)', () => {
    expect(cardPartHeights.componentSideByWidth[2].value - (14.47 + 20.32)).toBeCloseTo(0.01, 9);
    expect(cardPartHeights.componentSideByWidth[3].value - (14.47 + 2 * 20.32)).toBeCloseTo(0.01, 9);
  });

  it('leaves 1.61 between neighbours at the slot pitch of figure 9-20', () => {
    const [from, to] = cardEnvelopeAcross(1);
    expect(from + 20.32 - to).toBeCloseTo(1.61, 9);
  });

  it('counts the slots a measured thickness takes', () => {
    expect([18.71, 18.72, 39.03, 39.04, 59.35, 61].map(slotsTaken)).toEqual([1, 2, 2, 3, 3, 4]);
    expect(slotsTaken(5)).toBe(1);
  });

  it('ties outline to seated heights (figures 9-1, 9-26: 3.40 + 4.50, 12.75, 68.90, 111.15)', () => {
    expect(seatedCardZ.rearLobeLowerEdge.value).toBeCloseTo(3.4 + cardOutline.rearLobeLowerEdgeUp.value, 9);
    expect(seatedCardZ.lowerEdge.value).toBeCloseTo(3.4 + cardOutline.lowerEdgeUp.value, 9);
    expect(seatedCardZ.lowProfileTopEdge.value).toBeCloseTo(3.4 + cardOutline.lowProfileHeight.value, 9);
    expect(seatedCardZ.fullHeightTopEdge.value).toBeCloseTo(3.4 + cardOutline.fullHeight.value, 9);
  });

  it('ends a full-length card at y 311.95, 314.06 before the rear panel (figures 9-2, 9-20; ATX 2.2 figure 4)', () => {
    const frontEdge = cardRearEdgeY.value + cardOutline.fullLength.value;
    expect(frontEdge).toBeCloseTo(311.95, 2);
    expect(frontEdge - rearPanelInnerFaceY.value).toBeCloseTo(314.06, 2);
  });

  it('prints the half and three-quarter lengths in inches too (figure 9-2: 6.600 and 10.000)', () => {
    expect(cardOutline.halfLength.value).toBeCloseTo(6.6 * 25.4, 1);
    expect(cardOutline.threeQuarterLength.value).toBeCloseTo(10 * 25.4, 9);
    expect(cardOutline.recommendedMaximumLength.value).toBeCloseTo(9.5 * 25.4, 9);
  });
});

describe('bracket', () => {
  it.each([
    // CEM 3.0 figures 9-3, 9-5 and 9-9: millimetres, and the inches printed beside them
    ['fullOverallHeight', 120.02, 4.725],
    ['fullWingToTongueBend', 112.75, 4.439],
    ['lowProfileOverallHeight', 79.2, 3.118],
    ['plateWidth', 18.42, 0.725],
    ['wingDepth', 11.43, 0.45],
    ['lowProfileWingDepth', 11.84, 0.466],
    ['sheetThickness', 0.86, 0.034],
    ['screwHoleDiameter', 4.42, 0.174],
    ['tongueWidth', 10.19, 0.401],
    ['windowWidth', 12.06, 0.475],
    ['windowHeight', 89.9, 3.539],
    ['lowProfileWindowHeight', 54.53, 2.147],
    ['wingToWindowTop', 10.16, 0.4],
    ['lowProfileWingToWindowTop', 9.04, 0.356],
    ['wingAboveFingerTips', 104.86, 4.128],
    ['screwHoleToPlateOuterFace', 5.08, 0.2],
    ['lowProfileScrewHoleToPlate', 6.35, 0.25],
  ] as const)('%s is %d mm, %d in', (row, millimetres, printedInches) => {
    expect(bracketSizes[row].value).toBe(millimetres);
    // half of the last place of the inch figure, and of the millimetre figure
    expect(Math.abs(bracketSizes[row].value - printedInches * 25.4)).toBeLessThan(0.0127 + 0.005);
  });

  it('adds plate and wing overhang to the overall width (figure 9-5: 18.42, 3.17, 21.59)', () => {
    const [plateFrom, plateTo] = bracketAcross.plate.value;
    const [wingFrom] = bracketAcross.wing.value;
    expect(plateTo - plateFrom).toBeCloseTo(18.42, 9);
    expect(plateTo - wingFrom).toBeCloseTo(21.59, 9);
  });

  it('reaches 15.58 past the component-side surface (figure 9-5: 17.15 less 1.57)', () => {
    expect(bracketAcross.plate.value[1] - 1.57 / 2).toBeCloseTo(17.15 - 1.57, 9);
  });

  it('holds window, tongue and screw hole at their printed offsets (figures 9-3, 9-5)', () => {
    expect(bracketAcross.window.value[0]).toBeCloseTo(1.135, 9);
    expect(bracketAcross.window.value[1]).toBeCloseTo(13.195, 9);
    expect(bracketAcross.tongue.value[1] - bracketAcross.tongue.value[0]).toBeCloseTo(10.19, 9);
    expect(bracketAcross.screwHole.value).toBeCloseTo(-2.055, 9);
  });

  it('grows by the slot pitch from one slot to two, and by a millimetre more to three (figures 9-5, 9-13, 9-15)', () => {
    const widths = bracketSizes.overallWidthByWidth;
    expect(widths[2].value - widths[1].value).toBeCloseTo(20.32, 9);
    expect(widths[3].value - widths[2].value).toBeCloseTo(21.32, 9);
    // Figure 9-15: the last screw hole at 60.06 stands the same 3.17 inside the end as on one slot.
    expect(widths[3].value - 60.06).toBeCloseTo(3.17, 9);
  });

  it('stands from -11.76 to 108.26 over the board (figures 6-1, 9-3, 9-5), overall 120.02', () => {
    expect(bracketZ.wing.value).toBeCloseTo(108.26, 9);
    expect(bracketZ.tongueTip.value).toBeCloseTo(-11.76, 9);
    expect(bracketZ.wing.value - bracketZ.tongueTip.value).toBeCloseTo(120.02, 9);
    expect(bracketZ.window.value[0]).toBeCloseTo(8.2, 9);
    expect(bracketZ.window.value[1]).toBeCloseTo(98.1, 9);
  });

  it('keeps window and plate inside the chassis opening (figure 9-22: 100.71 high, 13.25 wide)', () => {
    const [from, to] = chassisSlotOpening.fullHeightZ.value;
    expect(from).toBeCloseTo(2.73, 9);
    expect(to).toBeCloseTo(103.44, 9);
    expect(to - from).toBeCloseTo(100.71, 9);
    const [acrossFrom, acrossTo] = chassisSlotOpening.across.value;
    expect(acrossTo - acrossFrom).toBeCloseTo(13.25, 9);
    expect(acrossFrom).toBeLessThan(bracketAcross.window.value[0]);
    expect(acrossTo).toBeGreaterThan(bracketAcross.window.value[1]);
  });

  it('sets the outer face of the plate 59.05 behind the key, within its 0.40 of the panel (figures 9-3, 9-20)', () => {
    expect(bracketPlateY.outerFace.value).toBeCloseTo(-1.95, 2);
    expect(Math.abs(bracketPlateY.outerFace.value - rearPanelInnerFaceY.value)).toBeLessThan(0.4);
    // Plate thickness from the two printed distances, against the printed 0.86 +- 0.08 (figure 9-5 note 1).
    expect(bracketPlateY.cardSideFace.value - bracketPlateY.outerFace.value).toBeCloseTo(0.86, 9);
  });
});
