import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cross, length, type OrientedBox, rotationAbout, subtract, type Vector3 } from '../../../geometry';
import { cutBox } from '../../../src/viewport/drawing/cut-faces';

function area(polygon: readonly Vector3[]): number {
  const [first] = polygon;
  let sum: Vector3 = [0, 0, 0];
  for (let corner = 2; corner < polygon.length; corner++) {
    const part = cross(subtract(polygon[corner - 1]!, first!), subtract(polygon[corner]!, first!));
    sum = [sum[0] + part[0], sum[1] + part[1], sum[2] + part[2]];
  }
  return length(sum) / 2;
}

const upright: OrientedBox = { centre: [0, 0, 0], half: [10, 20, 30], rotation: rotationAbout('z', 0) };

describe('the face a plane cuts in a box', () => {
  test('is the cross-section of an upright box', () => {
    for (const [axis, expected] of [
      [0, 40 * 60],
      [1, 20 * 60],
      [2, 20 * 40],
    ] as const) {
      const polygon = cutBox(upright, axis, 3);
      expect(polygon).toHaveLength(4);
      expect(area(polygon)).toBeCloseTo(expected, 9);
      for (const corner of polygon) expect(corner[axis]).toBeCloseTo(3, 12);
    }
  });

  test('is empty beside the box', () => {
    expect(cutBox(upright, 0, 10.01)).toEqual([]);
    expect(cutBox(upright, 0, -10.01)).toEqual([]);
  });

  test('of a box turned by 45 degrees through its middle is as wide as its diagonal', () => {
    const turned = { ...upright, half: [10, 10, 5] as const, rotation: rotationAbout('z', 45) };
    expect(area(cutBox(turned, 0, 0))).toBeCloseTo(Math.SQRT2 * 20 * 10, 9);
  });

  test('adds up to the volume of the box, however it stands', () => {
    const angle = fc.double({ min: 0, max: 360, noNaN: true });
    fc.assert(
      fc.property(angle, fc.constantFrom('x', 'y', 'z'), fc.constantFrom(0, 1, 2), (degrees, about, axis) => {
        const box: OrientedBox = { ...upright, rotation: rotationAbout(about as 'x', degrees) };
        const [steps, reach] = [4000, 40];
        let volume = 0;
        for (let step = 0; step < steps; step++) {
          const polygon = cutBox(box, axis as 0, -reach + ((step + 0.5) * 2 * reach) / steps);
          if (polygon.length > 2) volume += (area(polygon) * 2 * reach) / steps;
        }
        expect(volume / (20 * 40 * 60)).toBeCloseTo(1, 2);
      }),
      { numRuns: 20 },
    );
  });
});
