/**
 * A dimension as ISO 129-1 draws it, on the screen: a line between filled arrowheads, extension lines from what is
 * measured, and, where the gap is too small for two arrowheads, arrows from outside. CSS pixels.
 */
import { add, scale, type Vector3 } from '../../../geometry';
import { type Pixel, pictureAxes, projectPoint, type ScreenSize, type Sight } from '../camera/sight';

export interface DimensionDrawing {
  readonly from: Pixel;
  readonly to: Pixel;
  readonly middle: Pixel;
  /** Path data of the thin lines, and of the filled arrowheads. */
  readonly lines: string;
  readonly arrows: string;
  /** Which way a label had best stand off, unit length. */
  readonly aside: Pixel;
}

/** Arrowheads of 15 degrees, ISO 129-1; length in CSS pixels. */
export const ARROW_LENGTH = 11;
const ARROW_HALF_WIDTH = ARROW_LENGTH * Math.tan((7.5 * Math.PI) / 180) + 0.6;
/** Between arrows pointing inwards there must be room for both and a bit of line. */
const LEAST_FOR_INNER_ARROWS = 2 * ARROW_LENGTH + 6;
const OUTER_TAIL = 20;
/** Extension lines reach this far past the dimension line, and so far back along what is measured. */
const EXTENSION_PAST = 6;
const EXTENSION_BACK = 16;
/** A line this short is seen end on. */
const END_ON = 0.8;

export function drawDimension(
  sight: Sight,
  screen: ScreenSize,
  points: readonly [Vector3, Vector3],
  direction: Vector3,
): DimensionDrawing | undefined {
  const ends = points.map((point) => projectPoint(sight, screen, point));
  const [first, second] = ends;
  if (!first?.visible || !second?.visible) return undefined;
  const [from, to] = [first.at, second.at];
  const along = screenDirection(sight, screen, points[0], direction) ?? [1, 0];
  const aside = extensionDirection(sight, screen, points[0], direction, along);
  const middle: Pixel = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const extension = [from, to].map((end) =>
    segment(offset(end, aside, -EXTENSION_BACK), offset(end, aside, EXTENSION_PAST)),
  );
  if (length < END_ON && !hasDirection(sight, direction)) {
    return { from, to, middle, lines: circle(middle, 4), arrows: circle(middle, 1.6), aside };
  }
  const run: Pixel = length > 0.01 ? [(to[0] - from[0]) / length, (to[1] - from[1]) / length] : along;
  if (length >= LEAST_FOR_INNER_ARROWS) {
    const lines = [...extension, segment(from, to)].join('');
    return { from, to, middle, lines, arrows: arrow(from, run, 1) + arrow(to, run, -1), aside };
  }
  const lines = [
    ...extension,
    segment(offset(from, run, -OUTER_TAIL), from),
    segment(from, to),
    segment(to, offset(to, run, OUTER_TAIL)),
  ].join('');
  return { from, to, middle, lines, arrows: arrow(from, run, -1) + arrow(to, run, 1), aside };
}

/** Whether a world direction can be seen as a line at all, rather than end on. */
export function hasDirection(sight: Sight, direction: Vector3): boolean {
  const { towardsEye: e } = pictureAxes(sight);
  return Math.abs(e[0] * direction[0] + e[1] * direction[1] + e[2] * direction[2]) < 0.985;
}

/** Extension lines run along the world axis that is seen longest across the dimension. */
export function extensionDirection(
  sight: Sight,
  screen: ScreenSize,
  at: Vector3,
  direction: Vector3,
  along: Pixel,
): Pixel {
  let best: Pixel = [-along[1], along[0]];
  let most = 0.35;
  for (const axis of [0, 1, 2]) {
    if (Math.abs(direction[axis as 0 | 1 | 2]) > 0.7) continue;
    const unit: Vector3 = [axis === 0 ? 1 : 0, axis === 1 ? 1 : 0, axis === 2 ? 1 : 0];
    const seen = screenDirection(sight, screen, at, unit);
    if (!seen) continue;
    // The vertical is preferred: extension lines then stand still while the machine is turned.
    const across = Math.abs(seen[0] * along[1] - seen[1] * along[0]) * (axis === 1 ? 1.3 : 1);
    if (across > most) {
      most = across;
      best = seen;
    }
  }
  // Upwards on the screen, where there is usually more room.
  return best[1] > 0 ? [-best[0], -best[1]] : best;
}

/** Unit direction on the screen in which a point moves along a world direction; undefined when it is seen end on. */
export function screenDirection(
  sight: Sight,
  screen: ScreenSize,
  at: Vector3,
  direction: Vector3,
): Pixel | undefined {
  const step = sight.height / 50;
  const a = projectPoint(sight, screen, at).at;
  const b = projectPoint(sight, screen, add(at, scale(direction, step))).at;
  const [x, y] = [b[0] - a[0], b[1] - a[1]];
  const long = Math.hypot(x, y);
  return long < (0.12 * screen.height) / 50 ? undefined : [x / long, y / long];
}

export function offset(point: Pixel, direction: Pixel, by: number): Pixel {
  return [point[0] + direction[0] * by, point[1] + direction[1] * by];
}

const number = (value: number): string => value.toFixed(1);

export function segment(from: Pixel, to: Pixel): string {
  return `M${number(from[0])} ${number(from[1])}L${number(to[0])} ${number(to[1])}`;
}

/** A filled arrowhead whose tip is at `tip` and whose body lies on the side of `sense` along the run. */
export function arrow(tip: Pixel, run: Pixel, sense: 1 | -1): string {
  const base = offset(tip, run, sense * ARROW_LENGTH);
  const side: Pixel = [-run[1], run[0]];
  const [a, b] = [offset(base, side, ARROW_HALF_WIDTH), offset(base, side, -ARROW_HALF_WIDTH)];
  return `${segment(tip, a)}L${number(b[0])} ${number(b[1])}Z`;
}

function circle([x, y]: Pixel, radius: number): string {
  const [left, right] = [number(x - radius), number(x + radius)];
  return `M${left} ${number(y)}A${radius} ${radius} 0 1 1 ${right} ${number(y)}A${radius} ${radius} 0 1 1 ${left} ${number(y)}Z`;
}
