import { describe, expect, it } from 'vitest';
import type { Plan } from '../../geometry/plan/plan-schema';
import { demoLikeBuild } from './demo-like-build';
import { clashes, edited, solvePlan, without } from './edited-plan';

const plan = demoLikeBuild();

function waysOut(of: Plan, id: string): readonly string[] {
  const finding = solvePlan(of).findings.find((candidate) => candidate.id === id);
  if (!finding) throw new Error(`no finding ${id}`);
  return finding.waysOut;
}

/** The numbers in a sentence, in order. */
const numbersIn = (sentence: string): readonly number[] =>
  [...sentence.matchAll(/\d+(?:\.\d+)?(?= mm)/g)].map(([digits]) => Number(digits));

const withLength = (length: number, of = plan): Plan =>
  edited(of, { card: { spec: { length, boardLength: 280 } } });

describe('ways out of a card that is too long', () => {
  const long = withLength(400);
  const [way] = waysOut(long, 'interference/card/fan-2').filter((sentence) => sentence.includes(' long '));
  const [most = 0, withoutFan = 0] = numbersIn(way ?? '');

  it('name the longest that fits and what binds', () => {
    expect(way).toMatch(/^A card up to [\d.]+ mm long fits; front fan 1 binds; without it, [\d.]+ mm\.$/);
  });

  it('are true: that length fits and a little more does not', () => {
    expect(clashes(withLength(most))).toEqual([]);
    expect(clashes(withLength(most + 0.2))).toEqual(['interference/card/fan-2']);
  });

  it('are true of the next face too: without the fan', () => {
    const bare = without(plan, 'fan-2');
    expect(clashes(withLength(withoutFan, bare))).toEqual([]);
    expect(clashes(withLength(withoutFan + 0.2, bare))).toEqual(['interference/card/enclosure']);
  });

  it('stand beside the clearance as its limit even while everything fits', () => {
    const tip = solvePlan(plan).clearances.find((clearance) => clearance.rule === 'card tip');
    expect(numbersIn(tip?.limit ?? '')).toEqual([most, withoutFan]);
  });
});

describe('ways out of a cooler fan that meets memory', () => {
  // The fan stands 36 mm above the lid; a module of 44 mm reaches into it, one of 34 mm does not.
  const tall = edited(plan, { memory: { spec: { height: 44 } } });
  const ways = waysOut(tall, 'interference/cooler/memory');
  const raise = ways.find((sentence) => sentence.startsWith('Raise'));

  it('raise the fan by whole millimetres, no more than needed', () => {
    expect(raise).toMatch(/^Raise the front fan by \d+ mm\.$/);
    const [by = 0] = numbersIn(raise ?? '');
    const raised = (mm: number) => edited(tall, { cooler: { adjust: { 'front fan raise': mm } } });
    expect(clashes(raised(by))).toEqual([]);
    expect(clashes(raised(by - 1))).toEqual(['interference/cooler/memory']);
  });

  it('say the highest module that fits', () => {
    const limit = ways.find((sentence) => sentence.startsWith('A memory module up to'));
    const [most = 0] = numbersIn(limit ?? '');
    expect(clashes(edited(plan, { memory: { spec: { height: most } } }))).toEqual([]);
    expect(clashes(edited(plan, { memory: { spec: { height: most + 0.2 } } }))).not.toEqual([]);
  });

  it('do not raise the fan into the side panel', () => {
    const narrow = edited(tall, {
      enclosure: { spec: { interior: { length: 420, height: 420, trayToSide: 172.5, behindTray: 22 } } },
    });
    const offered = waysOut(narrow, 'interference/cooler/memory');
    expect(offered.some((sentence) => sentence.startsWith('Raise'))).toBe(false);
  });
});

describe('other ways out', () => {
  it('keep the wanted gap by the height that leaves it', () => {
    const fans = [{ place: 'front', size: 120, bottom: 30 }];
    const near = edited(plan, {
      cooler: { spec: { fans } },
      enclosure: { spec: { interior: { length: 420, height: 420, trayToSide: 173, behindTray: 22 } } },
    });
    const [way] = waysOut(near, 'tight/cooler to side panel/cooler/enclosure');
    const [most = 0] = numbersIn(way ?? '');
    expect(way).toMatch(/keeps the 3\.0 mm wanted\.$/);
    const lower = edited(near, { cooler: { spec: { height: most } } });
    const gap = solvePlan(lower).clearances.find((clearance) => clearance.rule === 'cooler to side panel');
    expect(gap?.millimetres).toBeGreaterThanOrEqual(3 - 1e-9);
    expect(gap?.millimetres).toBeLessThan(3.1);
  });

  it('thin the card that covers a slot', () => {
    const [way] = waysOut(plan, 'covered/board/slot 4');
    const [most = 0] = numbersIn(way ?? '');
    const covered = (thickness: number) =>
      solvePlan(edited(plan, { card: { spec: { thickness } } })).findings.some(
        (finding) => finding.id === 'covered/board/slot 4',
      );
    expect(covered(most)).toBe(false);
    expect(covered(most + 0.2)).toBe(true);
  });

  it('move the card to another slot that is free and takes it', () => {
    // A second long slot below, and a cage where the card in slot 2 would be.
    const slots = [
      { position: 1, size: 'x1' },
      { position: 2, size: 'x16' },
      { position: 4, size: 'x16' },
    ];
    const blocked = edited(without(plan, 'm2-a', 'm2-b'), {
      board: { spec: { slots, m2: [] } },
      card: { spec: { thickness: 22, bracketSlots: 1 } },
      enclosure: { spec: { blocks: [{ id: 'bar', from: [200, 170, 40], to: [210, 185, 60] }] } },
    });
    const ways = waysOut(blocked, 'interference/card/enclosure');
    expect(ways).toContain('Move the card to slot 4 (x16) of the board.');
    const moved = edited(blocked, { card: { placement: { mount: 'slot 4' } } });
    expect(clashes(moved)).toEqual([]);
  });

  it('turn what may be turned', () => {
    const ways = waysOut(edited(plan, { memory: { spec: { height: 50 } } }), 'interference/cooler/memory');
    const turn = ways.find((sentence) => sentence.startsWith('Turn the cooler by'));
    const degrees = Number(/\d+/.exec(turn ?? '')?.[0]);
    const turned = edited(plan, {
      memory: { spec: { height: 50 } },
      cooler: { placement: { turn: degrees } },
    });
    expect(clashes(turned)).toEqual([]);
  });
});
