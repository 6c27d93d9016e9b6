/** A grid over the inside of a machine with the distance from every cell to the nearest solid; mm, world frame. */

import type { Bounds, OrientedBox } from '../../../space/oriented-box';
import { BOUNDS_STRIDE, PackedBoxes } from '../../../space/packed-boxes';
import { identityRotation } from '../../../space/rotation';
import { signedDistanceWithin } from '../../../space/separation';
import type { Vector3 } from '../../../space/vector';

/** Edge of a cell, mm; our choice: a third of a usual tray opening. */
export const LEAD_CELL_MM = 6;
/** Distances are known up to this, mm. */
const FAR_MM = 24;

export interface LeadGrid {
  readonly origin: Vector3;
  readonly size: readonly [number, number, number];
  readonly cell: number;
  /** Distance from the middle of each cell to the nearest solid, at most `FAR_MM`; negative inside one. */
  readonly field: Float32Array;
  /** What it costs to go through a cell, 1 for open space. */
  readonly weight: Float32Array;
}

export function leadGrid(bounds: Bounds, solids: PackedBoxes, cell = LEAD_CELL_MM): LeadGrid {
  const size = [0, 1, 2].map((axis) =>
    Math.max(1, Math.ceil(((bounds.max[axis] ?? 0) - (bounds.min[axis] ?? 0)) / cell)),
  );
  const [nx = 1, ny = 1, nz = 1] = size;
  const field = new Float32Array(nx * ny * nz).fill(FAR_MM);
  const grid: LeadGrid = {
    origin: bounds.min,
    size: [nx, ny, nz],
    cell,
    field,
    weight: new Float32Array(nx * ny * nz).fill(1),
  };
  const probe = new PackedBoxes(2);
  for (let box = 0; box < solids.count; box++) {
    const aligned = solids.aligned[box] === 1;
    if (!aligned) probe.setBox(1, solids.boxAt(box));
    visitCells(grid, solids.bounds, box * BOUNDS_STRIDE, FAR_MM, (index, centre) => {
      let distance = distanceToRange(solids.bounds, box * BOUNDS_STRIDE, centre);
      if (!aligned && distance < (field[index] ?? 0)) {
        probe.setBox(0, { centre, half: [1e-6, 1e-6, 1e-6], rotation: identityRotation });
        distance = signedDistanceWithin(probe, 0, 1, FAR_MM);
      }
      if (distance < (field[index] ?? 0)) field[index] = distance;
    });
  }
  return grid;
}

/** Multiplies the weight of all cells whose middle lies in a box (by its world range). */
export function weighCells(grid: LeadGrid, box: OrientedBox, factor: number): void {
  const packed = PackedBoxes.from([box]);
  visitCells(grid, packed.bounds, 0, 0, (index) => {
    grid.weight[index] = (grid.weight[index] ?? 1) * factor;
  });
}

function visitCells(
  grid: LeadGrid,
  bounds: Float64Array,
  at: number,
  margin: number,
  visit: (index: number, centre: Vector3) => void,
): void {
  const range = ([0, 1, 2] as const).map((axis) => {
    const low = ((bounds[at + axis] ?? 0) - margin - grid.origin[axis]) / grid.cell - 0.5;
    const high = ((bounds[at + 3 + axis] ?? 0) + margin - grid.origin[axis]) / grid.cell - 0.5;
    return [Math.max(0, Math.ceil(low)), Math.min(grid.size[axis] - 1, Math.floor(high))] as const;
  });
  const [[x0, x1] = [0, -1], [y0, y1] = [0, -1], [z0, z1] = [0, -1]] = range;
  for (let z = z0; z <= z1; z++) {
    for (let y = y0; y <= y1; y++) {
      for (let x = x0; x <= x1; x++)
        visit((z * grid.size[1] + y) * grid.size[0] + x, centreOf(grid, x, y, z));
    }
  }
}

export function centreOf(grid: LeadGrid, x: number, y: number, z: number): Vector3 {
  return [
    grid.origin[0] + (x + 0.5) * grid.cell,
    grid.origin[1] + (y + 0.5) * grid.cell,
    grid.origin[2] + (z + 0.5) * grid.cell,
  ];
}

/** The cell a point lies in, clamped into the grid. */
export function cellAt(grid: LeadGrid, p: Vector3): readonly [number, number, number] {
  const along = (axis: 0 | 1 | 2): number =>
    Math.min(grid.size[axis] - 1, Math.max(0, Math.floor((p[axis] - grid.origin[axis]) / grid.cell)));
  return [along(0), along(1), along(2)];
}

function distanceToRange(bounds: Float64Array, at: number, p: Vector3): number {
  let outside = 0;
  let inside = -Infinity;
  for (let axis = 0; axis < 3; axis++) {
    const gap = Math.max(
      (bounds[at + axis] ?? 0) - (p[axis] ?? 0),
      (p[axis] ?? 0) - (bounds[at + 3 + axis] ?? 0),
    );
    if (gap > 0) outside += gap * gap;
    inside = Math.max(inside, gap);
  }
  return outside > 0 ? Math.sqrt(outside) : inside;
}
