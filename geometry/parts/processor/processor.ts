import { identityTransform, translationBy } from '../../space/transform';
import { lidHeightStack } from '../../standards/processor-sockets';
import type { AdjustmentValues, PartModel } from '../body';
import { centredSpan, solidBox } from '../body-box';
import { nominal, nominalOr } from '../dimension';
import { coolerMountPattern, socketMountPattern } from '../patterns';
import type { ProcessorSpec } from './spec';

/** Body of a processor in the frame of `spec.ts`: one package that enters the socket and carries a cooler. */
export function buildProcessor(spec: ProcessorSpec, _adjust: AdjustmentValues = {}): PartModel {
  const height = nominalOr(spec.height, lidHeightStack.packageLandsToLidTop.value);
  const extent = {
    x: centredSpan(0, nominal(spec.width)),
    y: centredSpan(0, nominal(spec.depth)),
    z: [0, height],
  } as const;
  return {
    boxes: [solidBox('package', 'processor', extent, { engages: true })],
    mounts: [
      {
        id: 'lid',
        label: 'Lid',
        patterns: [coolerMountPattern(spec.socket)],
        frame: translationBy([0, 0, height]),
        turns: [0, 90, 180, 270],
      },
    ],
    feet: [
      { id: 'package', label: 'Package', pattern: socketMountPattern(spec.socket), frame: identityTransform },
    ],
    features: [],
    adjustments: [],
  };
}
