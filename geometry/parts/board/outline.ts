/** Outline, thickness and mounting holes of a board, in the board frame (`fields.ts`), mm. */
import { translationBy } from '../../space/transform';
import { boardFormFactors, boardSheet } from '../../standards/board-form-factors';
import { type HoleLetter, holeLetters, holePositions } from '../../standards/mounting-holes';
import { inches } from '../../standards/published';
import type { Foot } from '../body';
import { nominalOr } from '../dimension';
import { boardPattern } from '../patterns';
import type { BoardSpec } from './fields';

export interface BoardOutline {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  readonly thickness: number;
}

/**
 * A board keeps the shared rear top corner, so a narrower one ends earlier on the slot side. Mini-ITX alone sets its
 * holes from the slot edge at 170.18 mm (6.7 in): a board of 170.00 mm starts 0.18 mm below the corner.
 */
export function outlineOf(spec: Pick<BoardSpec, 'form' | 'width' | 'depth' | 'thickness'>): BoardOutline {
  const form = boardFormFactors[spec.form];
  const width = nominalOr(spec.width, form.alongX.value);
  const top = spec.form === 'Mini-ITX' ? MINI_ITX_SLOT_EDGE_X - width : form.topEdgeX.value;
  return {
    x: [top, top + width],
    y: [0, nominalOr(spec.depth, form.alongY.value)],
    thickness: nominalOr(spec.thickness, boardSheet.thickness.value),
  };
}

const MINI_ITX_SLOT_EDGE_X = inches(6.7);

export interface BoardHole {
  readonly letter: HoleLetter;
  readonly x: number;
  readonly y: number;
  readonly required: boolean;
}

/** The holes stated by letter, or those of the form that lie on this board. */
export function holesOf(spec: BoardSpec): BoardHole[] {
  const { required, optional } = holeLetters[spec.form].value;
  const outline = outlineOf(spec);
  const letters =
    spec.holes === undefined ? [...required, ...optional] : [...spec.holes].filter(isHoleLetter);
  return letters
    .map((letter) => ({ letter, ...holePositions[letter].value, required: required.includes(letter) }))
    .filter((hole) => isOn(outline, hole.x, hole.y));
}

export function isHoleLetter(letter: string): letter is HoleLetter {
  return Object.hasOwn(holePositions, letter);
}

export function isOn(outline: BoardOutline, x: number, y: number): boolean {
  return x >= outline.x[0] && x <= outline.x[1] && y >= outline.y[0] && y <= outline.y[1];
}

/** The foot lies on the underside; its axes are the board's. */
export function boardFoot(spec: BoardSpec): Foot {
  const { x, y, thickness } = outlineOf(spec);
  return {
    id: 'underside',
    label: 'Underside',
    pattern: boardPattern,
    frame: translationBy([0, 0, -thickness]),
    points: holesOf(spec).map((hole) => ({ id: hole.letter, at: [hole.x, hole.y], needed: hole.required })),
    outline: { min: [x[0], y[0]], max: [x[1], y[1]] },
  };
}
