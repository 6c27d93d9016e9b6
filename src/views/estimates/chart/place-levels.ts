/** Where the name of a level stands: at the end of its line where least is drawn, over it or, where that is taken, under. */

interface Pixel {
  readonly x: number;
  readonly y: number;
}

export interface PlacedLevel {
  readonly y: number;
  readonly label: string;
  readonly leftwards: boolean;
  readonly below: boolean;
}

/** Names nearer to one another than this, pixels, would touch. */
const NEAR = 14;

/** About the width of a letter, pixels. */
const LETTER = 6.2;

const SAMPLES = 9;

/** `drawn` are lines as points of rising x; `across` the ends of the levels. */
export function placeLevels(
  levels: readonly { readonly y: number; readonly label: string }[],
  drawn: readonly (readonly Pixel[])[],
  [from, to]: readonly [from: number, to: number],
): readonly PlacedLevel[] {
  const placed: PlacedLevel[] = [];
  for (const { y, label } of [...levels].sort((a, b) => a.y - b.y)) {
    const width = label.length * LETTER;
    const middle = y - NEAR / 2;
    const left = nearestDrawn(drawn, middle, from, from + width);
    const right = nearestDrawn(drawn, middle, to - width, to);
    const leftwards = left > right;
    const below = placed.some((other) => other.leftwards === leftwards && Math.abs(other.y - y) < NEAR);
    placed.push({ y, label, leftwards, below });
  }
  return placed;
}

/** How near to a height anything is drawn between two places across. */
function nearestDrawn(drawn: readonly (readonly Pixel[])[], y: number, from: number, to: number): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (const line of drawn)
    for (let i = 0; i <= SAMPLES; i++) {
      const at = heightAt(line, from + ((to - from) * i) / SAMPLES);
      if (at !== undefined) nearest = Math.min(nearest, Math.abs(at - y));
    }
  return nearest;
}

function heightAt(line: readonly Pixel[], x: number): number | undefined {
  for (let i = 1; i < line.length; i++) {
    const [a, b] = [line[i - 1], line[i]];
    if (!a || !b || x < a.x || x > b.x) continue;
    return b.x > a.x ? a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x) : a.y;
  }
  return undefined;
}
