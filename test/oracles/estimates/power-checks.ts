import { classCurrents, connectorLimit, plugLimit } from '../../../geometry/estimates/power/demand';
import { certifiedPoints, inputPower, lossShare } from '../../../geometry/estimates/power/efficiency';
import { effectiveLoad } from '../../../geometry/estimates/power/excursions';
import { contactDrop, leadDrop, sharedCurrents } from '../../../geometry/estimates/power/lead-laws';
import { wireArea, wireResistance } from '../../../geometry/standards/copper-wire';
import { digit, type OutsideCheck, checkRow as row } from './outside-check';

const guide = 'supply design guide, document 336521';
const wires = 'two wire tables';

export function powerChecks(): readonly OutsideCheck[] {
  const { continuous, peak } = classCurrents(125);
  const shared = sharedCurrents(50, [15, 15, 15, 15, 15, 8]);
  return [
    row(`${guide}, table 2-1`, 'a 125 W class for long, times 11.2 V', 'W', 291, continuous * 11.2, 0.5),
    row(`${guide}, table 2-1`, 'its peak', 'W', 437, peak * 11.2, 0.5),
    row("a buyer's guide", '1000 W at 80 %', 'W', 1250, inputPower(1000, 0.8), digit(0)),
    row("a buyer's guide", '1000 W at 90 %', 'W', 1111, inputPower(1000, 0.9), digit(0)),
    ...certified(),
    row('card specification CEM 5.1', 'slot and two 2x4 plugs', 'W', 375, eightPins(2), 1e-9),
    row('card specification CEM 5.1', 'a 2x3 plug', 'W', 75, plugLimit('card 6-pin'), 1e-9),
    row(
      `${guide}, 3`,
      '600 W at 12 V through six contacts',
      'A',
      8.33,
      plugLimit('card 16-pin') / 12 / 6,
      digit(2),
    ),
    row(`${guide}, 3`, 'the same at 11.4 V', 'A', 8.77, plugLimit('card 16-pin') / 11.4 / 6, digit(2)),
    row(
      'single-rail guide, document 613768, table 3-4',
      '918 W, 5 % at 2000 W',
      'W',
      1000,
      effectiveLoad(918, 2000, 0.05),
      0.5,
    ),
    row(wires, '16 AWG', 'mm2', 1.309, wireArea(16), digit(3)),
    row(wires, '18 AWG', 'mm2', 0.823, wireArea(18), digit(3)),
    row(wires, '16 AWG', 'mohm/m', 13.17, wireResistance(16) * 1000, digit(1)),
    row(wires, '18 AWG', 'mohm/m', 20.94, wireResistance(18) * 1000, digit(1)),
    row(
      'copper, there and back',
      '600 W, 0.5 m of six 16 AWG',
      'V',
      0.11,
      leadDrop(0.5, 16, 50, 6),
      digit(3),
    ),
    row(
      'contacts of 5 mohm',
      '50 A through six, there and back',
      'V',
      0.167,
      contactDrop(50 / 6, 0.005),
      digit(3),
    ),
    row(
      'copper, there and back',
      '150 W, 0.6 m of three 18 AWG',
      'V',
      0.105,
      leadDrop(0.6, 18, 12.5, 3),
      digit(3),
    ),
    row(
      'a security wiring page',
      '350 ft of an 18 AWG pair, 1 A, within 1 %',
      'V',
      4.445,
      leadDrop(350 * 0.3048, 18, 1),
      0.04445,
    ),
    row(
      'a camera wiring sheet (prints 2.91; its own table gives 2.9295), within 2 %',
      '1500 ft of 18 AWG, 0.3 A',
      'V',
      2.9295,
      leadDrop((1500 * 0.3048) / 2, 18, 0.3),
      0.0586,
    ),
    row(
      'current sharing, Kirchhoff',
      'each of five of 15 mohm beside one of 8, 50 A',
      'A',
      7.3,
      shared[0] ?? Number.NaN,
      digit(1),
    ),
    row('current sharing, Kirchhoff', 'the one of 8 mohm', 'A', 13.6, shared[5] ?? Number.NaN, digit(1)),
  ];
}

function eightPins(count: number): number {
  return connectorLimit({ power: Array.from({ length: count }, () => ({ type: 'card 8-pin' })) });
}

/** The loss curve must pass through every point a level is certified at. */
function certified(): readonly OutsideCheck[] {
  return (['base', 'bronze', 'silver', 'gold', 'platinum', 'titanium'] as const).flatMap((grade) =>
    ([115, 230] as const).flatMap((mains) => {
      const points = certifiedPoints(grade, mains);
      return (
        [
          [0.2, points.at20],
          [0.5, points.at50],
          [1, points.at100],
        ] as const
      ).map(
        ([load, published]): OutsideCheck => ({
          source: `efficiency level ${grade}, ${mains} V`,
          what: `efficiency at ${load * 100} % load`,
          unit: '',
          published,
          ours: load / (load + lossShare(points, load)),
          within: 1e-9,
        }),
      );
    }),
  );
}
