import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dot } from '../../../geometry';
import { pictureAxes } from '../../../src/viewport/camera/sight';
import { standardViews } from '../../../src/viewport/camera/standard-views';
import { cameraAxes, nearestAxes } from '../../../src/viewport/camera-axes';

const at = { target: [0, 0, 0], height: 100 } as const;

test.each([
  ['side', [1, 0, 0], [0, 1, 0]],
  ['front', [0, 0, -1], [0, 1, 0]],
  ['top', [1, 0, 0], [0, 0, -1]],
] as const)('right and up of the %s view', (view, right, up) => {
  expect(nearestAxes({ ...standardViews[view], ...at })).toMatchObject({ right, up });
});

test('without a viewport the side panel is faced', () => {
  expect(cameraAxes()).toEqual({ right: [1, 0, 0], up: [0, 1, 0], towardsEye: [0, 0, 1] });
});

test('always three different axes, none against the picture', () => {
  const degrees = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
  fc.assert(
    fc.property(degrees(180), degrees(90), (azimuth, elevation) => {
      const sight = { azimuth, elevation, lens: 24, ...at };
      const axes = nearestAxes(sight);
      const picture = pictureAxes(sight);
      const all = [axes.right, axes.up, axes.towardsEye];
      expect(new Set(all.map((unit) => unit.findIndex((value) => value !== 0))).size).toBe(3);
      expect(dot(axes.right, picture.right)).toBeGreaterThanOrEqual(0);
      expect(dot(axes.up, picture.up)).toBeGreaterThanOrEqual(0);
      expect(dot(axes.towardsEye, picture.towardsEye)).toBeGreaterThanOrEqual(0);
    }),
  );
});
