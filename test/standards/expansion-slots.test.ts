import { describe, expect, it } from 'vitest';
import {
  holeRowToConventionalPci,
  keyNotchY,
  slotCentrelineX,
  slotConnectorSection,
  slotConnectors,
} from '../../geometry/standards/expansion-slots';

/** Hole B: 8.250 in down from the top edge (ATX Specification 2.2, figure 3). */
const holeBX = 8.25 * 25.4;

describe('slot positions', () => {
  // PCI Express Card Electromechanical Specification 3.0, figure 9-20: from hole B, toward the top edge.
  it.each([
    [1, 47.29],
    [2, 26.97],
    [3, 6.65],
    [4, -13.67],
  ])('slot %d is %d mm from hole B', (slot, fromHoleB) => {
    expect(holeBX - slotCentrelineX(slot)).toBeCloseTo(fromHoleB, 1);
    expect(Math.abs(holeBX - slotCentrelineX(slot) - fromHoleB)).toBeLessThan(0.006);
  });

  it('stands where an open microATX board has its slots (measured key posts)', () => {
    expect(slotCentrelineX(1)).toBeCloseTo(162.255, 2);
    expect(slotCentrelineX(2)).toBeCloseTo(182.575, 2);
    expect(slotCentrelineX(3)).toBeCloseTo(202.895, 2);
    expect(keyNotchY.value).toBeCloseTo(57.099, 2);
  });

  it('ends with slot 7 0.162 in past hole A (SSI EEB 2011 figure 2, pin 1 at 5.36 less 1.25)', () => {
    expect(11.35 * 25.4 - slotCentrelineX(7)).toBeCloseTo(5.36 - 1.25, 2);
  });

  it('repeats at 20.32 (CEM 3.0 figure 9-20) and refuses what is no slot', () => {
    expect(slotCentrelineX(5) - slotCentrelineX(4)).toBeCloseTo(20.32, 9);
    expect(() => slotCentrelineX(0)).toThrow(RangeError);
    expect(() => slotCentrelineX(1.5)).toThrow(RangeError);
  });

  it('sets the key notch 46.94 before the hole row, conventional PCI 93.99 (CEM 3.0 figure 9-20)', () => {
    expect(keyNotchY.value - 10.16).toBeCloseTo(46.94, 2);
    // The other datum: pin 1 at 35.29 plus 11.65 to the key (SSI EEB 2011 figure 2; CEM 3.0 figure 6-1).
    expect(keyNotchY.value - 10.16).toBeCloseTo(35.29 + 11.65, 2);
    expect(holeRowToConventionalPci.value).toBeCloseTo(93.98, 2);
  });
});

describe('slot connectors (CEM 3.0 figure 6-1)', () => {
  it.each([
    ['x1', 25, 9.15],
    ['x4', 39, 23.15],
    ['x8', 56, 40.15],
    ['x16', 89, 73.15],
  ] as const)('%s is %d long', (width, length, farPost) => {
    const connector = slotConnectors[width];
    expect(connector.length.value).toBe(length);
    expect(connector.frontEndY.value - connector.rearEndY.value).toBeCloseTo(length, 9);
    // Every width ends 1.35 past its far post, which ties the two printed columns together.
    expect(connector.frontEndY.value - keyNotchY.value - farPost).toBeCloseTo(1.35, 9);
    expect(connector.keyToFarPost.value).toBe(farPost);
  });

  it('lies from 42.60 to 131.60 on the board for x16', () => {
    expect(slotConnectors.x16.rearEndY.value).toBeCloseTo(42.6, 2);
    expect(slotConnectors.x16.frontEndY.value).toBeCloseTo(131.6, 2);
  });

  it('is at most 7.5 wide and 11.25 high and seats a card at 3.40', () => {
    expect(slotConnectorSection.width.value).toBe(7.5);
    expect(slotConnectorSection.height.value).toBe(11.25);
    expect(slotConnectorSection.seatHeight.value).toBe(3.4);
  });
});
