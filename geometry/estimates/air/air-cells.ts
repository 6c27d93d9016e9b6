/**
 * The inside cut into cells of well-mixed air, and how freely neighbours are joined. Cuts lie at the tray and at the
 * two faces of every card, where air is truly parted; what is longer than `LONGEST_CELL` is cut again.
 */
import { layoutOf } from '../../parts/enclosure/layout';
import type { Bounds } from '../../space/oriented-box';
import type { Vector3 } from '../../space/vector';
import { axisOf, type LocalBox, type MachineSpace, mainAxis, rangeOfAll } from './machine-space';

/** A finer grid costs time and shows nothing that boxes could tell apart. */
const LONGEST_CELL = 130;

/** Thinner layers are not told apart, mm. */
const THINNEST_CELL = 4;

/** Lines of sight across a face between two cells, each way. */
const SIGHTS = 6;

/** Nothing inside a machine is airtight: least open share between neighbours. */
const LEAST_OPEN = 0.015;

const SQUARE_MM_PER_SQUARE_M = 1e6;

export interface AirCells {
  readonly cuts: readonly [readonly number[], readonly number[], readonly number[]];
  readonly count: number;
  readonly links: readonly CellLink[];
}

export interface CellLink {
  /** Indices of two cells, the second at the larger coordinate. */
  readonly a: number;
  readonly b: number;
  /** Opening that takes the same pressure, coefficient included, m2. */
  readonly effectiveArea: number;
  /** Face the two share where nothing blocks it, m2: eddies cross it. */
  readonly freeArea: number;
  /** Middle of the shared face, mm. */
  readonly at: Vector3;
}

export function airCellsOf(space: MachineSpace): AirCells {
  const cuts = [cutsAlong(space, 0), cutsAlong(space, 1), cutsAlong(space, 2)] as const;
  const count = cuts.reduce((product, along) => product * (along.length - 1), 1);
  return { cuts, count, links: linksBetween(space, cuts) };
}

function cutsAlong(space: MachineSpace, axis: 0 | 1 | 2): readonly number[] {
  const { min, max } = space.interior;
  const wanted = [min[axis], ...partingPlanes(space, axis), max[axis]].sort((a, b) => a - b);
  const kept: number[] = [min[axis]];
  for (const plane of wanted)
    if (plane - (kept.at(-1) ?? plane) >= THINNEST_CELL && max[axis] - plane >= THINNEST_CELL)
      kept.push(plane);
  kept.push(max[axis]);
  return kept.flatMap((from, index) => {
    const to = kept[index + 1];
    if (to === undefined) return [from];
    const parts = Math.max(1, Math.ceil((to - from) / LONGEST_CELL));
    return Array.from({ length: parts }, (_, i) => from + ((to - from) * i) / parts);
  });
}

function partingPlanes(space: MachineSpace, axis: 0 | 1 | 2): readonly number[] {
  const { tray } = layoutOf(space.spec);
  const planes = tray.axis === axis ? [tray.at] : [];
  const cards = new Set(space.boxes.filter((box) => box.part.kind === 'card').map((box) => box.part));
  for (const card of cards) {
    if (mainAxis(axisOf(space, card, [0, 1, 0])) !== axis) continue;
    const body = rangeOfAll(space.boxes.filter((box) => box.part === card && isCardBody(box)));
    if (body) planes.push(body.min[axis], body.max[axis]);
  }
  return planes;
}

export function isCardBody({ element, solid }: LocalBox): boolean {
  return solid && (element === 'card shroud' || element === 'card backplate' || element === 'fan');
}

/** Index of the cell that holds a point; a point outside counts for the nearest cell. */
export function cellAt({ cuts }: Pick<AirCells, 'cuts'>, point: Vector3): number {
  const [i, j, k] = [0, 1, 2].map((axis) => intervalOf(cuts[axis] ?? [], point[axis] ?? 0));
  return indexOf(cuts, i ?? 0, j ?? 0, k ?? 0);
}

function intervalOf(cuts: readonly number[], value: number): number {
  let interval = 0;
  while (interval < cuts.length - 2 && value >= (cuts[interval + 1] ?? value)) interval++;
  return interval;
}

function indexOf(cuts: AirCells['cuts'], i: number, j: number, k: number): number {
  return (i * (cuts[1].length - 1) + j) * (cuts[2].length - 1) + k;
}

/** Range of every cell, in the order of the indices. */
export function cellRanges({ cuts }: Pick<AirCells, 'cuts'>): readonly Bounds[] {
  const spans = cuts.map((along) => along.slice(1).map((to, i) => [along[i] ?? to, to] as const));
  const [xs = [], ys = [], zs = []] = spans;
  return xs.flatMap((x) =>
    ys.flatMap((y) => zs.map((z): Bounds => ({ min: [x[0], y[0], z[0]], max: [x[1], y[1], z[1]] }))),
  );
}

function linksBetween(space: MachineSpace, cuts: AirCells['cuts']): readonly CellLink[] {
  const ranges = cellRanges({ cuts });
  const [ny, nz] = [cuts[1].length - 1, cuts[2].length - 1];
  const steps = [ny * nz, nz, 1] as const;
  const links: CellLink[] = [];
  ranges.forEach((range, a) => {
    for (const axis of [0, 1, 2] as const) {
      const other = ranges[a + steps[axis]];
      if (other === undefined || Math.abs(other.min[axis] - range.max[axis]) > 1e-9) continue;
      if (other.min[(axis + 1) % 3] !== range.min[(axis + 1) % 3]) continue;
      if (other.min[(axis + 2) % 3] !== range.min[(axis + 2) % 3]) continue;
      links.push(linkThrough(space.obstacles, range, other, a, a + steps[axis], axis));
    }
  });
  return links;
}

function linkThrough(
  obstacles: readonly LocalBox[],
  first: Bounds,
  second: Bounds,
  a: number,
  b: number,
  axis: 0 | 1 | 2,
): CellLink {
  const [u, v] = axis === 0 ? ([1, 2] as const) : axis === 1 ? ([0, 2] as const) : ([0, 1] as const);
  const from = (first.min[axis] + first.max[axis]) / 2;
  const to = (second.min[axis] + second.max[axis]) / 2;
  const [u0, u1, v0, v1] = [first.min[u], first.max[u], first.min[v], first.max[v]];
  const near = obstacles.filter(
    ({ min, max }) =>
      max[axis] > from && min[axis] < to && max[u] > u0 && min[u] < u1 && max[v] > v0 && min[v] < v1,
  );
  let open = 0;
  for (let i = 0; i < SIGHTS; i++) {
    for (let j = 0; j < SIGHTS; j++) {
      const atU = u0 + ((i + 0.5) * (u1 - u0)) / SIGHTS;
      const atV = v0 + ((j + 0.5) * (v1 - v0)) / SIGHTS;
      if (!near.some(({ min, max }) => atU > min[u] && atU < max[u] && atV > min[v] && atV < max[v])) open++;
    }
  }
  const share = Math.max(open / SIGHTS ** 2, LEAST_OPEN);
  const freeArea = (share * (u1 - u0) * (v1 - v0)) / SQUARE_MM_PER_SQUARE_M;
  const at: [number, number, number] = [0, 0, 0];
  at[axis] = first.max[axis];
  at[u] = (u0 + u1) / 2;
  at[v] = (v0 + v1) / 2;
  return { a, b, freeArea, effectiveArea: freeArea / Math.sqrt(lossOfNarrowing(share)), at };
}

/**
 * Loss against the velocity head in the narrow place, for a passage open to `share`: half of what closes at the
 * entry, the square of it behind (Borda and Carnot), and a little for the walls.
 */
function lossOfNarrowing(share: number): number {
  const closed = 1 - share;
  return 0.1 + 0.5 * closed + closed * closed;
}
