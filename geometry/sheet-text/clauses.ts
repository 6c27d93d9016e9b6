/** Parts a cell into clauses: one figure, or one set of figures, with everything that is said about it. */
import type { Amount } from './amounts';
import type { Item } from './items';
import type { TextSpan } from './reading';
import type { Side } from './sides';
import type { SheetUnit } from './units';
import { type Atom, isMeasure, isSubject } from './words/atoms';
import type { ValueWord } from './words/phrase-book';

/** What a label, a column or a heading says about the figures under it. */
export interface Label {
  readonly atoms: readonly Atom[];
  readonly values: readonly ValueWord[];
  readonly unit: SheetUnit | undefined;
  readonly sides: readonly Side[];
  readonly isKnown: boolean;
  readonly span: TextSpan | undefined;
}

export const NO_LABEL: Label = {
  atoms: [],
  values: [],
  unit: undefined,
  sides: [],
  isKnown: true,
  span: undefined,
};

export interface Clause {
  readonly atoms: ReadonlySet<Atom>;
  readonly values: readonly ValueWord[];
  readonly amounts: readonly Amount[];
  readonly pins: readonly string[];
  readonly count: number | undefined;
  readonly lanes: string | undefined;
  readonly m2: { readonly length: number | undefined } | undefined;
  readonly unit: SheetUnit | undefined;
  readonly sides: readonly Side[];
  /** Every word of it is in the dictionary. */
  readonly isKnown: boolean;
  /** Label and figure, as far as they stand together. */
  readonly span: TextSpan;
}

export function labelOf(items: readonly Item[]): Label {
  const span = spanOf(items);
  const sides = items.flatMap((item) => (item.type === 'order' ? item.sides : []));
  return {
    atoms: items.flatMap((item) => (item.type === 'atoms' ? item.atoms : [])),
    values: items.flatMap((item) => (item.type === 'atoms' && item.value ? [item.value] : [])),
    unit: items.flatMap((item) =>
      item.type === 'unit' || item.type === 'atoms' ? (item.unit ?? []) : [],
    )[0],
    sides,
    isKnown: items.every((item) => item.type !== 'unknown' && !isFigure(item)),
    span,
  };
}

/** A heading's subject goes on to what stands under it; its measure only to figures that name none themselves. */
export function underHeading(heading: Label, label: Label): Label {
  const hasMeasure = label.atoms.some(isMeasure);
  const above = hasMeasure ? heading.atoms.filter((atom) => !isMeasure(atom)) : heading.atoms;
  return {
    // Sets of a closed list: however often a word is said, there are only so many ideas.
    atoms: [...new Set([...above, ...label.atoms])],
    values: [...heading.values, ...label.values].slice(0, MOST_VALUES),
    unit: label.unit ?? (hasMeasure ? undefined : heading.unit),
    sides: label.sides.length > 0 ? label.sides : heading.sides,
    isKnown: heading.isKnown && label.isKnown,
    span: label.span ?? heading.span,
  };
}

/** A clause names a form and a grade, not dozens. */
const MOST_VALUES = 12;

export function isFigure(item: Item): boolean {
  return ['amount', 'pins', 'count', 'lanes', 'm2'].includes(item.type);
}

/** Items that tell something to be read: a figure, or a value in words. */
export function isTelling(item: Item): boolean {
  return isFigure(item) || (item.type === 'atoms' && item.value !== undefined);
}

interface Piece {
  readonly items: Item[];
  readonly isBracketed: boolean;
  /** A colon ends it. */
  readonly isLabel?: boolean;
}

const MOST_CLAUSES = 400;

/** Clauses of one cell under its label. */
export function clausesOf(label: Label, items: readonly Item[]): readonly Clause[] {
  const clauses: Clause[] = [];
  let base = label;
  // 'Cooler up to 155 mm, card up to 325 mm': each names its own subject.
  let isListed = false;
  for (const piece of piecesOf(items)) {
    if (clauses.length >= MOST_CLAUSES) break;
    const own = labelOf(piece.items.filter((item) => !isFigure(item)));
    if (!piece.isLabel && piece.items.some(isTelling)) {
      // '(fan 15 mm included)': a condition that is not understood makes its figure not understood.
      const before = clauses.at(-1);
      if (piece.isBracketed && !own.isKnown && before)
        clauses[clauses.length - 1] = { ...before, isKnown: false };
      const isFirst = clauses.length === 0;
      const clause = clauseOf(
        underHeading(isListed && own.atoms.some(isSubject) ? withoutSubjects(base) : base, own),
        piece.items,
      );
      clauses.push(clause);
      // What a clause without a label of its own says holds for those after it in the same cell.
      if (isFirst && base.span === undefined && !piece.isBracketed) {
        base = { ...NO_LABEL, atoms: own.atoms.filter((atom) => !isFanQualifier(atom)), span: own.span };
        isListed = true;
      }
      continue;
    }
    const last = clauses.at(-1);
    if (piece.isLabel) base = own;
    else if (!last) base = underHeading(base, own);
    else {
      clauses[clauses.length - 1] = qualified(last, own);
      // A measure behind a comma may belong to the figure before it or to the one after: to neither, then.
      if (!piece.isBracketed && own.atoms.some(isMeasure)) {
        clauses[clauses.length - 1] = { ...qualified(last, own), isKnown: false };
        base = { ...base, isKnown: false };
      }
    }
  }
  return clauses;
}

function withoutSubjects(label: Label): Label {
  return { ...label, atoms: label.atoms.filter((atom) => !isSubject(atom)) };
}

function isFanQualifier(atom: Atom): boolean {
  return atom.startsWith('with');
}

function clauseOf(label: Label, items: readonly Item[]): Clause {
  const counts = items.flatMap((item) => (item.type === 'count' ? [item.count] : []));
  return {
    atoms: new Set([...label.atoms, ...lettered(items)]),
    values: label.values,
    amounts: items.flatMap((item) => (item.type === 'amount' ? [item.amount] : [])),
    pins: items.flatMap((item) => (item.type === 'pins' ? [item.pins] : [])),
    count: counts[0],
    lanes: items.find((item) => item.type === 'lanes')?.lanes,
    m2: items.find((item) => item.type === 'm2'),
    unit: label.unit,
    sides: label.sides,
    isKnown: label.isKnown && counts.length <= 1 && !isCompound(items),
    span: joined(label.span, spanOf(items)),
  };
}

/** 'L 312 mm': the letter is the label. */
function lettered(items: readonly Item[]): readonly Atom[] {
  return items.flatMap((item) => {
    if (item.type !== 'amount' || item.amount.figures.length !== 1) return [];
    return item.amount.figures[0]?.side ?? [];
  });
}

/** '1 lb 12 oz': two figures side by side say one thing together, which the reader does not put together. */
function isCompound(items: readonly Item[]): boolean {
  return items.some((item, index) => item.type === 'amount' && items[index + 1]?.type === 'amount');
}

/** A remark behind a figure, in brackets or after a comma: '(without fan)', '(L x W x H)'. */
function qualified(clause: Clause, own: Label): Clause {
  return {
    ...clause,
    atoms: new Set([...clause.atoms, ...own.atoms]),
    values: [...clause.values, ...own.values].slice(0, MOST_VALUES),
    unit: clause.unit ?? own.unit,
    sides: clause.sides.length > 0 ? clause.sides : own.sides,
    isKnown: clause.isKnown && own.isKnown,
    span: joined(clause.span, own.span),
  };
}

function piecesOf(items: readonly Item[]): readonly Piece[] {
  const pieces: Piece[] = [];
  let current: Item[] = [];
  let depth = 0;
  const close = (mark: string) => {
    if (current.length > 0 && mark === ':' && !current.some(isFigure))
      pieces.push({ items: current, isBracketed: false, isLabel: true });
    else if (current.length > 0) pieces.push(...splitFigures(current, depth > 0));
    current = [];
  };
  for (const item of items) {
    if (item.type !== 'stop') {
      current.push(item);
      continue;
    }
    close(item.mark);
    if (item.mark === '(') depth += 1;
    else if (item.mark === ')') depth = Math.max(0, depth - 1);
  }
  close('');
  return pieces;
}

/** 'height 155 mm width 128 mm' and '155 mm tall 128 mm wide' each hold two. */
function splitFigures(items: readonly Item[], isBracketed: boolean): readonly Piece[] {
  const figures = items.filter((item) => item.type === 'amount').length;
  if (figures < 2) return [{ items: [...items], isBracketed }];
  const leads = items[0]?.type === 'amount';
  const pieces: Piece[] = [{ items: [], isBracketed }];
  let hasFigure = false;
  for (const item of items) {
    const begins = leads ? item.type === 'amount' : item.type === 'atoms' && item.atoms.some(isMeasure);
    if (begins && hasFigure) {
      pieces.push({ items: [], isBracketed });
      hasFigure = false;
    }
    hasFigure ||= item.type === 'amount';
    pieces.at(-1)?.items.push(item);
  }
  return pieces;
}

export function spanOf(items: readonly TextSpan[]): TextSpan | undefined {
  const first = items[0];
  const last = items.at(-1);
  return first && last && { start: first.start, end: last.end };
}

/** From the label to the figure when they stand side by side; the figure alone when they are far apart. */
function joined(label: TextSpan | undefined, figure: TextSpan | undefined): TextSpan {
  if (!figure) return label ?? { start: 0, end: 0 };
  if (!label || figure.start - label.end > NEAR || label.start > figure.end) return figure;
  return { start: Math.min(label.start, figure.start), end: Math.max(label.end, figure.end) };
}

const NEAR = 12;
