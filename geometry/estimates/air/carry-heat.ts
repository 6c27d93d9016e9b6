/**
 * Temperatures of the nodes of an air network: every node is well mixed, air carries heat along the flows, neighbours
 * exchange a little by eddies, and the walls lose some to the room. Linear in the sources, so that the rise at any
 * intake is the sum of what each source puts there: who breathes whose exhaust is read off directly.
 */
import { airSpecificHeat } from '../../standards/standard-atmosphere';
import { type Factors, factor, solveFactored } from './linear-equations';

export interface HeatPath {
  readonly a: number;
  readonly b: number;
  /** W/K, the same both ways; node 0 is the room. */
  readonly conductance: number;
}

export interface HeatCarrier {
  readonly nodes: number;
  readonly factors: Factors;
  /** W/K that each node sends out of the machine by air and through walls. */
  readonly outwards: Float64Array;
}

/** Prepares the equations once for a set of flows (m3/s along the links) and exchange paths. */
export function prepareHeat(
  nodes: number,
  links: readonly { readonly from: number; readonly to: number }[],
  flows: Float64Array,
  density: number,
  paths: readonly HeatPath[],
): HeatCarrier {
  const size = nodes - 1;
  const matrix = new Float64Array(size * size);
  const outwards = new Float64Array(nodes);
  const put = (row: number, column: number, value: number): void => {
    const at = (row - 1) * size + column - 1;
    matrix[at] = (matrix[at] ?? 0) + value;
  };
  const perFlow = density * airSpecificHeat.value;
  links.forEach((link, i) => {
    const flow = flows[i] ?? 0;
    const [up, down] = flow >= 0 ? [link.from, link.to] : [link.to, link.from];
    if (up === 0 || up === down) return;
    const carried = perFlow * Math.abs(flow);
    put(up, up, carried);
    if (down > 0) put(down, up, -carried);
    else outwards[up] = (outwards[up] ?? 0) + carried;
  });
  for (const { a, b, conductance } of paths) {
    if (a > 0) put(a, a, conductance);
    if (b > 0) put(b, b, conductance);
    if (a > 0 && b > 0) {
      put(a, b, -conductance);
      put(b, a, -conductance);
    } else if (a + b > 0) outwards[a + b] = (outwards[a + b] ?? 0) + conductance;
  }
  return { nodes, factors: factor(matrix, size), outwards };
}

/** Rise of every node above the air that comes in, K, for heat in W put into each node. */
export function risesOf(carrier: HeatCarrier, watts: Float64Array): Float64Array {
  const rises = new Float64Array(carrier.nodes);
  rises.set(solveFactored(carrier.factors, watts.subarray(1)), 1);
  return rises;
}

/** Heat put in against heat that leaves, as a share of the heat put in. */
export function heatImbalance(carrier: HeatCarrier, watts: Float64Array, rises: Float64Array): number {
  let put = 0;
  let leaving = 0;
  for (let node = 1; node < carrier.nodes; node++) {
    put += watts[node] ?? 0;
    leaving += (carrier.outwards[node] ?? 0) * (rises[node] ?? 0);
  }
  return put === 0 ? Math.abs(leaving) : Math.abs(put - leaving) / put;
}
