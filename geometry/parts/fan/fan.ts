import { rotationAbout } from '../../space/rotation';
import { translationBy } from '../../space/transform';
import { breathingGapOfBlades, sweptDiameterOfFrame } from '../../standards/fan-breathing';
import { fanFrames, fanHoles, fanThickness } from '../../standards/fans';
import type { AdjustmentValues, Foot, PartModel } from '../body';
import { centredSpan, reservedBox, solidBox } from '../body-box';
import { nominalOr } from '../dimension';
import { type FanSize, fanMountPattern } from '../patterns';
import type { FanSpec } from './spec';

/** Screw holes of a fan frame about its centre, in the frame of the foot or mount; the pattern is the same turned over. */
export function fanHolePoints(size: FanSize) {
  return fanHoles(fanFrames[size].pitch.value).map((at, index) => ({ id: `hole ${index + 1}`, at }));
}

/** Body of a fan in the frame of `spec.ts`: the frame, and the air its intake wants. */
export function buildFan(spec: FanSpec, _adjust: AdjustmentValues = {}): PartModel {
  const half = nominalOr(spec.thickness, fanThickness.usual.value) / 2;
  const swept = sweptDiameterOfFrame(spec.size);
  const frame = { x: centredSpan(0, spec.size), y: centredSpan(0, spec.size), z: [-half, half] } as const;
  const air = {
    x: centredSpan(0, swept),
    y: centredSpan(0, swept),
    z: [-half - breathingGapOfBlades(swept), -half],
  } as const;
  const shared = {
    pattern: fanMountPattern(spec.size),
    points: fanHolePoints(spec.size).map((point) => ({ ...point, needed: true })),
  };
  const feet: Foot[] = [
    { id: 'blows in', label: 'Blows in', frame: translationBy([0, 0, -half]), ...shared },
    {
      id: 'blows out',
      label: 'Blows out',
      frame: { rotation: rotationAbout('x', 180), translation: [0, 0, half] },
      ...shared,
    },
  ];
  return {
    boxes: [
      solidBox('frame', 'fan', frame),
      reservedBox('breathing space, intake', 'breathing space', 'fan', air),
    ],
    mounts: [],
    feet,
    features: [],
    adjustments: [],
  };
}
