import { describe, expect, it } from 'vitest';
import {
  boxFromCorners,
  type OrientedBox,
  transformBox,
  translateBox,
} from '../../geometry/space/oriented-box';
import { multiplyRotations, rotationAbout, rotationFromDegrees } from '../../geometry/space/rotation';
import { separateBoxes } from '../../geometry/space/separation';
import { CONTACT_TOLERANCE_MM } from '../../geometry/space/tolerance';
import type { Vector3 } from '../../geometry/space/vector';

const unit = boxFromCorners([0, 0, 0], [1, 1, 1]);

function expectClose(actual: readonly number[], expected: readonly number[]): void {
  actual.forEach((value, index) => {
    expect(value).toBeCloseTo(expected[index] ?? Number.NaN, 12);
  });
}

describe('distance of axis-aligned boxes (ArborX unit test distance_box_box)', () => {
  const cases: readonly (readonly [Vector3, Vector3, number])[] = [
    [[2, 0, 0], [3, 1, 1], 1],
    [[0, -3, 0], [1, -2, 1], 2],
    [[0, 0, 4], [1, 1, 5], 3],
    [[-4, -4, 0], [-3, -3, 1], 3 * Math.SQRT2],
  ];
  it.each(cases)('from the unit box to %j, %j is %d', (min, max, expected) => {
    expect(separateBoxes(unit, boxFromCorners(min, max)).distance).toBeCloseTo(expected, 14);
  });

  it('from the unit box to the point (2, 0.75, -1), as a box without size, is the square root of 2', () => {
    const point: Vector3 = [2, 0.75, -1];
    expect(separateBoxes(unit, boxFromCorners(point, point)).distance).toBeCloseTo(Math.SQRT2, 14);
  });

  it('is the same by the path for turned boxes', () => {
    const motion = { rotation: rotationFromDegrees([20, -35, 65]), translation: [7, -3, 2] as const };
    for (const [min, max, expected] of cases) {
      const b = transformBox(motion, boxFromCorners(min, max));
      expect(separateBoxes(transformBox(motion, unit), b).distance).toBeCloseTo(expected, 12);
    }
  });
});

/*
 * Two cubes of edge 2, one turned 45 degrees about x, the other 45 degrees about y: the upper edge of the first
 * runs along x at z = sqrt 2, the lower edge of the second along y at z = height - sqrt 2, so the edges cross at
 * a distance of height - 2 sqrt 2, whatever the angle between them seen from above.
 */
describe('crossing edges (closed form)', () => {
  const first: OrientedBox = { centre: [0, 0, 0], half: [1, 1, 1], rotation: rotationAbout('x', 45) };
  const second = (height: number, turn: number): OrientedBox => ({
    centre: [0.2, 0.3, height],
    half: [1, 1, 1],
    rotation: multiplyRotations(rotationAbout('z', turn), rotationAbout('y', 45)),
  });

  it.each([0, 20, -30, 60])('apart, seen from above at right angles plus %d degrees', (turn) => {
    const gap = separateBoxes(first, second(5, turn));
    expect(gap.distance).toBeCloseTo(5 - 2 * Math.SQRT2, 13);
    expectClose(gap.direction, [0, 0, 1]);
    expect(gap.featureA).toHaveLength(2);
    expect(gap.featureB).toHaveLength(2);
    expect(gap.pointA[1]).toBeCloseTo(0, 12);
    expect(gap.pointA[2]).toBeCloseTo(Math.SQRT2, 12);
    expect(gap.pointB[2]).toBeCloseTo(5 - Math.SQRT2, 12);
  });

  it('into each other by 0.05', () => {
    const gap = separateBoxes(first, second(2 * Math.SQRT2 - 0.05, 25));
    expect(gap.distance).toBeCloseTo(-0.05, 13);
    expectClose(gap.direction, [0, 0, 1]);
    expect(gap.featureA).toHaveLength(2);
    expect(gap.featureB).toHaveLength(2);
  });

  it('touching', () => {
    expect(separateBoxes(first, second(2 * Math.SQRT2, 25)).distance).toBe(0);
  });
});

describe('flat bars laid across each other, turned out of the axes', () => {
  const motion = { rotation: rotationFromDegrees([33, 21, -57]), translation: [1, 2, 3] as const };
  const along = boxFromCorners([-10, -1, 0], [10, 1, 1]);
  const across = boxFromCorners([-1, -10, 4], [1, 10, 5]);

  it('are as far apart as their faces though no corner faces the other bar', () => {
    const gap = separateBoxes(transformBox(motion, along), transformBox(motion, across));
    expect(gap.distance).toBeCloseTo(3, 12);
    expect(gap.featureA).toEqual(['+z']);
    expect(gap.featureB).toEqual(['-z']);
    const slanted: OrientedBox = { ...across, rotation: rotationAbout('z', 17) };
    const turned = separateBoxes(transformBox(motion, along), transformBox(motion, slanted));
    expect(turned.distance).toBeCloseTo(3, 12);
  });
});

describe('contact', () => {
  const above = (gap: number) => boxFromCorners([0.2, 0.3, 1 + gap], [0.9, 0.8, 2]);

  it('within the tolerance is touching, neither a gap nor an overlap', () => {
    for (const gap of [0, 0.9e-6, -0.9e-6]) expect(separateBoxes(unit, above(gap)).distance).toBe(0);
    expect(separateBoxes(unit, above(2 * CONTACT_TOLERANCE_MM)).distance).toBeCloseTo(2e-6, 12);
    expect(separateBoxes(unit, above(-2 * CONTACT_TOLERANCE_MM)).distance).toBeCloseTo(-2e-6, 12);
  });

  it('names the faces and puts the witness in the middle of what they share', () => {
    const gap = separateBoxes(unit, above(0));
    expect([gap.faceA, gap.faceB]).toEqual(['+z', '-z']);
    expect([gap.featureA, gap.featureB]).toEqual([['+z'], ['-z']]);
    expectClose(gap.pointA, [0.55, 0.55, 1]);
    expectClose(gap.direction, [0, 0, 1]);
  });

  it('takes the shortest of the ways out of an overlap', () => {
    const gap = separateBoxes(unit, translateBox(unit, [0.9, 0.3, -0.2]));
    expect(gap.distance).toBeCloseTo(-0.1, 14);
    expectClose(gap.direction, [1, 0, 0]);
    const inside = separateBoxes(unit, boxFromCorners([0.4, 0.4, 0.7], [0.6, 0.6, 0.8]));
    expect(inside.distance).toBeCloseTo(-0.3, 14);
    expectClose(inside.direction, [0, 0, 1]);
  });
});

describe('names of faces follow the box that carries them', () => {
  it('after quarter turns', () => {
    const turned: OrientedBox = { ...unit, rotation: rotationAbout('z', 90) };
    const gap = separateBoxes(turned, translateBox(unit, [3, 0, 0]));
    expect([gap.faceA, gap.faceB]).toEqual(['-y', '-x']);
  });
});
