import type { BodySet } from './body-set';
import { createTravelInterval, travelIntervalPacked } from './travel';

/** Reusable result of `travelOfBody`: box numbers in the set, -1 when nothing stops the body within the limit. */
export interface BodyTravel {
  /** Free travel, mm (times the length of the direction). */
  distance: number;
  box: number;
  otherBox: number;
}

/**
 * Free travel of a body in the six axis directions, in the order of `FACE_NAMES` (-x, +x, -y, +y, -z, +z); box
 * numbers of what meets, -1 for nothing within the limit.
 */
export interface SixWayTravel {
  readonly distance: Float64Array;
  readonly box: Int32Array;
  readonly otherBox: Int32Array;
}

export function createBodyTravel(): BodyTravel {
  return { distance: 0, box: -1, otherBox: -1 };
}

export function createSixWayTravel(): SixWayTravel {
  return { distance: new Float64Array(6), box: new Int32Array(6), otherBox: new Int32Array(6) };
}

const interval = createTravelInterval();
const single = createBodyTravel();

/** How far one body of a set can go along (x, y, z) before it meets another, up to `limit`; as `freeTravel`. */
export function travelOfBody(
  bodies: BodySet,
  body: number,
  x: number,
  y: number,
  z: number,
  limit: number,
  out: BodyTravel,
): void {
  out.distance = limit;
  out.box = -1;
  out.otherBox = -1;
  const first = bodies.starts[body]!;
  const end = bodies.starts[body + 1]!;
  for (let i = first; i < end; i++) {
    for (let j = 0; j < bodies.packed.count; j++) {
      if (j >= first && j < end) continue;
      if (!travelIntervalPacked(bodies.packed, i, j, x, y, z, interval) || interval.leave <= 1e-6) continue;
      const enter = Math.max(0, interval.enter);
      if (enter > out.distance || (enter === out.distance && out.box >= 0)) continue;
      out.distance = enter;
      out.box = i;
      out.otherBox = j;
    }
  }
}

/** Free travel of one body in all six axis directions, each up to `limit` mm. */
export function sixWayTravel(bodies: BodySet, body: number, limit: number, out: SixWayTravel): void {
  for (let face = 0; face < 6; face++) {
    const sense = face % 2 === 0 ? -1 : 1;
    const axis = Math.floor(face / 2);
    travelOfBody(
      bodies,
      body,
      axis === 0 ? sense : 0,
      axis === 1 ? sense : 0,
      axis === 2 ? sense : 0,
      limit,
      single,
    );
    out.distance[face] = single.distance;
    out.box[face] = single.box;
    out.otherBox[face] = single.otherBox;
  }
}
