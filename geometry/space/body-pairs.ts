import type { BodySet } from './body-set';
import { BOUNDS_STRIDE } from './packed-boxes';
import { signedDistance } from './separation';

/** Told a pair of boxes of two bodies and their signed distance, mm (as `Separation.distance`). */
export type NearPairVisitor = (box: number, otherBox: number, otherBody: number, distance: number) => void;

/**
 * Every pair of a box of `body` and a box of another body that overlaps, touches, or is at most `limit` mm apart.
 * The question after one part has moved; allocates nothing.
 */
export function visitNearPairs(bodies: BodySet, body: number, limit: number, visit: NearPairVisitor): void {
  const { bounds, starts, count } = bodies;
  for (let other = 0; other < count; other++) {
    if (other === body || gapOfBounds(bounds, body, other) > limit) continue;
    for (let i = starts[body]!; i < starts[body + 1]!; i++) {
      for (let j = starts[other]!; j < starts[other + 1]!; j++) {
        if (gapOfBounds(bodies.packed.bounds, i, j) > limit) continue;
        const distance = signedDistance(bodies.packed, i, j);
        if (distance <= limit) visit(i, j, other, distance);
      }
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

/** The widest gap between two ranges over the three axes, mm: a lower bound of the distance of what is in them. */
function gapOfBounds(bounds: Float64Array, i: number, j: number): number {
  const a = i * BOUNDS_STRIDE;
  const b = j * BOUNDS_STRIDE;
  const x = Math.max(bounds[b]! - bounds[a + 3]!, bounds[a]! - bounds[b + 3]!);
  const y = Math.max(bounds[b + 1]! - bounds[a + 4]!, bounds[a + 1]! - bounds[b + 4]!);
  const z = Math.max(bounds[b + 2]! - bounds[a + 5]!, bounds[a + 2]! - bounds[b + 5]!);
  return x > y ? Math.max(x, z) : Math.max(y, z);
}
