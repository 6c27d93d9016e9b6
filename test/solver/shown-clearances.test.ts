import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { movePart } from '../../geometry/plan/edit-plan';
import { placePlan } from '../../geometry/plan/place-plan';
import { readPlan } from '../../geometry/plan/read-plan';
import { solve } from '../../geometry/solver/solve';

const read = readPlan(readFileSync(new URL('../../public/plans/demo.json', import.meta.url), 'utf8'));
if (!read.ok) throw new Error('the demo plan cannot be read');
const demo = read.plan;

function cardTip(shift: number) {
  // The slot's frame has the axes of a card: x points from the bracket to the tip.
  const plan = movePart(demo, 'card', { on: 'board', mount: 'slot 2', shift: [shift, 0, 0] });
  return solve(placePlan(plan)).clearances.filter(({ rule }) => rule === 'card tip');
}

describe('the clearance of a card tip', () => {
  const [standing] = cardTip(0);

  it.each([-2.5, -1, 0.5, 7])(
    'follows a card pushed along its slot by %f mm, millimetre by millimetre',
    (shift) => {
      const [row, ...more] = cardTip(shift);
      expect(more).toEqual([]);
      expect(row?.millimetres).toBeCloseTo((standing?.millimetres ?? Number.NaN) - shift, 6);
    },
  );

  it('keeps telling of the first of two fans that stand in one plane', () => {
    const told = [-2.5, -1, 0, 0.5, 7].map((shift) => cardTip(shift)[0]?.parts[1]);
    expect(new Set(told).size).toBe(1);
  });
});
