import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FACE_NAMES } from '../../geometry/space/face-names';
import {
  cornersOfBox,
  facePlane,
  growBox,
  type OrientedBox,
  transformBox,
  translateBox,
} from '../../geometry/space/oriented-box';
import { overlapPolyhedron, volumeOfPolyhedron } from '../../geometry/space/overlap-polyhedron';
import { overlapVolume } from '../../geometry/space/overlap-volume';
import { PackedBoxes } from '../../geometry/space/packed-boxes';
import { interiorsOverlap, separateBoxes, signedDistance } from '../../geometry/space/separation';
import { add, distance, dot, length, scale, type Vector3 } from '../../geometry/space/vector';
import { anyBox, anyMotion, propertyRun } from './arbitrary-boxes';

/** Roundoff of lengths up to some 200 mm through some hundred operations, mm; and the volumes of such boxes. */
const ROUNDOFF_MM = 2e-11;
const ROUNDOFF_MM3 = 1e-7;

/** How far a point lies outside a box, mm (negative inside): the greatest height over its six faces. */
function heightOver(box: OrientedBox, point: Vector3): number {
  return Math.max(
    ...FACE_NAMES.map((face) => {
      const plane = facePlane(box, face);
      return dot(plane.normal, point) - plane.offset;
    }),
  );
}

describe('signed separation', { timeout: 60_000 }, () => {
  it('is symmetric', () => {
    fc.assert(
      fc.property(anyBox, anyBox, (a, b) => {
        expect(Math.abs(separateBoxes(a, b).distance - separateBoxes(b, a).distance)).toBeLessThan(
          ROUNDOFF_MM,
        );
      }),
      propertyRun,
    );
  });

  it('does not change when the whole scene moves', () => {
    fc.assert(
      fc.property(anyBox, anyBox, anyMotion, (a, b, motion) => {
        const moved = separateBoxes(transformBox(motion, a), transformBox(motion, b)).distance;
        expect(Math.abs(separateBoxes(a, b).distance - moved)).toBeLessThan(ROUNDOFF_MM);
      }),
      propertyRun,
    );
  });

  it('never grows when a box grows', () => {
    fc.assert(
      fc.property(anyBox, anyBox, fc.double({ min: 0, max: 5, noNaN: true }), (a, b, margin) => {
        const grown = separateBoxes(growBox(a, margin), b).distance;
        expect(grown).toBeLessThanOrEqual(separateBoxes(a, b).distance + ROUNDOFF_MM);
      }),
      propertyRun,
    );
  });

  it('has its witness on both boxes, and a slab between them that proves a gap', () => {
    fc.assert(
      fc.property(anyBox, anyBox, (a, b) => {
        const gap = separateBoxes(a, b);
        expect(Math.abs(length(gap.direction) - 1)).toBeLessThan(1e-9);
        expect(distance(add(gap.pointA, scale(gap.direction, gap.distance)), gap.pointB)).toBeLessThan(2e-6);
        // Equal ways out of an overlap, boxes tilted by a hair: the point may be off by the tilt times the size.
        const allowed = gap.distance < 0 ? 1e-4 : 2e-6;
        expect(heightOver(a, gap.pointA)).toBeLessThan(allowed);
        expect(heightOver(b, gap.pointB)).toBeLessThan(allowed);
        const reachA = Math.max(...cornersOfBox(a).map((corner) => dot(corner, gap.direction)));
        const reachB = Math.min(...cornersOfBox(b).map((corner) => dot(corner, gap.direction)));
        expect(Math.abs(reachB - reachA - gap.distance)).toBeLessThan(2e-6);
      }),
      propertyRun,
    );
  });

  it('tells the way out: moved along it by the depth the boxes touch, by less they still overlap', () => {
    fc.assert(
      fc.property(anyBox, anyBox, (a, b) => {
        const gap = separateBoxes(a, b);
        fc.pre(gap.distance < -1e-3);
        expect(separateBoxes(a, translateBox(b, scale(gap.direction, -gap.distance))).distance).toBe(0);
        const less = separateBoxes(a, translateBox(b, scale(gap.direction, -gap.distance - 1e-4))).distance;
        expect(less).toBeLessThan(-0.9e-4);
      }),
      propertyRun,
    );
  });

  it('agrees with the quick forms', () => {
    fc.assert(
      fc.property(anyBox, anyBox, (a, b) => {
        const packed = PackedBoxes.from([a, b]);
        const { distance: full } = separateBoxes(a, b);
        expect(signedDistance(packed, 0, 1)).toBe(full);
        expect(interiorsOverlap(packed, 0, 1)).toBe(full < 0);
      }),
      propertyRun,
    );
  });
});

describe('overlap volume', { timeout: 60_000 }, () => {
  it('is symmetric, moves with the scene, and agrees with the solid cut face by face', () => {
    fc.assert(
      fc.property(anyBox, anyBox, anyMotion, (a, b, motion) => {
        const volume = overlapVolume(a, b);
        expect(Math.abs(volume - overlapVolume(b, a))).toBeLessThan(ROUNDOFF_MM3);
        const moved = overlapVolume(transformBox(motion, a), transformBox(motion, b));
        expect(Math.abs(volume - moved)).toBeLessThan(ROUNDOFF_MM3);
        const solid = overlapPolyhedron(a, b);
        const cut = solid === undefined ? 0 : volumeOfPolyhedron(solid);
        // The drawn solid joins vertices closer than 2e-7 mm, so its volume is that much less exact.
        expect(Math.abs(volume - cut)).toBeLessThan(1e-3);
        expect(volume > 0).toBe(separateBoxes(a, b).distance < 0);
      }),
      propertyRun,
    );
  });
});
