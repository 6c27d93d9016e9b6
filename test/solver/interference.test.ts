import { describe, expect, it } from 'vitest';
import { solve } from '../../geometry/solver/solve';
import { rotationAbout } from '../../geometry/space/rotation';
import { type DrawnPart, drawBox, sceneOf } from './scene-of-boxes';

const cube = (id: string, x: number, kind: DrawnPart['kind'] = 'drive'): DrawnPart => ({
  id,
  kind,
  boxes: [drawBox('case', 'drive', [x, 0, 0], [x + 10, 10, 10])],
});

function interferences(parts: readonly DrawnPart[]) {
  return solve(sceneOf(parts)).findings.filter((finding) => finding.kind === 'interference');
}

describe('interference', () => {
  it('is one fault a pair, with depth, volume and the shortest way out', () => {
    const [finding, ...more] = interferences([cube('drive-1', 0), cube('drive-2', 7)]);
    expect(more).toEqual([]);
    expect(finding).toMatchObject({
      id: 'interference/drive-1/drive-2',
      weight: 'fault',
      parts: ['drive-1', 'drive-2'],
      sentence: 'Drive 1 overlaps drive 2 by 3.0 mm.',
    });
    expect(finding?.millimetres).toBeCloseTo(-3, 9);
    expect(finding?.volume).toBeCloseTo(300, 9);
    expect(finding?.escape?.distance).toBeCloseTo(3, 9);
    expect(finding?.escape?.direction).toEqual([-1, 0, 0]);
    expect(finding?.faces.map((face) => face.face)).toEqual(['+x', '-x']);
  });

  it('does not count touching', () => {
    expect(interferences([cube('a', 0), cube('b', 10)])).toEqual([]);
    expect(interferences([cube('a', 0), cube('b', 10 - 1e-7)])).toEqual([]);
    expect(interferences([cube('a', 0), cube('b', 10 - 1e-5)])).toHaveLength(1);
  });

  it('gathers all box pairs of two parts, the deepest giving the number and all the volume', () => {
    const comb: DrawnPart = {
      id: 'comb',
      kind: 'cooler',
      boxes: [
        drawBox('fin stack 1', 'fin stack', [0, 0, 0], [10, 10, 10]),
        drawBox('front fan', 'fan', [0, 20, 0], [14, 30, 10]),
      ],
    };
    const bar: DrawnPart = {
      id: 'bar',
      kind: 'memory',
      boxes: [drawBox('module', 'memory module', [9, 0, 0], [40, 40, 10])],
    };
    const [finding] = interferences([bar, comb]);
    expect(finding?.parts).toEqual(['comb', 'bar']);
    expect(finding?.overlaps).toEqual([
      [1, 0],
      [2, 0],
    ]);
    expect(finding?.millimetres).toBeCloseTo(-5, 9);
    expect(finding?.volume).toBeCloseTo(1 * 100 + 5 * 100, 9);
    expect(finding?.escape?.distance).toBeCloseTo(5, 9);
    expect(finding?.sentence).toBe('The comb’s front fan overlaps the bar by 5.0 mm.');
  });

  it('finds the way out of a gap whose walls are nearer than the depth of one of them', () => {
    // The part stands in a slot 12 wide and pokes 3 into the left wall: 3 to the right is free, 2 more would hit.
    const slot: DrawnPart = {
      id: 'slot',
      kind: 'enclosure',
      boxes: [
        drawBox('left', 'cage', [0, 0, 0], [5, 50, 10]),
        drawBox('right', 'cage', [17, 0, 0], [22, 50, 10]),
      ],
    };
    const drive: DrawnPart = {
      id: 'drive',
      kind: 'drive',
      boxes: [drawBox('case', 'drive', [2, 10, 0], [12, 20, 10])],
    };
    const [finding] = interferences([slot, drive]);
    expect(finding?.escape?.distance).toBeCloseTo(3, 9);
    expect(finding?.escape?.direction).toEqual([1, 0, 0]);
  });

  it('is exact for turned parts', () => {
    // A square turned by 45 degrees has its corner 10 / sqrt(2) from its middle.
    const turned: DrawnPart = {
      id: 'turned',
      kind: 'drive',
      boxes: [drawBox('case', 'drive', [-5, -5, 0], [5, 5, 10])],
      pose: { rotation: rotationAbout('z', 45), translation: [0, 5, 0] },
    };
    const corner = Math.SQRT1_2 * 10;
    const apart = interferences([turned, cube('wall', corner + 0.001)]);
    const into = interferences([turned, cube('wall', corner - 0.5)]);
    expect(apart).toEqual([]);
    expect(into[0]?.escape?.distance).toBeCloseTo(0.5, 9);
  });

  it('lets engaging hardware into the boxes that receive its mount, and into nothing else', () => {
    const board = (receives: readonly string[]): DrawnPart => ({
      id: 'board',
      kind: 'board',
      boxes: [drawBox('slot 2', 'expansion slot', [0, 0, 0], [10, 10, 10], { receives })],
      mounts: [
        {
          id: 'slot 2',
          label: 'Slot 2',
          patterns: ['slot x16'],
          frame: { rotation: rotationAbout('z', 0), translation: [0, 0, 0] },
        },
      ],
    });
    const card = (engages: boolean, seated: boolean): DrawnPart => ({
      id: 'card',
      kind: 'card',
      boxes: [drawBox('fingers', 'card board', [4, 2, 5], [6, 8, 20], engages ? { engages } : {})],
      ...(seated ? { seat: { on: 'board', mount: 'slot 2' } } : {}),
    });
    expect(interferences([board(['slot 2']), card(true, true)])).toEqual([]);
    expect(interferences([board(['slot 3']), card(true, true)])).toHaveLength(1);
    expect(interferences([board(['slot 2']), card(false, true)])).toHaveLength(1);
    expect(interferences([board(['slot 2']), card(true, false)])).toHaveLength(1);
  });
});
