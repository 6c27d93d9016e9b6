import { describe, expect, it } from 'vitest';
import { type BoardForm, boardFormFactors } from '../../geometry/standards/board-form-factors';
import {
  type HoleLetter,
  holePositions,
  mountingHole,
  mountingHoles,
} from '../../geometry/standards/mounting-holes';

const at = (letter: HoleLetter) => holePositions[letter].value;
const lettersOf = (form: BoardForm, requirement: string) =>
  mountingHoles(form)
    .filter((hole) => hole.requirement === requirement)
    .map((hole) => hole.letter)
    .sort();

describe('hole positions', () => {
  // ATX Specification 2.2, figure 3 prints ordinates from hole A: columns toward the top edge, rows forward
  // of the rear edge less the 0.400 in of the first row. Figures typed in inches as printed.
  it.each([
    ['B', 3.1, 0],
    ['C', 4.9, 0],
    ['F', 11.1, 0.9],
    ['G', 0, 6.1],
    ['H', 4.9, 6.1],
    ['J', 11.1, 6.1],
    ['K', 0, 8.95],
    ['L', 4.9, 8.95],
    ['M', 11.1, 8.95],
  ] as const)(
    'hole %s stands at the ordinates of ATX 2.2 figure 3 from hole A',
    (letter, columnInches, rowInches) => {
      expect(at('A').x - at(letter).x).toBeCloseTo(columnInches * 25.4, 9);
      expect(at(letter).y - at('A').y).toBeCloseTo(rowInches * 25.4, 9);
    },
  );

  it('sets hole A 0.650 in from the slot-side edge and 0.400 in from the rear edge (ATX 2.2 figure 3)', () => {
    expect(boardFormFactors.ATX.alongX.value - at('A').x).toBeCloseTo(0.65 * 25.4, 9);
    expect(at('A').y).toBeCloseTo(10.16, 9);
  });

  it('keeps the sub-pitches of the hole grid (ATX 2.2 figure 3; microATX 1.2 figure 3)', () => {
    expect(at('B').x - at('C').x).toBeCloseTo(45.72, 9);
    expect(at('A').x - at('B').x).toBeCloseTo(78.74, 9);
    expect(at('C').x - at('F').x).toBeCloseTo(157.48, 9);
    expect(at('F').y - at('C').y).toBeCloseTo(22.86, 9);
    expect(at('H').y - at('C').y).toBeCloseTo(154.94, 9);
    expect(at('L').y - at('C').y).toBeCloseTo(227.33, 9);
    expect(at('R').x - at('S').x).toBeCloseTo(20.32, 9);
  });

  it('lays the Mini-ITX holes right in the slot-edge frame (Mini-ITX Addendum 1.1, through transcriptions)', () => {
    const board = boardFormFactors['Mini-ITX'];
    const slotEdge = board.topEdgeX.value + board.alongX.value;
    expect(slotEdge - at('C').x).toBeCloseTo(6.35, 9);
    expect(at('C').y).toBeCloseTo(10.16, 9);
    expect(slotEdge - at('F').x).toBeCloseTo(163.83, 9);
    expect(at('F').y).toBeCloseTo(33.02, 9);
    expect(at('H').y - at('F').y).toBeCloseTo(132.08, 9);
    // Measured on two production board files: F and J 6.17 from the top edge of a 170.00 board.
    expect(at('F').x - board.topEdgeX.value).toBeCloseTo(6.17, 9);
  });

  // SSI Enterprise Electronics Bay Specification 2011, 1.0.1, figure 2; millimetres down from the top edge and
  // forward from the rear edge.
  it.each([
    ["F'", 6.35, 10.16],
    ["H'", 209.55, 187.96],
    ["J'", 6.35, 191.77],
    ["K'", 288.29, 260.35],
    ["L'", 163.83, 260.35],
    ["M'", 6.35, 260.35],
    ['X', 293.37, 322.58],
    ["Y'", 209.55, 322.58],
    ['Y', 163.83, 322.58],
    ['Z', 6.35, 322.58],
  ] as const)('SSI hole %s stands at %d, %d', (letter, x, y) => {
    expect(at(letter).x).toBeCloseTo(x, 9);
    expect(at(letter).y).toBeCloseTo(y, 9);
  });
});

describe('letters by form', () => {
  it('gives ATX the nine letters of ATX 2.2 figure 2', () => {
    expect(lettersOf('ATX', 'required').join(' ')).toBe('A C F G H J K L M');
    expect(mountingHoles('ATX')).toHaveLength(9);
  });

  it('gives microATX its nine, R required and S optional (microATX 1.2 figure 2, section 2.2)', () => {
    expect(lettersOf('microATX', 'required').join(' ')).toBe('B C F H J L M R');
    expect(lettersOf('microATX', 'optional').join(' ')).toBe('S');
  });

  it('gives Mini-ITX C F H J (Mini-ITX Addendum 1.1) and FlexATX B C F H J S (FlexATX Addendum 1.0)', () => {
    expect(lettersOf('Mini-ITX', 'required').join(' ')).toBe('C F H J');
    expect(lettersOf('FlexATX', 'required').join(' ')).toBe('B C F H J S');
  });

  it('marks the primed letters of SSI-EEB as alternates and drops the far row from SSI-CEB (SSI EEB 2011 figure 2)', () => {
    expect(lettersOf('SSI-EEB', 'alternate').join(' ')).toBe("F' H' J' K' L' M' Y'");
    expect(lettersOf('SSI-EEB', 'required')).toHaveLength(12);
    expect(mountingHoles('SSI-CEB').filter((hole) => hole.at.value.y > 266.7)).toEqual([]);
  });

  it.each(Object.keys(boardFormFactors) as BoardForm[])('keeps every hole of %s on the board', (form) => {
    const board = boardFormFactors[form];
    const half = mountingHole.diameter.value / 2;
    for (const { at: hole } of mountingHoles(form)) {
      expect(hole.value.x - half).toBeGreaterThan(board.topEdgeX.value);
      expect(hole.value.x + half).toBeLessThan(board.topEdgeX.value + board.alongX.value);
      expect(hole.value.y + half).toBeLessThan(board.alongY.value);
    }
  });
});

it('prints hole 0.156 in, contact square 0.400 in and standoff 0.250 in (ATX 2.2 figure 3 and section 3.4.2)', () => {
  expect(mountingHole.diameter.value).toBeCloseTo(3.9624, 9);
  expect(mountingHole.contactSquareSide.value).toBeCloseTo(10.16, 9);
  expect(mountingHole.leastStandoffHeight.value).toBeCloseTo(6.35, 9);
});
