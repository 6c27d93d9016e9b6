/** Ways between the inside and the room: grilles, vents, mesh and seams, by the cell behind them. */
import type { EnclosureSpec } from '../../parts/enclosure/spec';
import type { Bounds } from '../../space/oriented-box';
import { areaOfRectangle, type Rectangle, subtractRectangles } from '../../space/rectangles';
import type { Vector3 } from '../../space/vector';
import type { AssumptionValues } from '../assumptions';
import { type AirCells, cellRanges } from './air-cells';
import type { LocalBox, MachineSpace } from './machine-space';

/** How open a screen is: as stated, or by an assumption. */
export type OpenShare = number | 'grille' | 'mesh';

export interface Opening {
  readonly name: string;
  readonly cell: number;
  /** Of the screen itself, m2. */
  readonly area: number;
  readonly open: OpenShare;
  readonly at: Vector3;
}

export function openShareOf(open: OpenShare, values: AssumptionValues): number {
  if (open === 'grille') return values.grilleOpen;
  return open === 'mesh' ? values.meshOpen : open;
}

/** How open a screen of the enclosure is, by its name. */
export function statedOpen(spec: EnclosureSpec, { name, element }: LocalBox): OpenShare {
  if (element !== 'vent') {
    const wall = name.startsWith('side') ? 'side' : name.startsWith('back') ? 'back' : wallOfName(name);
    return (wall && spec.walls?.[wall]?.open) ?? 'mesh';
  }
  const grille = /^grille of (.+?)(, piece \d+)?$/.exec(name);
  if (grille) return spec.fanSeats?.find(({ id }) => id === grille[1])?.open ?? 'grille';
  const vent = /^(.+) vent (\d+)(, piece \d+)?$/.exec(name);
  const face = vent?.[1];
  const onFace = (spec.vents ?? []).filter(
    (one) => one.face === face || one.face.replace(' back', '') === face,
  );
  return onFace[Number(vent?.[2]) - 1]?.open ?? 'grille';
}

function wallOfName(name: string) {
  return (['rear', 'front', 'top', 'floor'] as const).find((wall) => name.startsWith(wall));
}

/** The wall a screen lies in: the axis it stands across, if it lies outside the interior. */
export function wallAxisOf(interior: Bounds, { min, max }: Bounds): 0 | 1 | 2 | undefined {
  return ([0, 1, 2] as const).find(
    (axis) => max[axis] <= interior.min[axis] + 1e-6 || min[axis] >= interior.max[axis] - 1e-6,
  );
}

/** Openings that no fan covers. `covered` are the ranges of screen that fans breathe through. */
export function openingsOf(
  space: MachineSpace,
  cells: AirCells,
  covered: readonly Bounds[],
): readonly Opening[] {
  const ranges = cellRanges(cells);
  return space.screens.flatMap((screen) => {
    const axis = wallAxisOf(space.interior, screen);
    if (axis === undefined) return [];
    const open = statedOpen(space.spec, screen);
    const low = screen.max[axis] <= space.interior.min[axis] + 1e-6;
    const [u, v] = acrossOf(axis);
    const holes = covered.filter(
      (range) => range.max[axis] > screen.min[axis] && range.min[axis] < screen.max[axis],
    );
    const free = subtractRectangles(
      flat(screen, u, v),
      holes.map((range) => flat(range, u, v)),
    );
    return ranges.flatMap((range, cell): Opening[] => {
      const touches = low
        ? range.min[axis] <= space.interior.min[axis] + 1e-6
        : range.max[axis] >= space.interior.max[axis] - 1e-6;
      if (!touches) return [];
      return free.flatMap((piece) => {
        const part = overlapOf(piece, flat(range, u, v));
        if (!part) return [];
        const at: [number, number, number] = [0, 0, 0];
        at[axis] = low ? space.interior.min[axis] : space.interior.max[axis];
        at[u] = (part.min[0] + part.max[0]) / 2;
        at[v] = (part.min[1] + part.max[1]) / 2;
        return [{ name: screen.name, cell, area: areaOfRectangle(part) / 1e6, open, at }];
      });
    });
  });
}

export function acrossOf(axis: 0 | 1 | 2): readonly [0 | 1 | 2, 0 | 1 | 2] {
  return axis === 0 ? [1, 2] : axis === 1 ? [0, 2] : [0, 1];
}

export function flat({ min, max }: Bounds, u: 0 | 1 | 2, v: 0 | 1 | 2): Rectangle {
  return { min: [min[u], min[v]], max: [max[u], max[v]] };
}

export function overlapOf(a: Rectangle, b: Rectangle): Rectangle | undefined {
  const min = [Math.max(a.min[0], b.min[0]), Math.max(a.min[1], b.min[1])] as const;
  const max = [Math.min(a.max[0], b.max[0]), Math.min(a.max[1], b.max[1])] as const;
  return max[0] > min[0] && max[1] > min[1] ? { min, max } : undefined;
}

/** A piece of outer wall by the cell behind it. */
export interface WallPiece {
  readonly cell: number;
  /** m2 */
  readonly area: number;
  readonly at: Vector3;
}

/** Every face of a cell that lies on a wall: where heat and seams leave. */
export function wallPieces(space: MachineSpace, cells: AirCells): readonly WallPiece[] {
  const { interior } = space;
  return cellRanges(cells).flatMap((range, cell) =>
    ([0, 1, 2] as const).flatMap((axis): WallPiece[] => {
      const [u, v] = acrossOf(axis);
      const area = areaOfRectangle(flat(range, u, v)) / 1e6;
      const middle = [0, 1, 2].map((i) => ((range.min[i] ?? 0) + (range.max[i] ?? 0)) / 2);
      const piece = (along: number): WallPiece => {
        const at: [number, number, number] = [middle[0] ?? 0, middle[1] ?? 0, middle[2] ?? 0];
        at[axis] = along;
        return { cell, area, at };
      };
      return [
        ...(range.min[axis] <= interior.min[axis] + 1e-6 ? [piece(interior.min[axis])] : []),
        ...(range.max[axis] >= interior.max[axis] - 1e-6 ? [piece(interior.max[axis])] : []),
      ];
    }),
  );
}
