/** The air side of a placed machine: cells, devices, openings. Made once for a scene; knows no speeds and no heat. */
import { layoutOf } from '../../parts/enclosure/layout';
import { slotRowsOf } from '../../parts/enclosure/openings';
import type { PlacedPart, Scene } from '../../plan/scene';
import type { Vector3 } from '../../space/vector';
import { type AirCells, airCellsOf, cellAt, cellRanges } from './air-cells';
import type { Device } from './devices';
import { fanDevices } from './fan-devices';
import { heightOf, type MachineSpace, machineSpaceOf, middleOf, rangeOfAll } from './machine-space';
import { type Opening, openingsOf, type WallPiece, wallPieces } from './openings';
import { partDevices } from './part-devices';

export interface MachineAir {
  readonly space: MachineSpace;
  readonly cells: AirCells;
  /** Middle of every cell, mm, and its height, m. */
  readonly middles: readonly Vector3[];
  readonly heights: readonly number[];
  readonly devices: readonly Device[];
  /** Screens that no device breathes through. */
  readonly openings: readonly Opening[];
  readonly walls: readonly WallPiece[];
  /** Length of all seams between panels, m. */
  readonly seams: number;
  /** Cells behind slot covers, one entry a cover. */
  readonly slotCovers: readonly { readonly cell: number; readonly at: Vector3 }[];
  /** Cell in which a part stands, by part id. */
  readonly cellOf: ReadonlyMap<string, number>;
}

const known = new WeakMap<Scene, { readonly air: MachineAir | undefined }>();

/** Undefined for a scene without an enclosure. Remembered by scene. */
export function machineAirOf(scene: Scene): MachineAir | undefined {
  const seen = known.get(scene);
  if (seen) return seen.air;
  const air = airSideOf(scene);
  known.set(scene, { air });
  return air;
}

function airSideOf(scene: Scene): MachineAir | undefined {
  const space = machineSpaceOf(scene);
  if (!space) return undefined;
  const cells = airCellsOf(space);
  const devices = [...fanDevices(scene, space, cells), ...partDevices(scene, space, cells)];
  const ports = devices.flatMap(({ streams, outlets }) => [
    ...streams.map(({ intake }) => intake),
    ...outlets.map(({ port }) => port),
  ]);
  const covered = ports.flatMap(({ toRoom, toCell, swept }) =>
    toRoom.length + toCell.length > 0 ? [swept] : [],
  );
  const middles = cellRanges(cells).map(middleOf);
  const { min, max } = space.interior;
  const seams = (4 * (max[0] - min[0] + max[1] - min[1] + max[2] - min[2])) / 1000;
  return {
    space,
    cells,
    middles,
    heights: middles.map((at) => heightOf(space, at)),
    devices,
    openings: openingsOf(space, cells, covered),
    walls: wallPieces(space, cells),
    seams,
    slotCovers: slotCoversOf(space, cells),
    cellOf: new Map(scene.parts.flatMap((part) => cellOfPart(space, cells, part))),
  };
}

function slotCoversOf(space: MachineSpace, cells: AirCells) {
  return slotRowsOf(space.spec, layoutOf(space.spec)).flatMap((row) =>
    row.frames.map(({ translation }) => {
      const at: Vector3 = [translation[0], translation[1], translation[2]];
      return { cell: cellAt(cells, at), at };
    }),
  );
}

function cellOfPart(
  space: MachineSpace,
  cells: AirCells,
  part: PlacedPart,
): readonly (readonly [string, number])[] {
  if (part === space.enclosure) return [];
  const range = rangeOfAll(space.boxes.filter((box) => box.part === part && box.solid));
  return range ? [[part.id, cellAt(cells, middleOf(range))]] : [];
}
