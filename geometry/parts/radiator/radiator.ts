import { rotationAbout } from '../../space/rotation';
import { type RigidTransform, translationBy } from '../../space/transform';
import { tubeTurn } from '../../standards/cooler-proportions';
import { fanFrames } from '../../standards/fans';
import { liquidCoolerSeen } from '../../standards/radiators';
import type { AdjustmentValues, BodyBox, Feature, Mount, PartModel } from '../body';
import { centredSpan, type Extent, reservedBox, solidBox } from '../body-box';
import { nominalOr } from '../dimension';
import { fanHolePoints } from '../fan/fan';
import { fanMountPattern, radiatorMountPattern } from '../patterns';
import { radiatorOfRow } from './fan-row';
import type { RadiatorSpec } from './spec';

/** The adjustment that leaves room for fans between the rail and the radiator. */
const gapToRail = 'gap to the rail';

/**
 * Body of a radiator in the frame of `spec.ts`. The two end tanks are taken as equal, so that the fan row is centred
 * on the body. Fans go on both faces; with fans on the near one the whole radiator moves off its rail.
 */
export function buildRadiator(spec: RadiatorSpec, adjust: AdjustmentValues = {}): PartModel {
  const published = radiatorOfRow(spec.row);
  const length = nominalOr(spec.length, published.length.value);
  const width = nominalOr(spec.width, published.width.value);
  const thickness = nominalOr(spec.thickness, published.thickness.value);
  const core = Math.min(length, published.fans * published.fanFrame);
  const section = { y: centredSpan(0, width), z: centredSpan(0, thickness) };
  const thickestFan = Math.max(...fanFrames[published.fanFrame].thicknesses.value);
  const gap = Math.min(Math.max(adjust[gapToRail] ?? 0, 0), thickestFan);
  const centres = Array.from(
    { length: published.fans },
    (_, index) => (index - (published.fans - 1) / 2) * published.fanFrame,
  );
  const holes = fanHolePoints(published.fanFrame);
  const { boxes, features } = tubeEnd(spec, length / 2);
  return {
    boxes: [
      solidBox('core', 'radiator core', { x: centredSpan(0, core), ...section }),
      solidBox('tank, tube end', 'radiator tank', { x: [core / 2, length / 2], ...section }),
      solidBox('tank, far end', 'radiator tank', { x: [-length / 2, -core / 2], ...section }),
      ...boxes,
    ],
    mounts: [
      ...fanMounts('near', published.fanFrame, centres, {
        rotation: rotationAbout('x', 180),
        translation: [0, 0, -thickness / 2],
      }),
      ...fanMounts('far', published.fanFrame, centres, translationBy([0, 0, thickness / 2])),
    ],
    feet: [
      {
        id: 'face',
        label: 'Large face',
        pattern: radiatorMountPattern(spec.row),
        frame: translationBy([0, 0, -thickness / 2 - gap]),
        points: centres.flatMap((x, fan) =>
          holes.map((hole) => ({
            id: `fan ${fan + 1} ${hole.id}`,
            at: [x + hole.at[0], hole.at[1]] as const,
            needed: true,
          })),
        ),
      },
    ],
    features,
    adjustments: [
      { id: gapToRail, label: 'Room for fans at the rail', unit: 'mm', min: 0, max: thickestFan, step: 1 },
    ],
  };
}

function fanMounts(
  face: 'near' | 'far',
  frame: 120 | 140,
  centres: readonly number[],
  at: RigidTransform,
): Mount[] {
  return centres.map((x, index) => ({
    id: `${face} ${index + 1}`,
    label: `Fan ${index + 1}, ${face === 'near' ? 'rail side' : 'inner side'}`,
    patterns: [fanMountPattern(frame)],
    frame: { rotation: at.rotation, translation: [x, at.translation[1], at.translation[2]] },
    turns: [0, 90, 180, 270],
    points: fanHolePoints(frame),
  }));
}

/** Fittings at the tube end and the room in which the tubes turn away. */
function tubeEnd(spec: RadiatorSpec, end: number): { boxes: BodyBox[]; features: Feature[] } {
  const fitting = nominalOr(spec.fitting, liquidCoolerSeen.fittingHeight.value);
  const bend = nominalOr(spec.bend, tubeTurn.beyondFitting.value);
  const diameter = liquidCoolerSeen.portDiameter.value;
  const spacing = liquidCoolerSeen.portSpacing.value;
  const z = centredSpan(0, diameter);
  const boxes: BodyBox[] = [];
  if (fitting > 0) {
    for (const [index, side] of [-1, 1].entries()) {
      const extent: Extent = { x: [end, end + fitting], y: centredSpan((side * spacing) / 2, diameter), z };
      boxes.push(solidBox(`fitting ${index + 1}`, 'tube', extent));
    }
  }
  if (bend === 0) return { boxes, features: [] };
  const turn: Extent = {
    x: [end + fitting, end + fitting + bend],
    y: centredSpan(0, spacing + diameter),
    z,
  };
  boxes.push(reservedBox('bend space, tubes', 'bend space', 'tube', turn, { feature: 'tubes' }));
  return {
    boxes,
    features: [
      {
        id: 'tubes',
        kind: 'tube fitting',
        label: 'Tubes',
        use: ['bend space, tubes'],
        approach: [],
        required: true,
      },
    ],
  };
}
