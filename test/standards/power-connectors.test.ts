import { describe, expect, it } from 'vitest';
import { plugAndBendHeight } from '../../geometry/standards/assembly-practice';
import { boardConnectors } from '../../geometry/standards/board-connectors';
import {
  cardPowerLimits,
  fourPointTwoPitchLength,
  powerPlugs,
} from '../../geometry/standards/power-connectors';

describe('4.2 mm pitch plugs', () => {
  it('follows the length rule: 18.0 and 13.8 as printed (CEM 3.0 figures 8-4 to 8-8), 51.6 by a land pattern', () => {
    expect(fourPointTwoPitchLength(4)).toBeCloseTo(18, 9);
    expect(fourPointTwoPitchLength(3)).toBeCloseTo(13.8, 9);
    expect(fourPointTwoPitchLength(12)).toBeCloseTo(51.6, 9);
    expect(powerPlugs['2x12'].along.value).toBeCloseTo(51.6, 9);
    expect(boardConnectors['main power 24-pin'].header.along.value).toBeCloseTo(51.6, 9);
    expect(boardConnectors['processor power 2x4'].header.along.value).toBe(18);
  });

  it('has the printed 2x4 section: 11.6, 14.4 over the latch, 19.6 long, 10.7 outside (CEM 3.0 figures 8-4 to 8-8)', () => {
    const plug = powerPlugs['2x4'];
    expect(plug.across.value).toBe(11.6);
    expect(plug.acrossOverLatch.value).toBe(14.4);
    expect(plug.length.value).toBe(19.6);
    expect(plug.outsideWhenMated.value).toBe(10.7);
    expect([plug.across.plusMinus, plug.acrossOverLatch.plusMinus, plug.length.plusMinus]).toEqual([
      0.2, 0.2, 0.2,
    ]);
  });

  it('leaves a mated 24-pin plug 23.5 to 23.8 above the board (headers of 12.8 to 13.1, CEM 3.0 plug)', () => {
    const { beyond } = boardConnectors['main power 24-pin'].plug;
    expect(beyond.value).toBeGreaterThanOrEqual(12.8 + 10.7);
    expect(beyond.value).toBeLessThanOrEqual(13.1 + 10.7 + 1e-9);
  });

  it('lets an upright USB 3 plug exceed 20 mm (Thin Mini-ITX Based PC System Design Guide, 2.5.4.1)', () => {
    expect(boardConnectors['USB 3 20-pin'].plug.beyond.value).toBeGreaterThan(20);
  });
});

it('limits the plugs as the supply guide does (document 336521, table 3-5: W and A)', () => {
  expect([cardPowerLimits['2x3'].watts.value, cardPowerLimits['2x3'].amperes.value]).toEqual([75, 6.75]);
  expect([cardPowerLimits['2x4'].watts.value, cardPowerLimits['2x4'].amperes.value]).toEqual([150, 13.5]);
  expect([cardPowerLimits['16-pin'].watts.value, cardPowerLimits['16-pin'].amperes.value]).toEqual([600, 55]);
  // Document 336521: table 3-6 names the four grades, page 52 the current of one contact.
  expect(cardPowerLimits.sixteenPinGradesWatts.value).toEqual([150, 300, 450, 600]);
  expect(cardPowerLimits.amperesPerContact16Pin.value).toBe(9.2);
  // 600 from the plug and 75 from the slot make the largest card (revision 2.1a, chapter 3).
  expect(cardPowerLimits.largestCardWatts.value).toBe(600 + 75);
});

it('adds plug, bend and half a wire (worked by hand: 15 + 6 x 2.4 + 1.2 and 15 + 10 x 2.4 + 1.2)', () => {
  expect(plugAndBendHeight(15, 0, 2.4, 6)).toBeCloseTo(30.6, 9);
  expect(plugAndBendHeight(15, 0, 2.4, 10)).toBeCloseTo(40.2, 9);
});
