import { describe, expect, test } from 'vitest';
import { type AirArrow, type AirPicture, cross, dot, subtract, type Vector3 } from '../../../geometry';
import { airLabels } from '../../../src/viewport/air/air-labels';
import { shownArrows } from '../../../src/viewport/air/arrow-layer';
import { arrowShape } from '../../../src/viewport/air/arrow-shape';
import { arrowLength, colourOfWarmth, warmth } from '../../../src/viewport/air/arrow-sizes';

const arrow = (more: Partial<AirArrow>): AirArrow => ({
  kind: 'fan',
  at: [0, 0, 0],
  along: [1, 0, 0],
  flow: 10,
  celsius: 30,
  label: 'Fan',
  part: 'fan',
  ...more,
});

const picture = (arrows: readonly AirArrow[]): AirPicture => ({
  arrows,
  coldest: 20,
  warmest: 50,
  largestFlow: 40,
});

describe('an arrow', () => {
  test('is longer for more air, with the root of the flow, and never too small to see', () => {
    const [full, quarter] = [arrow({ flow: 40 }), arrow({ flow: 10 })].map((one) => arrowLength(one, 40));
    expect((full ?? 0) / (quarter ?? 1)).toBeCloseTo(2, 9);
    expect(arrowLength(arrow({ flow: 0.01 }), 40)).toBeGreaterThan(10);
    expect(arrowLength(arrow({ flow: 40, kind: 'inside' }), 40)).toBeLessThan(full ?? 0);
  });

  test('is cold, pale or warm by its place between the coldest and the warmest air', () => {
    const colours = { cold: [0, 0, 1], middle: [1, 1, 1], warm: [1, 0, 0] } as const;
    const of = (celsius: number) => colourOfWarmth(warmth(celsius, picture([])), colours);
    expect(of(20)).toEqual([0, 0, 1]);
    expect(of(35)).toEqual([1, 1, 1]);
    expect(of(50)).toEqual([1, 0, 0]);
    expect(of(70)).toEqual([1, 0, 0]);
    expect(warmth(20, { ...picture([]), warmest: 20 })).toBe(0);
  });

  test('goes with the side of a cut that is taken away', () => {
    const all = picture([arrow({ at: [0, 0, 10] }), arrow({ at: [0, 0, 90] })]);
    const kept = (flipped: boolean) =>
      shownArrows(all, { axis: 'z', at: 50, flipped }).map(({ at }) => at[2]);
    expect(kept(false)).toEqual([10]);
    expect(kept(true)).toEqual([90]);
    expect(shownArrows(all, undefined)).toHaveLength(2);
  });
});

test('temperatures are written at one arrow of every fan and at the largest flows elsewhere', () => {
  const inside = Array.from({ length: 9 }, (_, i) => arrow({ kind: 'inside', flow: i + 1, at: [i, 0, 0] }));
  const card = [12, 14].map((flow) => arrow({ part: 'card', label: 'Card', flow, celsius: 31.4 }));
  const labels = airLabels(picture([arrow({}), ...card, ...inside]));
  expect(labels.filter(({ arrow: { part } }) => part === 'card').map(({ words }) => words)).toEqual([
    '31 °C',
  ]);
  expect(
    labels.filter(({ arrow: { kind } }) => kind === 'inside').map(({ arrow: { flow } }) => flow),
  ).toEqual([9, 8, 7, 6]);
  expect(new Set(labels.map(({ id }) => id)).size).toBe(labels.length);
  expect(airLabels(picture([arrow({}), ...card, ...inside]), 2)).toHaveLength(2);
});

test('every face of the arrow looks outwards, and it is one long about its middle', () => {
  const shape = arrowShape();
  const { array } = shape.getAttribute('position');
  const normals = shape.getAttribute('normal').array;
  const at = (list: ArrayLike<number>, i: number): Vector3 => [
    list[3 * i] ?? 0,
    list[3 * i + 1] ?? 0,
    list[3 * i + 2] ?? 0,
  ];
  const heights: number[] = [];
  for (let i = 0; i < array.length / 3; i += 3) {
    const [a, b, c] = [at(array, i), at(array, i + 1), at(array, i + 2)];
    heights.push(a[1], b[1], c[1]);
    const face = cross(subtract(b, a), subtract(c, a));
    if (Math.hypot(...face) < 1e-9) continue;
    for (const corner of [0, 1, 2]) expect(dot(face, at(normals, i + corner))).toBeGreaterThan(0);
  }
  expect([Math.min(...heights), Math.max(...heights)]).toEqual([-0.5, 0.5]);
});
