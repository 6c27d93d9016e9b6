import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  degreesOfRotation,
  identityRotation,
  isProperRotation,
  multiplyRotations,
  rotateVector,
  rotationAbout,
  rotationFromAxes,
  rotationFromDegrees,
} from '../../geometry/space/rotation';
import { compose, invert, transformPoint } from '../../geometry/space/transform';
import { distance } from '../../geometry/space/vector';
import { anyMotion, anyPoint, anyRotation, propertyRun } from './arbitrary-boxes';

describe('rotations', () => {
  it('turn right-handed about each axis', () => {
    expect(rotateVector(rotationAbout('x', 90), [0, 1, 0])).toEqual([0, 0, 1]);
    expect(rotateVector(rotationAbout('y', 90), [0, 0, 1])).toEqual([1, 0, 0]);
    expect(rotateVector(rotationAbout('z', 90), [1, 0, 0])).toEqual([0, 1, 0]);
  });

  it('have entries of exactly 0, 1 and -1 at every multiple of 90 degrees', () => {
    for (const axis of ['x', 'y', 'z'] as const) {
      for (let degrees = -720; degrees <= 720; degrees += 90) {
        for (const entry of rotationAbout(axis, degrees)) expect([0, 1, -1]).toContain(entry + 0);
      }
      expect(rotationAbout(axis, 360)).toEqual(identityRotation);
    }
  });

  it('apply document angles about the fixed axes in the order x, y, z', () => {
    const expected = multiplyRotations(
      rotationAbout('z', 50),
      multiplyRotations(rotationAbout('y', 40), rotationAbout('x', 30)),
    );
    expect(rotationFromDegrees([30, 40, 50])).toEqual(expected);
  });

  it('give back the angles they were made from', () => {
    for (const degrees of [
      [0, 0, 0],
      [30, 40, 50],
      [-90, 12.5, 180],
      [0, 90, 35],
      [0, -90, -120],
    ] as const) {
      expect(degreesOfRotation(rotationFromDegrees(degrees))).toEqual(degrees);
    }
  });

  it('survive the way to degrees and back', () => {
    fc.assert(
      fc.property(anyRotation, (rotation) => {
        const back = rotationFromDegrees(degreesOfRotation(rotation));
        rotation.forEach((entry, index) => {
          expect(Math.abs(entry - (back[index] ?? Number.NaN))).toBeLessThan(1e-10);
        });
      }),
      propertyRun,
    );
  });

  it('are proper, and left-handed or skew axes are refused', () => {
    fc.assert(fc.property(anyRotation, isProperRotation), propertyRun);
    expect(rotationFromAxes([0, 1, 0], [0, 0, 1], [1, 0, 0])).toEqual([0, 0, 1, 1, 0, 0, 0, 1, 0]);
    expect(() => rotationFromAxes([0, 1, 0], [1, 0, 0], [0, 0, 1])).toThrow(RangeError);
    expect(() => rotationFromAxes([1, 0, 0], [0.1, 1, 0], [0, 0, 1])).toThrow(RangeError);
  });
});

describe('rigid motions', () => {
  it('compose inner first and undo by their inverse', () => {
    fc.assert(
      fc.property(anyMotion, anyMotion, anyPoint, (outer, inner, p) => {
        const there = transformPoint(compose(outer, inner), p);
        expect(distance(there, transformPoint(outer, transformPoint(inner, p)))).toBeLessThan(1e-11);
        expect(distance(transformPoint(invert(outer), transformPoint(outer, p)), p)).toBeLessThan(1e-11);
      }),
      propertyRun,
    );
  });
});
