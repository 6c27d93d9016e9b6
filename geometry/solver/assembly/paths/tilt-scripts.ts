/** Ways with one turn: tilt about an edge and leave; lift, tilt and leave. Angles scanned, every piece certified. */
import { type Motion, poseAfter, type Turn } from '../../../space/motion';
import type { RigidTransform } from '../../../space/transform';
import { dot, scale, type Vector3 } from '../../../space/vector';
import { CLEAR_OF_HULL_MM, rangeOf, travelToClear } from './hull';
import type { SearchLimits } from './search-limits';
import { freeSlide, type Search, slideOut } from './straight-moves';
import { freeAlong, placeMover } from './test-way';

const axes: readonly Vector3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/** The twelve edges of the mover's world range as turning lines, both senses. */
export function edgeTurns(search: Search, degrees: number): readonly Turn[] {
  const range = rangeOf(search.bodies, search.boxes);
  const turns: Turn[] = [];
  for (const [along, axis] of axes.entries()) {
    const [u, v] = [(along + 1) % 3, (along + 2) % 3];
    for (const sideU of [u, u + 3]) {
      for (const sideV of [v, v + 3]) {
        const point: [number, number, number] = [0, 0, 0];
        point[u] = range[sideU] ?? 0;
        point[v] = range[sideV] ?? 0;
        for (const sense of [1, -1]) turns.push({ kind: 'turn', point, axis, degrees: sense * degrees });
      }
    }
  }
  return turns;
}

/** Leaves along one of `directions` from a pose; the range of the turned mover says how far. */
export function leaveFrom(
  search: Search,
  pose: RigidTransform,
  directions: readonly Vector3[],
): Motion | undefined {
  placeMover(search.bodies, search.boxes, pose);
  const { count } = search.bodies;
  const range = rangeOf(
    search.bodies,
    search.boxes.map((_, k) => k),
    count,
  );
  for (const direction of directions) {
    const travel = travelToClear(range, search.around, direction);
    const motion: Motion = { kind: 'slide', by: scale(direction, Math.max(travel, CLEAR_OF_HULL_MM)) };
    if (freeAlong(search.bodies, search.boxes, search.obstacles, motion).obstacle < 0) return motion;
  }
  return undefined;
}

/** Turns about each edge by growing angles and tries to leave; with a lift along `lifts` before, when given. */
export function tiltAndLeave(
  search: Search,
  limits: SearchLimits,
  directions: readonly Vector3[],
  kind: TurnKind,
  before: readonly Motion[] = [],
): readonly Motion[] | undefined {
  const start = poseAfter(before);
  const shift = start.translation;
  for (const turn of ofKind(edgeTurns(search, limits.tilt), kind, directions[0])) {
    const moved: Turn = {
      ...turn,
      point: [turn.point[0] + shift[0], turn.point[1] + shift[1], turn.point[2] + shift[2]],
    };
    placeMover(search.bodies, search.boxes, start);
    const { free } = freeAlong(search.bodies, search.boxes, search.obstacles, moved);
    for (let angle = limits.tiltStep; angle <= free + 1e-9; angle += limits.tiltStep) {
      const tilt: Turn = { ...moved, degrees: Math.sign(turn.degrees) * angle };
      const motions = [...before, tilt];
      const out = leaveFrom(search, poseAfter(motions), directions);
      if (out) return [...motions, out];
    }
  }
  return undefined;
}

/** Whether a turn raises one end out of the seat, or swings the mover about the way out, as a door does. */
export type TurnKind = 'raising' | 'swinging';

function ofKind(turns: readonly Turn[], kind: TurnKind, out: Vector3 | undefined): readonly Turn[] {
  return turns.filter(
    (turn) => (out !== undefined && Math.abs(dot(turn.axis, out)) > 0.7) === (kind === 'swinging'),
  );
}

/** A small straight move first (as far as it goes, and half of that), then a tilt. */
export function liftTiltAndLeave(
  search: Search,
  limits: SearchLimits,
  directions: readonly Vector3[],
  kind: TurnKind,
  lifts: readonly Vector3[],
): readonly Motion[] | undefined {
  for (const lift of lifts) {
    const free = freeSlide(search, slideOut(search, lift));
    if (!(free > 0.1)) continue;
    for (const share of [1, 0.5]) {
      const motions = tiltAndLeave(search, limits, directions, kind, [
        { kind: 'slide', by: scale(lift, free * share) },
      ]);
      if (motions) return motions;
    }
  }
  return undefined;
}
