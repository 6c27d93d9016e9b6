/** The line of one lead: straight out of its plugs, by the grid from pin to pin, pulled taut along what is solid. */
import type { PackedBoxes } from '../../../space/packed-boxes';
import { interiorsOverlap } from '../../../space/separation';
import { add, distance, scale, type Vector3 } from '../../../space/vector';
import { barOf, frameAlong } from '../reach/use-volume';
import type { LeadPoint } from './lead-ends';
import type { LeadGrid } from './lead-grid';
import { heading, type LeadScratch, searchLead } from './lead-search';
import { drawTaut } from './taut-line';

/** What a lead is led through. */
export interface FreeRoom {
  readonly grid: LeadGrid;
  readonly scratch: LeadScratch;
  /** All solids, and one place more: the bars that sight lines are tested with. */
  readonly solids: PackedBoxes;
}

/** A bundle keeps this much off solids besides its own half, mm. */
const OFF_SOLIDS_MM = 1;
const NEAR_ENDS_MM = 30;

/** Ends with their straight runs, then grid search from pin to pin, pulled taut. */
export function routeThrough(
  room: FreeRoom,
  from: LeadPoint,
  to: LeadPoint,
  pins: readonly Vector3[],
  diameter: number,
  bendRadius: number,
  pressed?: number,
): readonly Vector3[] {
  const first = add(from.at, scale(from.out, straightRun(room, from, diameter, bendRadius)));
  const last = add(to.at, scale(to.out, straightRun(room, to, diameter, bendRadius)));
  const stops = [first, ...pins, last];
  const chain: Vector3[] = [from.at];
  const clearance = diameter / 2 + OFF_SOLIDS_MM;
  for (let k = 1; k < stops.length; k++) {
    const [a, b] = [stops[k - 1], stops[k]];
    if (!a || !b) return [];
    const found = searchLead(
      room.grid,
      {
        from: a,
        to: b,
        clearance,
        nearEnds: NEAR_ENDS_MM,
        ...(k === 1 ? { leaves: from.out } : {}),
        ...(k === stops.length - 1 ? { arrives: scale(to.out, -1) } : {}),
      },
      room.scratch,
      pressed,
    );
    if (!found) return [];
    const isFree = (p: Vector3, q: Vector3): boolean => sees(room.solids, p, q, diameter);
    const taut = drawTaut([a, ...found.slice(1, -1), b], isFree);
    chain.push(...(k === 1 ? taut : taut.slice(1)));
  }
  chain.push(to.at);
  return chain;
}

/** Straight out of a plug: room for the bend where there is any, else as far as the lead is thick. */
function straightRun(room: FreeRoom, point: LeadPoint, diameter: number, bendRadius: number): number {
  const least = Math.max(diameter, room.grid.cell);
  for (const run of [bendRadius, (bendRadius + least) / 2]) {
    if (
      run > least &&
      sees(room.solids, add(point.at, scale(point.out, 0.5)), add(point.at, scale(point.out, run)), diameter)
    )
      return run;
  }
  return least;
}

/** Whether a bar as thick as the lead joins two points without meeting a solid. */
function sees(solids: PackedBoxes, a: Vector3, b: Vector3, diameter: number): boolean {
  const along = heading(a, b);
  if (!along) return true;
  const bar = solids.count - 1;
  solids.setBox(bar, barOf(frameAlong(a, along), diameter, 0, distance(a, b)));
  for (let k = 0; k < bar; k++)
    if (rangesOverlap(solids.bounds, bar, k) && interiorsOverlap(solids, bar, k)) return false;
  return true;
}

function rangesOverlap(bounds: Float64Array, a: number, b: number): boolean {
  for (let axis = 0; axis < 3; axis++) {
    if ((bounds[6 * a + axis] ?? 0) >= (bounds[6 * b + 3 + axis] ?? 0)) return false;
    if ((bounds[6 * b + axis] ?? 0) >= (bounds[6 * a + 3 + axis] ?? 0)) return false;
  }
  return true;
}
