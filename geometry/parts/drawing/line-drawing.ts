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
  const grid: Grid = { us, vs, columns: Math.max(0, us.length - 1), rows: Math.max(0, vs.length - 1) };
  const layers = layersOf(tiles);
  const surface = new Int32Array(grid.columns * grid.rows).fill(-1);
  // Layers run from the furthest to the nearest: the nearest is written last.
  layers.forEach((layer, index) => {
    for (const tile of layer.tiles) fillCells(surface, grid, windowOf(tile, grid), index);
  });
  const seen = new Set<number>();
  const everything: Window = { u0: 0, u1: grid.columns, v0: 0, v1: grid.rows };
  eachBorder(grid, everything, surface, (side) => seen.add(side));
  const hidden = new Set<number>();
  const cells = new Int32Array(surface.length);
  layers.forEach((layer, index) => {
    // Marks of earlier layers stay: they differ from this one's, and so count as empty.
    const mark = index + 1;
    const windows = layer.tiles.map((tile) => windowOf(tile, grid));
    for (const window of windows) fillCells(cells, grid, window, mark);
    eachBorder(grid, around(windows), cells, (side) => !seen.has(side) && hidden.add(side), mark);
  });
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

/** A range of columns and rows; ends are not part of it. */
interface Window {
  readonly u0: number;
  readonly u1: number;
  readonly v0: number;
  readonly v1: number;
}

function windowOf({ u, v }: Tile, { us, vs }: Grid): Window {
  return { u0: placeOf(us, u[0]), u1: placeOf(us, u[1]), v0: placeOf(vs, v[0]), v1: placeOf(vs, v[1]) };
}

function around(windows: readonly Window[]): Window {
  return {
    u0: Math.min(...windows.map(({ u0 }) => u0)),
    u1: Math.max(...windows.map(({ u1 }) => u1)),
    v0: Math.min(...windows.map(({ v0 }) => v0)),
    v1: Math.max(...windows.map(({ v1 }) => v1)),
  };
}

function fillCells(cells: Int32Array, { columns }: Grid, { u0, u1, v0, v1 }: Window, value: number): void {
  for (let row = v0; row < v1; row++) cells.fill(value, row * columns + u0, row * columns + u1);
}

/**
 * Sides of the cells of a window where the value changes; with `mark`, where it changes between the mark and anything
 * else. Sides are numbered: 2 x corner for the one that runs along u from that corner of the grid, one more for the one
 * that runs along v.
 */
function eachBorder(
  { columns, rows }: Grid,
  { u0, u1, v0, v1 }: Window,
  cells: Int32Array,
  found: (side: number) => void,
  mark?: number,
): void {
  const valueAt = (column: number, row: number): number => {
    const isOff = column < 0 || row < 0 || column >= columns || row >= rows;
    const value = isOff ? -1 : (cells[row * columns + column] ?? -1);
    return mark === undefined ? value : Number(value === mark);
  };
  for (let row = v0; row <= v1; row++)
    for (let column = u0; column <= u1; column++) {
      const corner = row * (columns + 1) + column;
      const here = valueAt(column, row);
      if (column < u1 && here !== valueAt(column, row - 1)) found(2 * corner);
      if (row < v1 && here !== valueAt(column - 1, row)) found(2 * corner + 1);
    }
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
