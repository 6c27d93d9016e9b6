/** The limit that holds whatever pieces one gets. */
import { withDimension } from '../../parts/stated-dimensions/change-dimension';
import { dimensionAt } from '../../parts/stated-dimensions/stated-dimensions';
import type { PackedBoxes } from '../../space/packed-boxes';
import { CONTACT_TOLERANCE_MM } from '../../space/tolerance';
import { meets } from '../stack-up/changed-part';
import { makeLeg } from '../stack-up/clearance-legs';
import { variationsOf } from '../stack-up/discover';
import { leastOf, type Wandering, wander } from '../stack-up/face-pairs';
import { legBodies } from '../stack-up/leg-bodies';
import { partAt } from '../stack-up/plan-study';
import { faceDistance, type Violation } from './first-violation';
import { type FoundLimit, LEAST_SIZE_MM, type Sense, violationsBeside } from './search-limit';
import type { VariedScene } from './varied-scene';

/** Faces further behind the binding one than this many of its own half-bands cannot overtake it in practice. */
const HALF_BANDS_BEHIND = 3;
/** Face pairs looked at: the binding one and its closest rivals. */
const MOST_PAIRS = 6;

/**
 * Undefined where nothing of the dimension is left, or where turned boxes bind. The bands are those of the plan, the
 * dimension's own that of its new size.
 */
export function valueWithTolerance(scene: VariedScene, limit: FoundLimit, sense: Sense): number | undefined {
  const { violation, ahead } = limit;
  if (Number.isNaN(violation.slope)) return undefined;
  const own = bandAt(scene, limit.value);
  const value = (one: Violation): number => {
    const at = limit.value + sense * (one.t - violation.t);
    return at - sense * (halfBand(limit.scene, one, own) / Math.abs(one.slope));
  };
  const first = value(violation);
  const near = violation.t + HALF_BANDS_BEHIND * Math.abs(limit.value - first);
  const rivals = ahead.filter(({ t, slope }) => t <= near && slope !== 0).slice(0, MOST_PAIRS);
  const all = [first, ...rivals.map(value), ...besideValues(limit, sense, own)];
  const kept = sense > 0 ? Math.min(...all) : Math.max(...all);
  return kept >= LEAST_SIZE_MM ? kept : undefined;
}

/** What faces the part only with some pieces, so that nothing of it shows in the plan as it stands. */
function besideValues(limit: FoundLimit, sense: Sense, own: number): readonly number[] {
  const known = new Set(limit.ahead.map(({ from, to }) => `${from}/${to}`));
  const beside = violationsBeside(limit.scene, sense)
    .filter(({ from, to, axis, up, slope, constraint }) => {
      const isGap = constraint.gap?.directions.some(
        (direction) => Math.sign(direction[axis]) === (up ? 1 : -1),
      );
      return isGap && slope !== 0 && !known.has(`${from}/${to}`);
    })
    .map((one) => ({ one, at: limit.scene.standing + sense * one.t }))
    .filter(({ at }) => sense * (at - limit.value) < 0)
    .sort((a, b) => sense * (a.at - b.at));
  return beside
    .filter(({ one }) => mayFace(limit.scene, one))
    .slice(0, MOST_PAIRS)
    .map(({ one, at }) => at - sense * (halfBand(limit.scene, one, own) / Math.abs(one.slope)));
}

/** Whether the boxes may come to overlap in all directions but that of the gap. */
function mayFace(scene: VariedScene, violation: Violation): boolean {
  return ([0, 1, 2] as const).every((axis) =>
    [true, false].every((up) => {
      if (axis === violation.axis && up === violation.up) return true;
      return leastOf(wanderingOf(scene, { ...violation, axis, up })) < -CONTACT_TOLERANCE_MM;
    }),
  );
}

function bandAt(scene: VariedScene, value: number): number {
  const { spec } = partAt(scene.study, scene.part).placed;
  return dimensionAt(withDimension(spec, scene.path, value), scene.path).plusMinus;
}

/** Half of the band of the distance between the two faces, the dimension itself with its band at the limit. */
function halfBand(scene: VariedScene, violation: Violation, own: number): number {
  const gap = wanderingOf(scene, violation);
  return gap.standing - leastOf(gap) + Math.abs(violation.slope) * own;
}

/** How the distance between the two faces wanders with all dimensions but the one that is looked at. */
function wanderingOf(scene: VariedScene, { constraint, from, to, axis, up }: Violation): Wandering {
  const { study } = scene;
  const leg = makeLeg(study, constraint.fromPart, constraint.toPart, [from], [to]);
  const variations = variationsOf(study, [leg]).filter(
    ({ part, dimension }) => !(part === scene.part && dimension.path === scene.path),
  );
  const bodies = legBodies(study, leg);
  const ends = (side: 'upper' | 'lower') =>
    variations.map((variation): PackedBoxes | undefined => {
      const wanted = leg.matters.get(variation.part);
      const change = variation[side];
      return wanted && meets(change, wanted) ? bodies.with(new Map([[variation.part, change]])) : undefined;
    });
  return wander(
    { standing: bodies.standing, fromCount: 1, upper: ends('upper'), lower: ends('lower') },
    (packed) => faceDistance(packed, 0, 1, axis, up),
  );
}
