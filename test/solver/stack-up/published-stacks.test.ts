import { describe, expect, it } from 'vitest';
import { withStatement } from '../../../geometry/parts/stated-dimensions/change-dimension';
import { dimensionAt } from '../../../geometry/parts/stated-dimensions/stated-dimensions';
import { combineTerms } from '../../../geometry/solver/stack-up/combine';
import { stackUpBetween } from '../../../geometry/solver/stack-up/face-stack-up';
import { smallBuild } from '../../plan/small-build';
import { silentProcessor } from './silent-processor';

describe('published stacks', () => {
  it('gives the printed height of the processor lid from a placed scene', () => {
    // LGA1155 Socket Thermal/Mechanical Specifications and Design Guidelines, table 5-2 and note 2: socket seating
    // plane 3.4 +- 0.2, package 4.381 +- 0.269, lid above board 7.781 +- 0.335, stated as root sum of squares.
    const stack = stackUpBetween(
      silentProcessor(),
      { part: 'board', box: 'circuit board', face: '+z' },
      { part: 'cooler', box: 'base', face: '-z' },
    );
    expect(stack.nominal).toBeCloseTo(7.781, 9);
    expect(stack.rss).toBeCloseTo(0.335, 3);
    // 0.2 + 0.269.
    expect(stack.worstCase[0]).toBeCloseTo(7.781 - 0.469, 9);
    expect(stack.worstCase[1]).toBeCloseTo(7.781 + 0.469, 9);
    expect(stack.terms.map(({ part, path }) => `${part} ${path}`)).toEqual([
      'processor height',
      'board socket.seat',
    ]);
    expect(stack.sigma).toBeCloseTo(stack.rss / 3, 12);
  });

  it('gives the gap of the tutorial example of three blocks in a housing', () => {
    // A tutorial on worst-case and root-sum-square stacks: A 2.000 +- 0.005, B 1.500 +- 0.003, C 0.500 +- 0.002,
    // housing 4.020 +- 0.005: gap 0.020 +- 0.015 at worst, +- 0.00794 by root sum of squares; blocks alone +- 0.00616.
    const block = (plusMinus: number) => ({ sensitivity: -1, plusMinus, sigmas: 3 }) as const;
    const blocks = [block(0.005), block(0.003), block(0.002)];
    const gap = combineTerms([...blocks, { sensitivity: 1, plusMinus: 0.005, sigmas: 3 }]);
    expect(gap.worst).toBeCloseTo(0.015, 12);
    expect(gap.rss).toBeCloseTo(0.00794, 5);
    expect(combineTerms(blocks).rss).toBeCloseTo(0.00616, 5);
  });

  it('does the same sum in a placed scene: a card before a front wall', () => {
    // Card 300 +- 0.005 in an enclosure of 380 +- 0.005, the widest bands of the example; what ties card, board and
    // rear wall together is taken as exact.
    const plan = smallBuild();
    const { card, board, enclosure } = plan.parts;
    if (!card || !board || !enclosure) throw new RangeError('no card, board or enclosure');
    const banded = (
      spec: typeof card.spec,
      path: string,
      plusMinus: number,
      value = dimensionAt(spec, path).nominal,
    ) => withStatement(spec, path, { value, plusMinus });
    const parts = {
      ...plan.parts,
      card: { ...card, spec: banded(banded(card.spec, 'keyNotch', 0), 'length', 0.005, 300) },
      board: { ...board, spec: banded(board.spec, 'slotPlace.holeRowToKeyNotch', 0) },
      enclosure: {
        ...enclosure,
        spec: banded(banded(enclosure.spec, 'board.fromRear', 0), 'interior.length', 0.005, 380),
      },
    };
    const stack = stackUpBetween(
      { ...plan, parts },
      { part: 'card', box: 'shroud', face: '+x' },
      { part: 'enclosure', box: 'front wall', face: '-x' },
    );
    expect(stack.worstCase[1] - stack.worstCase[0]).toBeCloseTo(0.02, 9);
    expect(stack.rss).toBeCloseTo(Math.hypot(0.005, 0.005), 9);
  });

  it('adds bands of two and of three sigmas each by its own', () => {
    const two = combineTerms([{ sensitivity: 1, plusMinus: 0.2, sigmas: 2 }]);
    const both = combineTerms([
      { sensitivity: 1, plusMinus: 0.2, sigmas: 2 },
      { sensitivity: -2, plusMinus: 0.15, sigmas: 3 },
    ]);
    expect(two.sigma).toBeCloseTo(0.1, 12);
    expect(both.sigma).toBeCloseTo(Math.hypot(0.1, 0.1), 12);
    expect(both.rss).toBeCloseTo(Math.hypot(0.2, 0.3), 12);
  });

  it('refuses faces that are not there', () => {
    const plan = smallBuild();
    const face = { part: 'card', box: 'shroud', face: '+x' } as const;
    expect(() => stackUpBetween(plan, face, { ...face, face: '-x' })).toThrow(RangeError);
    expect(() => stackUpBetween(plan, face, { part: 'nothing', box: 'shroud', face: '-x' })).toThrow(
      RangeError,
    );
    expect(() => stackUpBetween(plan, face, { part: 'enclosure', box: 'nothing', face: '-x' })).toThrow(
      RangeError,
    );
  });
});
