import { describe, expect, it } from 'vitest';
import { buildBoard } from '../../../geometry/parts/board/board';
import { buildEnclosure } from '../../../geometry/parts/enclosure/enclosure';
import { matchHoles } from '../../../geometry/plan/mounting';
import { compose, transformPoint } from '../../../geometry/space/transform';
import { microAtxBoard, miniItxBoard } from '../board/sample-boards';
import { freeStretch, isInSolid, seat, standing } from './placed';
import { atxTower, microAtxTower } from './sample-enclosures';

const inch = 25.4;

/**
 * World coordinates of a point of the board frame in an upright enclosure, from the documents alone: the rear panel's
 * inner face (x = 0) is 0.483 in behind hole row A, B, C, which is 0.400 in from the board's rear edge (ATX 2.2
 * figures 3 and 4); the board stands 40 mm below the top of 460 on 6.35 mm standoffs and is 0.062 in thick.
 */
const rearEdgeX = (0.483 - 0.4) * inch;
const topEdgeY = 460 - 40;
const faceZ = 6.35 + 0.062 * inch;
const world = (x: number, y: number, z: number) => [rearEdgeX + y, topEdgeY - x, faceZ + z] as const;

const model = buildEnclosure(atxTower);
const inRearWall = -0.5;

describe('the rear aperture of an upright enclosure (ATX 2.2 figure 4)', () => {
  const centre = [inRearWall, world(80, 0, 0)[1], world(0, 0, 20)[2]] as const;

  it('is 6.250 in wide and ends 0.296 in above hole C (5.196 in from hole A)', () => {
    const [low, high] = freeStretch(model, centre, 1);
    expect(high - low).toBeCloseTo(6.25 * inch, 6);
    const holeA = world(11.35 * inch, 0, 0)[1];
    expect(low - holeA).toBeCloseTo(5.196 * inch, 6);
    const holeC = world(6.45 * inch, 0, 0)[1];
    expect(low - holeC).toBeCloseTo(0.296 * inch, 6);
  });

  it('is 1.750 in high from 0.150 in below the component side, 4.11 mm above the tray (microATX 1.2 figure 4)', () => {
    const [low, high] = freeStretch(model, centre, 2);
    expect(high - low).toBeCloseTo(1.75 * inch, 6);
    expect(low).toBeCloseTo(faceZ - 0.15 * inch, 6);
    expect(low).toBeCloseTo(4.11, 1);
  });

  it('is open right through', () => {
    expect(freeStretch(model, centre, 0)[0]).toBe(-Infinity);
  });
});

describe('the slot openings of an upright enclosure (CEM 3.0)', () => {
  // Slot 1 lies 1.862 in from hole B (8.250 in) towards the top edge, pitch 0.800 in: figure 9-20.
  const centreline = (slot: number) => (8.25 - 1.862 + (slot - 1) * 0.8) * inch;

  it.each([1, 2, 3, 4, 5, 6, 7])(
    'opens the connector window of a bracket in slot %i (figures 9-5 and 9-22)',
    (slot) => {
      // Window from 1.14 to 13.20 past the slot's centreline, z 8.20 to 98.10.
      const middle = [inRearWall, world(centreline(slot) + 7.17, 0, 0)[1], world(0, 0, 50)[2]] as const;
      const [low, high] = freeStretch(model, middle, 1);
      expect(high - low).toBeCloseTo(13.25, 6);
      expect(high).toBeGreaterThan(world(centreline(slot) + 1.14, 0, 0)[1]);
      expect(low).toBeLessThan(world(centreline(slot) + 13.2, 0, 0)[1]);
      const [bottom, top] = freeStretch(model, middle, 2);
      expect(top - bottom).toBeCloseTo(100.71, 1);
      expect(bottom).toBeLessThan(faceZ + 8.2);
      expect(top).toBeGreaterThan(faceZ + 98.1);
    },
  );

  it('leaves sheet between neighbouring openings and a flange under the wing plane (z 108.26)', () => {
    const between = world(centreline(2) - 3, 0, 0)[1];
    expect(isInSolid(model, [inRearWall, between, faceZ + 50])).toBe(true);
    expect(isInSolid(model, [inRearWall, world(centreline(2) + 7, 0, 0)[1], faceZ + 105.5])).toBe(true);
    expect(isInSolid(model, [inRearWall, world(centreline(2) + 7, 0, 0)[1], faceZ + 108.7])).toBe(false);
  });

  it('has as many openings as the sheet says', () => {
    const beyond = world(centreline(8) + 7.17, 0, 0)[1];
    expect(isInSolid(model, [inRearWall, beyond, faceZ + 50])).toBe(true);
  });

  it('lets the tongue reach 11.76 mm below the component side (120.02 - 104.86 - 3.40, figures 9-3 and 9-5)', () => {
    // Tongue 2.05 to 12.25 past the centreline; card-side face of the bracket at y -1.09, outer face at -1.95.
    for (const across of [2.05, 7, 12.25]) {
      for (const y of [-1.95, -1.09]) {
        expect(isInSolid(model, world(centreline(3) + across, y, -11.76))).toBe(false);
      }
    }
  });

  it('holds a card with its key notch 59.21 mm before the rear panel (12.27 + 46.94) and 3.40 mm above the board', () => {
    const board = seat(buildBoard(microAtxBoard), standing(model), 'board');
    for (const slot of [1, 2, 3, 4]) {
      const mount = board.model.mounts.find((candidate) => candidate.id === `slot ${slot}`);
      if (!mount) throw new Error('the slot is missing');
      const at = compose(board.pose, mount.frame);
      expect(at.translation[0]).toBeCloseTo(12.27 + 46.94, 2);
      expect(at.translation[1]).toBeCloseTo(topEdgeY - centreline(slot), 6);
      expect(at.translation[2]).toBeCloseTo(faceZ + 3.4, 6);
      // A card points forward, its component side down in a tower, its top edge to the side panel.
      expect(transformPoint(at, [1, 0, 0])[0] - at.translation[0]).toBeCloseTo(1, 12);
      expect(transformPoint(at, [0, -1, 0])[1] - at.translation[1]).toBeCloseTo(-1, 12);
    }
  });
});

describe('standoffs and holes', () => {
  const tower = standing(model);
  const boardMount = tower.model.mounts.find((mount) => mount.id === 'board');
  const footOf = (spec: typeof microAtxBoard) => {
    const foot = buildBoard(spec).feet[0];
    if (!foot || !boardMount) throw new Error('board or mount is missing');
    return { foot, boardMount };
  };

  it('meet for a microATX board in an ATX enclosure that has B, R and S too (microATX 1.2 figure 2)', () => {
    const { foot, boardMount: mount } = footOf(microAtxBoard);
    const match = matchHoles(mount, foot);
    expect(match.met.map(({ hole }) => hole.id).sort()).toEqual([...'BCFHJLMRS']);
    expect(match.missing).toEqual([]);
    expect(match.extra).toEqual([]);
  });

  it('miss B and R for a microATX board on the nine standoffs of ATX (ATX 2.2 figure 2)', () => {
    const bare = buildEnclosure({ ...atxTower, board: { ...atxTower.board, holes: 'ACFGHJKLM' } });
    const mount = bare.mounts.find((candidate) => candidate.id === 'board');
    const { foot } = footOf(microAtxBoard);
    if (!mount) throw new Error('no board mount');
    const match = matchHoles(mount, foot);
    expect(match.missing.map((hole) => hole.id).sort()).toEqual(['B', 'R']);
    expect(match.extra).toEqual([]);
  });

  it('leave standoffs of a microATX enclosure beside a Mini-ITX board, none under it', () => {
    const mount = buildEnclosure(microAtxTower).mounts.find((candidate) => candidate.id === 'board');
    const { foot } = footOf(miniItxBoard);
    if (!mount) throw new Error('no board mount');
    const match = matchHoles(mount, foot);
    expect(match.met.map(({ hole }) => hole.id).sort()).toEqual([...'CFHJ']);
    expect(match.extra).toEqual([]);
  });

  it('keep the sub-pitches of ATX 2.2 figure 3 between standoffs', () => {
    const at = (letter: string) => boardMount?.points?.find((point) => point.id === letter)?.at ?? [NaN, NaN];
    expect(at('A')[0] - at('C')[0]).toBeCloseTo(4.9 * inch, 9);
    expect(at('A')[0] - at('F')[0]).toBeCloseTo(11.1 * inch, 9);
    expect(at('G')[1] - at('A')[1]).toBeCloseTo(6.1 * inch, 9);
    expect(at('K')[1] - at('A')[1]).toBeCloseTo(8.95 * inch, 9);
    expect(at('F')[1] - at('C')[1]).toBeCloseTo(0.9 * inch, 9);
  });
});
