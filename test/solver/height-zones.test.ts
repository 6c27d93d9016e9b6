import { describe, expect, it } from 'vitest';
import { placePlan } from '../../geometry/plan/place-plan';
import { type Plan, planSchema } from '../../geometry/plan/plan-schema';
import { solve } from '../../geometry/solver/solve';
import { smallBuild } from '../plan/small-build';

function edited(id: string, change: (spec: Record<string, unknown>) => object): Plan {
  const plan = structuredClone(smallBuild()) as { parts: Record<string, { spec: Record<string, unknown> }> };
  const part = plan.parts[id];
  if (!part) throw new Error(`no part ${id}`);
  part.spec = { ...part.spec, ...change(part.spec) };
  return planSchema.parse(plan);
}

const zones = (plan: Plan) => solve(placePlan(plan)).findings.filter((finding) => finding.kind === 'zone');

describe('component-height zones', () => {
  it('note how far a tower rises above area A, which real coolers do not keep', () => {
    // ATX 2.2 figure 7: area A allows 2.8 in = 71.12 mm above the board. Lid at 3.4 + 4 = 7.4 mm, fins 150 above it.
    const plan = edited('cooler', () => ({ fans: [] }));
    const [found, ...more] = zones(plan);
    expect(more).toEqual([]);
    expect(found).toMatchObject({ id: 'zone/board/cooler', weight: 'note', parts: ['cooler', 'board'] });
    expect(found?.millimetres).toBeCloseTo(-(7.4 + 150 - 71.12), 6);
    expect(found?.sentence).toContain('Most tower coolers do.');
  });

  it('say nothing of a cooler that stays below', () => {
    const low = { height: 60, finBottom: 30, fans: [], width: 90, stacks: [{ depth: 60 }] };
    expect(zones(edited('cooler', () => low))).toEqual([]);
  });

  it('caution where the enclosure reaches into the height it has to leave free', () => {
    // ATX 2.2 figure 7: the chassis leaves 3 in = 76.2 mm free above area A; standoff 6.5 and board 1.57 below it.
    const block = { id: 'bar', from: [40, 250, 70], to: [120, 300, 90] };
    const [found] = zones(edited('enclosure', () => ({ blocks: [block] }))).filter(
      (finding) => finding.weight === 'caution',
    );
    expect(found).toMatchObject({ id: 'zone/board/enclosure', parts: ['enclosure', 'board'] });
    expect(found?.millimetres).toBeCloseTo(-(6.5 + 1.57 + 76.2 - 70), 1);
  });
});
