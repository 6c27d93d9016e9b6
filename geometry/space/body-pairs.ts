import type { BodySet } from './body-set';
import { BOUNDS_STRIDE } from './packed-boxes';
import { signedDistanceWithin } from './separation';
import { CONTACT_TOLERANCE_MM } from './tolerance';

/** Told a pair of boxes of two bodies and their signed distance, mm (as `Separation.distance`). */
export type NearPairVisitor = (box: number, otherBox: number, otherBody: number, distance: number) => void;

/**
 * Every pair of a box of `body` and a box of another body that overlaps, touches, or is at most `limit` mm apart.
 * The question after one part has moved; allocates nothing. One range a body stands in front of the boxes.
 */
export function visitNearPairs(bodies: BodySet, body: number, limit: number, visit: NearPairVisitor): void {
  const { bounds, packed, starts, count } = bodies;
  const at = body * BOUNDS_STRIDE;
  const x0 = bounds[at]! - limit;
  const y0 = bounds[at + 1]! - limit;
  const z0 = bounds[at + 2]! - limit;
  const x1 = bounds[at + 3]! + limit;
  const y1 = bounds[at + 4]! + limit;
  const z1 = bounds[at + 5]! + limit;
  const first = starts[body]!;
  const end = starts[body + 1]!;
  for (let other = 0; other < count; other++) {
    const b = other * BOUNDS_STRIDE;
    if (bounds[b]! > x1 || bounds[b + 3]! < x0) continue;
    if (bounds[b + 1]! > y1 || bounds[b + 4]! < y0) continue;
    if (bounds[b + 2]! > z1 || bounds[b + 5]! < z0) continue;
    if (other === body) continue;
    for (let box = first; box < end; box++) {
      if (rangesWithin(packed.bounds, box, bounds, other, limit))
        nearInBody(bodies, box, other, limit, visit);
    }
  }
}

/** Every such pair of all bodies, each once with body < other body. */
export function visitAllNearPairs(
  bodies: BodySet,
  limit: number,
  visit: (body: number, box: number, otherBody: number, otherBox: number, distance: number) => void,
): void {
  for (let body = 0; body < bodies.count; body++) {
    visitNearPairs(bodies, body, limit, (box, otherBox, otherBody, distance) => {
      if (otherBody > body) visit(body, box, otherBody, otherBox, distance);
    });
  }
}

/** Whether two ranges, one from each array, are at most `limit` apart on every axis. */
function rangesWithin(
  first: Float64Array,
  i: number,
  second: Float64Array,
  j: number,
  limit: number,
): boolean {
  const a = i * BOUNDS_STRIDE;
  const b = j * BOUNDS_STRIDE;
  if (second[b]! - first[a + 3]! > limit || first[a]! - second[b + 3]! > limit) return false;
  if (second[b + 1]! - first[a + 4]! > limit || first[a + 1]! - second[b + 4]! > limit) return false;
  return second[b + 2]! - first[a + 5]! <= limit && first[a + 2]! - second[b + 5]! <= limit;
}

/** The boxes of one body near one box; pairs along the world axes are settled from their bounds alone. */
function nearInBody(
  bodies: BodySet,
  box: number,
  other: number,
  limit: number,
  visit: NearPairVisitor,
): void {
  const { packed, starts } = bodies;
  const { bounds, aligned } = packed;
  const end = starts[other + 1]!;
  const a = box * BOUNDS_STRIDE;
  const x0 = bounds[a]!;
  const y0 = bounds[a + 1]!;
  const z0 = bounds[a + 2]!;
  const x1 = bounds[a + 3]!;
  const y1 = bounds[a + 4]!;
  const z1 = bounds[a + 5]!;
  const straight = aligned[box] === 1;
  for (let otherBox = starts[other]!; otherBox < end; otherBox++) {
    const b = otherBox * BOUNDS_STRIDE;
    const x = Math.max(bounds[b]! - x1, x0 - bounds[b + 3]!);
    if (x > limit) continue;
    const y = Math.max(bounds[b + 1]! - y1, y0 - bounds[b + 4]!);
    if (y > limit) continue;
    const z = Math.max(bounds[b + 2]! - z1, z0 - bounds[b + 5]!);
    if (z > limit) continue;
    // The distance of the bounds is never more than that of what is in them.
    let distance = alignedDistanceOf(x, y, z);
    if (distance > limit) continue;
    if (!straight || aligned[otherBox] === 0) distance = signedDistanceWithin(packed, box, otherBox, limit);
    if (distance <= limit) visit(box, otherBox, other, distance);
  }
}

/** Signed distance of two boxes along the axes from their gap on each axis. */
function alignedDistanceOf(x: number, y: number, z: number): number {
  const most = Math.max(x, y, z);
  if (Math.abs(most) <= CONTACT_TOLERANCE_MM) return 0;
  if (most < 0) return most;
  const gx = Math.max(x, 0);
  const gy = Math.max(y, 0);
  const gz = Math.max(z, 0);
  return Math.sqrt(gx * gx + gy * gy + gz * gz);
}
