/** Limits of every part of a plan. */
import type { Plan } from '../../plan/plan-schema';
import { studyOf } from '../stack-up/plan-study';
import { enclosureSizes, sizesOf } from './key-dimensions';
import { type Limit, limitIn } from './limit';

/**
 * Largest sizes of all parts, and the smallest inner sizes of the enclosure, in the order of the plan. Of the enclosure
 * only what binds first: its walls are cut anew at every size, so what lies behind is left to `limitOf`.
 */
export function limitsOf(plan: Plan): readonly Limit[] {
  const study = studyOf(plan);
  return study.scene.parts.flatMap(({ id, spec }) =>
    spec.kind === 'enclosure'
      ? enclosureSizes.map((path) => limitIn(study, id, path, 'smallest', 1))
      : sizesOf(spec).map((path) => limitIn(study, id, path, 'largest')),
  );
}
