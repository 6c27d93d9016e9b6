import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { partSpecSchema } from '../../../geometry/parts/part-spec';
import { freePart } from '../../../geometry/plan/edit-plan';
import { placePlan } from '../../../geometry/plan/place-plan';
import { type Plan, planSchema } from '../../../geometry/plan/plan-schema';
import { type Change, changeKinds, type ShelfPart } from '../../../geometry/solver/change/change';
import { waysToChange } from '../../../geometry/solver/change/ways-to-change';
import { solve } from '../../../geometry/solver/solve';
import { examplePlan } from '../stack-up/example-plans';

const shelfFolder = new URL('../../../public/shelf/', import.meta.url);
const entries = z.array(z.object({ id: z.string(), spec: partSpecSchema }));
const shelf: readonly ShelfPart[] = readdirSync(shelfFolder).flatMap((file) =>
  entries.parse(JSON.parse(readFileSync(new URL(file, shelfFolder), 'utf8'))),
);

const solutionOf = (plan: Plan) => solve(placePlan(plan));

describe('ways out of a fault', () => {
  const plan = examplePlan('faults');
  const target = 'interference/cooler/memory';
  let ways: readonly Change[] = [];
  beforeAll(() => {
    ways = waysToChange(plan, target, shelf);
  });

  it('tries settings, turns, other mounts and the shelf', () => {
    expect(new Set(ways.map(({ kind }) => kind))).toEqual(
      new Set(['adjust', 'turn', 'mount elsewhere', 'swap']),
    );
  });

  it('tells truly what each does, as the solver finds it from the beginning', () => {
    const before = new Set(solutionOf(plan).findings.map(({ id }) => id));
    for (const way of ways) {
      expect(planSchema.safeParse(way.plan).success).toBe(true);
      const after = new Set(solutionOf(way.plan).findings.map(({ id }) => id));
      const caused = [...after].filter((id) => !before.has(id));
      const fixed = [...before].filter((id) => !after.has(id));
      expect(new Set(way.effects.caused.map(({ id }) => id)), way.title).toEqual(new Set(caused));
      expect(new Set(way.effects.fixed.map(({ id }) => id)), way.title).toEqual(new Set(fixed));
      if (way.solves) expect(after.has(target), way.title).toBe(false);
    }
  });

  it('raises the fan no further than it must', () => {
    // The fan overlaps the module by 7.3 mm and goes up in steps of 1 mm.
    const raise = ways.find(({ kind }) => kind === 'adjust');
    expect(raise?.plan.parts.cooler?.adjust).toEqual({ 'front fan raise': 8 });
    expect(raise?.solves).toBe(true);
    expect(raise?.effects.caused.map(({ id }) => id)).toContain('interference/cooler/enclosure');
  });

  it('puts ways that cause no fault before those that do, and those that solve first', () => {
    const rank = ({ solves, effects }: Change) =>
      (solves ? 0 : 100) + effects.caused.filter(({ weight }) => weight === 'fault').length;
    const ranks = ways.map(rank);
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
  });

  it('puts the least disturbing first among those that cause as little, and of swaps the part most alike', () => {
    const caused = ({ effects }: Change) => effects.caused.filter(({ weight }) => weight !== 'note').length;
    const rank = ({ kind }: Change) => changeKinds.indexOf(kind);
    ways.slice(1).forEach((way, index) => {
      const before = ways[index];
      if (!before || before.solves !== way.solves || caused(before) !== caused(way)) return;
      expect(rank(before)).toBeLessThanOrEqual(rank(way));
      if (before.kind === way.kind) expect(before.size).toBeLessThanOrEqual(way.size);
    });
  });

  it('leaves the plan alone and gives the same ways again', () => {
    expect(plan).toEqual(examplePlan('faults'));
    expect(waysToChange(plan, target, shelf).map(({ id }) => id)).toEqual(ways.map(({ id }) => id));
  });
});

describe('ways out of a small gap', () => {
  it('counts as solved only what keeps the wanted gap', () => {
    const plan = examplePlan('demo');
    const ways = waysToChange(plan, 'cooler to side panel/cooler/enclosure', shelf);
    expect(ways.length).toBeGreaterThan(0);
    for (const { solves, after, plan: next } of ways) {
      if (!solves) continue;
      expect(after).toBeGreaterThanOrEqual(3);
      expect(
        solutionOf(next).clearances.find(({ id }) => id === 'cooler to side panel/cooler/enclosure')
          ?.millimetres,
      ).toBe(after);
    }
  });

  it('moves a part that stands free just as far as it must', () => {
    const plan = examplePlan('demo');
    const scene = placePlan(plan);
    const card = scene.parts[scene.indexById.get('card') ?? -1];
    if (!card) throw new RangeError('no card');
    // 41 mm forward: 1 mm is left before the fan, where 3 are wanted.
    const [x, y, z] = card.pose.translation;
    const loose = freePart(plan, 'card', { ...card.pose, translation: [x + 40.9832, y, z] });
    const tip = solutionOf(loose).clearances.find(({ rule }) => rule === 'card tip');
    expect(tip?.millimetres).toBeCloseTo(1, 2);
    const way = waysToChange(loose, tip?.id ?? '').find(({ kind }) => kind === 'move');
    expect(way?.solves).toBe(true);
    expect(way?.after).toBeCloseTo(3, 3);
  });

  it('offers to leave out a fan, but nothing that a machine needs', () => {
    const plan = examplePlan('faults');
    const ways = waysToChange(plan, 'intrusion/fan-3/breathing space, intake/cooler');
    const out = ways.filter(({ kind }) => kind === 'leave out');
    expect(out.map(({ part }) => part)).toEqual(['fan-3']);
    expect(out[0]?.plan.parts['fan-3']).toBeUndefined();
  });

  it('offers a reading where that may decide', () => {
    const plan = examplePlan('faults');
    const reading = waysToChange(plan, 'card plug to side panel/card/enclosure').find(
      ({ kind }) => kind === 'measure',
    );
    expect(reading?.title).toContain('height of Card');
    const card = reading?.plan.parts.card?.spec;
    expect(card?.kind === 'card' && card.height).toMatchObject({ source: 'measured', plusMinus: 0.1 });
  });

  it('offers another enclosure last, and only where little else helps', () => {
    const plan = examplePlan('demo');
    const target = 'cooler to side panel/cooler/enclosure';
    expect(waysToChange(plan, target, shelf).map(({ kind }) => kind)).not.toContain('swap carrier');
    const coolers = shelf.filter(({ spec }) => spec.kind === 'cooler');
    const few = waysToChange(plan, target, [
      ...coolers.filter(({ spec }) => spec.model === 'Cairn 148'),
      ...shelf.filter(({ spec }) => spec.kind === 'enclosure'),
    ]);
    const kinds = few.filter(({ solves }) => solves).map(({ kind }) => kind);
    expect(kinds).toContain('swap carrier');
    expect(kinds.indexOf('swap carrier')).toBeGreaterThan(kinds.indexOf('swap'));
  });

  it('knows no way for what is not there', () => {
    expect(waysToChange(examplePlan('demo'), 'interference/nothing/nowhere', shelf)).toEqual([]);
  });
});
