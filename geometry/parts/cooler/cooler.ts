import { identityTransform } from '../../space/transform';
import type { AdjustmentValues, Foot, PartModel } from '../body';
import { coolerMountPattern, type SocketPattern } from '../patterns';
import { buildLiquidBlock } from './liquid-block';
import type { CoolerSpec } from './spec';
import { buildTopFlow } from './top-flow';
import { buildTower } from './tower';

const holesInWords: Readonly<Record<SocketPattern, string>> = {
  'square-75': '75 mm square',
  'square-78': '78 mm square',
  'square-80': '80 mm square',
  'rectangle-54x90': '54 x 90 mm',
};

/** Body of a cooler in the frame of `spec.ts`; it has one foot for each hole pattern, all at the contact face. */
export function buildCooler(spec: CoolerSpec, adjust: AdjustmentValues = {}): PartModel {
  const feet: Foot[] = spec.patterns.map((pattern) => ({
    id: pattern,
    label: `Holes ${holesInWords[pattern]}`,
    pattern: coolerMountPattern(pattern),
    frame: identityTransform,
  }));
  const shared = { feet, mounts: [] };
  switch (spec.style) {
    case 'tower':
      return { ...shared, features: [], ...buildTower(spec, adjust) };
    case 'top flow':
      return { ...shared, boxes: buildTopFlow(spec), features: [], adjustments: [] };
    case 'liquid block':
      return { ...shared, adjustments: [], ...buildLiquidBlock(spec) };
  }
}
