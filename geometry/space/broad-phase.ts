import { BOUNDS_STRIDE, type PackedBoxes } from './packed-boxes';
import { interiorsOverlap } from './separation';
import { CONTACT_TOLERANCE_MM } from './tolerance';

/** Told the numbers of two boxes, the lower first. */
export type PairVisitor = (i: number, j: number) => void;

/** Edge of a cell as a multiple of the mean edge of the boxes: fewer cells a box against fewer boxes a cell. */
const CELL_PER_EXTENT = 1.25;
/** Boxes looked at to place the grid, and the part of them it may leave out at either end. */
const SAMPLE = 1024;
const OUTLIERS = 0.01;
/** Bounds on the memory the grid takes, per box. */
const MOST_CELLS_PER_BOX = 4;
const MOST_ENTRIES_PER_BOX = 24;

interface Grid {
  readonly low: Float64Array;
  readonly perMm: Float64Array;
  readonly cells: Int32Array;
}

/** The boxes in the order of the grid: their numbers, cell ranges, and centres and half extents of their bounds. */
interface SortedBoxes {
  readonly order: Uint32Array;
  readonly ranges: Int16Array;
  readonly places: Float64Array;
  readonly turned: Uint8Array;
}

/**
 * All pairs of boxes of a set whose interiors overlap, each once, in no particular order. Sized for 100,000 boxes
 * and more: a uniform grid over their axis-aligned bounds, each box entered in every cell it reaches, each pair
 * looked at only in the first cell they share; the exact oriented test decides. Boxes far off the crowd fall into
 * the outermost cells, so a few strays or giants do no harm.
 */
export function findOverlappingPairs(packed: PackedBoxes, visit: PairVisitor): void {
  if (packed.count < 2) return;
  const grid = placeGrid(packed);
  const order = orderByCell(packed, grid);
  const sorted = sortBoxes(packed, grid, order);
  const starts = countEntries(sorted.ranges, grid, packed.count);
  const entries = enterBoxes(sorted.ranges, grid, starts, packed.count);
  const nx = grid.cells[0]!;
  const ny = grid.cells[1]!;
  for (let cell = 0; cell + 1 < starts.length; cell++) {
    const start = starts[cell]!;
    const end = starts[cell + 1]!;
    if (end - start < 2) continue;
    const row = Math.floor(cell / nx);
    pairsInCell(packed, sorted, entries, start, end, cell - row * nx, row % ny, Math.floor(row / ny), visit);
  }
}

function placeGrid(packed: PackedBoxes): Grid {
  const { bounds, count } = packed;
  const step = Math.max(1, Math.floor(count / SAMPLE));
  const low = new Float64Array(3);
  const span = new Float64Array(3);
  let extent = 0;
  let sampled = 0;
  for (let axis = 0; axis < 3; axis++) {
    const centres: number[] = [];
    for (let box = 0; box < count; box += step) {
      const from = bounds[box * BOUNDS_STRIDE + axis]!;
      const to = bounds[box * BOUNDS_STRIDE + 3 + axis]!;
      centres.push((from + to) / 2);
      extent += to - from;
      sampled++;
    }
    centres.sort((p, q) => p - q);
    const left = Math.floor(centres.length * OUTLIERS);
    low[axis] = centres[left]!;
    span[axis] = centres[centres.length - 1 - left]! - low[axis]!;
  }
  return sizeCells(packed, low, span, CELL_PER_EXTENT * (extent / sampled));
}

/** Doubles the cells from the wanted size until the grid fits the memory bounds. */
function sizeCells(packed: PackedBoxes, low: Float64Array, span: Float64Array, wanted: number): Grid {
  const widest = Math.max(span[0]!, span[1]!, span[2]!);
  let size = wanted > 0 ? wanted : widest > 0 ? widest : 1;
  for (;;) {
    const perMm = new Float64Array(3).fill(1 / size);
    const cells = Int32Array.from(span, (length) => Math.min(1023, Math.floor(length / size)) + 1);
    const grid = { low, perMm, cells };
    const total = cells[0]! * cells[1]! * cells[2]!;
    if (total === 1) return grid;
    const fits = total <= MOST_CELLS_PER_BOX * packed.count + 64;
    if (fits && entriesOf(packed, grid) <= MOST_ENTRIES_PER_BOX * packed.count) return grid;
    size *= 1.25;
  }
}

/** About how many entries the boxes make, from a sample. */
function entriesOf(packed: PackedBoxes, grid: Grid): number {
  const step = Math.max(1, Math.floor(packed.count / SAMPLE));
  let sum = 0;
  let sampled = 0;
  for (let box = 0; box < packed.count; box += step) {
    let product = 1;
    for (let axis = 0; axis < 3; axis++) {
      const from = cellAt(packed.bounds[box * BOUNDS_STRIDE + axis]!, grid, axis);
      product *= cellAt(packed.bounds[box * BOUNDS_STRIDE + 3 + axis]!, grid, axis) - from + 1;
    }
    sum += product;
    sampled++;
  }
  return (sum / sampled) * packed.count;
}

function cellAt(coordinate: number, grid: Grid, axis: number): number {
  const cell = Math.floor((coordinate - grid.low[axis]!) * grid.perMm[axis]!);
  return Math.max(0, Math.min(grid.cells[axis]! - 1, cell));
}

/** The boxes in the order of the cell their least corner lies in, so that neighbours in space are near in memory. */
function orderByCell(packed: PackedBoxes, grid: Grid): Uint32Array {
  const { bounds, count } = packed;
  const nx = grid.cells[0]!;
  const ny = grid.cells[1]!;
  const cells = new Uint32Array(count);
  const ends = new Uint32Array(nx * ny * grid.cells[2]!);
  for (let box = 0; box < count; box++) {
    const at = box * BOUNDS_STRIDE;
    const row = cellAt(bounds[at + 2]!, grid, 2) * ny + cellAt(bounds[at + 1]!, grid, 1);
    const cell = row * nx + cellAt(bounds[at]!, grid, 0);
    cells[box] = cell;
    ends[cell] = ends[cell]! + 1;
  }
  let sum = 0;
  for (let cell = 0; cell < ends.length; cell++) {
    sum += ends[cell]!;
    ends[cell] = sum;
  }
  const order = new Uint32Array(count);
  for (let box = count - 1; box >= 0; box--) {
    const slot = ends[cells[box]!]! - 1;
    ends[cells[box]!] = slot;
    order[slot] = box;
  }
  return order;
}

/** Centres, half extents and cell ranges of the world bounds, in the given order. */
function sortBoxes(packed: PackedBoxes, grid: Grid, order: Uint32Array): SortedBoxes {
  const { bounds, aligned, count } = packed;
  const ranges = new Int16Array(count * 6);
  const places = new Float64Array(count * 6);
  const turned = new Uint8Array(count);
  for (let n = 0; n < count; n++) {
    const box = order[n]!;
    turned[n] = 1 - aligned[box]!;
    for (let axis = 0; axis < 3; axis++) {
      const from = bounds[box * BOUNDS_STRIDE + axis]!;
      const to = bounds[box * BOUNDS_STRIDE + 3 + axis]!;
      ranges[6 * n + axis] = cellAt(from, grid, axis);
      ranges[6 * n + 3 + axis] = cellAt(to, grid, axis);
      places[6 * n + axis] = (from + to) / 2;
      places[6 * n + 3 + axis] = (to - from) / 2;
    }
  }
  return { order, ranges, places, turned };
}

/** Where the entries of each cell start (one more at the end). */
function countEntries(ranges: Int16Array, grid: Grid, count: number): Uint32Array {
  const nx = grid.cells[0]!;
  const ny = grid.cells[1]!;
  const total = nx * ny * grid.cells[2]!;
  const starts = new Uint32Array(total + 1);
  for (let at = 0; at < 6 * count; at += 6) {
    const x1 = ranges[at + 3]!;
    for (let z = ranges[at + 2]!; z <= ranges[at + 5]!; z++) {
      for (let y = ranges[at + 1]!; y <= ranges[at + 4]!; y++) {
        const row = (z * ny + y) * nx;
        for (let cell = row + ranges[at]!; cell <= row + x1; cell++) starts[cell] = starts[cell]! + 1;
      }
    }
  }
  let sum = 0;
  for (let cell = 0; cell <= total; cell++) {
    sum += starts[cell]!;
    starts[cell] = sum;
  }
  return starts;
}

/** The boxes of each cell; turns the ends in `starts` into starts by filling each cell from the back. */
function enterBoxes(ranges: Int16Array, grid: Grid, starts: Uint32Array, count: number): Uint32Array {
  const nx = grid.cells[0]!;
  const ny = grid.cells[1]!;
  const entries = new Uint32Array(starts[starts.length - 1]!);
  for (let box = count - 1; box >= 0; box--) {
    const at = 6 * box;
    const x1 = ranges[at + 3]!;
    for (let z = ranges[at + 2]!; z <= ranges[at + 5]!; z++) {
      for (let y = ranges[at + 1]!; y <= ranges[at + 4]!; y++) {
        const row = (z * ny + y) * nx;
        for (let cell = row + ranges[at]!; cell <= row + x1; cell++) {
          const slot = starts[cell]! - 1;
          starts[cell] = slot;
          entries[slot] = box;
        }
      }
    }
  }
  return entries;
}

/** Tests the pairs of one cell that have it as the first cell they share. */
function pairsInCell(
  packed: PackedBoxes,
  sorted: SortedBoxes,
  entries: Uint32Array,
  start: number,
  end: number,
  x: number,
  y: number,
  z: number,
  visit: PairVisitor,
): void {
  const { order, places, ranges, turned } = sorted;
  for (let p = start; p < end - 1; p++) {
    const i = entries[p]!;
    const a = 6 * i;
    const cx = places[a]!;
    const cy = places[a + 1]!;
    const cz = places[a + 2]!;
    const hx = places[a + 3]! - CONTACT_TOLERANCE_MM;
    const hy = places[a + 4]! - CONTACT_TOLERANCE_MM;
    const hz = places[a + 5]! - CONTACT_TOLERANCE_MM;
    for (let q = p + 1; q < end; q++) {
      const j = entries[q]!;
      const b = 6 * j;
      if (Math.abs(places[b]! - cx) >= places[b + 3]! + hx) continue;
      if (Math.abs(places[b + 1]! - cy) >= places[b + 4]! + hy) continue;
      if (Math.abs(places[b + 2]! - cz) >= places[b + 5]! + hz) continue;
      if (ranges[a]! !== x && ranges[b]! !== x) continue;
      if (ranges[a + 1]! !== y && ranges[b + 1]! !== y) continue;
      if (ranges[a + 2]! !== z && ranges[b + 2]! !== z) continue;
      const first = order[i]!;
      const second = order[j]!;
      if ((turned[i]! | turned[j]!) !== 0 && !interiorsOverlap(packed, first, second)) continue;
      if (first < second) visit(first, second);
      else visit(second, first);
    }
  }
}
