/** Plate that carries a smaller supply in the opening of a larger one; frame in `fields.ts`, mm. */
import { boxFromCorners } from '../../space/oriented-box';
import { type Rectangle, subtractRectangles } from '../../space/rectangles';
import { rotationFromAxes } from '../../space/rotation';
import type { RigidTransform } from '../../space/transform';
import { supplyOpeningRim } from '../../standards/enclosure-practice';
import { sfxToAtxPlate, supplyForms } from '../../standards/supply-forms';
import type { PartModel } from '../body';
import type { Contradiction } from '../contradiction';
import { nominal, nominalOr } from '../dimension';
import { type SupplyForm, supplyMountPattern } from '../patterns';
import { supplyFacePoints, supplyFacePointsBothWays } from '../supply-face';
import type { SupplyPlateSpec } from './fields';

/** Axes of a supply mount in the frame of the plate: x up, y to the right seen from outside, z inwards. */
const faceAxes = rotationFromAxes([0, 1, 0], [0, 0, 1], [1, 0, 0]);

/** The supply hangs on the inner face of the plate, so it moves inwards by the plate's thickness. */
export function buildSupplyPlate(spec: SupplyPlateSpec): PartModel {
  const thickness = nominalOr(spec.thickness, sfxToAtxPlate.thickness.value);
  const outer = faceOf(spec.opening);
  const [up, right] = offsetOf(spec);
  const centre = (x: number, y: number, z: number): RigidTransform => ({
    rotation: faceAxes,
    translation: [x, y, z],
  });
  const seat = centre(thickness, outer.height / 2 + up, outer.width / 2 + right);
  const pieces = plateRectangles(spec);
  return {
    boxes: pieces.map((piece, i) => ({
      name: pieces.length === 1 ? 'plate' : `plate ${i + 1}`,
      role: 'solid',
      element: 'adapter plate',
      material: 'steel',
      box: boxFromCorners([0, piece.min[0], piece.min[1]], [thickness, piece.max[0], piece.max[1]]),
    })),
    mounts: [
      {
        id: 'supply',
        label: `Opening for ${spec.takes}`,
        patterns: [supplyMountPattern(spec.takes)],
        frame: seat,
        turns: [0, 180],
        points: supplyFacePointsBothWays(spec.takes),
      },
    ],
    feet: [
      {
        id: 'plate',
        label: 'Plate',
        pattern: supplyMountPattern(spec.opening),
        frame: centre(0, outer.height / 2, outer.width / 2),
        points: supplyFacePoints(spec.opening).map((point) => ({ ...point, needed: true })),
      },
    ],
    features: [],
    adjustments: [],
  };
}

function faceOf(form: SupplyForm): { height: number; width: number } {
  const { height, width } = supplyForms[form];
  return { height: height.value, width: width.value };
}

function offsetOf(spec: SupplyPlateSpec): readonly [number, number] {
  return spec.offset ? [nominal(spec.offset[0]), nominal(spec.offset[1])] : [0, 0];
}

/** Plate in (up, right), less the face of the supply but for the rim its screws sit in. */
function plateRectangles(spec: SupplyPlateSpec): readonly Rectangle[] {
  const [outer, inner] = [faceOf(spec.opening), faceOf(spec.takes)];
  const [up, right] = offsetOf(spec);
  const middle = [outer.height / 2 + up, outer.width / 2 + right] as const;
  const half = [inner.height / 2 - supplyOpeningRim.value, inner.width / 2 - supplyOpeningRim.value] as const;
  return subtractRectangles({ min: [0, 0], max: [outer.height, outer.width] }, [
    {
      min: [middle[0] - half[0], middle[1] - half[1]],
      max: [middle[0] + half[0], middle[1] + half[1]],
    },
  ]);
}

/** The supply's face must lie on the plate. */
export function supplyPlateContradictions(spec: SupplyPlateSpec): readonly Contradiction[] {
  const [outer, inner] = [faceOf(spec.opening), faceOf(spec.takes)];
  if (inner.height > outer.height || inner.width > outer.width) {
    const message = `"Takes a supply of" (${spec.takes}, ${inner.width} x ${inner.height} mm) is larger than "Fills an opening for" (${spec.opening}, ${outer.width} x ${outer.height} mm)`;
    return [{ path: ['takes'], message }];
  }
  const [up, right] = offsetOf(spec);
  const spare = [(outer.height - inner.height) / 2, (outer.width - inner.width) / 2] as const;
  if (Math.abs(up) <= spare[0] && Math.abs(right) <= spare[1]) return [];
  const message = `"Offset of the supply" (${up} up, ${right} right) puts it beyond the plate: "Takes a supply of" leaves ${spare[0]} mm up or down and ${spare[1]} mm to either side`;
  return [{ path: ['offset'], message }];
}
