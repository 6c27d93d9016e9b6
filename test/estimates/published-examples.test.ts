/**
 * Worked examples published elsewhere or derived in writing beforehand, each against the function that the estimates
 * use. The source stands in the name; differences are those of the printed digits.
 */
import { describe, expect, it } from 'vitest';
import {
  airRise,
  areaInParallel,
  areaInSeries,
  CUBIC_METRES_PER_SECOND_PER_CFM as CFM,
  fanLaws,
  flowForRise,
  openingFlow,
  openingLoss,
  rebreathingRise,
  stackPressure,
} from '../../geometry/estimates/air/air-laws';
import {
  layerResistance,
  resistanceAllowed,
  temperatureThrough,
} from '../../geometry/estimates/heat/resistance-laws';
import { cantileverDroop, PROP_SHARE, stripMoment } from '../../geometry/estimates/mass/cantilever';
import { centreOfMass } from '../../geometry/estimates/mass/centre-of-mass';
import { classCurrents, connectorLimit, plugLimit } from '../../geometry/estimates/power/demand';
import { certifiedPoints, inputPower, lossShare } from '../../geometry/estimates/power/efficiency';
import { effectiveLoad } from '../../geometry/estimates/power/excursions';
import { contactDrop, leadDrop, sharedCurrents } from '../../geometry/estimates/power/lead-laws';
import {
  bladeTone,
  levelAtDistance,
  levelChangeBySpeed,
  levelFromPower,
  sumOfLevels,
} from '../../geometry/estimates/sound/levels';
import { wireArea, wireResistance } from '../../geometry/standards/copper-wire';
import { recommendedWeightLimit } from '../../geometry/standards/lifting-equation';
import {
  airSpecificHeat,
  makersAirDensity,
  standardDensity,
} from '../../geometry/standards/standard-atmosphere';

const FAHRENHEIT = 1.8;

describe('air and heat (fan makers: "Establishing cooling requirements: air flow vs pressure")', () => {
  it('has their constants: 1.757 W per CFM and degree C, 3.163 per degree F', () => {
    const perKelvin = 1 / (makersAirDensity.value * airSpecificHeat.value * CFM);
    expect(perKelvin).toBeCloseTo(1.757, 3);
    expect(perKelvin * FAHRENHEIT).toBeCloseTo(3.163, 3);
  });

  it('550 W in 60 CFM warm it by 16.1 K; 10 K take 96.8 CFM, or 96.6 by 3.16 / 18 deg F', () => {
    expect(airRise(550, 60 * CFM)).toBeCloseTo(16.1, 1);
    expect(flowForRise(550, 10) / CFM).toBeCloseTo(96.6, 0);
    expect((3.16 * 550) / 18).toBeCloseTo(96.6, 1);
  });

  it('a motion-control maker: CFM = 3160 kW / deg F, within 0.2 %', () => {
    const cfm = flowForRise(1000, 1 / FAHRENHEIT) / CFM;
    expect(Math.abs(cfm / 3160 - 1)).toBeLessThan(0.002);
  });

  it('does not repeat an enclosure article that divides watts by 1.08 deg C: its 2.64 and 30.86 CFM are 1.9 times too few', () => {
    const right = [flowForRise(100, 35) / CFM, flowForRise(500, 15) / CFM];
    expect(right[0]).toBeCloseTo(5.03, 1);
    expect(right[1]).toBeCloseTo(58.7, 0);
    expect((right[0] ?? 0) / 2.64).toBeGreaterThan(1.8);
    expect((right[1] ?? 0) / 30.86).toBeGreaterThan(1.8);
  });

  it('ISO 2533: at 1500 m the density is 0.864 of that at sea level, so 1.16 times the flow', () => {
    const ratio = standardDensity(1500) / standardDensity(0);
    expect(ratio).toBeCloseTo(0.864, 3);
    expect(1 / ratio).toBeCloseTo(1.16, 2);
    expect(standardDensity(0)).toBeCloseTo(1.225, 3);
  });

  it('openings, coefficient 0.6, a 120 mm square at 40 CFM: 31.8, 17.9, 8.0, 5.1 Pa open to 30, 40, 60, 75 %', () => {
    const losses = [0.3, 0.4, 0.6, 0.75].map((open) => openingLoss(40 * CFM, 0.6 * open * 0.12 ** 2));
    [31.8, 17.9, 8.0, 5.1].forEach((printed, i) => {
      expect(losses[i]).toBeCloseTo(printed, 1);
    });
    expect((losses[1] ?? 0) / (losses[2] ?? 1)).toBeCloseTo(2.25, 6);
  });

  it('openings one behind the other: 51.8 and 34.6 cm2 are 28.8 (orifice law); side by side they add', () => {
    expect(areaInSeries([51.8, 34.6])).toBeCloseTo(28.8, 1);
    expect(areaInParallel([51.8, 34.6])).toBeCloseTo(86.4, 9);
  });

  it('warm air, 0.35 m and 15 K, 50 cm2 in and out: 0.207 Pa, 2.6 CFM, 22.6 W', () => {
    const pressure = stackPressure(0.35, 15, 25);
    expect(pressure).toBeCloseTo(0.207, 3);
    const flow = openingFlow(pressure, areaInSeries([0.6 * 0.005, 0.6 * 0.005]));
    expect(flow / CFM).toBeCloseTo(2.6, 1);
    expect(flow * makersAirDensity.value * airSpecificHeat.value * 15).toBeCloseTo(22.6, 0);
  });

  it("re-breathing a share of one's own exhaust of 15 K: 1.7, 3.75, 6.4 K at 0.1, 0.2, 0.3", () => {
    expect([0.1, 0.2, 0.3].map((share) => rebreathingRise(share, 15))).toEqual([
      expect.closeTo(1.7, 1),
      expect.closeTo(3.75, 6),
      expect.closeTo(6.4, 1),
    ]);
  });

  it('fan laws: speed x 0.8 is power x 0.512; +10 % is +10, +21, +33 %; -10 % is -27 % (three articles)', () => {
    expect(fanLaws(0.8).power).toBeCloseTo(0.512, 9);
    const up = fanLaws(1.1);
    expect([up.flow, up.pressure, up.power].map((one) => Math.round((one - 1) * 100))).toEqual([10, 21, 33]);
    expect(Math.round((fanLaws(0.9).power - 1) * 100)).toBe(-27);
  });

  it('a chain of resistances: 37 deg C, 150 W, 0.10 + 0.05 + 0.20 is 89.5; for 95 the last may be 0.237', () => {
    expect(temperatureThrough(37, 150, [0.1, 0.05, 0.2])).toBeCloseTo(89.5, 9);
    expect(resistanceAllowed(37, 150, 95, [0.1, 0.05])).toBeCloseTo(0.237, 3);
    expect(layerResistance(50e-6, 6, 0.03 * 0.03)).toBeCloseTo(0.0093, 4);
  });
});

describe('sound', () => {
  it.each([
    ['OSHA, decibel notation', [85, 83, 88], 90.6, 1],
    ['a page on noise', [90, 90], 93, 0],
    ['acoustics consultancy', [65, 65], 68, 0],
    ['university slides', [80, 80], 83, 0],
    ['audio article', [24, 24], 27, 0],
    ['audio article', [40, 60], 60, 0],
  ] as const)('%s: %j make %d dB', (_, levels, printed, digits) => {
    expect(sumOfLevels(levels)).toBeCloseTo(printed, digits);
  });

  it('n equal sources: +3, 4.8, 6, 7, 10, 11.8, 13 (engineering table)', () => {
    const counts = [2, 3, 4, 5, 10, 15, 20];
    const printed = [3, 4.8, 6, 7, 10, 11.8, 13];
    counts.forEach((n, i) => {
      expect(Math.abs(sumOfLevels(Array.from({ length: n }, () => 0)) - (printed[i] ?? 0))).toBeLessThan(
        0.05,
      );
    });
  });

  it('is not the sum of like signals, which the same slides give as 88.9 and 86', () => {
    expect(Math.abs(sumOfLevels([80, 85]) - 88.9)).toBeGreaterThan(2);
    expect(Math.abs(sumOfLevels([80, 80]) - 86)).toBeGreaterThan(2);
  });

  it('speed: 1200 to 1600 rpm is +6.2, 6.9, 7.5 dB by 50, 55, 60; a card at 80 % falls from 34 to 28.7', () => {
    expect([50, 55, 60].map((law) => Number(levelChangeBySpeed(1600 / 1200, law).toFixed(1)))).toEqual([
      6.2, 6.9, 7.5,
    ]);
    expect(34 + levelChangeBySpeed(0.8, 55)).toBeCloseTo(28.7, 1);
  });

  it('distance: 6 dB a doubling; 38 dB at 1 m are 44.0 at 0.5 m; 8.0 dB from power to pressure at 1 m over a floor', () => {
    expect(levelAtDistance(0, 1, 2)).toBeCloseTo(-6.02, 2);
    expect(levelAtDistance(38, 1, 0.5)).toBeCloseTo(44.0, 1);
    expect(levelFromPower(0, 1)).toBeCloseTo(-8.0, 1);
    expect(bladeTone(1200, 7)).toBe(140);
  });
});

describe('power', () => {
  it('supply guide, document 336521, table 2-1: a 125 W class is 291 W for long and 437 W at its peak', () => {
    const { continuous, peak } = classCurrents(125);
    expect(continuous * 11.2).toBeCloseTo(291, 0);
    expect(Math.abs(peak * 11.2 - 437)).toBeLessThan(0.5);
  });

  it("1000 W at 80 % draw 1250 W, at 90 % 1111 W (a buyer's guide)", () => {
    expect(inputPower(1000, 0.8)).toBeCloseTo(1250.0, 9);
    expect(inputPower(1000, 0.9)).toBeCloseTo(1111.1, 1);
  });

  it.each(['base', 'bronze', 'silver', 'gold', 'platinum', 'titanium'] as const)(
    'the loss curve of level %s meets its certified points on both mains',
    (grade) => {
      for (const mains of [115, 230] as const) {
        const points = certifiedPoints(grade, mains);
        for (const [load, efficiency] of [
          [0.2, points.at20],
          [0.5, points.at50],
          [1, points.at100],
        ] as const)
          expect(load / (load + lossShare(points, load))).toBeCloseTo(efficiency, 9);
      }
    },
  );

  it('connectors: slot and two 2x4 carry 375 W; 600 W are 8.33 A a contact of a 16-pin plug, 8.77 at 11.4 V', () => {
    expect(connectorLimit({ power: [{ type: 'card 8-pin' }, { type: 'card 8-pin' }] })).toBe(375);
    expect(plugLimit('card 6-pin')).toBe(75);
    expect(plugLimit('card 16-pin') / 12 / 6).toBeCloseTo(8.33, 2);
    expect(plugLimit('card 16-pin') / 11.4 / 6).toBeCloseTo(8.77, 2);
  });

  it('single-rail guide, table 3-4: 918 W with 2000 W for 5 % of the time heat as 1000 W', () => {
    expect(Math.abs(effectiveLoad(918, 2000, 0.05) - 1000)).toBeLessThan(0.5);
  });

  it('copper: 16 and 18 AWG are 1.309 and 0.823 mm2, 13.17 and 20.94 mohm/m (two wire tables)', () => {
    expect(wireArea(16)).toBeCloseTo(1.309, 3);
    expect(wireArea(18)).toBeCloseTo(0.823, 3);
    expect(wireResistance(16) * 1000).toBeCloseTo(13.17, 1);
    expect(wireResistance(18) * 1000).toBeCloseTo(20.94, 1);
  });

  it('leads: 600 W over 0.5 m of six 16 AWG lose 0.110 V and 0.167 V in contacts of 5 mohm; 150 W over three 18 AWG 0.105 V', () => {
    expect(leadDrop(0.5, 16, 50, 6)).toBeCloseTo(0.11, 3);
    expect(contactDrop(50 / 6, 0.005)).toBeCloseTo(0.167, 3);
    expect((50 / 6) ** 2 * 0.005).toBeCloseTo(0.35, 2);
    expect(leadDrop(0.6, 18, 12.5, 3)).toBeCloseTo(0.105, 3);
  });

  it('security wiring page: 1.27 V per 100 ft and ampere of an 18 AWG pair, 350 ft, 1 A: 4.445 V within 1 %', () => {
    const drop = leadDrop(350 * 0.3048, 18, 1);
    expect(Math.abs(drop / 4.445 - 1)).toBeLessThan(0.01);
  });

  it('camera wiring sheet: 1500 ft of 6.51 ohm per 1000 ft at 0.3 A are 2.9295 V (printed 2.91); 18 AWG comes within 2 %', () => {
    const drop = leadDrop((1500 * 0.3048) / 2, 18, 0.3);
    expect(Math.abs(drop / 2.9295 - 1)).toBeLessThan(0.02);
  });

  it('current sharing: five paths of 15 mohm and one of 8 at 50 A: 7.3 and 13.6 A; one open: 10 A each', () => {
    const shared = sharedCurrents(50, [15, 15, 15, 15, 15, 8]);
    expect(shared[0]).toBeCloseTo(7.3, 1);
    expect(shared[5]).toBeCloseTo(13.6, 1);
    expect(sharedCurrents(50, [15, 15, 15, 15, 15])[0]).toBeCloseTo(10, 9);
  });
});

describe('mass', () => {
  it('calculus textbook: 3 at (-1, 1), 4 at (2, -1), 8 at (3, 2) balance at (29/15, 1)', () => {
    const whole = centreOfMass([
      { mass: 3, at: [-1, 1, 0] },
      { mass: 4, at: [2, -1, 0] },
      { mass: 8, at: [3, 2, 0] },
    ]);
    expect(whole?.at[0]).toBeCloseTo(29 / 15, 12);
    expect(whole?.at[1]).toBeCloseTo(1, 12);
    expect(centreOfMass([])).toBeUndefined();
  });

  it('lifting equation: reach 40, from 20, up 55 cm, grip 0.95: 10.3 kg, so 9.8 kg are 0.95 of it', () => {
    const limit = recommendedWeightLimit({
      horizontal: 40,
      vertical: 20,
      travel: 55,
      couplingMultiplier: 0.95,
    });
    expect(limit).toBeCloseTo(10.3, 1);
    expect(9.8 / limit).toBeCloseTo(0.95, 2);
  });

  it('cantilever: 10.8 N over 220 mm of a 111 x 1.6 mm board sink 17 mm; with 2 mm of aluminium 2.4 mm; prop 4.0 N', () => {
    const board = 22_000 * stripMoment(111, 1.6);
    const plate = 69_000 * stripMoment(111, 2);
    const load = 1.6 * 9.81 * (220 / 320);
    expect(board / 1e6).toBeCloseTo(0.83, 2);
    expect(cantileverDroop(load, 220, board)).toBeCloseTo(17, 0);
    expect((board + plate) / 1e6).toBeCloseTo(5.94, 2);
    expect(cantileverDroop(load, 220, board + plate)).toBeCloseTo(2.4, 1);
    expect(load * PROP_SHARE).toBeCloseTo(4.0, 1);
  });
});
