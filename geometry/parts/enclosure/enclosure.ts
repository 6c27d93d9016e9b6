/** From an enclosure spec to its body and mounts; frame and units in `fields.ts`. */
import type { PartModel } from '../body';
import type { EnclosureSpec } from './fields';
import { fittingsOf } from './fittings';
import { layoutOf } from './layout';
import { mountsOf, standoffsOf } from './seats';
import { sheetsOf } from './walls';

/** The enclosure stands in the world by itself: it has no feet to mount it by, and nothing of it can be covered. */
export function buildEnclosure(spec: EnclosureSpec): PartModel {
  const layout = layoutOf(spec);
  return {
    boxes: [...sheetsOf(spec, layout), ...standoffsOf(spec, layout), ...fittingsOf(spec, layout)],
    mounts: mountsOf(spec, layout),
    feet: [],
    features: [],
    adjustments: [],
  };
}
