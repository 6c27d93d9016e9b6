/** From any spec to its body, mounts and feet. */
import { buildAdapter } from './adapter/adapter';
import { buildBoard } from './board/board';
import type { AdjustmentValues, PartModel } from './body';
import { buildCard } from './card/card';
import { buildCooler } from './cooler/cooler';
import { buildDrive } from './drive/drive';
import { buildEnclosure } from './enclosure/enclosure';
import { buildFan } from './fan/fan';
import { buildMemory } from './memory/memory';
import type { PartSpec } from './part-spec';
import { buildProcessor } from './processor/processor';
import { buildRadiator } from './radiator/radiator';
import { buildSupply } from './supply/supply';

/**
 * Pure: the same spec and adjustments give an equal model, in the part's own frame (documented in its kind's
 * `spec.ts`), millimetres. Adjustments a part does not offer are ignored.
 */
export function buildPart(spec: PartSpec, adjust: AdjustmentValues = {}): PartModel {
  switch (spec.kind) {
    case 'enclosure':
      return buildEnclosure(spec);
    case 'board':
      return buildBoard(spec);
    case 'processor':
      return buildProcessor(spec, adjust);
    case 'cooler':
      return buildCooler(spec, adjust);
    case 'memory':
      return buildMemory(spec, adjust);
    case 'drive':
      return buildDrive(spec, adjust);
    case 'card':
      return buildCard(spec, adjust);
    case 'supply':
      return buildSupply(spec, adjust);
    case 'fan':
      return buildFan(spec, adjust);
    case 'radiator':
      return buildRadiator(spec, adjust);
    case 'adapter':
      return buildAdapter(spec);
  }
}
