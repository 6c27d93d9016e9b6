import { describe, expect, it } from 'vitest';
import { placePlan } from '../../geometry/plan/place-plan';
import type { Plan } from '../../geometry/plan/plan-schema';
import { planSchema } from '../../geometry/plan/plan-schema';
import { solve } from '../../geometry/solver/solve';
import { smallBuild } from '../plan/small-build';

function withStandoffs(holes: string): Plan {
  const plan = smallBuild();
  const { enclosure } = plan.parts;
  if (enclosure?.spec.kind !== 'enclosure') throw new Error('no enclosure');
  const spec = { ...enclosure.spec, board: { ...enclosure.spec.board, holes } };
  return planSchema.parse({ ...plan, parts: { ...plan.parts, enclosure: { ...enclosure, spec } } });
}

function withPlacement(id: string, placement: unknown): Plan {
  const plan = smallBuild();
  return planSchema.parse({ ...plan, parts: { ...plan.parts, [id]: { ...plan.parts[id], placement } } });
}

const findings = (plan: Plan, kind: string) =>
  solve(placePlan(plan)).findings.filter((finding) => finding.kind === kind);

describe('standoffs', () => {
  it('match when the enclosure has the holes of the board form', () => {
    // microATX 1.2: holes B C F H J L M R S.
    expect(findings(smallBuild(), 'standoff')).toEqual([]);
  });

  it('are a fault where one is missing under a hole', () => {
    const found = findings(withStandoffs('BCFHJLMS'), 'standoff');
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({
      id: 'standoff/board/missing R',
      weight: 'fault',
      parts: ['enclosure', 'board'],
      waysOut: ['Fit a standoff under hole R.'],
    });
  });

  it('are a fault where one stands under the board without a hole', () => {
    // ATX 2.2 section 3.2: a full-size board has no hole B; a microATX standoff there touches its solder side.
    const plan = withStandoffs('ABCFGHJKLM');
    const { board } = plan.parts;
    if (board?.spec.kind !== 'board') throw new Error('no board');
    const full = { ...board, spec: { ...board.spec, form: 'ATX' as const } };
    const found = findings({ ...plan, parts: { ...plan.parts, board: full } }, 'standoff');
    expect(found.map((finding) => finding.id)).toEqual(['standoff/board/extra B']);
    expect(found[0]?.sentence).toContain('can short the board');
  });

  it('do not matter beside the board', () => {
    // A, G and K of ATX stand beyond the lower edge of a microATX board.
    expect(findings(withStandoffs('ABCFGHJKLMRS'), 'standoff')).toEqual([]);
  });
});

describe('seats', () => {
  it('are said in plain words when the plan asks for what is not there', () => {
    const gone = findings(withPlacement('card', { on: 'board-2', mount: 'slot 2' }), 'seat');
    expect(gone[0]).toMatchObject({
      id: 'seat/card/carrier missing',
      weight: 'fault',
      sentence: 'Card is meant to sit on a part that is not in the plan.',
    });
    const noMount = findings(withPlacement('card', { on: 'board', mount: 'slot 7' }), 'seat');
    expect(noMount[0]?.sentence).toBe('Card is meant to sit on “slot 7”, which the board does not have.');
    const wrong = findings(withPlacement('card', { on: 'board', mount: 'slot 1' }), 'seat');
    expect(wrong[0]?.sentence).toBe(
      'Card does not fit “Slot 1 (x1)” of the board: the fastening is another one.',
    );
  });

  it('make the verdict a fault', () => {
    const { verdict } = solve(placePlan(withPlacement('card', { on: 'board', mount: 'slot 7' })));
    expect(verdict.fits).toBe(false);
    expect(verdict.headline).toMatch(/^Does not fit yet\. Card is meant to sit/);
  });
});
