import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, dot, length, scale, subtract, type Vector3 } from '../../../geometry';
import { fitSight } from '../../../src/viewport/camera/fit-sight';
import { GLIDE_MS, glide } from '../../../src/viewport/camera/glide';
import { orbit, pan, wrapDegrees, zoomAt } from '../../../src/viewport/camera/move-sight';
import { pictureAxes, projectPoint, rayThrough, type Sight } from '../../../src/viewport/camera/sight';
import { standardViews } from '../../../src/viewport/camera/standard-views';

const screen = { width: 800, height: 600 };
const coordinate = fc.double({ min: -300, max: 300, noNaN: true });
const point = fc.tuple(coordinate, coordinate, coordinate);
const sight: fc.Arbitrary<Sight> = fc.record({
  target: point,
  azimuth: fc.double({ min: -180, max: 180, noNaN: true }),
  elevation: fc.double({ min: -90, max: 90, noNaN: true }),
  height: fc.double({ min: 50, max: 1500, noNaN: true }),
  lens: fc.constantFrom(0, 24),
});

describe('the picture', () => {
  test('has right-handed axes of unit length from every side', () => {
    fc.assert(
      fc.property(sight, (seen) => {
        const { right, up, towardsEye } = pictureAxes(seen);
        for (const axis of [right, up, towardsEye]) expect(length(axis)).toBeCloseTo(1, 9);
        expect(dot(right, up)).toBeCloseTo(0, 9);
        const cross: Vector3 = [
          right[1] * up[2] - right[2] * up[1],
          right[2] * up[0] - right[0] * up[2],
          right[0] * up[1] - right[1] * up[0],
        ];
        expect(length(subtract(cross, towardsEye))).toBeLessThan(1e-9);
      }),
    );
  });

  test.each([
    ['side', [1, 0, 0], [0, 1, 0]],
    ['front', [0, 0, -1], [0, 1, 0]],
    ['rear', [0, 0, 1], [0, 1, 0]],
    ['back', [-1, 0, 0], [0, 1, 0]],
    ['top', [1, 0, 0], [0, 0, -1]],
    ['floor', [1, 0, 0], [0, 0, 1]],
  ] as const)('of the %s view lies along the axes of the world', (view, right, up) => {
    const axes = pictureAxes({ ...standardViews[view], target: [0, 0, 0], height: 1 });
    expect(length(subtract(axes.right, right))).toBeLessThan(1e-9);
    expect(length(subtract(axes.up, up))).toBeLessThan(1e-9);
  });

  test('is the other way round of the ray under the pixel', () => {
    fc.assert(
      fc.property(sight, point, (seen, place) => {
        const projected = projectPoint(seen, screen, place);
        fc.pre(projected.visible && Math.abs(projected.at[0]) < 4000 && Math.abs(projected.at[1]) < 4000);
        const { origin, direction } = rayThrough(seen, screen, projected.at);
        const along = dot(subtract(place, origin), direction);
        const nearest = add(origin, scale(direction, along));
        expect(length(subtract(nearest, place))).toBeLessThan(1e-6);
        expect(along).toBeGreaterThan(0);
      }),
    );
  });

  test('is to scale in the standard views', () => {
    const seen = { ...standardViews.side, target: [0, 0, 0] as Vector3, height: 300 };
    const near = projectPoint(seen, screen, [100, 0, 200]).at;
    const far = projectPoint(seen, screen, [100, 0, -200]).at;
    expect(near).toEqual(far);
    expect(near[0] - screen.width / 2).toBeCloseTo(200, 9);
  });
});

describe('moving the camera', () => {
  test('zooming keeps what is under the pointer in the plane of the target', () => {
    fc.assert(
      fc.property(sight, fc.double({ min: 0.5, max: 2, noNaN: true }), (seen, factor) => {
        const at = [610, 120] as const;
        const before = rayThrough(seen, screen, at);
        const { towardsEye } = pictureAxes(seen);
        const depth =
          dot(subtract(seen.target, before.origin), towardsEye) / dot(before.direction, towardsEye);
        const under = add(before.origin, scale(before.direction, depth));
        const after = projectPoint(zoomAt(seen, screen, at, factor), screen, under).at;
        expect(after[0]).toBeCloseTo(at[0], 4);
        expect(after[1]).toBeCloseTo(at[1], 4);
      }),
    );
  });

  test('panning moves the picture with the hand', () => {
    const seen: Sight = { ...standardViews['three-quarter'], target: [10, 20, 30], height: 400 };
    const before = projectPoint(seen, screen, seen.target).at;
    const after = projectPoint(pan(seen, screen, 30, -12), screen, seen.target).at;
    expect(after[0] - before[0]).toBeCloseTo(30, 0);
    expect(after[1] - before[1]).toBeCloseTo(-12, 0);
  });

  test('turning never goes over the top, and opens the lens of a standard view', () => {
    const seen: Sight = { ...standardViews.side, target: [0, 0, 0], height: 400 };
    expect(orbit(seen, 0, 5000).elevation).toBe(90);
    expect(orbit(seen, 0, -5000).elevation).toBe(-90);
    expect(orbit(seen, 4, 0).lens).toBeGreaterThan(0);
    expect(orbit(seen, 1000, 0).lens).toBe(standardViews['three-quarter'].lens);
  });

  test.each([
    [190, -170],
    [-190, 170],
    [720, 0],
    [180, 180],
    [-180, 180],
  ])('%d degrees are %d', (angle, wrapped) => {
    expect(wrapDegrees(angle)).toBe(wrapped);
  });
});

describe('fitting', () => {
  const insets = { top: 30, right: 20, bottom: 60, left: 40 };

  test('shows every corner between the insets and touches two of them', () => {
    const lengths = fc.double({ min: 20, max: 600, noNaN: true });
    fc.assert(
      fc.property(sight, point, fc.tuple(lengths, lengths, lengths), (seen, min, size) => {
        const bounds = { min, max: add(min, size) };
        const fitted = fitSight(seen, bounds, screen, insets);
        const seenAt = [0, 1, 2, 3, 4, 5, 6, 7].map(
          (k) =>
            projectPoint(fitted, screen, [
              k & 1 ? bounds.max[0] : min[0],
              k & 2 ? bounds.max[1] : min[1],
              k & 4 ? bounds.max[2] : min[2],
            ]).at,
        );
        const [left, right] = [Math.min(...seenAt.map(([x]) => x)), Math.max(...seenAt.map(([x]) => x))];
        const [top, bottom] = [Math.min(...seenAt.map(([, y]) => y)), Math.max(...seenAt.map(([, y]) => y))];
        const tolerance = 1.5;
        expect(left).toBeGreaterThan(insets.left - tolerance);
        expect(right).toBeLessThan(screen.width - insets.right + tolerance);
        expect(top).toBeGreaterThan(insets.top - tolerance);
        expect(bottom).toBeLessThan(screen.height - insets.bottom + tolerance);
        const slack = Math.min(
          screen.width - insets.right - insets.left - (right - left),
          screen.height - insets.bottom - insets.top - (bottom - top),
        );
        expect(Math.abs(slack)).toBeLessThan(3);
      }),
      { numRuns: 200 },
    );
  });
});

describe('gliding', () => {
  const from: Sight = { ...standardViews.rear, target: [0, 0, 0], height: 300 };
  const to: Sight = { ...standardViews.back, target: [50, 0, 0], height: 600 };

  test('starts where it is, ends exactly at the goal, and takes the short way round', () => {
    expect(glide(from, to, 0)).toMatchObject({ azimuth: -90, height: expect.closeTo(300, 9) });
    expect(glide(from, to, 1)).toBe(to);
    expect(glide(from, to, 0.5).azimuth).toBeCloseTo(-135, 9);
    expect(GLIDE_MS).toBeLessThan(500);
  });

  test('never passes through a camera infinitely far away', () => {
    for (let step = 0; step < 1; step += 0.05) expect(glide(from, to, step).lens).toBeGreaterThan(0);
  });
});
