/** How large an arrow is for the air it stands for, and what colour for its temperature. */
import type { AirArrow, AirPicture } from '../../../geometry';
import type { Rgb } from '../palette';

/** Length of the arrow of the largest flow, and the least that can be seen, mm. */
const LONGEST = 78;
const SHORTEST = 16;

/** Arrows in the free air inside are drawn smaller than those at fans and openings. */
const INSIDE = 0.62;

/** Length in mm: with the root of the flow, so that the drawn face grows with the flow. */
export function arrowLength({ kind, flow }: AirArrow, largestFlow: number): number {
  const share = largestFlow > 0 ? Math.sqrt(flow / largestFlow) : 0;
  const length = Math.max(LONGEST * share, SHORTEST);
  return kind === 'inside' ? Math.max(length * INSIDE, SHORTEST * 0.8) : length;
}

/** 0 for the coldest air of the picture, 1 for the warmest. */
export function warmth(celsius: number, { coldest, warmest }: AirPicture): number {
  return warmest > coldest ? Math.min(Math.max((celsius - coldest) / (warmest - coldest), 0), 1) : 0;
}

export interface WarmthColours {
  readonly cold: Rgb;
  readonly middle: Rgb;
  readonly warm: Rgb;
}

/** From cold over pale to warm: blue and vermilion, which the common kinds of colour blindness can tell apart. */
export function colourOfWarmth(share: number, { cold, middle, warm }: WarmthColours): Rgb {
  const [from, to, at] = share < 0.5 ? [cold, middle, share * 2] : [middle, warm, share * 2 - 1];
  const mixed = (channel: 0 | 1 | 2) => from[channel] + (to[channel] - from[channel]) * at;
  return [mixed(0), mixed(1), mixed(2)];
}
