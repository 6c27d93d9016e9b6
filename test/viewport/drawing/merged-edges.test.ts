import { describe, expect, test } from 'vitest';
import { length, subtract } from '../../../geometry';
import { type Edge, type Extent, mergedEdges } from '../../../src/viewport/drawing/merged-edges';

const box = (x: number, y: number, z: number, dx: number, dy: number, dz: number): Extent => ({
  min: [x, y, z],
  max: [x + dx, y + dy, z + dz],
});
const total = (edges: readonly Edge[]) =>
  edges.reduce((sum, { from, to }) => sum + length(subtract(to, from)), 0);

describe('the edges of boxes drawn as one', () => {
  test('one box has its twelve', () => {
    const edges = mergedEdges([box(0, 0, 0, 10, 20, 30)]);
    expect(edges).toHaveLength(12);
    expect(total(edges)).toBe(4 * (10 + 20 + 30));
    expect(edges.every(({ recess }) => !recess)).toBe(true);
  });

  test('each edge knows the two faces that meet in it', () => {
    const top = mergedEdges([box(0, 0, 0, 1, 1, 1)]).filter(({ faces }) =>
      faces.some((face) => face[1] === 1),
    );
    expect(top).toHaveLength(4);
    for (const { from, to } of top) expect([from[1], to[1]]).toEqual([1, 1]);
  });

  test('a plate cut in two is the plate again', () => {
    const whole = mergedEdges([box(0, 0, 0, 40, 20, 1)]);
    const halves = mergedEdges([box(0, 0, 0, 25, 20, 1), box(25, 0, 0, 15, 20, 1)]);
    expect(total(halves)).toBe(total(whole));
  });

  test('a frame of four pieces has an outline and an opening, and no seams', () => {
    const frame = mergedEdges([
      box(0, 0, 0, 40, 10, 1),
      box(0, 30, 0, 40, 10, 1),
      box(0, 10, 0, 10, 20, 1),
      box(30, 10, 0, 10, 20, 1),
    ]);
    const outline = 2 * 4 * 40 + 4;
    const opening = 2 * 4 * 20 + 4;
    expect(total(frame)).toBe(outline + opening);
  });

  test('a step has one recess', () => {
    const step = mergedEdges([box(0, 0, 0, 10, 10, 10), box(10, 0, 0, 10, 5, 10)]);
    const recesses = step.filter(({ recess }) => recess);
    expect(recesses).toHaveLength(1);
    expect(recesses[0]).toMatchObject({ from: [10, 5, 0], to: [10, 5, 10] });
    expect(recesses[0]?.faces).toEqual(
      expect.arrayContaining([
        [1, 0, 0],
        [0, 1, 0],
      ]),
    );
  });

  test('a box inside another has none', () => {
    expect(total(mergedEdges([box(0, 0, 0, 10, 10, 10), box(2, 2, 2, 3, 3, 3)]))).toBe(120);
  });
});
