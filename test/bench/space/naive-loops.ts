import { boundsOfBox, type OrientedBox } from '../../../geometry/space/oriented-box';
import type { PackedBoxes } from '../../../geometry/space/packed-boxes';
import { interiorsOverlap } from '../../../geometry/space/separation';

/** Told about an answer: signed distance in mm. */
export type AnswerVisitor = (distance: number) => void;

/** Axis-aligned ranges as one array a number, centre and half extent: the plain way to write a fast loop. */
export class PlainBoxes {
  readonly count: number;
  readonly cx: Float64Array;
  readonly cy: Float64Array;
  readonly cz: Float64Array;
  readonly hx: Float64Array;
  readonly hy: Float64Array;
  readonly hz: Float64Array;

  constructor(boxes: readonly OrientedBox[]) {
    this.count = boxes.length;
    const column = (pick: (min: number, max: number) => number, axis: 0 | 1 | 2) =>
      Float64Array.from(boxes, (box) => {
        const { min, max } = boundsOfBox(box);
        return pick(min[axis], max[axis]);
      });
    const centre = (min: number, max: number) => (min + max) / 2;
    const half = (min: number, max: number) => (max - min) / 2;
    this.cx = column(centre, 0);
    this.cy = column(centre, 1);
    this.cz = column(centre, 2);
    this.hx = column(half, 0);
    this.hy = column(half, 1);
    this.hz = column(half, 2);
  }

  /** Every other box against those from `first` to `end`: overlaps with depth, gaps up to `limit`; turned boxes by their bounds. */
  near(first: number, end: number, limit: number, visit: AnswerVisitor): void {
    const { cx, cy, cz, hx, hy, hz, count } = this;
    for (let i = first; i < end; i++) {
      const x = cx[i]!;
      const y = cy[i]!;
      const z = cz[i]!;
      const rx = hx[i]!;
      const ry = hy[i]!;
      const rz = hz[i]!;
      for (let j = 0; j < count; j++) {
        const gx = Math.abs(cx[j]! - x) - rx - hx[j]!;
        if (gx > limit) continue;
        const gy = Math.abs(cy[j]! - y) - ry - hy[j]!;
        if (gy > limit) continue;
        const gz = Math.abs(cz[j]! - z) - rz - hz[j]!;
        if (gz > limit || (j >= first && j < end)) continue;
        const most = Math.max(gx, gy, gz);
        if (most <= 0) {
          visit(most);
          continue;
        }
        const px = Math.max(gx, 0);
        const py = Math.max(gy, 0);
        const pz = Math.max(gz, 0);
        const distance = Math.sqrt(px * px + py * py + pz * pz);
        if (distance <= limit) visit(distance);
      }
    }
  }

  shift(first: number, end: number, x: number, y: number, z: number): void {
    for (let i = first; i < end; i++) {
      this.cx[i] = this.cx[i]! + x;
      this.cy[i] = this.cy[i]! + y;
      this.cz[i] = this.cz[i]! + z;
    }
  }
}

/**
 * Overlapping pairs by a plain uniform grid: cells of the largest edge, each box in the cell of its centre, every
 * cell against its neighbours, then the exact test.
 */
export function plainGridPairs(packed: PackedBoxes): number {
  const { bounds, count } = packed;
  let size = 0;
  for (let at = 0; at < bounds.length; at += 6) {
    for (let k = 0; k < 3; k++) size = Math.max(size, bounds[at + 3 + k]! - bounds[at + k]!);
  }
  const cellOf = (box: number, axis: number) =>
    Math.floor((bounds[6 * box + axis]! + bounds[6 * box + 3 + axis]!) / 2 / size) + 512;
  const cells = new Map<number, number[]>();
  for (let box = 0; box < count; box++) {
    const key = (cellOf(box, 0) * 1024 + cellOf(box, 1)) * 1024 + cellOf(box, 2);
    const cell = cells.get(key);
    if (cell === undefined) cells.set(key, [box]);
    else cell.push(box);
  }
  let found = 0;
  for (const [key, members] of cells) {
    for (let step = 13; step < 27; step++) {
      const dx = Math.floor(step / 9) - 1;
      const dy = (Math.floor(step / 3) % 3) - 1;
      const others = cells.get(key + (dx * 1024 + dy) * 1024 + (step % 3) - 1);
      if (others !== undefined) found += overlapsBetween(packed, members, others, step === 13);
    }
  }
  return found;
}

function overlapsBetween(packed: PackedBoxes, some: number[], others: number[], same: boolean): number {
  const { bounds } = packed;
  let found = 0;
  for (let p = 0; p < some.length; p++) {
    const a = 6 * some[p]!;
    for (let q = same ? p + 1 : 0; q < others.length; q++) {
      const b = 6 * others[q]!;
      if (bounds[b]! >= bounds[a + 3]! || bounds[b + 3]! <= bounds[a]!) continue;
      if (bounds[b + 1]! >= bounds[a + 4]! || bounds[b + 4]! <= bounds[a + 1]!) continue;
      if (bounds[b + 2]! >= bounds[a + 5]! || bounds[b + 5]! <= bounds[a + 2]!) continue;
      if (interiorsOverlap(packed, a / 6, b / 6)) found++;
    }
  }
  return found;
}
