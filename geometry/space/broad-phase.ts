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

/**
 * Working arrays, kept from call to call and grown when a larger set comes: 100,000 boxes take some 12 MB, and
 * making that anew each time costs about a tenth of the search.
 */
class Workspace {
  /** First and last cell of each box: x, y, z first, then x, y, z last. */
  ranges = new Int16Array(0);
  /** The cell of each box's least corner. */
  cells = new Uint32Array(0);
  /** The boxes by that cell, so that neighbours in space are near in memory; what follows is in this order. */
  order = new Uint32Array(0);
  sortedRanges = new Int16Array(0);
  /** Centre and half extents of the world bounds. */
  places = new Float64Array(0);
  turned = new Uint8Array(0);
  starts = new Uint32Array(0);
  entries = new Uint32Array(0);

  prepare(count: number, cells: number): void {
    if (this.cells.length < count) {
      this.ranges = new Int16Array(6 * count);
      this.cells = new Uint32Array(count);
      this.order = new Uint32Array(count);
      this.sortedRanges = new Int16Array(6 * count);
      this.places = new Float64Array(6 * count);
      this.turned = new Uint8Array(count);
    }
    if (this.starts.length < cells + 1) this.starts = new Uint32Array(cells + 1);
    else this.starts.fill(0, 0, cells + 1);
  }
}

const workspace = new Workspace();

/**
 * All pairs of boxes of a set whose interiors overlap, each once, in no particular order. Sized for 100,000 boxes
 * and more: a uniform grid over their axis-aligned bounds, each box entered in every cell it reaches, each pair
 * looked at only in the first cell they share; the exact oriented test decides. Boxes far off the crowd fall into
 * the outermost cells, so a few strays or giants do no harm. Not to be called again from within `visit`: the working
 * arrays are shared.
 */
export function findOverlappingPairs(packed: PackedBoxes, visit: PairVisitor): void {
  if (packed.count < 2) return;
  const grid = placeGrid(packed);
  const nx = grid.cells[0]!;
  const ny = grid.cells[1]!;
  const total = nx * ny * grid.cells[2]!;
  workspace.prepare(packed.count, total);
  rangeBoxes(packed, grid);
  sortBoxes(packed, total);
  const { starts } = workspace;
  enterBoxes(packed.count, nx, ny, total);
  for (let cell = 0; cell < total; cell++) {
    const start = starts[cell]!;
    const end = starts[cell + 1]!;
    if (end - start < 2) continue;
    const row = Math.floor(cell / nx);
    pairsInCell(packed, start, end, cell - row * nx, row % ny, Math.floor(row / ny), visit);
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

/** Writes the cell ranges of the boxes, and counts them by the cell of their least corner. */
function rangeBoxes(packed: PackedBoxes, grid: Grid): void {
  const { bounds, count } = packed;
  const { ranges, cells, starts } = workspace;
  const nx = grid.cells[0]!;
  const ny = grid.cells[1]!;
  for (let axis = 0; axis < 3; axis++) {
    const low = grid.low[axis]!;
    const perMm = grid.perMm[axis]!;
    const last = grid.cells[axis]! - 1;
    for (let at = axis; at < 6 * count; at += 6) {
      // Stored as whole numbers, which rounds down what is not below zero.
      ranges[at] = Math.max(0, Math.min(last, (bounds[at]! - low) * perMm));
      ranges[at + 3] = Math.max(0, Math.min(last, (bounds[at + 3]! - low) * perMm));
    }
  }
  for (let box = 0; box < count; box++) {
    const cell = (ranges[6 * box + 2]! * ny + ranges[6 * box + 1]!) * nx + ranges[6 * box]!;
    cells[box] = cell;
    starts[cell] = starts[cell]! + 1;
  }
}

/** Puts the boxes in the order of their cells, with ranges, centres and half extents. */
function sortBoxes(packed: PackedBoxes, total: number): void {
  const { bounds, aligned, count } = packed;
  const { ranges, cells, order, sortedRanges, places, turned, starts } = workspace;
  toEnds(starts, total);
  for (let box = count - 1; box >= 0; box--) {
    const slot = starts[cells[box]!]! - 1;
    starts[cells[box]!] = slot;
    order[slot] = box;
  }
  starts.fill(0, 0, total + 1);
  for (let n = 0; n < count; n++) {
    const box = order[n]!;
    const from = 6 * box;
    const to = 6 * n;
    turned[n] = 1 - aligned[box]!;
    for (let k = 0; k < 6; k++) sortedRanges[to + k] = ranges[from + k]!;
    places[to] = (bounds[from]! + bounds[from + 3]!) / 2;
    places[to + 1] = (bounds[from + 1]! + bounds[from + 4]!) / 2;
    places[to + 2] = (bounds[from + 2]! + bounds[from + 5]!) / 2;
    places[to + 3] = (bounds[from + 3]! - bounds[from]!) / 2;
    places[to + 4] = (bounds[from + 4]! - bounds[from + 1]!) / 2;
    places[to + 5] = (bounds[from + 5]! - bounds[from + 2]!) / 2;
  }
}

/** Turns counts into running sums: where each cell ends. The last of them, one past the cells, is the sum of all. */
function toEnds(starts: Uint32Array, total: number): void {
  let sum = 0;
  for (let cell = 0; cell <= total; cell++) {
    sum += starts[cell]!;
    starts[cell] = sum;
  }
}

/** Enters every box in all cells it reaches; leaves in `starts` where the entries of each cell start. */
function enterBoxes(count: number, nx: number, ny: number, total: number): void {
  const { sortedRanges: ranges, starts } = workspace;
  for (let at = 0; at < 6 * count; at += 6) {
    const x1 = ranges[at + 3]!;
    for (let z = ranges[at + 2]!; z <= ranges[at + 5]!; z++) {
      for (let y = ranges[at + 1]!; y <= ranges[at + 4]!; y++) {
        const row = (z * ny + y) * nx;
        for (let cell = row + ranges[at]!; cell <= row + x1; cell++) starts[cell] = starts[cell]! + 1;
      }
    }
  }
  toEnds(starts, total);
  if (workspace.entries.length < starts[total]!) workspace.entries = new Uint32Array(starts[total]!);
  const { entries } = workspace;
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
}

/** Tests the pairs of one cell that have it as the first cell they share. */
function pairsInCell(
  packed: PackedBoxes,
  start: number,
  end: number,
  x: number,
  y: number,
  z: number,
  visit: PairVisitor,
): void {
  const { order, places, sortedRanges: ranges, turned, entries } = workspace;
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
