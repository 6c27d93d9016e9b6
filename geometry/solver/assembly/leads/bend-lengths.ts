/** Lengths of a lead that bends with a least radius: rounded corners, and the shortest path between two headings. */
import { distance, dot, normalise, subtract, type Vector3 } from '../../../space/vector';

/** A corner that is too tight: the bend does not fit between its neighbours. */
export interface TightCorner {
  readonly at: Vector3;
  /** Radius that would fit there, mm. */
  readonly fits: number;
}

export interface RoundedLength {
  /** Along the centre line with every corner rounded, mm. */
  readonly length: number;
  readonly tight: readonly TightCorner[];
}

/** What a corner of `turn` radians rounded with `radius` saves against the sharp one: (2 tan(t / 2) - t) R. */
export function savedByRounding(turnRadians: number, radius: number): number {
  return (2 * Math.tan(turnRadians / 2) - turnRadians) * radius;
}

/** Length of a polyline whose corners are rounded with `radius`; corners that leave no room are told and cut sharp. */
export function roundedLength(points: readonly Vector3[], radius: number): RoundedLength {
  let length = 0;
  const tight: TightCorner[] = [];
  for (let k = 1; k < points.length; k++) {
    const [a, b, c] = [points[k - 1], points[k], points[k + 1]];
    if (!a || !b) continue;
    const run = distance(a, b);
    length += run;
    if (!c || run === 0 || distance(b, c) === 0) continue;
    const cosine = Math.max(-1, Math.min(1, dot(normalise(subtract(b, a)), normalise(subtract(c, b)))));
    const turn = Math.acos(cosine);
    if (turn < 1e-6) continue;
    const half = Math.tan(turn / 2);
    // A piece between two corners is shared by both; a piece at an end is not.
    const room = Math.min(
      k === 1 ? run : run / 2,
      k === points.length - 2 ? distance(b, c) : distance(b, c) / 2,
    );
    const fits = room / half;
    if (fits < radius - 1e-6) tight.push({ at: b, fits });
    length -= savedByRounding(turn, Math.min(radius, fits));
  }
  return { length, tight };
}

/** A side step of `h` with two arcs of radius R (h at most 4 R): how far it runs, and its length. */
export function sideStep(h: number, radius: number): { readonly run: number; readonly length: number } {
  return { run: Math.sqrt(h * (4 * radius - h)), length: 2 * radius * Math.acos(1 - h / (2 * radius)) };
}

/** A pose in the plane; heading in degrees. */
export interface PlanePose {
  readonly x: number;
  readonly y: number;
  readonly heading: number;
}

export interface PlanePath {
  readonly length: number;
  /** Arcs left and right and straight pieces, 'LSR'; pieces of no length are left out. */
  readonly word: string;
}

const FULL = 2 * Math.PI;
/** Angles this near to a full turn are roundoff, not a loop. */
const NO_LOOP = 1e-9;

function angle(value: number): number {
  const turned = ((value % FULL) + FULL) % FULL;
  return FULL - turned < NO_LOOP ? 0 : turned;
}

/**
 * Shortest path in the plane from one pose to another with bends of at least `radius` (Dubins 1957; the six words as
 * in Shkel and Lumelsky 2001).
 */
export function shortestBentPath(from: PlanePose, to: PlanePose, radius: number): PlanePath {
  const [dx, dy] = [(to.x - from.x) / radius, (to.y - from.y) / radius];
  const d = Math.hypot(dx, dy);
  const towards = Math.atan2(dy, dx);
  const a = angle((from.heading * Math.PI) / 180 - towards);
  const b = angle((to.heading * Math.PI) / 180 - towards);
  let best: { length: number; word: string } | undefined;
  for (const [word, pieces] of dubinsWords(a, b, d)) {
    if (!pieces) continue;
    const length = pieces[0] + pieces[1] + pieces[2];
    if (best !== undefined && length >= best.length - 1e-12) continue;
    best = { length, word: [...word].filter((_, k) => (pieces[k as 0 | 1 | 2] ?? 0) > 1e-9).join('') };
  }
  return { length: (best?.length ?? 0) * radius, word: best?.word ?? '' };
}

type Pieces = readonly [number, number, number];

function dubinsWords(a: number, b: number, d: number): readonly (readonly [string, Pieces | undefined])[] {
  const [sa, sb, ca, cb, cab] = [Math.sin(a), Math.sin(b), Math.cos(a), Math.cos(b), Math.cos(a - b)];
  const straight = (square: number): number | undefined =>
    square < -1e-12 ? undefined : Math.sqrt(Math.max(0, square));
  const same = (side: 1 | -1): Pieces | undefined => {
    const p = straight(2 + d * d - 2 * cab + side * 2 * d * (sa - sb));
    if (p === undefined) return undefined;
    const middle = p < NO_LOOP ? b : Math.atan2(side === 1 ? cb - ca : ca - cb, d + side * (sa - sb));
    return side === 1 ? [angle(middle - a), p, angle(b - middle)] : [angle(a - middle), p, angle(middle - b)];
  };
  const crossed = (side: 1 | -1): Pieces | undefined => {
    const p = straight(
      side === 1 ? -2 + d * d + 2 * cab + 2 * d * (sa + sb) : -2 + d * d + 2 * cab - 2 * d * (sa + sb),
    );
    if (p === undefined) return undefined;
    if (side === 1) {
      const t = Math.atan2(-ca - cb, d + sa + sb) - Math.atan2(-2, p);
      return [angle(t - a), p, angle(t - b)];
    }
    const t = Math.atan2(ca + cb, d - sa - sb) - Math.atan2(2, p);
    return [angle(a - t), p, angle(b - t)];
  };
  const looped = (side: 1 | -1): Pieces | undefined => {
    const cosine = (6 - d * d + 2 * cab + side * 2 * d * (sb - sa)) / 8;
    if (Math.abs(cosine) > 1 + 1e-12) return undefined;
    const p = angle(FULL - Math.acos(Math.max(-1, Math.min(1, cosine))));
    if (side === -1) {
      const t = angle(a - Math.atan2(ca - cb, d - sa + sb) + p / 2);
      return [t, p, angle(a - b - t + p)];
    }
    const t = angle(-a + Math.atan2(cb - ca, d + sa - sb) + p / 2);
    return [t, p, angle(b - a - t + p)];
  };
  return [
    ['LSL', same(1)],
    ['RSR', same(-1)],
    ['LSR', crossed(1)],
    ['RSL', crossed(-1)],
    ['RLR', looped(-1)],
    ['LRL', looped(1)],
  ];
}
