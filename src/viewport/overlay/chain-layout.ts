/**
 * The chain of dimensions behind a clearance on the screen, as ISO 129-1 draws rows of dimensions: what has room beside
 * one another shares a row; short dimensions end in oblique strokes and have their figure outside. CSS pixels.
 */
import type { DimensionChain } from '../../../geometry';
import { type Pixel, projectPoint, type ScreenSize, type Sight } from '../camera/sight';
import {
  ARROW_LENGTH,
  arrow,
  extensionDirection,
  hasDirection,
  offset,
  screenDirection,
  segment,
} from './dimension-geometry';
import type { Rectangle } from './place-labels';

export interface DrawnLink {
  /** Path data of the dimension line with its extension lines, and of the filled arrowheads. */
  readonly lines: string;
  readonly arrows: string;
  /** Middle of the figure. */
  readonly figure: Pixel;
}

/** From the line of the clearance to the first row, and from row to row. */
const FIRST_ROW_PX = 34;
const ROW_PX = 20;
/** Extension lines begin a little off what is measured and reach a little past the row. */
const EXTENSION_FROM = 3;
const EXTENSION_PAST = 5;
const OBLIQUE = 4;
const TEXT_HALF_HEIGHT = 7;
const TEXT_GAP = 7;

/** Undefined while the chain is seen end on, or behind the eye. `widths` are those of the figures. */
export function layOutChain(
  sight: Sight,
  screen: ScreenSize,
  { links, direction }: DimensionChain,
  widths: readonly number[],
  room: Rectangle,
): readonly DrawnLink[] | undefined {
  const [start] = links[0]?.points ?? [];
  if (!start || !hasDirection(sight, direction)) return undefined;
  const along = screenDirection(sight, screen, start, direction) ?? [1, 0];
  // Figures stand outside to the right, or below where the chain runs upright.
  const run: Pixel = along[0] + along[1] / 4 < 0 ? [-along[0], -along[1]] : along;
  const up = extensionDirection(sight, screen, start, direction, along);
  const spans: Span[] = [];
  for (const [index, { points }] of links.entries()) {
    const [a, b] = points.map((point) => projectPoint(sight, screen, point));
    if (!a?.visible || !b?.visible) return undefined;
    const [from, to] = place(a.at, run) <= place(b.at, run) ? [a.at, b.at] : [b.at, a.at];
    spans.push({ from, to, width: widths[index] ?? 0 });
  }
  const rows = rowsOf(spans, run);
  const drawnTowards = (aside: Pixel) =>
    spans.map((span, index) => drawn(span, run, aside, rows[index] ?? 0));
  // The clearance's own label stands above: the chain hangs below where there is room.
  const below = drawnTowards([-up[0], -up[1]]);
  return below.every(({ figure }) => isWithin(room, figure)) ? below : drawnTowards(up);
}

interface Span {
  /** Ends in the sense of the run. */
  readonly from: Pixel;
  readonly to: Pixel;
  readonly width: number;
}

const place = (at: Pixel, run: Pixel): number => at[0] * run[0] + at[1] * run[1];

const lengthOf = ({ from, to }: Span): number => Math.hypot(to[0] - from[0], to[1] - from[1]);

function hasRoomInside(span: Span): boolean {
  return lengthOf(span) >= span.width + 2 * (ARROW_LENGTH + 3);
}

/** How far a figure reaches along the run from its middle. */
function reach(width: number, [x, y]: Pixel): number {
  return Math.min(
    Math.abs(x) < 1e-6 ? Number.POSITIVE_INFINITY : width / 2 / Math.abs(x),
    Math.abs(y) < 1e-6 ? Number.POSITIVE_INFINITY : TEXT_HALF_HEIGHT / Math.abs(y),
  );
}

/** Row of each span, its figure counted in: the first in which nothing lies over the same stretch. */
export function rowsOf(spans: readonly Span[], run: Pixel): readonly number[] {
  const rows: (readonly [number, number])[][] = [];
  return spans.map((span) => {
    const low = place(span.from, run);
    const figure = hasRoomInside(span) ? 0 : 2 * (TEXT_GAP + reach(span.width, run));
    const high = place(span.to, run) + figure;
    let row = rows.findIndex((taken) =>
      taken.every(([from, to]) => high <= from + TOUCH_PX || low >= to - TOUCH_PX),
    );
    if (row < 0) row = rows.push([]) - 1;
    rows[row]?.push([low, high]);
    return row;
  });
}

/** Dimensions that share an end do not cover each other. */
const TOUCH_PX = 0.01;

function drawn(span: Span, run: Pixel, aside: Pixel, row: number): DrawnLink {
  const by = FIRST_ROW_PX + ROW_PX * row;
  const [from, to] = [offset(span.from, aside, by), offset(span.to, aside, by)];
  const lines = [span.from, span.to]
    .map((end) => segment(offset(end, aside, EXTENSION_FROM), offset(end, aside, by + EXTENSION_PAST)))
    .concat(segment(from, to))
    .join('');
  if (hasRoomInside(span)) {
    const middle: Pixel = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    return { lines, arrows: arrow(from, run, 1) + arrow(to, run, -1), figure: middle };
  }
  const figure = offset(to, run, TEXT_GAP + reach(span.width, run));
  return { lines: lines + oblique(from, run) + oblique(to, run), arrows: '', figure };
}

/** ISO 129-1 lets short dimensions in a row end in strokes at 45 degrees to the line. */
function oblique(at: Pixel, [x, y]: Pixel): string {
  const across: Pixel = [(x - y) * Math.SQRT1_2, (x + y) * Math.SQRT1_2];
  return segment(offset(at, across, -OBLIQUE), offset(at, across, OBLIQUE));
}

function isWithin({ left, top, width, height }: Rectangle, [x, y]: Pixel): boolean {
  return x >= left && x <= left + width && y >= top && y <= top + height - TEXT_HALF_HEIGHT;
}
