import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CUBIC_METRES_PER_SECOND_PER_CFM as CFM } from '../../../geometry/estimates/air/air-laws';
import { curvesInSeries, curveThrough, straightCurve } from '../../../geometry/estimates/air/fan-curve';
import { type AirLink, differenceAt, flowAt, openingLaw } from '../../../geometry/estimates/air/link-law';
import { type NetworkSolution, solveNetwork } from '../../../geometry/estimates/air/solve-network';
import { generalPressures } from '../../oracles/estimates/general-solver';

const DENSITY = 1.2;
/** The fan of the worked examples: 19.6 Pa shut off, 60 CFM free, a straight line. */
const fan = straightCurve(60 * CFM, 19.6);
const bare = { linear: 0, quadratic: 0 };
const system = { linear: 0, quadratic: 0.00625 / CFM ** 2 };
/** As good as no resistance, to close a circuit. */
const wide = { linear: 1e-9, quadratic: 0 };

function solved(nodes: number, links: readonly AirLink[], start?: Float64Array): NetworkSolution {
  const result = solveNetwork(nodes, links, start);
  if (!result.ok) throw new Error(result.because);
  return result.solution;
}

/** Effective area without the laminar part that openings of a machine have. */
function orifice(area: number) {
  return { linear: 0, quadratic: DENSITY / (2 * area * area) };
}

describe('against closed forms', () => {
  it('one fan against K Q^2, 10 Pa at 40 CFM: 35.7 CFM at 7.95 Pa', () => {
    const { flows } = solved(2, [
      { from: 0, to: 1, ...system, fan },
      { from: 1, to: 0, ...wide },
    ]);
    const flow = flows[0] ?? 0;
    expect(flow / CFM).toBeCloseTo(35.7, 1);
    expect(system.quadratic * flow ** 2).toBeCloseTo(7.95, 2);
    // The root of K Q^2 + (p0 / Q0) Q - p0, exactly.
    const slope = 19.6 / (60 * CFM);
    const root = (-slope + Math.sqrt(slope ** 2 + 4 * system.quadratic * 19.6)) / (2 * system.quadratic);
    expect(flow / root).toBeCloseTo(1, 9);
  });

  it('two such fans side by side: 44.4 CFM; one behind the other: 42.6', () => {
    const parallel = solved(2, [
      { from: 0, to: 1, ...bare, fan },
      { from: 0, to: 1, ...bare, fan },
      { from: 1, to: 0, ...system },
    ]);
    expect((parallel.flows[2] ?? 0) / CFM).toBeCloseTo(44.4, 1);
    const inLine = solved(3, [
      { from: 0, to: 1, ...bare, fan },
      { from: 1, to: 2, ...bare, fan },
      { from: 2, to: 0, ...system },
    ]);
    expect((inLine.flows[2] ?? 0) / CFM).toBeCloseTo(42.6, 1);
    const added = solved(2, [
      { from: 0, to: 1, ...system, fan: curvesInSeries([fan, fan]) },
      { from: 1, to: 0, ...wide },
    ]);
    expect((added.flows[0] ?? 0) / (inLine.flows[2] ?? 1)).toBeCloseTo(1, 7);
  });

  it('two intakes, one exhaust, 60 cm2 of other openings: +4.3 Pa, 93.6 in, 73.2 out, 20.4 CFM by the gaps; turned round, the mirror of it', () => {
    const gaps = orifice(0.6 * 0.006);
    const links = (sign: 1 | -1): AirLink[] =>
      [0, 0, 1].map((from) => {
        const [a, b] = sign === 1 ? [from, 1 - from] : [1 - from, from];
        return { from: a, to: b, ...bare, fan };
      });
    const positive = solved(2, [...links(1), { from: 1, to: 0, ...gaps }]);
    expect(positive.pressures[1]).toBeCloseTo(4.3, 1);
    expect(((positive.flows[0] ?? 0) + (positive.flows[1] ?? 0)) / CFM).toBeCloseTo(93.6, 1);
    expect((positive.flows[2] ?? 0) / CFM).toBeCloseTo(73.2, 1);
    expect((positive.flows[3] ?? 0) / CFM).toBeCloseTo(20.4, 1);
    const negative = solved(2, [...links(-1), { from: 1, to: 0, ...gaps }]);
    expect(negative.pressures[1]).toBeCloseTo(-4.3, 1);
    expect((negative.flows[3] ?? 0) / CFM).toBeCloseTo(-20.4, 1);
  });

  it('orifices in series behave as their areas in series; in parallel they add', () => {
    const [a, b] = [0.00518, 0.00346];
    const driven = (links: readonly AirLink[], nodes: number) =>
      solved(nodes, [{ from: 0, to: 1, linear: 0, quadratic: 1, fan: straightCurve(1, 20) }, ...links])
        .flows[0] ?? 0;
    const series = driven(
      [
        { from: 1, to: 2, ...orifice(a) },
        { from: 2, to: 0, ...orifice(b) },
      ],
      3,
    );
    const together = driven([{ from: 1, to: 0, ...orifice(1 / Math.sqrt(1 / a ** 2 + 1 / b ** 2)) }], 2);
    expect(series / together).toBeCloseTo(1, 9);
    const parallel = driven(
      [
        { from: 1, to: 0, ...orifice(a) },
        { from: 1, to: 0, ...orifice(b) },
      ],
      2,
    );
    expect(parallel / driven([{ from: 1, to: 0, ...orifice(a + b) }], 2)).toBeCloseTo(1, 9);
  });

  it('buoyancy alone: 0.207 Pa through 50 cm2 twice moves 2.6 CFM', () => {
    const area = orifice(0.6 * 0.005);
    const { flows } = solved(2, [
      { from: 0, to: 1, ...area, lift: 0.207 },
      { from: 1, to: 0, ...area },
    ]);
    expect((flows[0] ?? 0) / CFM).toBeCloseTo(2.6, 1);
  });
});

describe('laws of a link', () => {
  it('an opening above 1 m/s differs from rho/2 (Q/A)^2 by less than 0.2 %', () => {
    const area = 0.004;
    const link: AirLink = { from: 0, to: 1, ...openingLaw(area, DENSITY) };
    for (const speed of [1, 2, 5, 20]) {
      const printed = (DENSITY / 2) * speed ** 2;
      expect(Math.abs(differenceAt(link, speed * area) / printed - 1)).toBeLessThan(0.002);
    }
  });

  it('finds the flow for any pressure, fan or none', () => {
    const curve = curveThrough([
      { flow: 0, pressure: 30 },
      { flow: 0.01, pressure: 22 },
      { flow: 0.02, pressure: 18 },
      { flow: 0.04, pressure: 0 },
    ]);
    fc.assert(
      fc.property(fc.double({ min: -80, max: 80, noNaN: true }), fc.boolean(), (difference, driven) => {
        const link: AirLink = {
          from: 0,
          to: 1,
          ...openingLaw(0.003, DENSITY),
          ...(driven ? { fan: curve } : {}),
        };
        expect(differenceAt(link, flowAt(link, difference))).toBeCloseTo(difference, 6);
      }),
      { numRuns: 200 },
    );
  });

  it('a fan with nothing in its way moves its free flow', () => {
    for (const free of [0.0089, 0.0123, 60 * CFM])
      expect(flowAt({ from: 0, to: 1, ...bare, fan: straightCurve(free, 57) }, 0) / free).toBeCloseTo(1, 9);
  });

  it('refuses a curve whose pressure does not fall', () => {
    expect(() => curveThrough([{ flow: 0, pressure: 1 }])).toThrow(RangeError);
    expect(() =>
      curveThrough([
        { flow: 0, pressure: 10 },
        { flow: 1, pressure: 11 },
      ]),
    ).toThrow(RangeError);
    expect(() =>
      curveThrough([
        { flow: 1, pressure: 10 },
        { flow: 1, pressure: 5 },
      ]),
    ).toThrow(RangeError);
  });
});

/** Any network of up to seven nodes in which every node has an opening to the one before it. */
const anyNetwork = fc
  .integer({ min: 2, max: 7 })
  .chain((nodes) =>
    fc.record({
      nodes: fc.constant(nodes),
      chain: fc.array(fc.double({ min: 5e-4, max: 0.02, noNaN: true }), {
        minLength: nodes - 1,
        maxLength: nodes - 1,
      }),
      extra: fc.array(
        fc.record({
          from: fc.integer({ min: 0, max: nodes - 1 }),
          to: fc.integer({ min: 0, max: nodes - 1 }),
          area: fc.double({ min: 5e-4, max: 0.02, noNaN: true }),
          pressure: fc.double({ min: 1, max: 60, noNaN: true }),
          free: fc.double({ min: 0.002, max: 0.06, noNaN: true }),
          driven: fc.boolean(),
        }),
        { minLength: 1, maxLength: 8 },
      ),
    }),
  )
  .map(({ nodes, chain, extra }) => ({
    nodes,
    links: [
      ...chain.map((area, i): AirLink => ({ from: i, to: i + 1, ...openingLaw(area, DENSITY) })),
      ...extra
        .filter(({ from, to }) => from !== to)
        .map(
          ({ from, to, area, pressure, free, driven }): AirLink => ({
            from,
            to,
            ...openingLaw(area, DENSITY),
            ...(driven ? { fan: straightCurve(free, pressure) } : {}),
          }),
        ),
    ],
  }));

describe('any network', () => {
  it('balances at every node to 1e-9 and gives every link the difference it needs', () => {
    fc.assert(
      fc.property(anyNetwork, ({ nodes, links }) => {
        const { flows, pressures, imbalance } = solved(nodes, links);
        expect(imbalance).toBeLessThan(1e-9);
        links.forEach((link, i) => {
          const given = (pressures[link.from] ?? 0) - (pressures[link.to] ?? 0);
          expect(Math.abs(differenceAt(link, flows[i] ?? 0) - given)).toBeLessThan(1e-6);
        });
      }),
      { numRuns: 300 },
    );
  });

  it('has one answer, from wherever the search starts', () => {
    fc.assert(
      fc.property(anyNetwork, fc.integer({ min: 1, max: 50 }), ({ nodes, links }, seed) => {
        const rest = solved(nodes, links);
        const start = Float64Array.from(links, (_, i) => 0.02 * Math.sin(seed * (i + 1)));
        const again = solved(nodes, links, start);
        rest.flows.forEach((flow, i) => {
          expect(Math.abs(flow - (again.flows[i] ?? 0))).toBeLessThan(1e-8);
        });
      }),
      { numRuns: 200 },
    );
  });

  it('agrees with a general least-squares solver (ml-levenberg-marquardt) on the node balances', () => {
    const networks = fc
      .sample(anyNetwork, { numRuns: 200, seed: 7 })
      .filter(({ links }) => links.some(({ fan: driven }) => driven !== undefined));
    let compared = 0;
    for (const { nodes, links } of networks) {
      const own = solved(nodes, links);
      const found = generalPressures(nodes, links, own.pressures);
      if (found === undefined) continue;
      compared++;
      found.forEach((pressure, i) => {
        expect(Math.abs(pressure - (own.pressures[i + 1] ?? 0))).toBeLessThan(1e-3);
      });
    }
    // It does not get through them all; those it solves must be many, or this says nothing.
    expect(compared).toBeGreaterThan(50);
  });

  it('names the nodes that nothing joins to the room', () => {
    const result = solveNetwork(4, [
      { from: 0, to: 1, ...openingLaw(0.01, DENSITY) },
      { from: 2, to: 3, ...openingLaw(0.01, DENSITY) },
    ]);
    expect(result).toEqual({ ok: false, because: 'no path to the room', nodes: [2, 3] });
  });
});
