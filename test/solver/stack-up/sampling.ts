import { placePlan } from '../../../geometry/plan/place-plan';
import type { Plan } from '../../../geometry/plan/plan-schema';
import { solve } from '../../../geometry/solver/solve';
import { legsOfClearance } from '../../../geometry/solver/stack-up/clearance-legs';
import { type Discovery, discover, groupsOf, type LegPair } from '../../../geometry/solver/stack-up/discover';
import { studyOf } from '../../../geometry/solver/stack-up/plan-study';
import { type DimensionValues, planWithValues } from '../../../geometry/solver/stack-up/plan-values';

/** mulberry32: a small seeded generator, uniform on [0, 1). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** Marsaglia and Bray's polar method. */
export function normals(uniform: () => number): () => number {
  let spare: number | undefined;
  return () => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    for (;;) {
      const u = 2 * uniform() - 1;
      const v = 2 * uniform() - 1;
      const s = u * u + v * v;
      if (s >= 1 || s === 0) continue;
      const factor = Math.sqrt((-2 * Math.log(s)) / s);
      spare = v * factor;
      return u * factor;
    }
  };
}

export function discoveryOf(plan: Plan, clearanceId: string): Discovery {
  const study = studyOf(plan);
  const clearance = study.solution.clearances.find(({ id }) => id === clearanceId);
  const found = clearance && discover(study, legsOfClearance(study, clearance));
  if (!found) throw new RangeError(`no clearance ${clearanceId}`);
  return found;
}

/** The clearance by its face pairs alone, for offsets in units of each dimension's band: -1 to 1 within it. */
export function fastClearance({ pairs }: Discovery): (offsets: Float64Array) => number {
  const groups = groupsOf(pairs.filter((pair) => pair.facesAlways));
  const shareOf = ({ gap }: LegPair, offsets: Float64Array): number => {
    let value = gap.standing;
    for (let k = 0; k < offsets.length; k++) {
      const at = offsets[k] ?? 0;
      value += at >= 0 ? at * (gap.upper[k] ?? 0) : -at * (gap.lower[k] ?? 0);
    }
    return value;
  };
  return (offsets) => {
    let least = Number.POSITIVE_INFINITY;
    for (const group of groups) {
      let widest = Number.NEGATIVE_INFINITY;
      for (const pair of group) widest = Math.max(widest, shareOf(pair, offsets));
      least = Math.min(least, widest);
    }
    return least;
  };
}

export function valuesAt(plan: Plan, { variations }: Discovery, offsets: Float64Array): DimensionValues {
  const ids = studyOf(plan).scene.parts.map(({ id }) => id);
  const values = new Map<string, Map<string, number>>();
  variations.forEach(({ part, dimension }, index) => {
    const id = ids[part] ?? '';
    const ofPart = values.get(id) ?? new Map<string, number>();
    values.set(
      id,
      ofPart.set(dimension.path, dimension.nominal + (offsets[index] ?? 0) * dimension.plusMinus),
    );
  });
  return values;
}

/**
 * The clearance as the solver finds it in the plan with those values written into its sheets: parts built, placed and
 * measured from the beginning. Of a rule about whatever is in front, the partner may be another.
 */
export function solvedClearance(
  plan: Plan,
  clearanceId: string,
  values: DimensionValues,
): number | undefined {
  const [rule, from] = clearanceId.split('/');
  const { clearances } = solve(placePlan(planWithValues(plan, values)));
  const same = clearances.find(({ id }) => id === clearanceId);
  return (same ?? clearances.find(({ id }) => id.startsWith(`${rule}/${from}/`)))?.millimetres;
}
