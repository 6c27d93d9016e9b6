import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dot, subtract } from '../../../geometry';
import { rayThrough, type Sight } from '../../../src/viewport/camera/sight';
import { standardViews } from '../../../src/viewport/camera/standard-views';
import {
  axisPlane,
  facingPlane,
  isDragged,
  meetPlane,
  roundOnPlane,
  stepFor,
} from '../../../src/viewport/pointer/drag-plane';

const screen = { width: 800, height: 600 };
const sight: Sight = { ...standardViews['three-quarter'], target: [180, 170, 90], height: 500 };

describe('the plane under a drag', () => {
  test('is met under every pixel of the canvas when it faces the eye', () => {
    const plane = facingPlane(sight, [120, 80, 40]);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 800 }), fc.integer({ min: 0, max: 600 }), (x, y) => {
        const at = meetPlane(rayThrough(sight, screen, [x, y]), plane);
        expect(at).toBeDefined();
        expect(dot(subtract(at!, plane.through), plane.normal)).toBeCloseTo(0, 6);
      }),
    );
  });

  test('across an axis keeps that coordinate', () => {
    const plane = axisPlane(sight, [120, 80, 40]);
    expect(plane.normal).toEqual([0, 0, 1]);
    expect(meetPlane(rayThrough(sight, screen, [200, 500]), plane)?.[2]).toBeCloseTo(40, 9);
  });

  test.each([
    ['front', [1, 0, 0]],
    ['rear', [1, 0, 0]],
    ['top', [0, 1, 0]],
    ['side', [0, 0, 1]],
  ] as const)('in the %s view is the plane of the drawing', (view, normal) => {
    expect(axisPlane({ ...sight, ...standardViews[view] }, [0, 0, 0]).normal).toEqual(normal);
  });

  test('is not met by a ray along it, nor behind the eye', () => {
    const plane = { through: [0, 0, 0], normal: [0, 1, 0] } as const;
    expect(meetPlane({ origin: [0, 5, 0], direction: [1, 0, 0] }, plane)).toBeUndefined();
    expect(meetPlane({ origin: [0, 5, 0], direction: [0, 1, 0] }, plane)).toBeUndefined();
    expect(meetPlane({ origin: [0, 5, 0], direction: [0, -1, 0] }, plane)).toEqual([0, 0, 0]);
  });
});

describe('steps of a free drag', () => {
  test('are whole millimetres, or tenths when one can see them', () => {
    expect(stepFor(0.6)).toBe(1);
    expect(stepFor(0.05)).toBe(0.1);
  });

  test('leave the coordinate across the plane as it is', () => {
    const plane = { through: [0, 0, 0], normal: [0, 0, 1] } as const;
    expect(roundOnPlane([12.34, 5.67, 11.4748], plane, 1)).toEqual([12, 6, 11.4748]);
    expect(roundOnPlane([12.34, 5.67, 11.4748], plane, 0.1)).toEqual([12.3, 5.7, 11.4748]);
  });
});

test('a press becomes a drag after four pixels', () => {
  expect(isDragged([10, 10], [13, 12])).toBe(false);
  expect(isDragged([10, 10], [14, 10])).toBe(true);
});
