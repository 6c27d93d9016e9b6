import { identityTransform } from '../../space/transform';
import { drivePlug } from '../../standards/device-plugs';
import { driveForms } from '../../standards/drives';
import type { Foot, PartModel } from '../body';
import { centredSpan, type Extent, reservedBox, solidBox } from '../body-box';
import { nominal, nominalOr } from '../dimension';
import { driveMountPattern } from '../patterns';
import type { BoxedDriveSpec } from './spec';

const publishedForm = { '3.5': '3.5 in', '2.5': '2.5 in' } as const;

/** Body of a 2.5 or 3.5 in drive: the case, its plugs at the connector end, screw holes in the base. */
export function buildBoxedDrive(spec: BoxedDriveSpec): PartModel {
  const published = driveForms[publishedForm[spec.form]];
  const length = nominalOr(spec.length, published.length.value);
  const height = nominal(spec.height);
  const width = published.width.value;
  const plugFrom = Math.min(drivePlug.above.value, height);
  const section = {
    y: centredSpan(0, Math.min(drivePlug.along.value, width)),
    z: [plugFrom, Math.min(plugFrom + drivePlug.across.value, Math.max(height, plugFrom + 1))],
  } as const;
  const plugEnd = -drivePlug.length.value;
  const plug: Extent = { x: [plugEnd, 0], ...section };
  const bend: Extent = { x: [plugEnd - drivePlug.bend.value, plugEnd], ...section };
  const foot: Foot = {
    id: 'base',
    label: 'Base',
    pattern: driveMountPattern(spec.form),
    frame: identityTransform,
    points: bottomHoles(spec.form).map((hole) => ({ ...hole, needed: false })),
    outline: { min: [0, -width / 2], max: [length, width / 2] },
  };
  return {
    boxes: [
      solidBox('case', 'drive', { x: [0, length], y: centredSpan(0, width), z: [0, height] }),
      reservedBox('plug space, drive', 'plug space', 'plug', plug, { feature: 'drive plugs' }),
      reservedBox('bend space, drive', 'bend space', 'plug', bend, { feature: 'drive plugs' }),
    ],
    mounts: [],
    feet: [foot],
    features: [
      {
        id: 'drive plugs',
        kind: 'power socket',
        label: 'Drive plugs',
        use: ['plug space, drive', 'bend space, drive'],
        approach: [],
        required: true,
      },
    ],
    adjustments: [],
  };
}

/** Screw holes of the base in the frame of the foot, from the published table. */
function bottomHoles(form: BoxedDriveSpec['form']) {
  const { holes, width } = driveForms[publishedForm[form]];
  return holes.value
    .filter((hole) => hole.face === 'bottom')
    .map((hole, index) => ({
      id: `hole ${index + 1}`,
      at: [hole.along, hole.across - width.value / 2] as const,
    }));
}
