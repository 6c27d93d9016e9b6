import { CUBIC_METRES_PER_SECOND_PER_CFM as CFM } from '../../../geometry/estimates/air/air-laws';
import { curvesInSeries, straightCurve } from '../../../geometry/estimates/air/fan-curve';
import type { AirLink } from '../../../geometry/estimates/air/link-law';
import { type NetworkSolution, solveNetwork } from '../../../geometry/estimates/air/solve-network';
import { digit, type OutsideCheck, checkRow as row } from './outside-check';

const DENSITY = 1.2;
/** The fan of the worked examples: 19.6 Pa shut off, 60 CFM free, a straight line. */
const fan = straightCurve(60 * CFM, 19.6);
const bare = { linear: 0, quadratic: 0 };
const system = { linear: 0, quadratic: 0.00625 / CFM ** 2 };
/** As good as no resistance, to close a circuit. */
const wide = { linear: 1e-9, quadratic: 0 };

function solved(nodes: number, links: readonly AirLink[]): NetworkSolution {
  const result = solveNetwork(nodes, links);
  if (!result.ok) throw new Error(result.because);
  return result.solution;
}

function orifice(area: number) {
  return { linear: 0, quadratic: DENSITY / (2 * area * area) };
}

const flow = (solution: NetworkSolution, link: number) => solution.flows[link] ?? Number.NaN;
const closed = 'closed form';
const duty = 'a distributor’s article on fan and system curves';

export function networkChecks(): readonly OutsideCheck[] {
  const one = solved(2, [
    { from: 0, to: 1, ...system, fan },
    { from: 1, to: 0, ...wide },
  ]);
  const slope = 19.6 / (60 * CFM);
  const root = (-slope + Math.sqrt(slope ** 2 + 4 * system.quadratic * 19.6)) / (2 * system.quadratic);
  const parallel = solved(2, [
    { from: 0, to: 1, ...bare, fan },
    { from: 0, to: 1, ...bare, fan },
    { from: 1, to: 0, ...system },
  ]);
  const inLine = solved(2, [
    { from: 0, to: 1, ...system, fan: curvesInSeries([fan, fan]) },
    { from: 1, to: 0, ...wide },
  ]);
  return [
    row(
      duty,
      'a fan of 19.6 Pa and 60 CFM against 10 Pa at 40 CFM',
      'CFM',
      35.7,
      flow(one, 0) / CFM,
      digit(1),
    ),
    row(duty, 'and its pressure', 'Pa', 7.95, system.quadratic * flow(one, 0) ** 2, digit(2)),
    row(`${closed}: root of K Q2 + (p0/Q0) Q - p0`, 'the same, relative', '', 1, flow(one, 0) / root, 1e-9),
    row('fan makers on fans in parallel', 'two side by side', 'CFM', 44.4, flow(parallel, 2) / CFM, digit(1)),
    row('fan makers on fans in series', 'one behind the other', 'CFM', 42.6, flow(inLine, 0) / CFM, digit(1)),
    ...singleNode(row),
    ...openings(row),
    ...buoyancy(row),
  ];
}

type Row = (
  source: string,
  what: string,
  unit: string,
  published: number,
  ours: number,
  within: number,
) => OutsideCheck;

function singleNode(row: Row): readonly OutsideCheck[] {
  const gaps = { from: 1, to: 0, ...orifice(0.6 * 0.006) };
  const driven = (inwards: boolean) => (from: number) =>
    inwards ? { from, to: 1 - from, ...bare, fan } : { from: 1 - from, to: from, ...bare, fan };
  const over = solved(2, [...[0, 0, 1].map(driven(true)), gaps]);
  const under = solved(2, [...[0, 0, 1].map(driven(false)), gaps]);
  const source = `${closed}, one node: two intakes, one exhaust, 60 cm2 of gaps`;
  return [
    row(source, 'inside over the room', 'Pa', 4.3, over.pressures[1] ?? Number.NaN, digit(1)),
    row(source, 'in by fans', 'CFM', 93.6, (flow(over, 0) + flow(over, 1)) / CFM, digit(1)),
    row(source, 'out by the fan', 'CFM', 73.2, flow(over, 2) / CFM, digit(1)),
    row(source, 'out by the gaps', 'CFM', 20.4, flow(over, 3) / CFM, digit(1)),
    row(
      `${source}, turned round`,
      'inside over the room',
      'Pa',
      -4.3,
      under.pressures[1] ?? Number.NaN,
      digit(1),
    ),
  ];
}

function openings(row: Row): readonly OutsideCheck[] {
  const [a, b] = [0.00518, 0.00346];
  const driven = (links: readonly AirLink[], nodes: number) =>
    flow(
      solved(nodes, [{ from: 0, to: 1, linear: 0, quadratic: 1, fan: straightCurve(1, 20) }, ...links]),
      0,
    );
  const series = driven(
    [
      { from: 1, to: 2, ...orifice(a) },
      { from: 2, to: 0, ...orifice(b) },
    ],
    3,
  );
  const asOne = driven([{ from: 1, to: 0, ...orifice(1 / Math.sqrt(1 / a ** 2 + 1 / b ** 2)) }], 2);
  const beside = driven(
    [
      { from: 1, to: 0, ...orifice(a) },
      { from: 1, to: 0, ...orifice(b) },
    ],
    2,
  );
  return [
    row(
      closed,
      'two openings in series against the one of the same loss, relative',
      '',
      1,
      series / asOne,
      1e-9,
    ),
    row(
      closed,
      'in parallel, relative',
      '',
      1,
      beside / driven([{ from: 1, to: 0, ...orifice(a + b) }], 2),
      1e-9,
    ),
  ];
}

function buoyancy(row: Row): readonly OutsideCheck[] {
  const area = orifice(0.6 * 0.005);
  const rising = solved(2, [
    { from: 0, to: 1, ...area, lift: 0.207 },
    { from: 1, to: 0, ...area },
  ]);
  return [
    row(closed, 'buoyancy alone: 0.207 Pa through 50 cm2 twice', 'CFM', 2.6, flow(rising, 0) / CFM, digit(1)),
  ];
}
