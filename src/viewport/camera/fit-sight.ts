import type { Bounds, Vector3 } from '../../../geometry';
import { pan } from './move-sight';
import { eyeDistance, projectPoint, type ScreenSize, type Sight } from './sight';

/** What the tool bars cover at each edge of the canvas, CSS pixels. */
export interface Insets {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
}

/** Rounds of measuring and correcting: parallel projection needs one, perspective of a slender box many. */
const ROUNDS = 24;

/** The closest sight in the given direction that shows all of `bounds` between the insets. */
export function fitSight(
  direction: Pick<Sight, 'azimuth' | 'elevation' | 'lens'>,
  bounds: Bounds,
  screen: ScreenSize,
  insets: Insets,
): Sight {
  const { min, max } = bounds;
  const target: Vector3 = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, (min[2] + max[2]) / 2];
  const diagonal = Math.hypot(max[0] - min[0], max[1] - min[1], max[2] - min[2]);
  let sight: Sight = { ...direction, target, height: Math.max(1, diagonal) };
  const free = {
    width: Math.max(40, screen.width - insets.left - insets.right),
    height: Math.max(40, screen.height - insets.top - insets.bottom),
  };
  const middle = [insets.left + free.width / 2, insets.top + free.height / 2] as const;
  for (let round = 0; round < ROUNDS; round++) {
    const { width, height, nearest } = outlineOnScreen(sight, bounds, screen);
    const tooLarge = Math.max(width / free.width, height / free.height, 1e-3);
    const share = leftBefore(sight, nearest);
    sight = { ...sight, height: sight.height * (1 - share + share * tooLarge) };
    const seen = outlineOnScreen(sight, bounds, screen);
    const gain = leftBefore(sight, seen.nearest);
    sight = pan(sight, screen, (middle[0] - seen.middle[0]) * gain, (middle[1] - seen.middle[1]) * gain);
  }
  return sight;
}

/**
 * Distance from the eye to the nearest corner, as a share of that to the target. In perspective it is the nearest
 * corners that reach farthest on the screen, and they grow and move by more than what stands at the target; taking
 * the target's measure would overshoot for deep boxes.
 */
function leftBefore(sight: Sight, nearest: number): number {
  const distance = eyeDistance(sight);
  return Number.isFinite(distance) ? (distance - nearest) / distance : 1;
}

function outlineOnScreen(sight: Sight, { min, max }: Bounds, screen: ScreenSize) {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  let nearest = -Infinity;
  for (let corner = 0; corner < 8; corner++) {
    const point: Vector3 = [
      corner & 1 ? max[0] : min[0],
      corner & 2 ? max[1] : min[1],
      corner & 4 ? max[2] : min[2],
    ];
    const { at, depth } = projectPoint(sight, screen, point);
    nearest = Math.max(nearest, -depth);
    left = Math.min(left, at[0]);
    right = Math.max(right, at[0]);
    top = Math.min(top, at[1]);
    bottom = Math.max(bottom, at[1]);
  }
  return {
    width: right - left,
    height: bottom - top,
    nearest,
    middle: [(left + right) / 2, (top + bottom) / 2] as const,
  };
}
