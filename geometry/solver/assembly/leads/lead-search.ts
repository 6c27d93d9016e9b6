/** A* over cells and incoming directions: a lead turns by at most 45 degrees from one cell to the next. */
import FlatQueue from 'flatqueue';
import { dot, normalise, type Vector3 } from '../../../space/vector';
import { directions26 } from '../paths/hull';
import { cellAt, centreOf, type LeadGrid } from './lead-grid';

/** One way through the grid. */
export interface LeadGoal {
  readonly from: Vector3;
  /** Unit vector in which it leaves; any way when absent. */
  readonly leaves?: Vector3;
  readonly to: Vector3;
  /** Unit vector in which it arrives; any way when absent. */
  readonly arrives?: Vector3;
  /** Least distance from the middle of a cell to any solid, mm. */
  readonly clearance: number;
  /** Within this of either end the clearance does not count: plugs stand close to things. */
  readonly nearEnds: number;
}

/** Steps of the 26 directions in cells, three numbers each, and their lengths. */
const steps = Int8Array.from(directions26.flatMap((d) => d.map(Math.sign)));
const lengths = Float64Array.from(directions26.map((d) => Math.hypot(...d.map(Math.sign))));
const COSINE_45 = Math.SQRT1_2 - 1e-9;
/** Directions that may follow each direction. */
const follows = directions26.map((d) =>
  Int8Array.from(directions26.flatMap((e, k) => (dot(d, e) >= COSINE_45 ? [k] : []))),
);
/** States opened for one lead before it counts as not found; our choice. */
const MOST_STATES = 1_500_000;
/** The estimate is pressed a little, which finds ways much sooner and hardly longer; they are pulled taut after. */
const PRESSED = 1.7;
/** What a turn costs, in cells. */
const TURN_COST = 0.6;

/** Shortest way over a 26-neighbour grid without obstacles: dx, dy, dz in cells. */
export function octile(dx: number, dy: number, dz: number): number {
  const [x, y, z] = [Math.abs(dx), Math.abs(dy), Math.abs(dz)];
  const most = Math.max(x, y, z);
  const least = Math.min(x, y, z);
  const middle = x + y + z - most - least;
  return most - middle + Math.SQRT2 * (middle - least) + Math.sqrt(3) * least;
}

/** Cost and parent of every state, kept between leads of one grid. */
export interface LeadScratch {
  readonly cost: Float32Array;
  readonly parent: Int32Array;
}

export function leadScratch(grid: LeadGrid): LeadScratch {
  const states = grid.field.length * 26;
  return { cost: new Float32Array(states), parent: new Int32Array(states) };
}

/**
 * Middles of the cells from start to goal; undefined when there is no way. The estimate of what is left is pressed, so
 * the way is a good one, not always the best.
 */
export function searchLead(
  grid: LeadGrid,
  goal: LeadGoal,
  scratch: LeadScratch,
  pressed = PRESSED,
): readonly Vector3[] | undefined {
  const [nx, ny, nz] = grid.size;
  const { field, weight } = grid;
  const { cost, parent } = scratch;
  const [sx, sy, sz] = cellAt(grid, goal.from);
  const [ex, ey, ez] = cellAt(grid, goal.to);
  const endIndex = (ez * ny + ey) * nx + ex;
  const startIndex = (sz * ny + sy) * nx + sx;
  if (!isJoined(grid, goal, startIndex, endIndex)) return undefined;
  cost.fill(Infinity);
  const open = new FlatQueue<number>();
  let opened = 0;
  for (let d = 0; d < 26; d++) {
    if (goal.leaves && dot(directions26[d] ?? [0, 0, 0], goal.leaves) < COSINE_45) continue;
    cost[startIndex * 26 + d] = 0;
    parent[startIndex * 26 + d] = -1;
    open.push(startIndex * 26 + d, pressed * octile(sx - ex, sy - ey, sz - ez));
  }
  const mayArrive = directions26.map((d) => !goal.arrives || dot(d, goal.arrives) >= COSINE_45);
  for (let state = open.pop(); state !== undefined; state = open.pop()) {
    const cell = Math.floor(state / 26);
    if (cell === endIndex) return trace(grid, parent, state);
    if (++opened > MOST_STATES) return undefined;
    const d = state - cell * 26;
    const x = cell % nx;
    const row = (cell - x) / nx;
    const y = row % ny;
    const z = (row - y) / ny;
    const here = cost[state] ?? Infinity;
    const next = follows[d];
    if (!next) continue;
    for (let k = 0; k < next.length; k++) {
      const e = next[k] ?? 0;
      const px = x + (steps[3 * e] ?? 0);
      const py = y + (steps[3 * e + 1] ?? 0);
      const pz = z + (steps[3 * e + 2] ?? 0);
      if (px < 0 || py < 0 || pz < 0 || px >= nx || py >= ny || pz >= nz) continue;
      const index = (pz * ny + py) * nx + px;
      if ((field[index] ?? 0) < goal.clearance && !isNearEnd(grid, goal, px, py, pz)) continue;
      if (index === endIndex && !mayArrive[e]) continue;
      const reached = here + (lengths[e] ?? 1) * (weight[index] ?? 1) + (e === d ? 0 : TURN_COST);
      const key = index * 26 + e;
      if (reached >= (cost[key] ?? 0) - 1e-4) continue;
      cost[key] = reached;
      parent[key] = state;
      open.push(key, reached + pressed * octile(px - ex, py - ey, pz - ez));
    }
  }
  return undefined;
}

/** Whether cells wide enough join the ends at all, whatever the turns: a flood is soon done, a failed search is not. */
function isJoined(grid: LeadGrid, goal: LeadGoal, start: number, end: number): boolean {
  const [nx, ny, nz] = grid.size;
  const seen = new Uint8Array(grid.field.length);
  const queue = [start];
  seen[start] = 1;
  while (queue.length > 0) {
    const cell = queue.pop() ?? start;
    if (cell === end) return true;
    const x = cell % nx;
    const y = Math.floor(cell / nx) % ny;
    const z = Math.floor(cell / (nx * ny));
    for (let e = 0; e < 26; e++) {
      const [px, py, pz] = [
        x + (steps[3 * e] ?? 0),
        y + (steps[3 * e + 1] ?? 0),
        z + (steps[3 * e + 2] ?? 0),
      ];
      if (px < 0 || py < 0 || pz < 0 || px >= nx || py >= ny || pz >= nz) continue;
      const index = (pz * ny + py) * nx + px;
      if (seen[index] === 1) continue;
      if ((grid.field[index] ?? 0) < goal.clearance && !isNearEnd(grid, goal, px, py, pz)) continue;
      seen[index] = 1;
      queue.push(index);
    }
  }
  return false;
}

/** Cells at the ends are let through as long as their middle is in no solid. */
function isNearEnd(grid: LeadGrid, goal: LeadGoal, x: number, y: number, z: number): boolean {
  const [nx, ny] = grid.size;
  if ((grid.field[(z * ny + y) * nx + x] ?? 0) < 0) return false;
  const p = centreOf(grid, x, y, z);
  const near = (q: Vector3): boolean => Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]) <= goal.nearEnds;
  return near(goal.from) || near(goal.to);
}

function trace(grid: LeadGrid, parent: Int32Array, state: number): readonly Vector3[] {
  const [nx, ny] = grid.size;
  const points: Vector3[] = [];
  for (let at = state; at >= 0; at = parent[at] ?? -1) {
    const cell = Math.floor(at / 26);
    points.unshift(centreOf(grid, cell % nx, Math.floor(cell / nx) % ny, Math.floor(cell / (nx * ny))));
  }
  return points;
}

/** Pulls a chain of points taut: each is joined to the furthest later one it sees. */
export function pullTaut(
  points: readonly Vector3[],
  sees: (a: Vector3, b: Vector3) => boolean,
): readonly Vector3[] {
  const kept: Vector3[] = [];
  let at = 0;
  while (at < points.length - 1) {
    const a = points[at];
    if (!a) break;
    kept.push(a);
    let next = at + 1;
    for (let k = points.length - 1; k > at + 1; k--) {
      const b = points[k];
      if (b && sees(a, b)) {
        next = k;
        break;
      }
    }
    at = next;
  }
  const last = points[points.length - 1];
  return last ? [...kept, last] : kept;
}

/** The unit vector from one point to another; undefined where they coincide. */
export function heading(a: Vector3, b: Vector3): Vector3 | undefined {
  const d: Vector3 = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  return Math.hypot(...d) > 1e-9 ? normalise(d) : undefined;
}
