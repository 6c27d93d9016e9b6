/** The limit that holds whatever pieces one gets. */
import { withDimension } from '../../parts/stated-dimensions/change-dimension';
import { dimensionAt } from '../../parts/stated-dimensions/stated-dimensions';
import type { PackedBoxes } from '../../space/packed-boxes';
import { meets } from '../stack-up/changed-part';
import { makeLeg } from '../stack-up/clearance-legs';
import { variationsOf } from '../stack-up/discover';
import { leastOf, type Wandering, wander } from '../stack-up/face-pairs';
import { legBodies } from '../stack-up/leg-bodies';
import { partAt } from '../stack-up/plan-study';
import { faceDistance, type Violation } from './first-violation';
import { type FoundLimit, LEAST_SIZE_MM, type Sense } from './search-limit';
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
  const all = [first, ...rivals.map(value)];
  const kept = sense > 0 ? Math.min(...all) : Math.max(...all);
  return kept >= LEAST_SIZE_MM ? kept : undefined;
}

function bandAt(scene: VariedScene, value: number): number {
  const { spec } = partAt(scene.study, scene.part).placed;
  return dimensionAt(withDimension(spec, scene.path, value), scene.path).plusMinus;
}

/** Half of the band of the distance between the two faces, the dimension itself with its band at the limit. */
function halfBand(scene: VariedScene, violation: Violation, own: number): number {
  const { study } = scene;
  const { constraint, from, to, axis, up, slope } = violation;
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
  const gap: Wandering = wander(
    { standing: bodies.standing, fromCount: 1, upper: ends('upper'), lower: ends('lower') },
    (packed) => faceDistance(packed, 0, 1, axis, up),
  );
  return gap.standing - leastOf(gap) + Math.abs(slope) * own;
}
