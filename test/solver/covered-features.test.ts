import { describe, expect, it } from 'vitest';
import type { Feature } from '../../geometry/parts/body';
import { solve } from '../../geometry/solver/solve';
import { translationBy } from '../../geometry/space/transform';
import { type DrawnPart, drawBox, sceneOf } from './scene-of-boxes';

const feature = (more: Partial<Feature> = {}): Feature => ({
  id: 'slot 3',
  kind: 'expansion slot',
  label: 'Slot 3',
  use: ['slot 3 space'],
  approach: ['slot 3 lift'],
  mount: 'slot 3',
  required: false,
  ...more,
});

const board = (slot: Feature): DrawnPart => ({
  id: 'board',
  kind: 'board',
  boxes: [
    drawBox('circuit board', 'circuit board', [0, 0, -2], [200, 200, 0]),
    drawBox('slot 3 space', 'expansion slot', [40, 10, 10], [60, 100, 120], { role: 'plug space' }),
    drawBox('slot 3 lift', 'expansion slot', [40, 10, 120], [60, 100, 240], { role: 'hand space' }),
  ],
  mounts: [{ id: 'slot 3', label: 'Slot 3', patterns: ['slot x1'], frame: translationBy([50, 50, 3]) }],
  features: [slot],
});

/** A card lying over z from `low` to `high`, 6 mm into the space of the slot. */
const card = (low: number, high: number, more: Partial<DrawnPart> = {}): DrawnPart => ({
  id: 'card',
  kind: 'card',
  boxes: [drawBox('shroud', 'card shroud', [54, 0, low], [90, 150, high])],
  ...more,
});

function covered(parts: readonly DrawnPart[]) {
  return solve(sceneOf(parts)).findings.filter((finding) => finding.kind === 'covered');
}

describe('covered features', () => {
  it('are unusable when a solid stands in their room', () => {
    const [finding, ...more] = covered([board(feature()), card(20, 110)]);
    expect(more).toEqual([]);
    expect(finding).toMatchObject({
      id: 'covered/board/slot 3',
      weight: 'caution',
      parts: ['card', 'board'],
      feature: 'slot 3',
      sentence: 'Slot 3 is covered by the card and cannot be used.',
    });
    expect(finding?.millimetres).toBeCloseTo(-6, 9);
  });

  it('are a fault when the machine does not run without them', () => {
    const header = feature({ kind: 'header', required: true });
    expect(covered([board(header), card(20, 110)])[0]?.weight).toBe('fault');
  });

  it('are usable before the part goes in when only the way to them is blocked', () => {
    expect(covered([board(feature()), card(125, 200)])[0]).toMatchObject({
      weight: 'note',
      sentence: 'Slot 3 can be used only before the card goes in.',
    });
  });

  it('are free when nothing reaches their room', () => {
    expect(covered([board(feature()), { ...card(20, 110), pose: translationBy([6, 0, 0]) }])).toEqual([]);
  });

  it('are in use, not covered, when the part that stands in them sits in them', () => {
    const seat = { on: 'board', mount: 'slot 3' };
    expect(covered([board(feature()), card(20, 110, { seat })])).toEqual([]);
  });

  it('say what has to come out before what sits in them can be changed', () => {
    const guest: DrawnPart = {
      id: 'sound',
      kind: 'card',
      boxes: [drawBox('board', 'card board', [49, 20, 12], [51, 90, 80])],
      seat: { on: 'board', mount: 'slot 3' },
    };
    const [finding] = covered([board(feature()), guest, card(90, 200)]);
    expect(finding).toMatchObject({
      weight: 'note',
      parts: ['card', 'board'],
      sentence: 'Sound can be changed only with the card out.',
    });
  });

  it('do not count a panel that comes off as in the way of hands', () => {
    const side = (removable: boolean): DrawnPart => ({
      id: 'enclosure',
      kind: 'enclosure',
      boxes: [
        drawBox('side panel', 'side panel', [0, 0, 150], [200, 200, 154], removable ? { removable } : {}),
      ],
    });
    expect(covered([board(feature()), side(true)])).toEqual([]);
    expect(covered([board(feature()), side(false)])).toHaveLength(1);
  });
});
