import fc from 'fast-check';
import type { OrientedBox } from '../../geometry/space/oriented-box';
import type { Rotation } from '../../geometry/space/rotation';
import { rotationFromDegrees } from '../../geometry/space/rotation';
import type { RigidTransform } from '../../geometry/space/transform';
import type { Vector3 } from '../../geometry/space/vector';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

export const anyPoint: fc.Arbitrary<Vector3> = fc.tuple(number(-40, 40), number(-40, 40), number(-40, 40));

/** Any turn, quarter turns and nearly parallel ones among them. */
export const anyRotation: fc.Arbitrary<Rotation> = fc
  .tuple(angle(), angle(), angle())
  .map((degrees) => rotationFromDegrees(degrees));

function angle(): fc.Arbitrary<number> {
  return fc.oneof(
    number(-180, 180),
    fc.constantFrom(0, 30, 45, 90, 180, 270),
    fc.constantFrom(1e-3, 1e-5, 1e-7, 1e-9, 90 + 1e-8),
  );
}

export const anyBox: fc.Arbitrary<OrientedBox> = fc.record({
  centre: anyPoint,
  half: fc.tuple(number(0.5, 25), number(0.5, 25), number(0.5, 25)),
  rotation: anyRotation,
});

export const anyMotion: fc.Arbitrary<RigidTransform> = fc.record({
  rotation: anyRotation,
  translation: anyPoint,
});

/** fast-check settings: a fixed seed, so that a run can be repeated. */
export const propertyRun = { seed: 20262, numRuns: 2000 };
