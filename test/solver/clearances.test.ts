import { describe, expect, it } from 'vitest';
import type { Material } from '../../geometry/parts/body';
import { solve } from '../../geometry/solver/solve';
import {
  multiplyRotations as multiply,
  rotationAbout,
  rotationFromAxes,
} from '../../geometry/space/rotation';
import { transformPoint } from '../../geometry/space/transform';
import { type DrawnPart, drawBox, sceneOf } from './scene-of-boxes';

/** Board axes as in an upright enclosure: x down, y forward, z to the side panel. */
const upright = rotationFromAxes([0, -1, 0], [1, 0, 0], [0, 0, 1]);

const board: DrawnPart = {
  id: 'board',
  kind: 'board',
  boxes: [drawBox('board', 'circuit board', [0, 0, -1.6], [244, 244, 0])],
  pose: { rotation: upright, translation: [0, 300, 6] },
};

/** Fins up to z = `top` in the world. */
const cooler = (top: number): DrawnPart => ({
  id: 'cooler',
  kind: 'cooler',
  boxes: [drawBox('fin stack 1', 'fin stack', [60, 180, 50], [100, 300, top])],
});

const enclosure = (material: Material = 'steel'): DrawnPart => ({
  id: 'enclosure',
  kind: 'enclosure',
  boxes: [
    drawBox('side panel', 'side panel', [-1, -1, 170], [401, 351, 174], { material, removable: true }),
    drawBox('front wall', 'front wall', [400, 0, 0], [401, 350, 170]),
  ],
});

const card: DrawnPart = {
  id: 'card',
  kind: 'card',
  boxes: [
    drawBox('bracket plate', 'card bracket', [-1, -30, 0], [0, 10, 120]),
    drawBox('shroud', 'card shroud', [0, -40, 8], [320, 0, 130]),
  ],
  // Card x is world x, card y (to the solder side) is world up, card z world z.
  pose: { rotation: rotationAbout('x', 0), translation: [0, 150, 10] },
};

const fan = (rear: number, up = 120): DrawnPart => ({
  id: 'fan',
  kind: 'fan',
  boxes: [drawBox('frame', 'fan', [rear, up - 60, 20], [rear + 25, up + 60, 140])],
});

const find = (parts: readonly DrawnPart[], rule: string, gaps = {}) =>
  solve(sceneOf(parts, gaps)).clearances.filter((clearance) => clearance.rule === rule);

describe('named clearances', () => {
  it('measures the cooler to the side panel along the normal of the board', () => {
    const [found] = find([enclosure(), board, cooler(166.8)], 'cooler to side panel');
    expect(found?.millimetres).toBeCloseTo(3.2, 9);
    expect(found).toMatchObject({
      title: 'Cooler',
      towards: 'to side panel',
      fit: 'clearance fit',
      sentence: 'Cooler clears the side panel by 3.2 mm.',
      direction: [0, 0, 1],
      from: { part: 'cooler', box: 'fin stack 1', face: '+z' },
      to: { part: 'enclosure', box: 'side panel', face: '-z' },
    });
  });

  it('draws the dimension line between the faces, within both', () => {
    const [found] = find([enclosure(), board, cooler(166.8)], 'cooler to side panel');
    const [start, end] = found?.points ?? [];
    // Middle of the fins, which the panel covers wholly.
    expect(start).toEqual([80, 240, 166.8]);
    expect(end?.[2]).toBeCloseTo(170, 9);
    expect(end?.slice(0, 2)).toEqual([80, 240]);
  });

  it('reads negative when they overlap', () => {
    const [found] = find([enclosure(), board, card, fan(314)], 'card tip');
    expect(found?.millimetres).toBeCloseTo(-6, 9);
    expect(found).toMatchObject({
      fit: 'interference fit',
      towards: 'to fan',
      sentence: 'Card overlaps the fan by 6.0 mm.',
    });
  });

  it('shows only the nearest of what is in front, and says what lies behind it', () => {
    const rear = find([enclosure(), board, card, fan(340)], 'card tip');
    expect(rear.map((clearance) => clearance.parts[1])).toEqual(['fan']);
    expect(rear[0]?.millimetres).toBeCloseTo(20, 9);
    // Past the fan: the wall it stands before.
    const beside = find([enclosure(), board, card, fan(340, 300)], 'card tip');
    expect(beside.map((clearance) => clearance.parts[1])).toEqual(['enclosure']);
    expect(beside[0]?.millimetres).toBeCloseTo(80, 9);
  });

  it('has nothing to say without a board to give the direction, or without a partner', () => {
    expect(find([enclosure(), cooler(160)], 'cooler to side panel')).toEqual([]);
    expect(find([board, cooler(160)], 'cooler to side panel')).toEqual([]);
  });

  it('does not tell an overlap along the tip as one across the fan side', () => {
    const parts = [enclosure(), board, card, fan(314, 100)];
    expect(find(parts, 'card tip')[0]?.millimetres).toBeCloseTo(-6, 9);
    expect(find(parts, 'card to what lies below')).toEqual([]);
  });

  it('measures beside each other where memory stands beside the fan, and above where it stands under it', () => {
    const withFan = (from: number): DrawnPart => ({
      id: 'cooler',
      kind: 'cooler',
      boxes: [drawBox('front fan', 'fan', [100, 180, from], [125, 300, 160])],
    });
    const memory = (rear: number): DrawnPart => ({
      id: 'memory',
      kind: 'memory',
      boxes: [drawBox('module', 'memory module', [rear, 170, 10], [rear + 7, 303, 44])],
    });
    const beside = find([board, withFan(20), memory(129)], 'cooler to memory')[0];
    expect(beside?.millimetres).toBeCloseTo(4, 9);
    expect(beside?.direction).toEqual([1, 0, 0]);
    const under = find([board, withFan(50), memory(110)], 'cooler to memory')[0];
    expect(under?.millimetres).toBeCloseTo(6, 9);
    expect(under?.direction).toEqual([0, 0, -1]);
    const into = find([board, withFan(40), memory(110)], 'cooler to memory')[0];
    expect(into?.millimetres).toBeCloseTo(-4, 9);
    expect(into?.sentence).toBe('The cooler’s front fan overlaps the memory by 4.0 mm.');
  });

  it('says when there is a gap, but a smaller one than wanted', () => {
    const solution = solve(sceneOf([enclosure('glass'), board, cooler(168)]));
    const tight = solution.findings.find((finding) => finding.kind === 'tight');
    expect(tight).toMatchObject({
      id: 'tight/cooler to side panel/cooler/enclosure',
      weight: 'caution',
      sentence: 'Cooler clears the side panel by 2.0 mm. 3.0 mm are wanted.',
    });
    expect(solution.verdict.fits).toBe(true);
  });

  it('takes the gap the plan wants over its own', () => {
    const parts = [enclosure(), board, cooler(168)];
    const [found] = find(parts, 'cooler to side panel', { 'cooler to side panel': 1.5 });
    expect(found?.wanted).toBe(1.5);
    const { findings } = solve(sceneOf(parts, { 'cooler to side panel': 1.5 }));
    expect(findings.filter((finding) => finding.kind === 'tight')).toEqual([]);
  });

  it('counts faces that meet exactly as touching, neither clear nor overlapping', () => {
    const [found] = find([enclosure(), board, cooler(170)], 'cooler to side panel');
    expect(found?.millimetres).toBe(0);
    expect(found?.fit).toBe('clearance fit');
    expect(found?.sentence).toBe('Cooler just touches the side panel.');
  });

  it('is exact along the axes of a turned scene', () => {
    const turn = { rotation: rotationAbout('y', 30), translation: [7, -3, 11] } as const;
    const turned = [enclosure(), board, cooler(166.8)].map((part) => ({
      ...part,
      pose: {
        rotation: turnedBy(part),
        translation: shifted(part),
      },
    }));
    function turnedBy(part: DrawnPart) {
      const own = part.pose?.rotation ?? rotationAbout('x', 0);
      return multiply(turn.rotation, own);
    }
    function shifted(part: DrawnPart) {
      return transformPoint(turn, part.pose?.translation ?? [0, 0, 0]);
    }
    const [found] = find(turned, 'cooler to side panel');
    expect(found?.millimetres).toBeCloseTo(3.2, 9);
    // The line runs from the middle of the fins' face, turned along with everything else.
    const expected = transformPoint(turn, [80, 240, 166.8]);
    found?.points[0].forEach((coordinate, axis) => {
      expect(coordinate).toBeCloseTo(expected[axis] ?? Number.NaN, 6);
    });
  });

  it('wants air below a card with fans, and only a gap below one without', () => {
    const below: DrawnPart = {
      id: 'drive',
      kind: 'drive',
      boxes: [drawBox('case', 'drive', [50, 80, 20], [150, 104, 120])],
    };
    const rule = 'card to what lies below';
    expect(find([board, card, below], rule)[0]).toMatchObject({ wanted: 1 });
    const withFan: DrawnPart = {
      ...card,
      boxes: [...card.boxes, drawBox('fan 1', 'fan', [60, -40, 20], [150, -38, 110])],
    };
    const [found] = find([board, withFan, below], rule);
    expect(found?.wanted).toBe(10);
    expect(found?.millimetres).toBeCloseTo(6, 9);
  });

  it('tells a gap once when two rules measure it', () => {
    const supply: DrawnPart = {
      id: 'supply',
      kind: 'supply',
      boxes: [drawBox('case', 'supply case', [50, 60, 20], [150, 104, 120])],
    };
    const between = solve(sceneOf([board, card, supply])).clearances.filter(
      ({ parts }) => parts.includes('card') && parts.includes('supply'),
    );
    expect(between.map((clearance) => clearance.rule)).toEqual(['card to what lies below']);
  });
});
