import { describe, expect, test } from 'vitest';
import type { Vector3 } from '../../../geometry';
import type { Sight } from '../../../src/viewport/camera/sight';
import { standardViews } from '../../../src/viewport/camera/standard-views';
import { drawDimension } from '../../../src/viewport/overlay/dimension-geometry';

const screen = { width: 800, height: 600 };
/** One millimetre is two pixels. */
const side: Sight = { ...standardViews.side, target: [0, 0, 0], height: 300 };

function draw(length: number, direction: Vector3 = [1, 0, 0], sight = side) {
  const to: Vector3 = [direction[0] * length, direction[1] * length, direction[2] * length];
  return drawDimension(sight, screen, [[0, 0, 0], to], direction);
}

/** All coordinates of path data, in pairs. */
function points(path: string): (readonly [number, number])[] {
  const numbers = path.match(/-?\d+(\.\d+)?/g)?.map(Number) ?? [];
  return numbers.flatMap((x, index) => (index % 2 ? [] : [[x, numbers[index + 1] ?? 0] as const]));
}

describe('a dimension', () => {
  test('runs between the two points at the scale of the view', () => {
    expect(draw(50)).toMatchObject({ from: [400, 300], to: [500, 300], middle: [450, 300] });
  });

  test('has its arrowheads inside a long gap, tips on the ends', () => {
    const xs = points(draw(50)?.arrows ?? '').map(([x]) => x);
    expect(Math.min(...xs)).toBe(400);
    expect(Math.max(...xs)).toBe(500);
  });

  test('has them outside a small one, pointing inwards', () => {
    const xs = points(draw(5)?.arrows ?? '').map(([x]) => x);
    expect(Math.min(...xs)).toBeLessThan(395);
    expect(Math.max(...xs)).toBeGreaterThan(415);
  });

  test('stands between extension lines across it', () => {
    const drawing = draw(50);
    expect(drawing?.aside[0]).toBeCloseTo(0, 6);
    expect(drawing?.aside[1]).toBeCloseTo(-1, 6);
  });

  test('seen end on is a point in a ring', () => {
    const drawing = draw(30, [0, 0, 1]);
    expect(drawing?.from).toEqual(drawing?.to);
    expect(drawing?.lines).toContain('A');
  });

  test('of no length still points both ways along its direction', () => {
    const xs = points(draw(0)?.arrows ?? '').map(([x]) => x);
    expect(Math.max(...xs) - Math.min(...xs)).toBeGreaterThan(15);
  });

  test('behind the eye is not drawn', () => {
    const near: Sight = {
      ...standardViews['three-quarter'],
      azimuth: 0,
      elevation: 0,
      target: [0, 0, 0],
      height: 20,
    };
    expect(
      drawDimension(
        near,
        screen,
        [
          [0, 0, 500],
          [10, 0, 500],
        ],
        [1, 0, 0],
      ),
    ).toBeUndefined();
  });
});
