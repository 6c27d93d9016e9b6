import { describe, expect, it } from 'vitest';
import { solve } from '../../geometry/solver/solve';
import { rotationAbout } from '../../geometry/space/rotation';
import { type DrawnPart, drawBox, sceneOf } from './scene-of-boxes';

const block = (id: string, from: readonly [number, number, number], size = 10): DrawnPart => ({
  id,
  kind: 'drive',
  boxes: [drawBox('case', 'drive', from, [from[0] + size, from[1] + size, from[2] + size])],
});

const neighboursOf = (parts: readonly DrawnPart[], id: string) =>
  Object.fromEntries(
    solve(sceneOf(parts))
      .neighbours.filter((neighbour) => neighbour.part === id)
      .map((neighbour) => [neighbour.direction, neighbour]),
  );

describe('nearest neighbours', () => {
  it('are found in all six directions, with the faces that meet', () => {
    const parts = [
      block('middle', [0, 0, 0]),
      block('right', [13, 5, 0]),
      block('far-right', [40, 0, 0]),
      block('left', [-30, -9, 9]),
      block('above', [0, 17, 0]),
      block('beside', [10, 30, 0]),
    ];
    const found = neighboursOf(parts, 'middle');
    expect(found['+x']).toEqual({
      part: 'middle',
      direction: '+x',
      millimetres: 3,
      from: { part: 'middle', box: 'case', face: '+x' },
      to: { part: 'right', box: 'case', face: '-x' },
    });
    expect(found['-x']?.millimetres).toBe(20);
    expect(found['+y']?.millimetres).toBe(7);
    expect(found['-y']).toEqual({ part: 'middle', direction: '-y' });
    expect(neighboursOf(parts, 'right')['-x']?.to?.part).toBe('middle');
  });

  it('are at 0 on a side that touches, and free to leave it', () => {
    const found = neighboursOf([block('a', [0, 0, 0]), block('b', [10, 0, 0])], 'a');
    expect(found['+x']?.millimetres).toBe(0);
    expect(found['-x']?.millimetres).toBeUndefined();
    expect(found['+y']?.millimetres).toBeUndefined();
  });

  it('count no fingers in their slot as an obstacle', () => {
    const board: DrawnPart = {
      id: 'board',
      kind: 'board',
      boxes: [drawBox('slot', 'expansion slot', [0, 0, 0], [10, 10, 10], { receives: ['slot'] })],
      mounts: [
        {
          id: 'slot',
          label: 'Slot',
          patterns: [],
          frame: { rotation: rotationAbout('z', 0), translation: [0, 0, 0] },
        },
      ],
    };
    const card = (seat: DrawnPart['seat']): DrawnPart => ({
      id: 'card',
      kind: 'card',
      boxes: [
        drawBox('fingers', 'card board', [4, 1, 5], [6, 9, 12], { engages: true }),
        drawBox('board', 'card board', [4, -20, 12], [6, 60, 90]),
      ],
      ...(seat ? { seat } : {}),
    });
    const seated = neighboursOf([board, card({ on: 'board', mount: 'slot' })], 'card');
    expect(seated['+z']?.millimetres).toBeUndefined();
    expect(seated['-z']?.millimetres).toBe(2);
    expect(neighboursOf([board, card(undefined)], 'card')['+z']?.millimetres).toBe(0);
  });

  it('are exact for turned parts', () => {
    const turned: DrawnPart = {
      ...block('turned', [-5, -5, 0]),
      pose: { rotation: rotationAbout('z', 45), translation: [0, 5, 0] },
    };
    const found = neighboursOf([turned, block('wall', [20, 0, 0])], 'turned');
    expect(found['+x']?.millimetres).toBeCloseTo(20 - 10 * Math.SQRT1_2, 9);
  });
});
