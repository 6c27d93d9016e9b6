/**
 * Closed forms of motion, mm and degrees: what passes a corner, under a ceiling, through an opening: what the searches are
 * checked against.
 */

const DEGREES = 180 / Math.PI;

/** Longest ladder that turns from a corridor of width a into one of width b (MathWorld, Moving Ladder Problem). */
export function longestLadder(a: number, b: number): number {
  return (a ** (2 / 3) + b ** (2 / 3)) ** 1.5;
}

/** Least of a function with one valley between two ends, by golden section; argument and value. */
export function leastOf(f: (x: number) => number, from: number, to: number): readonly [number, number] {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  let x = high - golden * (high - low);
  let y = low + golden * (high - low);
  let [valueAtX, valueAtY] = [f(x), f(y)];
  for (let step = 0; step < 200 && high - low > 1e-13; step++) {
    if (valueAtX <= valueAtY) {
      high = y;
      y = x;
      valueAtY = valueAtX;
      x = high - golden * (high - low);
      valueAtX = f(x);
    } else {
      low = x;
      x = y;
      valueAtX = valueAtY;
      y = low + golden * (high - low);
      valueAtY = f(y);
    }
  }
  return valueAtX <= valueAtY ? [x, valueAtX] : [y, valueAtY];
}

/** Longest rectangle of width w that turns the corner of corridors a and b, and the tightest angle, degrees. */
export function longestRectangle(
  a: number,
  b: number,
  w: number,
): { readonly length: number; readonly at: number } {
  const [t, length] = leastOf(
    (x) => (a * Math.sin(x) + b * Math.cos(x) - w) / (Math.sin(x) * Math.cos(x)),
    1e-6,
    Math.PI / 2 - 1e-6,
  );
  return { length, at: t * DEGREES };
}

/** Widest rectangle of length s that turns the corner of corridors u and v, and the tightest angle, degrees. */
export function widestRectangle(
  u: number,
  v: number,
  s: number,
): { readonly width: number; readonly at: number } {
  const [t, width] = leastOf(
    (x) => u * Math.sin(x) + v * Math.cos(x) - s * Math.sin(x) * Math.cos(x),
    0,
    Math.PI / 2,
  );
  return { width, at: t * DEGREES };
}

/** Height needed to stand up a rectangle of height h and depth d that lies on its side. */
export function heightToStandUp(h: number, d: number): number {
  return Math.hypot(h, d);
}

/** Least b of an opening a x b through which a p x q rectangle goes when p > a >= q (Carver 1957). */
export function openingForRectangle(p: number, q: number, a: number): number {
  const square = p * p + q * q;
  return (2 * p * q * a + (p * p - q * q) * Math.sqrt(square - a * a)) / square;
}

/** Extents of an L x w rectangle turned by some degrees. */
export function turnedExtents(length: number, width: number, degrees: number): readonly [number, number] {
  const [c, s] = [Math.abs(Math.cos(degrees / DEGREES)), Math.abs(Math.sin(degrees / DEGREES))];
  return [length * c + width * s, length * s + width * c];
}
