import { BOUNDS_STRIDE, type PackedBoxes } from './packed-boxes';
import { CONTACT_TOLERANCE_MM } from './tolerance';
import { createTravelInterval, travelIntervalPacked } from './travel';
import type { Vector3 } from './vector';

/** Told a pair that is not to be looked at (hardware inside the slot made for it). */
export type PairFilter = (mover: number, obstacle: number) => boolean;

const interval = createTravelInterval();

/**
 * How far the movers must go along a unit direction, mm, until none of them overlaps an obstacle any more: the least
 * travel that lies in no pair's interval of overlap. Exact for oriented boxes.
 */
export function escapeTravel(
  packed: PackedBoxes,
  movers: readonly number[],
  obstacles: readonly number[],
  direction: Vector3,
  ignored: PairFilter,
): number {
  const spans: (readonly [number, number])[] = [];
  for (const i of movers) {
    for (const j of obstacles) {
      if (ignored(i, j)) continue;
      const span = overlapSpan(packed, i, j, direction);
      if (span !== undefined) spans.push(span);
    }
  }
  spans.sort((first, second) => first[0] - second[0]);
  let travel = 0;
  for (const [enter, leave] of spans) {
    if (enter >= travel - CONTACT_TOLERANCE_MM) break;
    if (leave > travel + CONTACT_TOLERANCE_MM) travel = leave;
  }
  return travel;
}

function overlapSpan(
  packed: PackedBoxes,
  i: number,
  j: number,
  direction: Vector3,
): readonly [number, number] | undefined {
  if (!mayMeet(packed.bounds, i * BOUNDS_STRIDE, j * BOUNDS_STRIDE, direction)) return undefined;
  const [x, y, z] = direction;
  if (!travelIntervalPacked(packed, i, j, x, y, z, interval)) return undefined;
  return interval.leave > CONTACT_TOLERANCE_MM ? [interval.enter, interval.leave] : undefined;
}

/** False when the world bounds already keep the pair apart across the direction. */
function mayMeet(bounds: Float64Array, a: number, b: number, direction: Vector3): boolean {
  for (let axis = 0; axis < 3; axis++) {
    const speed = direction[axis]!;
    if (speed > 0 && bounds[b + 3 + axis]! < bounds[a + axis]!) return false;
    if (speed < 0 && bounds[b + axis]! > bounds[a + 3 + axis]!) return false;
    if (speed !== 0) continue;
    const from = Math.max(bounds[a + axis]!, bounds[b + axis]!);
    const to = Math.min(bounds[a + 3 + axis]!, bounds[b + 3 + axis]!);
    if (to - from <= CONTACT_TOLERANCE_MM) return false;
  }
  return true;
}
