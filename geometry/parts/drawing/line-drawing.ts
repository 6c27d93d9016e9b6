/**
 * Boxes as an orthographic line drawing: outlines that are seen, and outlines that something nearer hides. The paper
 * is cut at every edge of every box; in each cell the nearest face is found, and lines run where it changes. Exact for
 * boxes whose axes lie along those of the part, which holds for every builder of a body; a turned box is drawn as the
 * range it fills.
 */
import { type Bounds, boundsOfBox } from '../../space/oriented-box';
import type { BodyBox, Element } from '../body';
import { type PartView, rangeAlong } from './views';

/** A line along one axis of the paper, mm; `from` is the smaller end. */
export interface PaperLine {
  readonly along: 'u' | 'v';
  /** Where it lies across. */
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

export interface LineDrawing {
  readonly visible: readonly PaperLine[];
  readonly hidden: readonly PaperLine[];
  /** What the boxes cover of the paper, square mm. */
  readonly area: number;
}

/** Sheets that are cut into pieces by their openings: no line where two pieces meet flush. */
const sheets: ReadonlySet<Element> = new Set<Element>([
  'side panel',
  'back panel',
  'front wall',
  'rear wall',
  'top wall',
  'floor',
  'tray',
  'shroud',
]);

/** Boxes of one name are one thing to the eye. */
export function thingOf({ name, element }: BodyBox): string {
  return sheets.has(element) ? element : name.replace(/, piece \d+$/, '');
}

/** Closer than this is the same line, mm. */
const SAME_MM = 1e-6;

interface Tile {
  readonly u: readonly [number, number];
  readonly v: readonly [number, number];
  readonly near: number;
  readonly thing: string;
}

export function lineDrawing(boxes: readonly BodyBox[], view: PartView): LineDrawing {
  const tiles = boxes.map((body) => tileOf(body, boundsOfBox(body.box), view));
  const us = distinct(tiles.flatMap(({ u }) => u));
  const vs = distinct(tiles.flatMap(({ v }) => v));
  const layers = layersOf(tiles);
  const columns = Math.max(0, us.length - 1);
  const rows = Math.max(0, vs.length - 1);
  const surface = new Int32Array(columns * rows).fill(-1);
  // Layers run from the furthest to the nearest: the nearest is written last.
  const covered = layers.map((layer, index) => {
    const cells = new Uint8Array(columns * rows);
    for (const tile of layer.tiles)
      eachCell(tile, us, vs, columns, (cell) => {
        cells[cell] = 1;
        surface[cell] = index;
      });
    return cells;
  });
  const grid: Grid = { us, vs, columns, rows };
  const seen = borders(grid, (cell) => (cell < 0 ? -1 : (surface[cell] ?? -1)));
  const hidden = new Set<number>();
  for (const cells of covered)
    for (const border of borders(grid, (cell) => (cell < 0 ? 0 : (cells[cell] ?? 0))))
      if (!seen.has(border)) hidden.add(border);
  return { visible: joined(grid, seen), hidden: joined(grid, hidden), area: areaOf(grid, surface) };
}

function tileOf(body: BodyBox, bounds: Bounds, view: PartView): Tile {
  return {
    u: rangeAlong(view.right, bounds),
    v: rangeAlong(view.up, bounds),
    near: rangeAlong(view.towards, bounds)[1],
    thing: thingOf(body),
  };
}

interface Layer {
  readonly near: number;
  readonly tiles: Tile[];
}

/** Faces of one thing in one plane, furthest first. */
function layersOf(tiles: readonly Tile[]): readonly Layer[] {
  const layers = new Map<string, Layer>();
  for (const tile of tiles) {
    const key = `${tile.thing}/${Math.round(tile.near / SAME_MM)}`;
    const layer = layers.get(key) ?? { near: tile.near, tiles: [] };
    layer.tiles.push(tile);
    layers.set(key, layer);
  }
  return [...layers.values()].sort((a, b) => a.near - b.near);
}

function distinct(values: readonly number[]): readonly number[] {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted.filter((value, index) => index === 0 || value - (sorted[index - 1] ?? value) > SAME_MM);
}

interface Grid {
  readonly us: readonly number[];
  readonly vs: readonly number[];
  readonly columns: number;
  readonly rows: number;
}

/** The place of a value in the sorted list, within the tolerance. */
function placeOf(values: readonly number[], value: number): number {
  let [low, high] = [0, values.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((values[middle] ?? 0) <= value + SAME_MM) low = middle;
    else high = middle - 1;
  }
  return low;
}

function eachCell(
  tile: Tile,
  us: readonly number[],
  vs: readonly number[],
  columns: number,
  visit: (cell: number) => void,
): void {
  const [u0, u1] = [placeOf(us, tile.u[0]), placeOf(us, tile.u[1])];
  const [v0, v1] = [placeOf(vs, tile.v[0]), placeOf(vs, tile.v[1])];
  for (let row = v0; row < v1; row++)
    for (let column = u0; column < u1; column++) visit(row * columns + column);
}

/**
 * Sides of cells where the value changes. Numbered: 2 x corner for the side that runs along u from that corner of the
 * grid, one more for the one that runs along v.
 */
function borders({ columns, rows }: Grid, valueAt: (cell: number) => number): Set<number> {
  const found = new Set<number>();
  const cell = (column: number, row: number): number =>
    column < 0 || row < 0 || column >= columns || row >= rows ? -1 : row * columns + column;
  for (let row = 0; row <= rows; row++)
    for (let column = 0; column <= columns; column++) {
      const corner = row * (columns + 1) + column;
      const here = valueAt(cell(column, row));
      if (column < columns && here !== valueAt(cell(column, row - 1))) found.add(2 * corner);
      if (row < rows && here !== valueAt(cell(column - 1, row))) found.add(2 * corner + 1);
    }
  return found;
}

/** Sides that follow one another become one line. */
function joined({ us, vs, columns, rows }: Grid, sides: ReadonlySet<number>): readonly PaperLine[] {
  const lines: PaperLine[] = [];
  const run = (
    along: 'u' | 'v',
    at: number,
    stops: readonly number[],
    isSide: (step: number) => boolean,
  ): void => {
    let start: number | undefined;
    for (let step = 0; step < stops.length; step++) {
      const here = step < stops.length - 1 && isSide(step);
      if (here && start === undefined) start = stops[step];
      if (here || start === undefined) continue;
      lines.push({ along, at, from: start, to: stops[step] ?? start });
      start = undefined;
    }
  };
  for (let row = 0; row <= rows; row++)
    run('u', vs[row] ?? 0, us, (column) => sides.has(2 * (row * (columns + 1) + column)));
  for (let column = 0; column <= columns; column++)
    run('v', us[column] ?? 0, vs, (row) => sides.has(2 * (row * (columns + 1) + column) + 1));
  return lines;
}

function areaOf({ us, vs, columns, rows }: Grid, surface: Int32Array): number {
  let area = 0;
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++)
      if (surface[row * columns + column] !== -1)
        area += ((us[column + 1] ?? 0) - (us[column] ?? 0)) * ((vs[row + 1] ?? 0) - (vs[row] ?? 0));
  return area;
}
