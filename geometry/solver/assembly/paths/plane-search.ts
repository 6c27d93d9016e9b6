/**
 * A* over positions and angles in one plane, outwards from the seat. Every edge is a certified slide by one cell or a
 * certified turn about a named edge of the mover; poses are kept exactly and only told apart by cell and angle.
 */
import FlatQueue from 'flatqueue';
import { type Motion, poseOfMotion, type Turn } from '../../../space/motion';
import { compose, identityTransform, type RigidTransform, transformPoint } from '../../../space/transform';
import { dot, scale, type Vector3 } from '../../../space/vector';
import { rangeOf } from './hull';
import type { SearchLimits } from './search-limits';
import type { Search } from './straight-moves';
import { freeAlong, placeMover } from './test-way';
import { leaveFrom } from './tilt-scripts';

/** The plane of the tilt: unit `normal`, and the direction in which the mover is wanted out. */
export interface TiltPlane {
  readonly normal: Vector3;
  readonly out: Vector3;
  readonly across: Vector3;
}

interface Node {
  readonly pose: RigidTransform;
  readonly angle: number;
  readonly cost: number;
  readonly score: number;
  readonly from: Node | undefined;
  readonly motion: Motion | undefined;
}

/** What a degree of turning costs, mm of travel. */
const COST_OF_DEGREE_MM = 1;

/** The nearest it came, for an answer that found nothing. */
export interface PlaneSearchResult {
  readonly motions?: readonly Motion[];
  /** Furthest the mover came along the wanted direction, mm. */
  readonly furthest: number;
  readonly opened: number;
}

export function searchInPlane(search: Search, plane: TiltPlane, limits: SearchLimits): PlaneSearchResult {
  const range = rangeOf(search.bodies, search.boxes);
  const pivots = pivotsOf(range, plane);
  const centre = pivots[pivots.length - 1] ?? [0, 0, 0];
  const goal = reachAlong(search.around, plane.out) - leastAlong(range, plane.out);
  const start: Node = {
    pose: identityTransform,
    angle: 0,
    cost: 0,
    score: goal,
    from: undefined,
    motion: undefined,
  };
  const open = new FlatQueue<Node>();
  open.push(start, start.score);
  const seen = new Set<string>([keyOf(start, centre, limits)]);
  let opened = 0;
  let furthest = 0;
  while (opened < limits.poses) {
    const node = open.pop();
    if (!node) break;
    opened++;
    furthest = Math.max(furthest, dot(shiftOf(node.pose, centre), plane.out));
    const out = leaveFrom(search, node.pose, [plane.out]);
    if (out) return { motions: [...motionsTo(node), out], furthest: goal, opened };
    for (const motion of movesFrom(node, plane, pivots, limits)) {
      const next = stepTo(node, motion, centre, plane, goal);
      const key = keyOf(next, centre, limits);
      if (Math.abs(next.angle) > limits.tilt + 1e-9 || seen.has(key)) continue;
      placeMover(search.bodies, search.boxes, node.pose);
      if (freeAlong(search.bodies, search.boxes, search.obstacles, motion).obstacle >= 0) continue;
      seen.add(key);
      open.push(next, next.score);
    }
  }
  return { furthest, opened };
}

function movesFrom(node: Node, plane: TiltPlane, pivots: readonly Vector3[], limits: SearchLimits): Motion[] {
  const moves: Motion[] = [];
  for (const direction of [plane.out, plane.across]) {
    for (const sense of [1, -1]) moves.push({ kind: 'slide', by: scale(direction, sense * limits.cell) });
  }
  for (const pivot of pivots) {
    for (const sense of [1, -1]) {
      const turn: Turn = {
        kind: 'turn',
        point: transformPoint(node.pose, pivot),
        axis: plane.normal,
        degrees: sense * limits.angle,
      };
      moves.push(turn);
    }
  }
  return moves;
}

function stepTo(node: Node, motion: Motion, centre: Vector3, plane: TiltPlane, goal: number): Node {
  const pose = compose(poseOfMotion(motion, 1), node.pose);
  const turned = motion.kind === 'turn' ? motion.degrees : 0;
  const step =
    motion.kind === 'turn' ? Math.abs(turned) * COST_OF_DEGREE_MM : Math.sqrt(dot(motion.by, motion.by));
  const cost = node.cost + step;
  const left = Math.max(0, goal - dot(shiftOf(pose, centre), plane.out));
  return { pose, angle: node.angle + turned, cost, score: cost + left, from: node, motion };
}

function shiftOf(pose: RigidTransform, centre: Vector3): Vector3 {
  const at = transformPoint(pose, centre);
  return [at[0] - centre[0], at[1] - centre[1], at[2] - centre[2]];
}

function keyOf(node: Node, centre: Vector3, limits: SearchLimits): string {
  const [x, y, z] = shiftOf(node.pose, centre);
  const cell = (value: number): number => Math.round(value / limits.cell);
  return `${cell(x)} ${cell(y)} ${cell(z)} ${Math.round(node.angle / limits.angle)}`;
}

/** The motions to a node, slides in a row joined into one. */
function motionsTo(node: Node): readonly Motion[] {
  const motions: Motion[] = [];
  for (let at: Node | undefined = node; at?.motion; at = at.from) motions.unshift(at.motion);
  return joinMotions(motions);
}

/** Joins slides along one line and turns about one line. */
export function joinMotions(motions: readonly Motion[]): readonly Motion[] {
  const joined: Motion[] = [];
  for (const motion of motions) {
    const last = joined[joined.length - 1];
    if (last?.kind === 'slide' && motion.kind === 'slide' && sameWay(last.by, motion.by)) {
      joined[joined.length - 1] = {
        kind: 'slide',
        by: [last.by[0] + motion.by[0], last.by[1] + motion.by[1], last.by[2] + motion.by[2]],
      };
    } else if (last?.kind === 'turn' && motion.kind === 'turn' && sameLine(last, motion)) {
      joined[joined.length - 1] = { ...last, degrees: last.degrees + motion.degrees };
    } else joined.push(motion);
  }
  return joined;
}

function sameWay(a: Vector3, b: Vector3): boolean {
  const size = Math.sqrt(dot(a, a) * dot(b, b));
  return dot(a, b) > (1 - 1e-12) * size;
}

function sameLine(a: Turn, b: Turn): boolean {
  const apart = Math.hypot(a.point[0] - b.point[0], a.point[1] - b.point[1], a.point[2] - b.point[2]);
  return a.axis === b.axis && apart < 1e-9 && Math.sign(a.degrees) === Math.sign(b.degrees);
}

/** The four edges of the range that run along the normal, and its centre last. */
function pivotsOf(range: Float64Array, plane: TiltPlane): Vector3[] {
  const low: Vector3 = [range[0] ?? 0, range[1] ?? 0, range[2] ?? 0];
  const high: Vector3 = [range[3] ?? 0, range[4] ?? 0, range[5] ?? 0];
  const centre: Vector3 = [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2];
  const corners: Vector3[] = [];
  for (const a of [-1, 1]) {
    for (const b of [-1, 1]) {
      const point: [number, number, number] = [...centre];
      for (let axis = 0; axis < 3; axis++) {
        const half = ((high[axis] ?? 0) - (low[axis] ?? 0)) / 2;
        point[axis] =
          (point[axis] ?? 0) +
          half * (a * Math.abs(plane.out[axis] ?? 0) + b * Math.abs(plane.across[axis] ?? 0));
      }
      corners.push(point);
    }
  }
  return [...corners, centre];
}

function reachAlong(range: Float64Array, direction: Vector3): number {
  return pick(range, direction, true);
}

function leastAlong(range: Float64Array, direction: Vector3): number {
  return pick(range, direction, false);
}

/** Greatest (or least) extent of a range along a direction. */
function pick(range: Float64Array, direction: Vector3, greatest: boolean): number {
  let sum = 0;
  for (let axis = 0; axis < 3; axis++) {
    const high = (direction[axis] ?? 0) > 0 === greatest;
    sum += (direction[axis] ?? 0) * (high ? (range[3 + axis] ?? 0) : (range[axis] ?? 0));
  }
  return sum;
}
