/** Continuous collision of a body along slides and turns, against every box of the scene at once. */
import type { Motion } from '../../../space/motion';
import { poseOfMotion } from '../../../space/motion';
import { transformBox } from '../../../space/oriented-box';
import { BOUNDS_STRIDE } from '../../../space/packed-boxes';
import { CONTACT_TOLERANCE_MM } from '../../../space/tolerance';
import { compose, identityTransform, type RigidTransform } from '../../../space/transform';
import { createTravelInterval, rangesMayMeet, travelIntervalPacked } from '../../../space/travel';
import { boundsOfTurn, createTurnTravel, turnTravelPacked } from '../../../space/turn-travel';
import { length, normalise, type Vector3 } from '../../../space/vector';
import type { AssemblyBodies } from '../assembly-bodies';
import { ContactLog, type WayRecord } from './way';

/** Which obstacles count; all of other units when absent. */
export type CountsAs = (obstacle: number) => boolean;

const interval = createTravelInterval();
const turn = createTurnTravel();
const turnBounds = new Float64Array(BOUNDS_STRIDE);
const RADIANS_PER_DEGREE = Math.PI / 180;

/** Told a contact: box of the moving unit (its own number), obstacle, and how far into the motion. */
export type Meet = (mover: number, obstacle: number, at: number) => void;

/** Puts the boxes of a unit, displaced by `pose`, into the room behind the scene's boxes. */
export function placeMover(bodies: AssemblyBodies, boxes: readonly number[], pose: RigidTransform): void {
  const { packed, count } = bodies;
  boxes.forEach((box, k) => {
    packed.setBox(count + k, transformBox(pose, packed.boxAt(box)));
  });
}

/** Every contact of the placed mover's boxes with obstacles during one motion. */
export function meetAlong(
  bodies: AssemblyBodies,
  boxes: readonly number[],
  obstacles: readonly number[],
  motion: Motion,
  meet: Meet,
): void {
  if (motion.kind === 'slide') {
    meetOnSlide(bodies, boxes, obstacles, motion.by, meet);
    return;
  }
  const limit = motion.degrees * RADIANS_PER_DEGREE;
  const { packed, count } = bodies;
  boxes.forEach((mover, k) => {
    boundsOfTurn(packed, count + k, motion.point, motion.axis, limit, turnBounds);
    for (const obstacle of obstacles) {
      if (!overlapsTurnBounds(packed.bounds, obstacle)) continue;
      if (bodies.mayMeet(mover, obstacle)) continue;
      turnTravelPacked(packed, count + k, obstacle, motion.point, motion.axis, limit, turn);
      if (turn.meets) meet(mover, obstacle, turn.free / RADIANS_PER_DEGREE);
    }
  });
}

function overlapsTurnBounds(bounds: Float64Array, obstacle: number): boolean {
  const at = obstacle * BOUNDS_STRIDE;
  for (let w = 0; w < 3; w++) {
    if ((bounds[at + w] ?? 0) > (turnBounds[3 + w] ?? 0) - CONTACT_TOLERANCE_MM) return false;
    if ((bounds[at + 3 + w] ?? 0) < (turnBounds[w] ?? 0) + CONTACT_TOLERANCE_MM) return false;
  }
  return true;
}

function meetOnSlide(
  bodies: AssemblyBodies,
  boxes: readonly number[],
  obstacles: readonly number[],
  by: Vector3,
  meet: Meet,
): void {
  const distance = length(by);
  if (distance === 0) return;
  const [x, y, z] = normalise(by);
  const { packed, count } = bodies;
  boxes.forEach((mover, k) => {
    for (const obstacle of obstacles) {
      if (!rangesMayMeet(packed.bounds, count + k, obstacle, x, y, z, distance)) continue;
      if (!travelIntervalPacked(packed, count + k, obstacle, x, y, z, interval) || !interval.ahead) continue;
      const enter = Math.max(0, interval.enter);
      if (enter >= distance - CONTACT_TOLERANCE_MM || bodies.mayMeet(mover, obstacle)) continue;
      meet(mover, obstacle, enter);
    }
  });
}

/** Boxes that are not of the moving unit; `counts` may leave more out. */
export function obstaclesOf(bodies: AssemblyBodies, unit: number, counts?: CountsAs): number[] {
  const obstacles: number[] = [];
  for (let box = 0; box < bodies.count; box++) {
    if (bodies.unitOf[box] !== unit && (counts === undefined || counts(box))) obstacles.push(box);
  }
  return obstacles;
}

/** Everything a unit meets on a way out of its seat, against all other units and what never moves. */
export function testWay(
  bodies: AssemblyBodies,
  unit: number,
  motions: readonly Motion[],
  counts?: CountsAs,
  boxes: readonly number[] = bodies.boxesOf[unit] ?? [],
): WayRecord {
  const obstacles = obstaclesOf(bodies, unit, counts);
  const log = new ContactLog();
  let pose = identityTransform;
  for (const [index, motion] of motions.entries()) {
    placeMover(bodies, boxes, pose);
    meetAlong(bodies, boxes, obstacles, motion, (mover, obstacle, at) => {
      log.add({ unit: bodies.unitOf[obstacle] ?? -1, mover, obstacle, motion: index, at });
    });
    pose = compose(poseOfMotion(motion, 1), pose);
  }
  return log.record(motions);
}

/** How far the placed mover can go along one motion: mm or degrees, and what stops it. */
export function freeAlong(
  bodies: AssemblyBodies,
  boxes: readonly number[],
  obstacles: readonly number[],
  motion: Motion,
): { readonly free: number; readonly mover: number; readonly obstacle: number } {
  const whole = motion.kind === 'slide' ? length(motion.by) : Math.abs(motion.degrees);
  let least = { free: whole, mover: -1, obstacle: -1 };
  meetAlong(bodies, boxes, obstacles, motion, (mover, obstacle, at) => {
    if (at < least.free) least = { free: at, mover, obstacle };
  });
  return least;
}
