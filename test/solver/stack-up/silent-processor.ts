import { partSpecSchema } from '../../../geometry/parts/part-spec';
import type { Plan } from '../../../geometry/plan/plan-schema';
import { smallBuild } from '../../plan/small-build';

/** The small build with a processor whose sheet is silent about its height. */
export function silentProcessor(): Plan {
  const plan = smallBuild();
  const processor = plan.parts.processor;
  if (!processor) throw new RangeError('no processor');
  const spec = partSpecSchema.parse({ ...processor.spec, height: undefined });
  return { ...plan, parts: { ...plan.parts, processor: { ...processor, spec } } };
}
