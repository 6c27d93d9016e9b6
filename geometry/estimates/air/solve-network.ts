/**
 * Flows and pressures of a network of openings and fans. Node 0 is the room, at pressure 0.
 *
 * Every link needs the more pressure the more flows, so the balanced flows are, among all that balance at every node,
 * where the sum of the links' contents is least: a convex question with one answer. Newton's method among the balanced
 * flows (Todini's global gradient), each step shortened until the sum falls, gets there from any start. General-purpose
 * solvers know neither the convexity nor the balance; no small library for it is kept for browsers.
 */

import { solveSymmetric } from './linear-equations';
import { type AirLink, contentAt, differenceAt, slopeAt } from './link-law';

export interface NetworkSolution {
  /** Pressure of every node against the room, Pa. */
  readonly pressures: Float64Array;
  /** Flow of every link, m3/s, positive from `from` to `to`. */
  readonly flows: Float64Array;
  /** Largest imbalance of a node over the sum of all flows. */
  readonly imbalance: number;
  /** Largest difference between what a link needs and what its nodes give, Pa. */
  readonly mismatch: number;
  readonly iterations: number;
}

export type NetworkResult =
  | { readonly ok: true; readonly solution: NetworkSolution }
  /** Nodes that no link joins to the room, or steps that led nowhere. */
  | {
      readonly ok: false;
      readonly because: 'no path to the room' | 'no balance';
      readonly nodes: readonly number[];
    };

/** Largest imbalance that is let through. */
const BALANCED = 1e-9;

/** Steps smaller than this share of the flows change nothing. */
const STEADY = 1e-10;

/** Steps smaller than this share of the flows need no check. */
const NEAR = 1e-3;

const MOST_ITERATIONS = 100;

/** Sum of flows below which everything stands still, m3/s: less than half a litre an hour. */
const STANDSTILL = 1e-7;

/**
 * Solves from rest, or from flows that nearly fit (`start`, one a link). `isJoined` says that the same links were found
 * to join every node before.
 */
export function solveNetwork(
  nodes: number,
  links: readonly AirLink[],
  start?: Float64Array,
  isJoined = false,
): NetworkResult {
  const unreached = isJoined ? [] : nodesCutOff(nodes, links);
  if (unreached.length > 0) return { ok: false, because: 'no path to the room', nodes: unreached };
  const search = new Search(nodes, links, start);
  const iterations = search.run();
  const { pressures, flows, mismatch } = search;
  const imbalance = search.imbalance();
  if (iterations >= MOST_ITERATIONS || !(imbalance < BALANCED))
    return { ok: false, because: 'no balance', nodes: [] };
  return { ok: true, solution: { pressures, flows, imbalance, mismatch, iterations } };
}

/** Nodes that no chain of links joins to the room. */
export function nodesCutOff(nodes: number, links: readonly AirLink[]): readonly number[] {
  const group = Int32Array.from({ length: nodes }, (_, i) => i);
  const rootOf = (node: number): number => {
    let root = node;
    while (group[root] !== root) root = group[root] ?? 0;
    return root;
  };
  for (const { from, to } of links) {
    const [a, b] = [rootOf(from), rootOf(to)];
    group[Math.max(a, b)] = Math.min(a, b);
  }
  return Array.from({ length: nodes }, (_, i) => i).filter((node) => rootOf(node) !== 0);
}

class Search {
  readonly pressures: Float64Array;
  flows: Float64Array;
  mismatch = 0;
  private readonly links: readonly AirLink[];
  private readonly size: number;
  private readonly needs: Float64Array;
  private readonly slopes: Float64Array;
  private readonly matrix: Float64Array;
  private readonly right: Float64Array;
  private readonly step: Float64Array;
  private balanced = false;

  constructor(nodes: number, links: readonly AirLink[], start: Float64Array | undefined) {
    this.links = links;
    this.size = nodes - 1;
    this.pressures = new Float64Array(nodes);
    this.flows = start?.length === links.length ? start.slice() : new Float64Array(links.length);
    this.needs = new Float64Array(links.length);
    this.slopes = new Float64Array(links.length);
    this.matrix = new Float64Array(this.size * this.size);
    this.right = new Float64Array(this.size);
    this.step = new Float64Array(links.length);
  }

  run(): number {
    for (let iteration = 1; iteration <= MOST_ITERATIONS; iteration++) {
      this.linearise();
      if (!this.solvePressures()) return MOST_ITERATIONS;
      const moved = this.takeStep();
      if (moved <= STEADY) return iteration;
    }
    return MOST_ITERATIONS;
  }

  imbalance(): number {
    const net = new Float64Array(this.size + 1);
    let through = 0;
    this.links.forEach(({ from, to }, i) => {
      const flow = this.flows[i] ?? 0;
      through += Math.abs(flow);
      net[from] = (net[from] ?? 0) + flow;
      net[to] = (net[to] ?? 0) - flow;
    });
    let worst = 0;
    for (let node = 1; node < net.length; node++) worst = Math.max(worst, Math.abs(net[node] ?? 0));
    return worst / Math.max(through, STANDSTILL);
  }

  private linearise(): void {
    const { links, flows, needs, slopes } = this;
    for (let i = 0; i < links.length; i++) {
      const link = links[i];
      if (link === undefined) continue;
      needs[i] = differenceAt(link, flows[i] ?? 0);
      slopes[i] = slopeAt(link, flows[i] ?? 0);
    }
  }

  /** Pressures at which the linearised links balance at every node. */
  private solvePressures(): boolean {
    const { links, flows, needs, slopes, matrix, right, size, pressures } = this;
    matrix.fill(0);
    right.fill(0);
    const put = (row: number, column: number, value: number): void => {
      const at = (row - 1) * size + column - 1;
      matrix[at] = (matrix[at] ?? 0) + value;
    };
    for (let i = 0; i < links.length; i++) {
      const link = links[i];
      if (link === undefined || link.from === link.to) continue;
      const conductance = 1 / (slopes[i] ?? 1);
      const rest = (flows[i] ?? 0) - (needs[i] ?? 0) * conductance;
      const { from, to } = link;
      if (from > 0) {
        put(from, from, conductance);
        right[from - 1] = (right[from - 1] ?? 0) - rest;
      }
      if (to > 0) {
        put(to, to, conductance);
        right[to - 1] = (right[to - 1] ?? 0) + rest;
      }
      if (from > 0 && to > 0) {
        put(from, to, -conductance);
        put(to, from, -conductance);
      }
    }
    if (!solveSymmetric(matrix, right)) return false;
    pressures.set(right, 1);
    return true;
  }

  /** Moves the flows; returns how far, as a share of all flows. */
  private takeStep(): number {
    const { links, flows, needs, slopes, pressures, step } = this;
    let far = 0;
    let through = 0;
    let falls = 0;
    this.mismatch = 0;
    for (let i = 0; i < links.length; i++) {
      const link = links[i];
      if (link === undefined) continue;
      const given = (pressures[link.from] ?? 0) - (pressures[link.to] ?? 0);
      const excess = given - (needs[i] ?? 0);
      step[i] = excess / (slopes[i] ?? 1);
      falls -= excess * (step[i] ?? 0);
      this.mismatch = Math.max(this.mismatch, Math.abs(excess));
      far = Math.max(far, Math.abs(step[i] ?? 0));
      through += Math.abs(flows[i] ?? 0) + Math.abs(step[i] ?? 0);
    }
    // Flows that do not balance yet cannot be compared: the first step is taken whole and makes them balance. Steps
    // this small are within reach of Newton's own convergence.
    const isWhole = !this.balanced || far < NEAR * through;
    const share = isWhole ? 1 : this.shareOfStep(falls);
    for (let i = 0; i < flows.length; i++) flows[i] = (flows[i] ?? 0) + share * (step[i] ?? 0);
    this.balanced = true;
    return far / Math.max(through, STANDSTILL);
  }

  /** The largest halved share of the step that makes the content fall as it should. */
  private shareOfStep(falls: number): number {
    for (let share = 1; share > 1e-6; share /= 2) {
      let change = 0;
      let size = 0;
      for (let i = 0; i < this.links.length; i++) {
        const link = this.links[i];
        if (link === undefined) continue;
        const before = contentAt(link, this.flows[i] ?? 0);
        const after = contentAt(link, (this.flows[i] ?? 0) + share * (this.step[i] ?? 0));
        change += after - before;
        size += Math.abs(before) + link.quadratic * (link.laminarFlow ?? 0) ** 3;
      }
      if (change <= 1e-4 * share * falls + 1e-14 * size) return share;
    }
    return 1e-6;
  }
}
