/** One step as a picture: what is there pale, what is new strong and a little off its seat, an arrow to where it goes. */
import {
  add,
  type Bounds,
  cross,
  length,
  type Motion,
  normalise,
  poseOnPath,
  type RigidTransform,
  scale,
  subtract,
  transformPoint,
  type Vector3,
} from '../../../geometry';
import type { Stage } from '../../store/stage-store';
import { fitSight } from '../camera/fit-sight';
import { pictureAxes, type ScreenSize, type Sight } from '../camera/sight';
import { standardViews } from '../camera/standard-views';
import type { Segment } from '../drawing/box-outline';
import { movingBounds, stageBounds } from './stage-bounds';

export interface StepPicture {
  readonly sight: Sight;
  readonly bounds: Bounds;
  readonly displacement: RigidTransform;
  readonly arrow: readonly Segment[];
}

/** Shares of the size of what moves, and limits in mm: how far off it is drawn, and how much round it is shown. */
const OFF_SHARE = 0.4;
const OFF_MM = [14, 90] as const;
const ROUND_SHARE = 0.9;
const ROUND_MM = 110;
/** A part of the machine larger than this is better shown with the rest. */
const MOST_SHARE = 0.66;
const ARROW_PIECES = 10;
const ARROW_HEAD_MM = 7;

const margin = { top: 8, right: 8, bottom: 8, left: 8 };

/** Undefined when nothing of it is drawn. */
export function stepPicture(
  stage: Stage,
  motions: readonly Motion[],
  screen: ScreenSize,
): StepPicture | undefined {
  const whole = stageBounds(stage);
  const seat = movingBounds(stage, { rotation: [1, 0, 0, 0, 1, 0, 0, 0, 1], translation: [0, 0, 0] });
  if (!whole || !seat) return undefined;
  const size = length(subtract(seat.max, seat.min));
  const path = { motions, reach: size / 2 };
  const total = motions.reduce((sum, motion) => sum + travelOf(motion, path.reach), 0);
  const off = Math.min(total, Math.max(OFF_MM[0], Math.min(OFF_MM[1], OFF_SHARE * size)));
  const from = total > 0 ? 1 - off / total : 1;
  const displacement = poseOnPath(path, from);
  const centre = scale(add(seat.min, seat.max), 0.5);
  const line = Array.from({ length: ARROW_PIECES + 1 }, (_, k) =>
    transformPoint(poseOnPath(path, from + ((1 - from) * k) / ARROW_PIECES), centre),
  );
  const moving = movingBounds(stage, displacement) ?? seat;
  const all = union(whole, moving);
  const close = around(moving, whole, Math.max(ROUND_MM, ROUND_SHARE * size));
  const isMostOfIt = diagonal(close) > MOST_SHARE * diagonal(all);
  const sight = fitSight(viewOf(line), isMostOfIt ? all : close, screen, margin);
  return { sight, bounds: all, displacement, arrow: arrowAlong(line, sight) };
}

function travelOf(motion: Motion, reach: number): number {
  return motion.kind === 'slide' ? length(motion.by) : Math.abs(motion.degrees) * (Math.PI / 180) * reach;
}

/** The usual view, or the same from behind the tray for what comes in from there. */
function viewOf(line: readonly Vector3[]): Pick<Sight, 'azimuth' | 'elevation' | 'lens'> {
  const [first, last] = [line[0], line[line.length - 1]];
  const usual = standardViews['three-quarter'];
  const comesFromBehind = first && last && first[2] - last[2] < -0.5 * length(subtract(first, last));
  return comesFromBehind ? { ...usual, azimuth: 180 - usual.azimuth } : usual;
}

/** What moves with some room about it, as far as there is anything. */
function around(moving: Bounds, whole: Bounds, room: number): Bounds {
  const corner = (pick: (axis: 0 | 1 | 2) => number): Vector3 => [pick(0), pick(1), pick(2)];
  return {
    min: corner((axis) => Math.min(moving.min[axis], Math.max(whole.min[axis], moving.min[axis] - room))),
    max: corner((axis) => Math.max(moving.max[axis], Math.min(whole.max[axis], moving.max[axis] + room))),
  };
}

const diagonal = ({ min, max }: Bounds): number => length(subtract(max, min));

function union(a: Bounds, b: Bounds): Bounds {
  const corner = (pick: (axis: 0 | 1 | 2) => number): Vector3 => [pick(0), pick(1), pick(2)];
  return {
    min: corner((axis) => Math.min(a.min[axis], b.min[axis])),
    max: corner((axis) => Math.max(a.max[axis], b.max[axis])),
  };
}

function arrowAlong(line: readonly Vector3[], sight: Sight): readonly Segment[] {
  const pieces = line.slice(1).map((to, k): Segment => [line[k] ?? to, to]);
  const last = pieces[pieces.length - 1];
  if (!last || length(subtract(last[1], last[0])) < 1e-6) return [];
  const along = normalise(subtract(last[1], last[0]));
  const aside = cross(along, pictureAxes(sight).towardsEye);
  if (length(aside) < 1e-3) return pieces;
  const size = (ARROW_HEAD_MM * sight.height) / 400;
  const foot = subtract(last[1], scale(along, size));
  const wing = scale(normalise(aside), size * 0.45);
  return [...pieces, [add(foot, wing), last[1]], [subtract(foot, wing), last[1]]];
}
