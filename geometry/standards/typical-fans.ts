/** What a fan of a given frame usually does at its top speed, for sheets that are silent. */
import { fromMemory } from './cited-documents';
import type { Published } from './published';

export interface FanRating {
  /** Top speed, rpm. */
  readonly speed: number;
  /** Free flow, m3/h. */
  readonly flow: number;
  /** Shut-off pressure, Pa. */
  readonly pressure: number;
  /** Sound pressure level at 1 m, dB(A). */
  readonly sound: number;
}

const note = 'middle of what quiet fans of this frame are sold with';
const row = (speed: number, flow: number, pressure: number, sound: number): Published<FanRating> =>
  fromMemory({ speed, flow, pressure, sound }, { note });

export const typicalFans: readonly { readonly frame: number; readonly rating: Published<FanRating> }[] = [
  { frame: 40, rating: row(5000, 13, 30, 29) },
  { frame: 60, rating: row(3000, 28, 25, 28) },
  { frame: 80, rating: row(2000, 50, 18, 26) },
  { frame: 92, rating: row(1800, 62, 17, 25) },
  { frame: 120, rating: row(1500, 95, 19, 26) },
  { frame: 140, rating: row(1200, 120, 14, 25) },
  { frame: 200, rating: row(800, 180, 9, 26) },
];

/** Rating of the nearest frame in the table. */
export function typicalFan(frame: number): Published<FanRating> {
  let best = typicalFans[0];
  for (const row of typicalFans)
    if (best === undefined || Math.abs(row.frame - frame) < Math.abs(best.frame - frame)) best = row;
  if (best === undefined) throw new RangeError('the table of typical fans is empty');
  return best.rating;
}
