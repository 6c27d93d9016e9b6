/** Stack-ups of the clearances of a plan. */
import type { Plan } from '../../plan/plan-schema';
import type { Clearance } from '../finding';
import { bandOf, type ClearanceBand } from './band';
import { legsOfClearance } from './clearance-legs';
import { clearanceWith, type Discovery, discover, type LegPair } from './discover';
import type { Wandering } from './face-pairs';
import { kinksOf } from './kinks';
import { type PlanStudy, studyOf } from './plan-study';
import { changesFor, type DimensionValues } from './plan-values';
import { type StackUp, stackUpFrom } from './stack-up';

/** Of every named clearance, in the order of the solution: tightest first. */
export function stackUpsOf(plan: Plan): readonly StackUp[] {
  const study = studyOf(plan);
  return study.solution.clearances.flatMap((clearance) => stackUpOfClearance(study, clearance) ?? []);
}

/** Of one; undefined when the plan has no such clearance. */
export function stackUpOf(plan: Plan, clearanceId: string): StackUp | undefined {
  const study = studyOf(plan);
  const clearance = study.solution.clearances.find(({ id }) => id === clearanceId);
  return clearance && stackUpOfClearance(study, clearance);
}

export function stackUpOfClearance(study: PlanStudy, clearance: Clearance): StackUp | undefined {
  const legs = legsOfClearance(study, clearance);
  const discovery = discover(study, legs);
  if (!discovery) return undefined;
  const found = bandOf(discovery);
  const kinks = kinksOf(study, discovery, found);
  const isUneven = kinks.some(({ kind }) => kind === 'bends');
  const band = isUneven ? { ...found, band: widened(study, clearance, discovery, found) } : found;
  return stackUpFrom(study, clearance, discovery, band, kinks);
}

/**
 * Where a dimension moves the gap unevenly its share may depend on others. The band is then held against the clearance
 * itself at the corners where each of the faces concerned is nearest and farthest, all dimensions off at once.
 */
function widened(
  study: PlanStudy,
  clearance: Clearance,
  discovery: Discovery,
  { band, rivals }: ClearanceBand,
): readonly [number, number] {
  const legs = legsOfClearance(study, clearance);
  let [least, most] = band;
  for (const pair of [discovery.binding, ...nearestFew(rivals)]) {
    for (const sense of [-1, 1] as const) {
      const values = cornerOf(study, discovery, pair.gap, sense);
      const gap = clearanceWith(study, legs, changesFor(study, values));
      if (gap === undefined) continue;
      least = Math.min(least, gap);
      most = Math.max(most, gap);
    }
  }
  return [least, most];
}

const FEW = 3;

function nearestFew(rivals: readonly LegPair[]): readonly LegPair[] {
  return [...rivals].sort((a, b) => a.gap.standing - b.gap.standing).slice(0, FEW);
}

/** The end of each band that makes a gap least (-1) or greatest (1). */
function cornerOf(
  study: PlanStudy,
  { variations }: Discovery,
  { upper, lower }: Wandering,
  sense: 1 | -1,
): DimensionValues {
  const values = new Map<string, Map<string, number>>();
  variations.forEach(({ part, dimension: { path, nominal, plusMinus } }, index) => {
    const [up, down] = [sense * (upper[index] ?? 0), sense * (lower[index] ?? 0)];
    if (up <= 0 && down <= 0) return;
    const id = study.scene.parts[part]?.id ?? '';
    const ofPart = values.get(id) ?? new Map<string, number>();
    values.set(id, ofPart.set(path, up >= down ? nominal + plusMinus : nominal - plusMinus));
  });
  return values;
}
