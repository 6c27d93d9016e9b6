import { cantileverDroop, PROP_SHARE, stripMoment } from '../../../geometry/estimates/mass/cantilever';
import { centreOfMass } from '../../../geometry/estimates/mass/centre-of-mass';
import { footLoads, hangAngle, type Stand, tippingOf } from '../../../geometry/estimates/mass/standing';
import { recommendedWeightLimit } from '../../../geometry/standards/lifting-equation';
import { digit, type OutsideCheck, checkRow as row } from './outside-check';

const square: Stand = {
  contacts: [
    { name: 'a', x: 0, z: 0 },
    { name: 'b', x: 0, z: 200 },
    { name: 'c', x: 400, z: 0 },
    { name: 'd', x: 400, z: 200 },
  ],
  edges: { minX: 0, maxX: 400, minZ: 0, maxZ: 200 },
  ground: 0,
  top: 500,
};

const textbook = 'a calculus textbook: 3 at (-1, 1), 4 at (2, -1), 8 at (3, 2)';
const lifting = 'lifting equation, NIOSH 94-110';
const beam = 'built-in beam, evenly loaded (8 EI)';

export function massChecks(): readonly OutsideCheck[] {
  const whole = centreOfMass([
    { mass: 3, at: [-1, 1, 0] },
    { mass: 4, at: [2, -1, 0] },
    { mass: 8, at: [3, 2, 0] },
  ]);
  const limit = recommendedWeightLimit({
    horizontal: 40,
    vertical: 20,
    travel: 55,
    couplingMultiplier: 0.95,
  });
  const board = 22_000 * stripMoment(111, 1.6);
  const plate = 69_000 * stripMoment(111, 2);
  const load = 1.6 * 9.81 * (220 / 320);
  const edge = footLoads(square, [0, 99, 100], 100);
  return [
    row(textbook, 'centre, x', '', 29 / 15, whole?.at[0] ?? Number.NaN, 1e-12),
    row(textbook, 'centre, y', '', 1, whole?.at[1] ?? Number.NaN, 1e-12),
    row(lifting, 'limit at reach 40, from 20, up 55 cm, grip 0.95', 'kg', 10.3, limit, digit(1)),
    row(lifting, 'index of 9.8 kg', '', 0.95, 9.8 / limit, digit(2)),
    row(beam, 'stiffness of a 111 x 1.6 mm board, 22 GPa', 'N m2', 0.83, board / 1e6, digit(2)),
    row(beam, '10.8 N over 220 mm of it', 'mm', 17, cantileverDroop(load, 220, board), digit(0)),
    row(beam, 'with 2 mm of aluminium', 'N m2', 5.94, (board + plate) / 1e6, digit(2)),
    row(beam, 'and its droop', 'mm', 2.4, cantileverDroop(load, 220, board + plate), digit(1)),
    row('propped cantilever (3/8)', 'load on a prop', 'N', 4, load * PROP_SHARE, digit(1)),
    row('statics', 'a foot under the edge the weight is over, 100 N', 'N', 50, edge[0] ?? Number.NaN, 1e-9),
    row(
      'statics',
      'tilt at which an edge as far as the centre is high gives way',
      'deg',
      45,
      tippingOf(square, [200, 100, 100], 100).degrees,
      1e-9,
    ),
    row(
      'statics',
      'push at the top edge, 100 N',
      'N',
      20,
      tippingOf(square, [200, 100, 100], 100).push,
      1e-9,
    ),
    row('statics', 'hanging as far beside as below', 'deg', 45, hangAngle([0, 100, 0], [60, 0, 80]), 1e-9),
  ];
}
