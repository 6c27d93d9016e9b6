/** Which foot goes on which mount, and where the part then stands. */
import type { Foot, Mount, PatternPoint } from '../parts/body';
import { rotationAbout } from '../space/rotation';
import { compose, invert, type RigidTransform, translationBy } from '../space/transform';
import type { Vector3 } from '../space/vector';

/**
 * A hole meets a standoff or screw point when their centres are this close, mm. Half the difference between the
 * 3.96 mm hole of ATX 2.2 figure 3 and a 3 mm screw, rounded: a common practice figure.
 */
export const HOLE_MEETS_POINT_MM = 0.5;

/** Fewer met holes than this hold nothing: three points fix a plane. */
const FEWEST_MET_HOLES = 3;

export interface HoleMatch {
  readonly met: readonly { readonly hole: PatternPoint; readonly point: PatternPoint }[];
  /** Needed holes with no point under them. */
  readonly missing: readonly PatternPoint[];
  /** Points under the part's outline with no hole above them. */
  readonly extra: readonly PatternPoint[];
}

/** Pose of the part frame in the world once its foot lies on the mount. Turn in degrees about the mount's z axis. */
export function seatPose(
  carrier: RigidTransform,
  mount: Mount,
  foot: Foot,
  turn = 0,
  shift: Vector3 = [0, 0, 0],
): RigidTransform {
  const turned: RigidTransform = { rotation: rotationAbout('z', turn), translation: [0, 0, 0] };
  const onMount = compose(translationBy(shift), compose(turned, invert(foot.frame)));
  return compose(carrier, compose(mount.frame, onMount));
}

/** Compares the foot's holes with the mount's points at the given turn and shift, in the mount's frame. */
export function matchHoles(mount: Mount, foot: Foot, turn = 0, shift: Vector3 = [0, 0, 0]): HoleMatch {
  const points = mount.points ?? [];
  const rotation = rotationAbout('z', turn);
  const onMount = (x: number, y: number): readonly [number, number] => [
    rotation[0] * x + rotation[1] * y + shift[0],
    rotation[3] * x + rotation[4] * y + shift[1],
  ];
  const met: { hole: PatternPoint; point: PatternPoint }[] = [];
  const missing: PatternPoint[] = [];
  const holes = (foot.points ?? []).map((hole) => ({ ...hole, at: onMount(hole.at[0], hole.at[1]) }));
  for (const hole of holes) {
    const point = points.find((candidate) => near(candidate.at, hole.at));
    if (point) met.push({ hole, point });
    else if (hole.needed) missing.push(hole);
  }
  const extra = points.filter(
    (point) => isUnder(foot, rotation, shift, point.at) && !holes.some((hole) => near(hole.at, point.at)),
  );
  return { met, missing, extra };
}

/** Whether the foot may be laid on the mount: the pattern is taken and, where both have holes, enough of them meet. */
export function footFits(mount: Mount, foot: Foot, turn = 0, shift: Vector3 = [0, 0, 0]): boolean {
  return mount.patterns.includes(foot.pattern) && holesHold(mount, foot, turn, shift);
}

/** The part's feet, the one the mount prefers first. */
export function feetFor(mount: Mount, feet: readonly Foot[]): readonly Foot[] {
  const preferred = feet.filter((foot) => foot.id === mount.prefers);
  return preferred.length === 0 ? feet : [...preferred, ...feet.filter((foot) => foot.id !== mount.prefers)];
}

/** Whether enough holes meet points to hold the part; true when either side has none to compare. */
export function holesHold(mount: Mount, foot: Foot, turn = 0, shift: Vector3 = [0, 0, 0]): boolean {
  if (mount.points === undefined || foot.points === undefined) return true;
  const enough = Math.min(FEWEST_MET_HOLES, foot.points.length);
  return matchHoles(mount, foot, turn, shift).met.length >= enough;
}

function near(a: readonly [number, number], b: readonly [number, number]): boolean {
  return Math.hypot(a[0] - b[0], a[1] - b[1]) <= HOLE_MEETS_POINT_MM;
}

function isUnder(
  foot: Foot,
  rotation: ReturnType<typeof rotationAbout>,
  shift: Vector3,
  at: readonly [number, number],
): boolean {
  if (foot.outline === undefined) return false;
  const x = at[0] - shift[0];
  const y = at[1] - shift[1];
  const u = rotation[0] * x + rotation[3] * y;
  const v = rotation[1] * x + rotation[4] * y;
  const { min, max } = foot.outline;
  return u > min[0] && u < max[0] && v > min[1] && v < max[1];
}
