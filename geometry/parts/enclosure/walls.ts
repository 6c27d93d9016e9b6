/** The six walls, the tray and the shroud of an enclosure, as sheets with openings; enclosure frame, mm. */

import { type Bounds, boxFromCorners } from '../../space/oriented-box';
import { CONTACT_TOLERANCE_MM } from '../../space/tolerance';
import { enclosureSheets } from '../../standards/assembly-practice';
import type { BodyBox } from '../body';
import { nominal, nominalOr } from '../dimension';
import { type Axis, axesAcross, facePlaneOf, sheetBehind } from './faces';
import type { EnclosureSpec } from './fields';
import { type EnclosureLayout, type WallName, wallElements } from './layout';
import { cuttersOf, slotCoversOf, ventWindowsOf } from './openings';
import { type Plate, plateWithOpenings } from './plate-with-openings';

const wallNames: readonly WallName[] = ['rear', 'front', 'top', 'floor', 'side', 'back'];

/** Panels that a builder expects to take off when the sheet does not say. */
const comesOffByDefault: ReadonlySet<WallName> = new Set<WallName>(['side', 'back']);

/** All sheets: they meet at edges and never share volume. */
export function sheetsOf(spec: EnclosureSpec, layout: EnclosureLayout): BodyBox[] {
  const cutters = cuttersOf(spec, layout);
  const walls = wallNames.flatMap((wall) =>
    plateWithOpenings(wallPlate(spec, layout, wall), cutters, [
      ...ventWindowsOf(spec, layout, wall),
      ...slotCoversOf(spec, layout, wall),
    ]),
  );
  const tray = trayPlate(spec, layout);
  const trayBoxes = tray
    ? plateWithOpenings(
        tray,
        [...cutters, ...trayOpenings(spec, layout)],
        ventWindowsOf(spec, layout, 'tray'),
      )
    : [];
  return [...walls, ...trayBoxes, ...shroudOf(spec, layout)];
}

function wallPlate(spec: EnclosureSpec, layout: EnclosureLayout, wall: WallName): Plate {
  const stated = spec.walls?.[wall];
  return {
    name: wallElements[wall],
    element: wallElements[wall],
    material: stated?.material ?? 'steel',
    removable: stated?.removable ?? comesOffByDefault.has(wall),
    ...wallBounds(layout, wall),
  };
}

/**
 * Who owns the corners: side and back panel cover the whole outline, top and floor reach over rear and front, rear and
 * front fit between them.
 */
export function wallBounds(layout: EnclosureLayout, wall: WallName): { bounds: Bounds; axis: Axis } {
  const { min, max } = layout.interior;
  const t = layout.thickness;
  const [x0, x1] = [min[0] - t.rear, max[0] + t.front];
  const [y0, y1] = [min[1] - t.floor, max[1] + t.top];
  switch (wall) {
    case 'rear':
      return { axis: 0, bounds: { min: [x0, min[1], min[2]], max: [min[0], max[1], max[2]] } };
    case 'front':
      return { axis: 0, bounds: { min: [max[0], min[1], min[2]], max: [x1, max[1], max[2]] } };
    case 'top':
      return { axis: 1, bounds: { min: [x0, max[1], min[2]], max: [x1, y1, max[2]] } };
    case 'floor':
      return { axis: 1, bounds: { min: [x0, y0, min[2]], max: [x1, min[1], max[2]] } };
    case 'side':
      return { axis: 2, bounds: { min: [x0, y0, max[2]], max: [x1, y1, max[2] + t.side] } };
    case 'back':
      return { axis: 2, bounds: { min: [x0, y0, min[2] - t.back], max: [x1, y1, min[2]] } };
  }
}

/** The tray, cut off at the walls; undefined where the board stands on a wall itself. */
export function trayPlate(spec: EnclosureSpec, layout: EnclosureLayout): Plate | undefined {
  const { axis, sense, at, thickness } = layout.tray;
  const [u, v] = axesAcross(axis);
  const { interior } = layout;
  const bounds = { min: [...interior.min], max: [...interior.max] } as {
    min: [number, number, number];
    max: [number, number, number];
  };
  const behind = at - sense * thickness;
  bounds.min[axis] = Math.max(interior.min[axis], Math.min(at, behind));
  bounds.max[axis] = Math.min(interior.max[axis], Math.max(at, behind));
  const { from, to } = spec.tray ?? {};
  if (from !== undefined) {
    bounds.min[u] = Math.max(interior.min[u], nominal(from[0]));
    bounds.min[v] = Math.max(interior.min[v], nominal(from[1]));
  }
  if (to !== undefined) {
    bounds.max[u] = Math.min(interior.max[u], nominal(to[0]));
    bounds.max[v] = Math.min(interior.max[v], nominal(to[1]));
  }
  const thin = ([0, 1, 2] as const).some((i) => bounds.max[i] - bounds.min[i] <= CONTACT_TOLERANCE_MM);
  return thin ? undefined : { name: 'tray', element: 'tray', material: 'steel', axis, bounds };
}

function trayOpenings(spec: EnclosureSpec, layout: EnclosureLayout): Bounds[] {
  const plane = facePlaneOf(layout, 'tray');
  const { cutout, openings = [] } = spec.tray ?? {};
  return [...(cutout ? [cutout] : []), ...openings].map(({ from, to }) =>
    sheetBehind(plane, [nominal(from[0]), nominal(from[1])], [nominal(to[0]), nominal(to[1])]),
  );
}

/** An upper sheet and a side sheet along the side panel, from the rear wall forwards; leads leave at the front. */
function shroudOf(spec: EnclosureSpec, layout: EnclosureLayout): BodyBox[] {
  if (!spec.shroud) return [];
  const { interior, tray } = layout;
  const thickness = nominalOr(spec.shroud.thickness, enclosureSheets.structuralPlate.value);
  const top = nominal(spec.shroud.height);
  const front = nominal(spec.shroud.length);
  const nearest = tray.axis === 2 ? Math.max(tray.at, interior.min[2]) : interior.min[2];
  const piece = (
    name: string,
    from: readonly [number, number, number],
    to: readonly [number, number, number],
  ) =>
    ({ name, role: 'solid', element: 'shroud', material: 'steel', box: boxFromCorners(from, to) }) as const;
  const [rear, floor, side] = [interior.min[0], interior.min[1], interior.max[2]];
  return [
    piece('shroud top', [rear, floor + top - thickness, nearest], [rear + front, floor + top, side]),
    piece('shroud side', [rear, floor, side - thickness], [rear + front, floor + top - thickness, side]),
  ];
}
