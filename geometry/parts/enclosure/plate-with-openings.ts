/** One sheet with rectangular openings and with windows of another material, as boxes; enclosure frame, mm. */
import type { Bounds } from '../../space/oriented-box';
import { boxFromCorners } from '../../space/oriented-box';
import { type Rectangle, subtractRectangles } from '../../space/rectangles';
import { CONTACT_TOLERANCE_MM } from '../../space/tolerance';
import type { BodyBox, Element, Material } from '../body';
import { type Axis, axesAcross } from './faces';

/** What a piece of sheet is, apart from where it lies. */
export interface SheetKind {
  readonly name: string;
  readonly element: Element;
  readonly material?: Material | undefined;
  readonly removable?: boolean | undefined;
}

/** A sheet that stands across `axis`. */
export interface Plate extends SheetKind {
  readonly bounds: Bounds;
  readonly axis: Axis;
}

/** A region of a sheet that is a thing of its own: mesh, a cover that comes off. */
export interface PlateWindow extends SheetKind {
  readonly bounds: Bounds;
}

/**
 * The plate less everything that pierces it: a cutter that shares any depth with the plate goes right through.
 * Windows take their own piece of the plate, earlier ones before later ones, and cutters pierce them too.
 */
export function plateWithOpenings(
  plate: Plate,
  cutters: readonly Bounds[],
  windows: readonly PlateWindow[] = [],
): BodyBox[] {
  const outline = across(plate.bounds, plate.axis);
  const holes = cutters.filter((cutter) => pierces(cutter, plate)).map((c) => across(c, plate.axis));
  const pieces: BodyBox[] = [];
  for (const window of windows) {
    const region = overlapOf(outline, across(window.bounds, plate.axis));
    if (region === undefined) continue;
    const left = subtractRectangles(region, holes);
    // A window comes off with the sheet it is set into.
    const kind: SheetKind = { ...window, removable: window.removable ?? plate.removable };
    pieces.push(
      ...left.map((piece, i) => sheetBox(plate, kind, piece, pieceName(window.name, ', piece', i))),
    );
    holes.push(region);
  }
  const rest = subtractRectangles(outline, holes).filter(hasArea);
  const named = rest.map((piece, i) =>
    sheetBox(plate, plate, piece, rest.length === 1 ? plate.name : `${plate.name} ${i + 1}`),
  );
  return [...named, ...pieces];
}

/** Whether the bounds share depth with the plate and lie over its outline. */
export function pierces(bounds: Bounds, plate: Pick<Plate, 'bounds' | 'axis'>): boolean {
  return ([0, 1, 2] as const).every(
    (axis) =>
      Math.min(bounds.max[axis], plate.bounds.max[axis]) -
        Math.max(bounds.min[axis], plate.bounds.min[axis]) >
      CONTACT_TOLERANCE_MM,
  );
}

function pieceName(name: string, word: string, index: number): string {
  return index === 0 ? name : `${name}${word} ${index + 1}`;
}

function across(bounds: Bounds, axis: Axis): Rectangle {
  const [u, v] = axesAcross(axis);
  return { min: [bounds.min[u], bounds.min[v]], max: [bounds.max[u], bounds.max[v]] };
}

function overlapOf(a: Rectangle, b: Rectangle): Rectangle | undefined {
  const both: Rectangle = {
    min: [Math.max(a.min[0], b.min[0]), Math.max(a.min[1], b.min[1])],
    max: [Math.min(a.max[0], b.max[0]), Math.min(a.max[1], b.max[1])],
  };
  return hasArea(both) ? both : undefined;
}

/** Slivers thinner than the contact tolerance are round-off, not sheet. */
function hasArea(r: Rectangle): boolean {
  return r.max[0] - r.min[0] > CONTACT_TOLERANCE_MM && r.max[1] - r.min[1] > CONTACT_TOLERANCE_MM;
}

function sheetBox(plate: Plate, kind: SheetKind, piece: Rectangle, name: string): BodyBox {
  const [u, v] = axesAcross(plate.axis);
  const low: [number, number, number] = [0, 0, 0];
  const high: [number, number, number] = [0, 0, 0];
  low[plate.axis] = plate.bounds.min[plate.axis];
  high[plate.axis] = plate.bounds.max[plate.axis];
  [low[u], low[v]] = piece.min;
  [high[u], high[v]] = piece.max;
  return {
    name,
    role: 'solid',
    element: kind.element,
    box: boxFromCorners(low, high),
    ...(kind.material === undefined ? {} : { material: kind.material }),
    ...(kind.removable === true ? { removable: true } : {}),
  };
}
