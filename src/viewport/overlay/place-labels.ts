/** Finds room for labels on the screen, so that none hides another, a tool bar or what it names. CSS pixels. */
import type { Pixel } from '../camera/sight';

export interface Rectangle {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export interface LabelWish {
  /** What the label points at. */
  readonly anchor: Pixel;
  readonly width: number;
  readonly height: number;
  /** Direction in which the label would best stand off its anchor; need not be of unit length. */
  readonly aside: Pixel;
  /** Distance kept between the anchor and the label. */
  readonly distance: number;
}

/** Space kept between two labels. */
const GAP = 6;

/** Turns tried about the wished direction, in degrees, nearest first. */
const TURNS = [0, 30, -30, 60, -60, 90, -90, 125, -125, 180];
/** Multiples of the wished distance tried. */
const REACHES = [1, 1.6, 2.4, 3.6, 5];

/**
 * Places labels in the order given, each at the first place that is free; the earlier ones matter more. A label for
 * which there is no room at all takes the place with the least in its way.
 */
export function placeLabels(
  wishes: readonly LabelWish[],
  room: Rectangle,
  taken: readonly Rectangle[] = [],
): Rectangle[] {
  const placed: Rectangle[] = [];
  for (const wish of wishes) {
    const inTheWay = [...taken, ...placed];
    let best: Rectangle | undefined;
    let least = Infinity;
    for (const candidate of candidates(wish, room)) {
      const hidden = inTheWay.reduce((sum, other) => sum + sharedArea(grown(candidate, GAP), other), 0);
      if (hidden >= least) continue;
      best = candidate;
      least = hidden;
      if (hidden === 0) break;
    }
    if (best) placed.push(best);
  }
  return placed;
}

function* candidates(wish: LabelWish, room: Rectangle) {
  yield* aroundAnchor(wish, room);
  yield* acrossRoom(wish, room);
}

/** Every place in the room, nearest to the anchor first: for the corner where many labels meet. */
function acrossRoom({ anchor, width, height }: LabelWish, room: Rectangle): Rectangle[] {
  const places: Rectangle[] = [];
  for (let top = room.top; top + height <= room.top + room.height; top += height / 2 + GAP) {
    for (let left = room.left; left + width <= room.left + room.width; left += width / 2 + GAP)
      places.push({ left, top, width, height });
  }
  const away = ({ left, top }: Rectangle) =>
    Math.hypot(left + width / 2 - anchor[0], top + height / 2 - anchor[1]);
  return places.sort((a, b) => away(a) - away(b));
}

function* aroundAnchor({ anchor, width, height, aside, distance }: LabelWish, room: Rectangle) {
  const base = Math.atan2(aside[1], aside[0]);
  for (const reach of REACHES) {
    for (const turn of TURNS) {
      const angle = base + (turn * Math.PI) / 180;
      const [x, y] = [Math.cos(angle), Math.sin(angle)];
      // From the anchor to the middle of a label whose edge is `distance` away.
      const clear = Math.min(
        Math.abs(x) < 1e-6 ? Infinity : width / 2 / Math.abs(x),
        Math.abs(y) < 1e-6 ? Infinity : height / 2 / Math.abs(y),
      );
      const away = distance * reach + clear;
      yield within(
        { left: anchor[0] + x * away - width / 2, top: anchor[1] + y * away - height / 2, width, height },
        room,
      );
    }
  }
}

function within(label: Rectangle, room: Rectangle): Rectangle {
  const left = Math.max(room.left, Math.min(room.left + room.width - label.width, label.left));
  const top = Math.max(room.top, Math.min(room.top + room.height - label.height, label.top));
  return { ...label, left, top };
}

function grown({ left, top, width, height }: Rectangle, by: number): Rectangle {
  return { left: left - by, top: top - by, width: width + 2 * by, height: height + 2 * by };
}

function sharedArea(a: Rectangle, b: Rectangle): number {
  const width = Math.min(a.left + a.width, b.left + b.width) - Math.max(a.left, b.left);
  const height = Math.min(a.top + a.height, b.top + b.height) - Math.max(a.top, b.top);
  return width > 0 && height > 0 ? width * height : 0;
}
