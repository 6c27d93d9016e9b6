import type { Pixel } from '../camera/sight';

/** How far from the pointer a mount still draws the part to it, CSS pixels. */
export const MOUNT_REACH_PX = 180;

/** Another place must be nearer by this much, or a hand between two mounts would flicker; CSS pixels. */
const STAY_PX = 4;

export interface ScreenPlace {
  readonly key: string;
  /** Where the middle of the part would be on the canvas; undefined behind the eye. */
  readonly at: Pixel | undefined;
}

/** The place nearest to the hand within reach, with a little loyalty to the one chosen before. */
export function nearestPlace<T extends ScreenPlace>(
  places: readonly T[],
  hand: Pixel,
  reach: number,
  chosen?: string,
): T | undefined {
  let best: T | undefined;
  let least = Infinity;
  for (const place of places) {
    if (!place.at) continue;
    const away = Math.hypot(place.at[0] - hand[0], place.at[1] - hand[1]);
    if (away > reach) continue;
    const felt = place.key === chosen ? away - STAY_PX : away;
    if (felt < least) {
      least = felt;
      best = place;
    }
  }
  return best;
}
