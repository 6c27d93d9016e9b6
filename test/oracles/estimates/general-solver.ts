/** Air networks by a general nonlinear least-squares solver that knows nothing of networks. */
import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { straightCurve } from '../../../geometry/estimates/air/fan-curve';
import { type AirLink, flowAt, openingLaw } from '../../../geometry/estimates/air/link-law';
import { solveNetwork } from '../../../geometry/estimates/air/solve-network';

const DENSITY = 1.2;
const NETWORKS = 60;

/** A repeatable stream of numbers between 0 and 1 (mulberry32). */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

function randomNetwork(next: () => number): { nodes: number; links: readonly AirLink[] } {
  const nodes = 3 + Math.floor(next() * 4);
  const area = () => 5e-4 + next() * 0.015;
  const chain = Array.from(
    { length: nodes - 1 },
    (_, i): AirLink => ({
      from: i,
      to: i + 1,
      ...openingLaw(area(), DENSITY),
    }),
  );
  const fans = Array.from({ length: 2 }, (): AirLink => {
    const from = Math.floor(next() * nodes);
    const to = (from + 1 + Math.floor(next() * (nodes - 1))) % nodes;
    const fan = straightCurve(0.005 + next() * 0.04, 5 + next() * 40);
    return { from, to, ...openingLaw(area(), DENSITY), fan };
  });
  return { nodes, links: [...chain, ...fans] };
}

export interface SolverComparison {
  readonly compared: number;
  /** Largest difference of a node's pressure, Pa. */
  readonly worst: number;
  /** Largest pressure met, Pa. */
  readonly largest: number;
}

/** Compares every seeded network that the general solver gets through. */
export function compareSolvers(seed = 7): SolverComparison {
  const next = numbers(seed);
  let compared = 0;
  let worst = 0;
  let largest = 0;
  for (let i = 0; i < NETWORKS; i++) {
    const { nodes, links } = randomNetwork(next);
    const own = solveNetwork(nodes, links);
    if (!own.ok) throw new Error(own.because);
    const { pressures } = own.solution;
    const found = generalPressures(nodes, links, pressures);
    if (!found) continue;
    compared++;
    found.forEach((pressure, node) => {
      worst = Math.max(worst, Math.abs(pressure - (pressures[node + 1] ?? 0)));
      largest = Math.max(largest, Math.abs(pressure));
    });
  }
  return { compared, worst, largest };
}

/** Pressures of the inner nodes by the general solver, from a start beside the answer; undefined when the solver gives up. */
export function generalPressures(
  nodes: number,
  links: readonly AirLink[],
  near: Float64Array,
): readonly number[] | undefined {
  const netOf = (inner: ArrayLike<number>, node: number): number => {
    const at = (one: number) => (one === 0 ? 0 : (inner[one - 1] ?? 0));
    return links.reduce((sum, link) => {
      if (link.from !== node && link.to !== node) return sum;
      const flow = flowAt(link, at(link.from) - at(link.to));
      return sum + (link.from === node ? flow : -flow);
    }, 0);
  };
  // Points beyond the nodes only make it willing: it wants more points than unknowns.
  const x = Array.from({ length: nodes + 1 }, (_, i) => i);
  try {
    const { parameterValues } = levenbergMarquardt(
      { x, y: x.map(() => 0) },
      (inner) => (node) => (node >= 1 && node < nodes ? 1e3 * netOf(inner, node) : 0),
      {
        initialValues: Array.from(near.slice(1), (pressure, i) => pressure * 0.7 + 0.1 * (i + 1)),
        maxIterations: 300,
        errorTolerance: 1e-18,
        gradientDifference: 1e-6,
        centralDifference: true,
        damping: 1e-2,
      },
    );
    const through = links.reduce((sum, link) => sum + Math.abs(flowAt(link, 1)), 0);
    const settled = x
      .slice(1, nodes)
      .every((node) => Math.abs(netOf(parameterValues, node)) < 1e-8 * through);
    return settled ? parameterValues : undefined;
  } catch {
    return undefined;
  }
}
