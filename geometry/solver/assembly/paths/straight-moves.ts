/** One and two straight moves out of a seat, exact along each. */
import type { Motion } from '../../../space/motion';
import { identityTransform, translationBy } from '../../../space/transform';
import { dot, scale, type Vector3 } from '../../../space/vector';
import type { AssemblyBodies } from '../assembly-bodies';
import { directions26, rangeOf, travelToClear } from './hull';
import { freeAlong, placeMover } from './test-way';

/** A unit and what is in its way: boxes of the mover, and obstacle boxes that are present. */
export interface Search {
  readonly bodies: AssemblyBodies;
  readonly boxes: readonly number[];
  readonly obstacles: readonly number[];
  /** Range of all obstacles: beyond it the mover is out. */
  readonly around: Float64Array;
}

export function searchFor(
  bodies: AssemblyBodies,
  boxes: readonly number[],
  obstacles: readonly number[],
): Search {
  return { bodies, boxes, obstacles, around: rangeOf(bodies, obstacles) };
}

/** The slide that takes the mover, shifted by `at`, beyond everything along `direction`. */
export function slideOut(search: Search, direction: Vector3, at: Vector3 = [0, 0, 0]): Motion {
  const range = rangeOf(search.bodies, search.boxes);
  for (let axis = 0; axis < 3; axis++) {
    range[axis] = (range[axis] ?? 0) + (at[axis] ?? 0);
    range[3 + axis] = (range[3 + axis] ?? 0) + (at[axis] ?? 0);
  }
  return { kind: 'slide', by: scale(direction, travelToClear(range, search.around, direction)) };
}

/** Free travel of the mover, shifted by `at`, along a slide. */
export function freeSlide(search: Search, motion: Motion, at: Vector3 = [0, 0, 0]): number {
  placeMover(
    search.bodies,
    search.boxes,
    at[0] === 0 && at[1] === 0 && at[2] === 0 ? identityTransform : translationBy(at),
  );
  return freeAlong(search.bodies, search.boxes, search.obstacles, motion).free;
}

function isFree(search: Search, motion: Motion, at: Vector3): boolean {
  placeMover(search.bodies, search.boxes, translationBy(at));
  return freeAlong(search.bodies, search.boxes, search.obstacles, motion).obstacle < 0;
}

/** The first of the directions along which the mover leaves in one straight move. */
export function oneStraightMove(
  search: Search,
  directions: readonly Vector3[] = directions26,
): readonly Motion[] | undefined {
  for (const direction of directions) {
    const motion = slideOut(search, direction);
    if (isFree(search, motion, [0, 0, 0])) return [motion];
  }
  return undefined;
}

/** All of the directions along which the mover leaves in one straight move. */
export function freeDirections(
  search: Search,
  directions: readonly Vector3[] = directions26,
): readonly Vector3[] {
  return directions.filter((direction) => isFree(search, slideOut(search, direction), [0, 0, 0]));
}

/** Two straight moves: the first to a stop where something ends, the second out. */
export function twoStraightMoves(
  search: Search,
  stops: number,
  directions: readonly Vector3[] = directions26,
): readonly Motion[] | undefined {
  for (const first of directions) {
    const whole = slideOut(search, first);
    const free = Math.min(freeSlide(search, whole), lengthOf(whole));
    if (!(free > 1e-3)) continue;
    for (const stop of stopsAlong(search, first, free, stops)) {
      const at = scale(first, stop);
      for (const second of directions) {
        if (dot(first, second) < -0.99 || dot(first, second) > 0.99) continue;
        const out = slideOut(search, second, at);
        if (isFree(search, out, at)) return [{ kind: 'slide', by: at }, out];
      }
    }
  }
  return undefined;
}

function lengthOf(motion: Motion): number {
  return motion.kind === 'slide' ? Math.sqrt(dot(motion.by, motion.by)) : 0;
}

/** Where along a direction a face of the mover comes level with one of an obstacle, and the end of the free travel. */
export function stopsAlong(
  search: Search,
  direction: Vector3,
  free: number,
  most: number,
): readonly number[] {
  const mover = rangeOf(search.bodies, search.boxes);
  const bounds = search.bodies.packed.bounds;
  const found = new Set<number>([free]);
  for (let axis = 0; axis < 3; axis++) {
    const speed = direction[axis] ?? 0;
    if (Math.abs(speed) < 1e-9) continue;
    for (const obstacle of search.obstacles) {
      for (const face of [bounds[6 * obstacle + axis] ?? 0, bounds[6 * obstacle + 3 + axis] ?? 0]) {
        for (const mine of [mover[axis] ?? 0, mover[3 + axis] ?? 0]) {
          const stop = (face - mine) / speed;
          if (stop > 1e-3 && stop < free) found.add(Math.round(stop * 1e6) / 1e6);
        }
      }
    }
  }
  const sorted = [...found].sort((a, b) => a - b);
  if (sorted.length <= most) return sorted;
  return Array.from(
    { length: most },
    (_, k) => sorted[Math.floor(((k + 1) * sorted.length) / most) - 1] ?? free,
  );
}
