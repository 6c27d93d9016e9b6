import { identityTransform } from '../../space/transform';
import { dimm, dimmSocket, soDimm } from '../../standards/memory';
import type { AdjustmentValues, PartModel } from '../body';
import { centredSpan, solidBox } from '../body-box';
import { nominal, nominalOr } from '../dimension';
import { memoryMountPattern } from '../patterns';
import type { MemorySpec } from './spec';

/** What of a seated module stands inside its socket: nothing is dressed there, so only the bare board is drawn. */
const contactEdgeHeight = dimmSocket.height.value - dimmSocket.seatHeight.value;

/** Body of a memory module in the frame of `spec.ts`: the contact edge enters the slot, the rest stands above. */
export function buildMemory(spec: MemorySpec, _adjust: AdjustmentValues = {}): PartModel {
  const published = spec.form === 'DIMM' ? dimm : soDimm;
  const height = nominalOr(spec.height, published.height.value);
  const thickness = nominal(spec.thickness);
  const edgeTop = Math.min(contactEdgeHeight, height / 2);
  const x = centredSpan(0, published.length.value);
  const edge = {
    x,
    y: centredSpan(0, Math.min(dimm.boardThicknessDdr4.value, thickness)),
    z: [0, edgeTop],
  } as const;
  const body = { x, y: centredSpan(0, thickness), z: [edgeTop, height] } as const;
  return {
    boxes: [
      solidBox('contact edge', 'memory module', edge, { engages: true }),
      solidBox('module', 'memory module', body),
    ],
    mounts: [],
    feet: [
      {
        id: 'contact edge',
        label: 'Contact edge',
        pattern: memoryMountPattern(spec.form),
        frame: identityTransform,
      },
    ],
    features: [],
    adjustments: [],
  };
}
