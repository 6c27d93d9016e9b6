import { describe, expect, it } from 'vitest';
import type { BodyBox, Feature } from '../../geometry/parts/body';
import { solve } from '../../geometry/solver/solve';
import { identityTransform, translationBy } from '../../geometry/space/transform';
import { type DrawnPart, drawBox, sceneOf } from './scene-of-boxes';

const panel = (from: number): DrawnPart => ({
  id: 'enclosure',
  kind: 'enclosure',
  boxes: [drawBox('side panel', 'side panel', [-100, -100, from], [500, 300, from + 4], { removable: true })],
});

const socket = (required: boolean): Feature => ({
  id: 'power 1',
  kind: 'power socket',
  label: 'Power socket 1',
  use: ['plug 1', 'bend 1'],
  approach: [],
  required,
});

/** A card whose plug ends at z = 150 and whose lead needs up to z = 165. */
const cardWithPlug = (required: boolean): DrawnPart => ({
  id: 'card',
  kind: 'card',
  boxes: [
    drawBox('shroud', 'card shroud', [0, 0, 10], [300, 50, 130]),
    drawBox('plug 1', 'plug', [150, 10, 130], [170, 20, 150], { role: 'plug space' }),
    drawBox('bend 1', 'plug', [150, 10, 150], [170, 20, 165], { role: 'bend space' }),
  ],
  features: [socket(required)],
});

function intrusions(parts: readonly DrawnPart[]) {
  return solve(sceneOf(parts)).findings.filter((finding) => finding.kind === 'intrusion');
}

describe('space for plugs and the bend of leads', () => {
  it('is a fault when a plug that is certainly used stands against the panel', () => {
    const [finding, ...more] = intrusions([panel(160), cardWithPlug(true)]);
    expect(more).toEqual([]);
    expect(finding).toMatchObject({
      id: 'intrusion/card/power 1/enclosure',
      weight: 'fault',
      parts: ['card', 'enclosure'],
      feature: 'power 1',
      overlaps: [[3, 0]],
      sentence: 'The card’s lead bend has too little room: the side panel takes 5.0 mm of it.',
    });
    expect(finding?.millimetres).toBeCloseTo(-5, 9);
    expect(finding?.faces).toEqual([
      { part: 'card', box: 'bend 1', face: '+z' },
      { part: 'enclosure', box: 'side panel', face: '-z' },
    ]);
  });

  it('is a caution for a plug that may stay empty', () => {
    expect(intrusions([panel(160), cardWithPlug(false)])[0]?.weight).toBe('caution');
  });

  it('says how short a plug would have to be', () => {
    // The shroud ends at 130, the panel begins at 160.
    expect(intrusions([panel(160), cardWithPlug(true)])[0]?.waysOut).toContain(
      'A plug and lead that need no more than 30.0 mm fit.',
    );
  });

  it('is nothing when the panel only touches the space', () => {
    expect(intrusions([panel(165), cardWithPlug(true)])).toEqual([]);
  });

  it('is one finding for the plug and the bend of one socket', () => {
    const found = intrusions([panel(148), cardWithPlug(true)]);
    expect(found.map((finding) => finding.overlaps.length)).toEqual([2]);
  });

  it('does not hold reserved space against reserved space, nor against solids of its own part', () => {
    const other = { ...cardWithPlug(true), id: 'card-2', pose: translationBy([0, -10, 35]) };
    // The shroud of the second card ends at z = 165, its lower edge at 45: moved aside so that only spaces meet.
    const aside = { ...other, pose: translationBy([301, 0, 0]) };
    expect(intrusions([cardWithPlug(true), aside])).toEqual([]);
  });
});

describe('breathing space', () => {
  const air = (depth: number): BodyBox =>
    drawBox('breathing space, intake', 'fan', [0, 0, 25], [100, 100, 25 + depth], {
      role: 'breathing space',
    });
  const fan = (extra: Partial<DrawnPart> = {}): DrawnPart => ({
    id: 'fan',
    kind: 'fan',
    boxes: [drawBox('frame', 'fan', [0, 0, 0], [100, 100, 25]), air(40)],
    ...extra,
  });
  const plate = (from: number, x = 100): DrawnPart => ({
    id: 'plate',
    kind: 'drive',
    boxes: [drawBox('case', 'drive', [0, 0, from], [x, 100, from + 2])],
  });

  it('says how much air is left, and grades it', () => {
    const [near] = intrusions([fan(), plate(35)]);
    expect(near?.weight).toBe('caution');
    expect(near?.sentence).toBe('Plate leaves the fan 10.0 mm of the 40.0 mm of air wanted.');
    expect(near?.millimetres).toBeCloseTo(-30, 9);
    const [far] = intrusions([fan(), plate(55)]);
    expect(far?.weight).toBe('note');
    const [narrow] = intrusions([fan(), plate(35, 10)]);
    expect(narrow?.weight).toBe('note');
    expect(narrow?.sentence).toContain('over 10 % of its area');
  });

  it('is not blocked by vents, mesh, fans and radiators', () => {
    const wall = (box: BodyBox): DrawnPart => ({ id: 'enclosure', kind: 'enclosure', boxes: [box] });
    const at = [
      [-10, -10, 30],
      [110, 110, 31],
    ] as const;
    expect(intrusions([fan(), wall(drawBox('floor vent 1', 'vent', ...at))])).toEqual([]);
    expect(intrusions([fan(), wall(drawBox('floor', 'floor', ...at, { material: 'mesh' }))])).toEqual([]);
    expect(intrusions([fan(), wall(drawBox('floor', 'floor', ...at))])).toHaveLength(1);
    const second: DrawnPart = { ...fan(), id: 'fan-2', pose: translationBy([0, 0, 30]) };
    expect(intrusions([fan(), second])).toEqual([]);
  });

  it('is not blocked by the wall the fan itself is screwed to, but by what stands before it', () => {
    const mount = {
      id: 'seat',
      label: 'Fan seat',
      patterns: ['fan 120'],
      // z points from the wall into the enclosure, where the fan is.
      frame: {
        rotation: [1, 0, 0, 0, -1, 0, 0, 0, -1] as const,
        translation: [50, 50, 25] as const,
      },
    };
    const wall = (boxes: readonly BodyBox[]): DrawnPart => ({
      id: 'enclosure',
      kind: 'enclosure',
      boxes,
      mounts: [mount],
    });
    const rim = drawBox('front wall', 'front wall', [-10, -10, 25], [20, 110, 27]);
    const cage = drawBox('block cage', 'cage', [0, 0, -30], [100, 100, -20]);
    const breathesIn = fan({ seat: { on: 'enclosure', mount: 'seat' } });
    expect(intrusions([wall([rim]), breathesIn])).toEqual([]);
    expect(intrusions([wall([rim]), fan()])).toHaveLength(1);
    const inwards: DrawnPart = {
      ...fan({ seat: { on: 'enclosure', mount: 'seat' } }),
      boxes: [
        drawBox('frame', 'fan', [0, 0, 0], [100, 100, 25]),
        drawBox('breathing space, intake', 'fan', [0, 0, -40], [100, 100, 0], { role: 'breathing space' }),
      ],
    };
    expect(intrusions([wall([rim, cage]), inwards])[0]?.sentence).toBe(
      'Block cage leaves the fan 20.0 mm of the 40.0 mm of air wanted.',
    );
  });

  it('belongs to the fan and the radiator it sits on together', () => {
    const radiator: DrawnPart = {
      id: 'radiator',
      kind: 'radiator',
      boxes: [drawBox('tank', 'radiator tank', [-20, 0, 25], [120, 100, 52])],
      mounts: [{ id: 'near 1', label: 'Fan 1, rail side', patterns: ['fan 120'], frame: identityTransform }],
    };
    expect(intrusions([radiator, fan({ seat: { on: 'radiator', mount: 'near 1' } })])).toEqual([]);
    expect(intrusions([radiator, fan()])).toHaveLength(1);
  });
});
