/**
 * Where the three views stand on the paper, in pixels, by the first-angle method of ISO 5456-2: the view from above
 * lies below the front view, the view from the left to its right. Dimension lines stand outside the views in rows, the
 * shorter ones nearer, as ISO 129-1 has it.
 */
import { type Bounds, type DrivenDimension, inView, type PartView, rangeAlong } from '../../../geometry';

export interface PlacedView {
  readonly view: PartView;
  /** Paper coordinates, mm, of the part within the view. */
  readonly u: readonly [number, number];
  readonly v: readonly [number, number];
  /** Upper left corner on the sheet, pixels. */
  readonly left: number;
  readonly top: number;
  /** Pixels a millimetre. */
  readonly scale: number;
}

export interface PlacedDimension {
  readonly dimension: DrivenDimension;
  readonly along: 'u' | 'v';
  /** Ends of the dimension line along it, pixels, smaller first. */
  readonly from: number;
  readonly to: number;
  /** Where the line lies across, pixels. */
  readonly at: number;
  /** Where its two extension lines begin, pixels across. */
  readonly starts: readonly [number, number];
  readonly text: string;
}

export interface SheetLayout {
  readonly width: number;
  readonly height: number;
  readonly views: readonly PlacedView[];
  readonly dimensions: readonly PlacedDimension[];
  /** The free corner below the view from the left, for the picture of the body. */
  readonly corner: {
    readonly left: number;
    readonly top: number;
    readonly width: number;
    readonly height: number;
  };
}

export interface DimensionText {
  readonly dimension: DrivenDimension;
  readonly text: string;
}

type Side = 'above' | 'below' | 'left' | 'right';

interface Berth {
  readonly view: 0 | 1 | 2;
  readonly along: 'u' | 'v';
  readonly side: Side;
}

/** Where dimension lines of each view may stand, best first. */
const berths: readonly Berth[] = [
  { view: 0, along: 'u', side: 'above' },
  { view: 0, along: 'v', side: 'left' },
  { view: 2, along: 'u', side: 'above' },
  { view: 1, along: 'u', side: 'below' },
  { view: 2, along: 'v', side: 'right' },
  { view: 1, along: 'v', side: 'left' },
];

/** More rows than this beside a view send a dimension to the next view that shows it. */
const MOST_ROWS = 4;
const ROW = 19;
const FIRST_ROW = 20;
const MARGIN = 10;
const BETWEEN = 26;
const CHARACTER = 6.4;

interface Row {
  readonly taken: (readonly [number, number])[];
}

interface Berthed extends DimensionText {
  readonly berth: Berth;
  readonly row: number;
}

const toPixel = {
  u: (view: PlacedView, u: number) => view.left + (u - view.u[0]) * view.scale,
  v: (view: PlacedView, v: number) => view.top + (view.v[1] - v) * view.scale,
};

/** A point of the paper of one view on the sheet, pixels. */
export function onSheet(view: PlacedView, u: number, v: number): readonly [number, number] {
  return [toPixel.u(view, u), toPixel.v(view, v)];
}

/** The other way round, mm. */
export function onPaper(view: PlacedView, x: number, y: number): readonly [u: number, v: number] {
  return [view.u[0] + (x - view.left) / view.scale, view.v[1] - (y - view.top) / view.scale];
}

/** `width` and `tallest` in pixels. Dimensions that no view shows true are left out. */
export function layOutSheet(
  views: readonly PartView[],
  whole: Bounds,
  wanted: readonly DimensionText[],
  width: number,
  tallest: number,
): SheetLayout {
  const spans = views.map((view) => ({
    u: rangeAlong(view.right, whole),
    v: rangeAlong(view.up, whole),
  }));
  const size = (view: number, along: 'u' | 'v') => {
    const [low, high] = spans[view]?.[along] ?? [0, 0];
    return Math.max(high - low, 1);
  };
  // The rows take room, and the room sets the scale that packs the rows: a first guess is near enough.
  const guess = (width * 0.62) / (size(0, 'u') + size(2, 'u'));
  const berthed = berthAll(views, wanted, guess);
  const rows = (view: number, side: Side) =>
    Math.max(
      0,
      ...berthed
        .filter((one) => one.berth.view === view && one.berth.side === side)
        .map(({ row }) => row + 1),
    );
  const room = (count: number) => (count === 0 ? MARGIN : FIRST_ROW + count * ROW);
  const left = Math.max(room(rows(0, 'left')), room(rows(1, 'left')));
  const right = room(rows(2, 'right'));
  const above = Math.max(room(rows(0, 'above')), room(rows(2, 'above')));
  const below = room(rows(1, 'below'));
  const scale = Math.max(
    0.02,
    Math.min(
      (width - left - right - BETWEEN) / (size(0, 'u') + size(2, 'u')),
      (tallest - above - below - BETWEEN) / (size(0, 'v') + size(1, 'v')),
    ),
  );
  const used = left + right + BETWEEN + (size(0, 'u') + size(2, 'u')) * scale;
  const shift = Math.max(0, (width - used) / 2);
  const place = (index: 0 | 1 | 2): PlacedView => ({
    view: views[index] as PartView,
    u: spans[index]?.u ?? [0, 1],
    v: spans[index]?.v ?? [0, 1],
    left: shift + left + (index === 2 ? size(0, 'u') * scale + BETWEEN : 0),
    top: above + (index === 1 ? size(0, 'v') * scale + BETWEEN : 0),
    scale,
  });
  const placed = [place(0), place(1), place(2)] as const;
  const [, plan, side] = placed;
  return {
    width,
    height: above + BETWEEN + below + (size(0, 'v') + size(1, 'v')) * scale,
    views: placed,
    dimensions: berthed.map((one) => placeDimension(one, placed[one.berth.view])),
    corner: {
      left: side.left,
      top: plan.top,
      width: size(2, 'u') * scale + right,
      height: size(1, 'v') * scale + below,
    },
  };
}

function berthAll(
  views: readonly PartView[],
  wanted: readonly DimensionText[],
  scale: number,
): readonly Berthed[] {
  const packed = new Map<Berth, Row[]>();
  const shortFirst = [...wanted].sort(
    (a, b) => a.dimension.to - a.dimension.from - (b.dimension.to - b.dimension.from),
  );
  return shortFirst.flatMap((one): Berthed[] => {
    const fitting = berths.filter(({ view, along }) => {
      const axis = along === 'u' ? views[view]?.right.axis : views[view]?.up.axis;
      return axis === one.dimension.axis;
    });
    const berth =
      fitting.find((candidate) => rowFor(packed.get(candidate) ?? [], spanOf(one, scale)) < MOST_ROWS) ??
      fitting[0];
    if (!berth) return [];
    const rows = packed.get(berth) ?? [];
    packed.set(berth, rows);
    const span = spanOf(one, scale);
    const row = rowFor(rows, span);
    const there = rows[row] ?? { taken: [] };
    rows[row] = there;
    there.taken.push(span);
    return [{ ...one, berth, row }];
  });
}

/** What a dimension takes of its row, in millimetres of the guessed scale, its text included. */
function spanOf({ dimension, text }: DimensionText, scale: number): readonly [number, number] {
  const { from, to } = dimension;
  const needed = (text.length * CHARACTER + 12) / scale;
  const more = Math.max(0, needed - (to - from));
  return [from - more / 2, to + more / 2];
}

function rowFor(rows: readonly Row[], [from, to]: readonly [number, number]): number {
  const free = rows.findIndex(({ taken }) => taken.every(([low, high]) => to < low || from > high));
  return free < 0 ? rows.length : free;
}

function placeDimension({ dimension, text, berth, row }: Berthed, view: PlacedView): PlacedDimension {
  const { along, side } = berth;
  const axis = along === 'u' ? view.view.right : view.view.up;
  const ends = [dimension.from, dimension.to].map((at) => {
    const point: [number, number, number] = [0, 0, 0];
    point[axis.axis] = at;
    const [u, v] = inView(view.view, point);
    return along === 'u' ? toPixel.u(view, u) : toPixel.v(view, v);
  });
  const sheet = {
    left: view.left,
    right: view.left + (view.u[1] - view.u[0]) * view.scale,
    top: view.top,
    bottom: view.top + (view.v[1] - view.v[0]) * view.scale,
  };
  const out = FIRST_ROW + row * ROW;
  const at = {
    above: sheet.top - out,
    below: sheet.bottom + out,
    left: sheet.left - out,
    right: sheet.right + out,
  }[side];
  const starts = dimension.ends.map((bounds) => startOf(bounds, view, side)) as unknown as readonly [
    number,
    number,
  ];
  const [a = 0, b = 0] = ends;
  return a <= b
    ? { dimension, along, from: a, to: b, at, starts, text }
    : { dimension, along, from: b, to: a, at, starts: [starts[1], starts[0]], text };
}

/** Where what the dimension ends at comes nearest to the dimension line, pixels. */
function startOf(bounds: Bounds, view: PlacedView, side: Side): number {
  const [u0, u1] = rangeAlong(view.view.right, bounds);
  const [v0, v1] = rangeAlong(view.view.up, bounds);
  switch (side) {
    case 'above':
      return toPixel.v(view, v1);
    case 'below':
      return toPixel.v(view, v0);
    case 'left':
      return toPixel.u(view, u0);
    case 'right':
      return toPixel.u(view, u1);
  }
}
