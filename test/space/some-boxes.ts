import fc from 'fast-check';
import { FACE_NAMES } from '../../geometry/space/face-names';
import { boxFromCorners, faceNormal, type OrientedBox } from '../../geometry/space/oriented-box';
import { rotationFromDegrees } from '../../geometry/space/rotation';
import { normalise, type Vector3 } from '../../geometry/space/vector';

const whole = (min: number, max: number) => fc.integer({ min, max });

/** Along the world axes, with corners on whole millimetres, so that faces often meet and line up exactly. */
export const gridBox: fc.Arbitrary<OrientedBox> = fc
  .tuple(whole(-20, 20), whole(-20, 20), whole(-20, 20), whole(1, 15), whole(1, 15), whole(1, 15))
  .map(([x, y, z, a, b, c]) => boxFromCorners([x, y, z], [x + a, y + b, z + c]));

/** In any orientation. */
export const someBox: fc.Arbitrary<OrientedBox> = fc
  .record({
    centre: fc.tuple(coordinate(), coordinate(), coordinate()),
    half: fc.tuple(size(), size(), size()),
    degrees: fc.tuple(whole(-180, 180), whole(-90, 90), whole(-180, 180)),
  })
  .map(({ centre, half, degrees }) => ({ centre, half, rotation: rotationFromDegrees(degrees) }));

function coordinate(): fc.Arbitrary<number> {
  return fc.double({ min: -20, max: 20, noNaN: true });
}

function size(): fc.Arbitrary<number> {
  return fc.double({ min: 0.5, max: 8, noNaN: true });
}

const unit = boxFromCorners([-1, -1, -1], [1, 1, 1]);
export const axisDirections: readonly Vector3[] = FACE_NAMES.map((face) => faceNormal(unit, face));

/** A unit direction, along a world axis more often than not. */
export const directions: fc.Arbitrary<Vector3> = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...axisDirections) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(whole(-9, 9), whole(-9, 9), whole(-9, 9))
      .filter(([x, y, z]) => x !== 0 || y !== 0 || z !== 0)
      .map((vector) => normalise(vector)),
  },
);
