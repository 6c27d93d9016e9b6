/** Mounting holes of the board form factors by letter, in the board frame (`board-frame.ts`), mm. */
import type { BoardForm } from './board-form-factors';
import type { BoardPoint } from './board-frame';
import {
  atxSpecification,
  dtxSpecification,
  flexAtxAddendum,
  microAtxSpecification,
  miniItxAddendum,
  ssiElectronicsBay,
} from './cited-documents';
import { type Citation, citing, inches, type Published } from './published';

/** Hole letters; a prime marks an SSI alternate. */
export type HoleLetter =
  | 'A'
  | 'B'
  | 'C'
  | 'F'
  | "F'"
  | 'G'
  | 'H'
  | "H'"
  | 'J'
  | "J'"
  | 'K'
  | "K'"
  | 'L'
  | "L'"
  | 'M'
  | "M'"
  | 'R'
  | 'S'
  | 'X'
  | 'Y'
  | "Y'"
  | 'Z';

/** Whether a board of the form must have the hole, may have it, or has it instead of another. */
export type HoleRequirement = 'required' | 'optional' | 'alternate';

export interface MountingHole {
  readonly letter: HoleLetter;
  readonly requirement: HoleRequirement;
  readonly at: Published<BoardPoint>;
}

const atx = citing(atxSpecification);
const microAtx = citing(microAtxSpecification);
const ssi = citing(ssiElectronicsBay);

/** Place of a hole from the inch grid: down from the top edge, forward from the rear edge. */
function grid(xInches: number, yInches: number): BoardPoint {
  return { x: inches(xInches), y: inches(yInches) };
}

const inFigure3 = (x: number, y: number) => atx(grid(x, y), 'primary', 'figure 3');
const inSsiFigure2 = (x: number, y: number) => ssi(grid(x, y), 'primary', 'figure 2');
const transcribed: Parameters<Citation>[3] = {
  via: 'two transcriptions of figure 3',
  note: 'also measured on three open boards',
};

/** Every hole, once, in the frame shared by all forms. Holes C, F, H, J and so on are the same hole everywhere. */
export const holePositions: Readonly<Record<HoleLetter, Published<BoardPoint>>> = {
  A: inFigure3(11.35, 0.4),
  B: inFigure3(8.25, 0.4),
  C: inFigure3(6.45, 0.4),
  F: inFigure3(0.25, 1.3),
  "F'": inSsiFigure2(0.25, 0.4),
  G: inFigure3(11.35, 6.5),
  H: inFigure3(6.45, 6.5),
  "H'": inSsiFigure2(8.25, 7.4),
  J: inFigure3(0.25, 6.5),
  "J'": ssi(grid(0.25, 7.55), 'primary', 'figure 2', {
    note: 'printed as 7.150 from hole A; revision 3.0 prints a 7.550 without owner, probably this row from the edge',
  }),
  K: inFigure3(11.35, 9.35),
  "K'": inSsiFigure2(11.35, 10.25),
  L: inFigure3(6.45, 9.35),
  "L'": inSsiFigure2(6.45, 10.25),
  M: inFigure3(0.25, 9.35),
  "M'": inSsiFigure2(0.25, 10.25),
  R: microAtx(grid(9.05, 6.5), 'two sources', 'figure 3', transcribed),
  S: microAtx(grid(8.25, 6.5), 'two sources', 'figure 3', transcribed),
  X: inSsiFigure2(11.55, 12.7),
  Y: inSsiFigure2(6.45, 12.7),
  "Y'": inSsiFigure2(8.25, 12.7),
  Z: inSsiFigure2(0.25, 12.7),
};

interface HoleLetters {
  readonly required: readonly HoleLetter[];
  readonly optional: readonly HoleLetter[];
  readonly alternate: readonly HoleLetter[];
}

const cebAlternates: readonly HoleLetter[] = ["F'", "H'", "J'", "K'", "L'", "M'"];

/** Which letters a form uses. */
export const holeLetters: Readonly<Record<BoardForm, Published<HoleLetters>>> = {
  ATX: atx(
    { required: ['A', 'C', 'F', 'G', 'H', 'J', 'K', 'L', 'M'], optional: [], alternate: [] },
    'primary',
    'figure 2',
    { note: 'figure 3 also draws B; F was optional in ATX 1.1' },
  ),
  microATX: microAtx(
    { required: ['B', 'C', 'F', 'H', 'J', 'L', 'M', 'R'], optional: ['S'], alternate: [] },
    'primary',
    'figure 2 and section 2.2',
    { note: 'of a full-width board; a narrower board has the holes that lie on it' },
  ),
  'Mini-ITX': citing(miniItxAddendum)(
    { required: ['C', 'F', 'H', 'J'], optional: [], alternate: [] },
    'two sources',
    undefined,
    { via: 'three transcriptions' },
  ),
  FlexATX: citing(flexAtxAddendum)(
    { required: ['B', 'C', 'F', 'H', 'J', 'S'], optional: [], alternate: [] },
    'two sources',
    undefined,
    { via: 'two articles' },
  ),
  'Mini-DTX': citing(dtxSpecification)(
    { required: ['C', 'F', 'H', 'J'], optional: [], alternate: [] },
    'derived',
    undefined,
    { note: 'drawing not read: the microATX holes that lie on an 8.0 x 6.7 in board' },
  ),
  DTX: citing(dtxSpecification)(
    { required: ['C', 'F', 'H', 'J', 'L', 'M'], optional: [], alternate: [] },
    'derived',
    undefined,
    { note: 'drawing not read: the microATX holes that lie on an 8.0 x 9.6 in board' },
  ),
  'SSI-CEB': ssi(
    { required: ['A', 'C', 'F', 'G', 'H', 'J', 'K', 'L', 'M'], optional: [], alternate: cebAlternates },
    'derived',
    'figure 2',
    { note: 'the SSI-EEB holes no further forward than 10.500 in' },
  ),
  'SSI-EEB': ssi(
    {
      required: ['A', 'C', 'F', 'G', 'H', 'J', 'K', 'L', 'M', 'X', 'Y', 'Z'],
      optional: [],
      alternate: [...cebAlternates, "Y'"],
    },
    'primary',
    'figure 2',
  ),
};

/** Holes of a form with their places: required ones first, then optional, then alternates. */
export function mountingHoles(form: BoardForm): readonly MountingHole[] {
  const letters = holeLetters[form].value;
  const list = (requirement: HoleRequirement): MountingHole[] =>
    letters[requirement].map((letter) => ({ letter, requirement, at: holePositions[letter] }));
  return [...list('required'), ...list('optional'), ...list('alternate')];
}

/** The hole itself and what the chassis must keep round and under it. */
export const mountingHole = {
  diameter: atx(inches(0.156), 'primary', 'figure 3', { note: 'measured 3.96 on a production board' }),
  /** Side of the square, centred on the hole, that a standoff may touch. */
  contactSquareSide: atx(inches(0.4), 'primary', 'section 3.4.2'),
  /** Least standoff height: clear space under the board outside the contact squares. */
  leastStandoffHeight: atx(inches(0.25), 'primary', 'section 3.4.2', {
    note: 'five open printed enclosures use 5 or 6 mm, below the standard',
  }),
} as const;
