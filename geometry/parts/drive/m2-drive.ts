import { identityTransform } from '../../space/transform';
import { m2Module, m2Socket } from '../../standards/m2-modules';
import type { BodyBox, PartModel } from '../body';
import { centredSpan, solidBox } from '../body-box';
import { nominal, nominalOr } from '../dimension';
import { m2MountPattern } from '../patterns';
import type { M2DriveSpec } from './spec';

/** Body of an M.2 module: the contact edge enters the socket; parts and an own sink stand beyond the socket. */
export function buildM2Drive(spec: M2DriveSpec): PartModel {
  const y = centredSpan(0, m2Module.width.value);
  const top = m2Module.boardThickness.value;
  const socketEnd = m2Socket.depth.value;
  const beyondSocket = [socketEnd, spec.length] as const;
  const above = nominalOr(spec.above, m2Module.highestPartEitherSide.value);
  const below = nominalOr(spec.below, 0);
  const boxes: BodyBox[] = [
    solidBox('contact edge', 'drive', { x: [0, socketEnd], y, z: [0, top] }, { engages: true }),
    solidBox('circuit board', 'drive', { x: beyondSocket, y, z: [0, top] }),
    solidBox('parts above', 'drive', { x: beyondSocket, y, z: [top, top + above] }),
  ];
  if (below > 0) boxes.push(solidBox('parts below', 'drive', { x: beyondSocket, y, z: [-below, 0] }));
  if (spec.sink !== undefined) {
    const extent = { x: beyondSocket, y, z: [top + above, top + nominal(spec.sink)] } as const;
    boxes.push(solidBox('sink', 'drive sink', extent));
  }
  return {
    boxes,
    mounts: [],
    feet: [
      {
        id: 'contact edge',
        label: 'Contact edge',
        pattern: m2MountPattern(spec.length),
        frame: identityTransform,
      },
    ],
    features: [],
    adjustments: [],
  };
}
