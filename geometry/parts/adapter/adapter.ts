/** From an adapter spec to its body; frames and units in `fields.ts`. */
import type { PartModel } from '../body';
import { buildRiserPlug, buildRiserSocket } from './riser';
import type { AdapterSpec } from './spec';
import { buildSupplyPlate } from './supply-plate';

export function buildAdapter(spec: AdapterSpec): PartModel {
  switch (spec.form) {
    case 'supply plate':
      return buildSupplyPlate(spec);
    case 'riser socket':
      return buildRiserSocket(spec);
    case 'riser plug':
      return buildRiserPlug(spec);
  }
}
