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
} from '../../../geometry/estimates/air/air-laws';
import {
  layerResistance,
  resistanceAllowed,
  temperatureThrough,
} from '../../../geometry/estimates/heat/resistance-laws';
import {
  airSpecificHeat,
  makersAirDensity,
  standardDensity,
} from '../../../geometry/standards/standard-atmosphere';
import { digit, type OutsideCheck, checkRow as row } from './outside-check';

const FAHRENHEIT = 1.8;
const makers = 'fan makers: "Establishing cooling requirements: air flow vs pressure"';
const article = 'an enclosure article that divides watts by 1.08 degrees C; known wrong';

export function airChecks(): readonly OutsideCheck[] {
  const perKelvin = 1 / (makersAirDensity.value * airSpecificHeat.value * CFM);
  const ratio = standardDensity(1500) / standardDensity(0);
  return [
    row(makers, 'constant in degrees C', 'CFM K/W', 1.757, perKelvin, digit(3)),
    row(makers, 'constant in degrees F', 'CFM F/W', 3.163, perKelvin * FAHRENHEIT, digit(3)),
    row(makers, '550 W in 60 CFM warm it by', 'K', 16.1, airRise(550, 60 * CFM), digit(1)),
    row(
      makers,
      '10 K for 550 W take (96.8 printed, 96.6 by its rounded constant)',
      'CFM',
      96.8,
      flowForRise(550, 10) / CFM,
      0.3,
    ),
    row(
      'a motion-control maker: CFM = 3160 kW / F',
      '1 kW, 1 degree F, within 0.2 %',
      'CFM',
      3160,
      flowForRise(1000, 1 / FAHRENHEIT) / CFM,
      3160 * 0.002,
    ),
    { ...row(article, '100 W, 35 K', 'CFM', 2.64, flowForRise(100, 35) / CFM, 1), knownWrong: true },
    { ...row(article, '500 W, 15 K', 'CFM', 30.86, flowForRise(500, 15) / CFM, 10), knownWrong: true },
    row('ISO 2533', 'density at 1500 m over sea level', '', 0.864, ratio, digit(3)),
    row('ISO 2533', 'density at sea level', 'kg/m3', 1.225, standardDensity(0), digit(3)),
    ...(
      [
        [0.3, 31.8],
        [0.4, 17.9],
        [0.6, 8.0],
        [0.75, 5.1],
      ] as const
    ).map(([open, published]) =>
      row(
        'orifice law, coefficient 0.6 (multizone airflow library)',
        `40 CFM through a 120 mm square open to ${open * 100} %`,
        'Pa',
        published,
        openingLoss(40 * CFM, 0.6 * open * 0.12 ** 2),
        digit(1),
      ),
    ),
    row(
      'orifice law',
      '51.8 and 34.6 cm2 one behind the other',
      'cm2',
      28.8,
      areaInSeries([51.8, 34.6]),
      digit(1),
    ),
    row('orifice law', 'side by side', 'cm2', 86.4, areaInParallel([51.8, 34.6]), digit(1)),
    row('stack effect', '0.35 m of air 15 K warmer', 'Pa', 0.207, stackPressure(0.35, 15, 25), digit(3)),
    row(
      'stack effect',
      'through 50 cm2 in and out',
      'CFM',
      2.6,
      openingFlow(stackPressure(0.35, 15, 25), areaInSeries([0.6 * 0.005, 0.6 * 0.005])) / CFM,
      digit(1),
    ),
    ...(
      [
        [0.1, 1.7, 1],
        [0.2, 3.75, 2],
        [0.3, 6.4, 1],
      ] as const
    ).map(([share, published, places]) =>
      row(
        'mixing: phi dT / (1 - phi)',
        `rise at an intake that breathes ${share} of its own 15 K`,
        'K',
        published,
        rebreathingRise(share, 15),
        digit(places),
      ),
    ),
    row('fan laws (three articles)', 'power at 0.8 of the speed', '', 0.512, fanLaws(0.8).power, digit(3)),
    row(
      'fan laws (three articles)',
      'pressure at 1.1 of the speed',
      '%',
      21,
      (fanLaws(1.1).pressure - 1) * 100,
      0.5,
    ),
    row(
      'fan laws (three articles)',
      'power at 1.1 of the speed',
      '%',
      33,
      (fanLaws(1.1).power - 1) * 100,
      0.5,
    ),
    row(
      'fan laws (three articles)',
      'power at 0.9 of the speed',
      '%',
      -27,
      (fanLaws(0.9).power - 1) * 100,
      0.5,
    ),
    row(
      'thermal-resistance calculators',
      '37 C, 150 W, 0.10 + 0.05 + 0.20 K/W',
      'C',
      89.5,
      temperatureThrough(37, 150, [0.1, 0.05, 0.2]),
      digit(1),
    ),
    row(
      'thermal-resistance calculators',
      'last resistance allowed for 95 C',
      'K/W',
      0.237,
      resistanceAllowed(37, 150, 95, [0.1, 0.05]),
      digit(3),
    ),
    row(
      'thermal-resistance calculators',
      '50 um of 6 W/(m K) over 30 mm square',
      'K/W',
      0.0093,
      layerResistance(50e-6, 6, 0.03 * 0.03),
      digit(4),
    ),
  ];
}
