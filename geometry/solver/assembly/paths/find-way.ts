/** The ladder of effort for one unit among what is present: suggested ways, then straight moves, tilts, plane search. */
import type { Motion } from '../../../space/motion';
import { interiorsOverlap } from '../../../space/separation';
import type { Vector3 } from '../../../space/vector';
import { directions26 } from './hull';
import { searchInPlane, type TiltPlane } from './plane-search';
import { defaultSearchLimits, limitsInWords, type SearchLimits } from './search-limits';
import { shortcutWay } from './shortcut-way';
import { oneStraightMove, type Search, twoStraightMoves } from './straight-moves';
import { liftTiltAndLeave, tiltAndLeave } from './tilt-scripts';

/** Which rung of the ladder found a way. */
export type WayMethod =
  | 'way of its mount'
  | 'one straight move'
  | 'two straight moves'
  | 'tilt and leave'
  | 'lift, tilt and leave'
  | 'search in the plane of the tilt'
  | 'swing and leave';

export interface FoundWay {
  readonly method: WayMethod;
  readonly motions: readonly Motion[];
}

export interface NoWay {
  /** Airtight reason, or none: then only the bounds of the search are known. */
  readonly proof: 'blocked by closed form' | 'no way in found within these bounds';
  readonly because: string;
}

/** The six axis directions, the wanted one first. */
function preferredFirst(out: Vector3): readonly Vector3[] {
  const towards = (d: Vector3): number => -(d[0] * out[0] + d[1] * out[1] + d[2] * out[2]);
  return [...directions26.slice(0, 6)].sort((a, b) => towards(a) - towards(b));
}

/**
 * Looks for a way out along which nothing is met. `out` is the direction in which the mount lets go. Deterministic:
 * the first success of the first rung.
 */
export function findWayOut(
  search: Search,
  out: Vector3,
  limits: SearchLimits = defaultSearchLimits,
): FoundWay | NoWay {
  const overlap = overlapAtSeat(search);
  if (overlap) return { proof: 'blocked by closed form', because: 'it overlaps something at its seat' };
  const ordered = preferredFirst(out);
  const rungs: readonly (readonly [WayMethod, () => readonly Motion[] | undefined])[] = [
    ['one straight move', () => oneStraightMove(search, [...ordered, ...directions26.slice(6)])],
    ['two straight moves', () => twoStraightMoves(search, limits.stops, ordered)],
    ['tilt and leave', () => tiltAndLeave(search, limits, ordered, 'raising')],
    ['lift, tilt and leave', () => liftTiltAndLeave(search, limits, ordered, 'raising', ordered)],
    ['search in the plane of the tilt', () => searchPlanes(search, out, limits)],
    ['swing and leave', () => swing(search, limits, ordered)],
  ];
  for (const [method, attempt] of rungs) {
    const motions = attempt();
    if (motions) return { method, motions };
  }
  return { proof: 'no way in found within these bounds', because: limitsInWords(limits) };
}

/** The two planes that hold the way out: tilted lengthwise and crosswise. */
export function planesOf(out: Vector3): readonly TiltPlane[] {
  const axis = Math.abs(out[0]) > 0.7 ? 0 : Math.abs(out[1]) > 0.7 ? 1 : 2;
  const unit = (k: number): Vector3 => (k === 0 ? [1, 0, 0] : k === 1 ? [0, 1, 0] : [0, 0, 1]);
  const [u, v] = [(axis + 1) % 3, (axis + 2) % 3];
  return [
    { normal: unit(u), across: unit(v), out },
    { normal: unit(v), across: unit(u), out },
  ];
}

/** Turned about the way out, as a door turns, lifted before where that is needed: what a builder thinks of last. */
function swing(
  search: Search,
  limits: SearchLimits,
  ordered: readonly Vector3[],
): readonly Motion[] | undefined {
  return (
    tiltAndLeave(search, limits, ordered, 'swinging') ??
    liftTiltAndLeave(search, limits, ordered, 'swinging', ordered)
  );
}

function searchPlanes(search: Search, out: Vector3, limits: SearchLimits): readonly Motion[] | undefined {
  for (const plane of planesOf(out)) {
    const { motions } = searchInPlane(search, plane, limits);
    if (motions) return shortcutWay(search, motions);
  }
  return undefined;
}

function overlapAtSeat({ bodies, boxes, obstacles }: Search): boolean {
  return boxes.some((mover) =>
    obstacles.some(
      (obstacle) => interiorsOverlap(bodies.packed, mover, obstacle) && !bodies.mayMeet(mover, obstacle),
    ),
  );
}
