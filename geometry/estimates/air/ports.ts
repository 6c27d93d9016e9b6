/**
 * Where a device takes its air and where it leaves it. A face of a device looks along a direction; what it sees within
 * reach decides: open air of a cell, the gap before an obstacle, a screen with the room behind it.
 */
import type { Bounds } from '../../space/oriented-box';
import { areaOfRectangle } from '../../space/rectangles';
import type { Vector3 } from '../../space/vector';
import type { AssumptionValues } from '../assumptions';
import { type AirCells, cellAt } from './air-cells';
import { isInside, type MachineSpace } from './machine-space';
import { acrossOf, flat, type OpenShare, openShareOf, overlapOf, statedOpen } from './openings';

export interface Port {
  /** Cell the face looks into; undefined when it looks into the room. */
  readonly cell: number | undefined;
  /** Where that is, enclosure frame, mm. */
  readonly at: Vector3;
  /** Screens between the face and the room, m2 of screen each, and bare ways out. */
  readonly toRoom: readonly { readonly area: number; readonly open: OpenShare }[];
  /** Screens between a face outside the enclosure and the cell it looks into. */
  readonly toCell: readonly { readonly area: number; readonly open: OpenShare }[];
  /** True for a face against closed sheet. */
  readonly blocked: boolean;
  /** Mean free distance before the face, mm, and the distance at which nothing is in the way any more. */
  readonly gap: number;
  readonly wanted: number;
  /** Area of the curtain round the face, m2; undefined where nothing is near. */
  readonly curtain: number | undefined;
  /** Range of the face swept out along its direction: screens in it are taken by this device. */
  readonly swept: Bounds;
}

/** How far from a wall a face still breathes through it, mm. */
const REACH_THROUGH_WALL = 60;

/** Lines of sight across a face, each way. */
const SIGHTS = 5;

const ROUND_IN_SQUARE = Math.PI / 4;

/**
 * Port of a face: `face` is a flat range (its two sides along `axis` equal), `sign` the way it looks. `wanted` is the
 * distance beyond which obstacles no longer count, mm.
 */
export function portOf(
  space: MachineSpace,
  cells: AirCells,
  face: Bounds,
  axis: 0 | 1 | 2,
  sign: 1 | -1,
  wanted: number,
  own: ReadonlySet<string>,
): Port {
  const [u, v] = acrossOf(axis);
  const from = sign > 0 ? face.max[axis] : face.min[axis];
  const wall = sign > 0 ? space.interior.max[axis] : space.interior.min[axis];
  const toWall = sign * (wall - from);
  const middle = middleAlong(face, axis, from);
  const seen = sightsAlong(space, face, axis, sign, from, wanted, own);
  const outside = sign > 0 ? from < space.interior.min[axis] - 0.01 : from > space.interior.max[axis] + 0.01;
  if (outside) return portFromOutside(space, cells, face, axis, sign, from, wanted);
  const throughWall = toWall < Math.min(REACH_THROUGH_WALL, wanted) || toWall < 1;
  const swept = sweptRange(face, axis, sign, from, throughWall ? Math.max(toWall, 0) + 50 : wanted);
  const screens = throughWall ? screensIn(space, face, swept, axis) : [];
  const size = (face.max[u] - face.min[u] + face.max[v] - face.min[v]) / 2;
  const onWall = toWall < 1;
  const bare = onWall ? seen.openShare * areaOfRectangle(flat(face, u, v)) * ROUND_IN_SQUARE : 0;
  const toRoom = bare > 0 ? [...screens, { area: bare / 1e6, open: 1 }] : screens;
  const step = Math.min(Math.max(seen.gap / 2, 1), 45);
  const point = middleAlong(face, axis, from + sign * step);
  const inRoom = onWall || !isInside(space.interior, point);
  return {
    cell: inRoom ? undefined : cellAt(cells, point),
    at: inRoom ? middle : point,
    toRoom,
    toCell: [],
    blocked: onWall && toRoom.length === 0 && toWall > -1,
    gap: seen.gap,
    wanted,
    curtain: seen.gap > 0.98 * wanted ? undefined : (Math.PI * size * Math.max(seen.gap, 0.2)) / 1e6,
    swept,
  };
}

/** Screens in the swept range of a face, the round of the face only. */
function screensIn(space: MachineSpace, face: Bounds, swept: Bounds, axis: 0 | 1 | 2) {
  const [u, v] = acrossOf(axis);
  return space.screens.flatMap((screen) => {
    if (screen.max[axis] < swept.min[axis] || screen.min[axis] > swept.max[axis]) return [];
    const shared = overlapOf(flat(screen, u, v), flat(face, u, v));
    if (!shared) return [];
    return [
      { area: (areaOfRectangle(shared) * ROUND_IN_SQUARE) / 1e6, open: statedOpen(space.spec, screen) },
    ];
  });
}

/** A fan on the outside looks through the sheet into the cell behind it. */
function portFromOutside(
  space: MachineSpace,
  cells: AirCells,
  face: Bounds,
  axis: 0 | 1 | 2,
  sign: 1 | -1,
  from: number,
  wanted: number,
): Port {
  const inner = sign > 0 ? space.interior.min[axis] : space.interior.max[axis];
  const at = middleAlong(face, axis, inner + sign);
  const swept = sweptRange(face, axis, sign, from, Math.abs(inner - from) + 1);
  const toCell = screensIn(space, face, swept, axis);
  const blocked = toCell.length === 0;
  return {
    cell: cellAt(cells, at),
    at,
    toRoom: [],
    toCell,
    blocked,
    gap: wanted,
    wanted,
    curtain: undefined,
    swept,
  };
}

function middleAlong(face: Bounds, axis: 0 | 1 | 2, along: number): Vector3 {
  const at: [number, number, number] = [
    (face.min[0] + face.max[0]) / 2,
    (face.min[1] + face.max[1]) / 2,
    (face.min[2] + face.max[2]) / 2,
  ];
  at[axis] = along;
  return at;
}

function sweptRange(face: Bounds, axis: 0 | 1 | 2, sign: 1 | -1, from: number, reach: number): Bounds {
  const min: [number, number, number] = [...face.min];
  const max: [number, number, number] = [...face.max];
  min[axis] = sign > 0 ? from : from - reach;
  max[axis] = sign > 0 ? from + reach : from;
  return { min, max };
}

/** Mean free distance before the face, and the share of it before which nothing at all stands, screens included. */
function sightsAlong(
  space: MachineSpace,
  face: Bounds,
  axis: 0 | 1 | 2,
  sign: 1 | -1,
  from: number,
  reach: number,
  own: ReadonlySet<string>,
): { gap: number; openShare: number } {
  const [u, v] = acrossOf(axis);
  const near = [...space.obstacles, ...space.screens].filter(
    (box) => !own.has(box.part.id) && reaches(box, face, axis, sign, from, reach),
  );
  let total = 0;
  let open = 0;
  for (let i = 0; i < SIGHTS; i++) {
    for (let j = 0; j < SIGHTS; j++) {
      const atU = face.min[u] + ((i + 0.5) * (face.max[u] - face.min[u])) / SIGHTS;
      const atV = face.min[v] + ((j + 0.5) * (face.max[v] - face.min[v])) / SIGHTS;
      let distance = reach;
      for (const { min, max } of near) {
        if (atU <= min[u] || atU >= max[u] || atV <= min[v] || atV >= max[v]) continue;
        distance = Math.min(distance, Math.max(0, sign > 0 ? min[axis] - from : from - max[axis]));
      }
      total += distance;
      if (distance === reach) open++;
    }
  }
  return { gap: total / SIGHTS ** 2, openShare: open / SIGHTS ** 2 };
}

function reaches(
  box: Bounds,
  face: Bounds,
  axis: 0 | 1 | 2,
  sign: 1 | -1,
  from: number,
  reach: number,
): boolean {
  const [u, v] = acrossOf(axis);
  if (box.max[u] <= face.min[u] || box.min[u] >= face.max[u]) return false;
  if (box.max[v] <= face.min[v] || box.min[v] >= face.max[v]) return false;
  const [near, far] =
    sign > 0 ? [box.min[axis] - from, box.max[axis] - from] : [from - box.max[axis], from - box.min[axis]];
  return far > 0 && near < reach;
}

/** Effective area of screens, m2, coefficient included. */
export function screenArea(
  screens: readonly { readonly area: number; readonly open: OpenShare }[],
  values: AssumptionValues,
): number {
  return screens.reduce(
    (sum, { area, open }) => sum + area * openShareOf(open, values) * values.openingCoefficient,
    0,
  );
}
