/** Lines and tables: which label, column or heading each figure of a sheet stands under. */
import {
  type Clause,
  clausesOf,
  isFigure,
  isTelling,
  type Label,
  labelOf,
  NO_LABEL,
  spanOf,
  underHeading,
} from './clauses';
import { foldWord } from './fold-text';
import { type Item, itemsOf } from './items';
import { decimalMarkOf } from './numbers';
import type { Leftover, TextSpan } from './reading';
import { type Token, tokensOf } from './tokens';
import { unitNamed } from './units';
import { isMeasure } from './words/atoms';

/** A name in words: what stands behind 'Maker:' or 'Model:'. */
export interface NameFound {
  readonly field: 'maker' | 'model';
  readonly text: string;
  readonly span: TextSpan;
}

export interface Rows {
  readonly clauses: readonly Clause[];
  readonly names: readonly NameFound[];
  readonly leftovers: readonly Leftover[];
  readonly steps: number;
}

interface Cell {
  readonly items: readonly Item[];
  readonly span: TextSpan | undefined;
}

/** Headings that only say that figures follow. */
const NEUTRAL_HEADING =
  /^(?:tech(?:nical)? )?(?:specs?|specifications?|data|details|key features|features|technische daten|daten|general|allgemein|caracteristicas|caracteristiques|especificaciones|dati tecnici|technical|overview)$/;

export function rowsOf(text: string, folded: string): Rows {
  const { tokens, steps } = tokensOf(text, folded);
  const reader = new RowReader(text, folded, decimalMarkOf(tokens));
  let from = 0;
  tokens.forEach((token, index) => {
    if (token.type !== 'line') return;
    reader.line(tokens.slice(from, index));
    from = index + 1;
  });
  reader.line(tokens.slice(from));
  return { ...reader.found(), steps: steps + reader.steps };
}

class RowReader {
  private readonly clauses: Clause[] = [];
  private readonly names: NameFound[] = [];
  private readonly leftovers: Leftover[] = [];
  private heading: Label = NO_LABEL;
  /** Columns of a table with its labels at the top. */
  private columns: readonly Label[] | undefined;
  steps = 0;

  constructor(
    private readonly text: string,
    private readonly folded: string,
    private readonly mark: '.' | ',' | undefined,
  ) {}

  found(): Omit<Rows, 'steps'> {
    return { clauses: this.clauses, names: this.names, leftovers: this.leftovers };
  }

  line(tokens: readonly Token[]): void {
    const cells = this.cellsOf(tokens);
    if (cells.every((cell) => cell.items.length === 0)) return;
    if (cells.length > 1) this.row(cells);
    else if (cells[0]) this.freeLine(cells[0]);
  }

  /** Semicolons part columns where the first cell is only a label. */
  private cellsOf(tokens: readonly Token[]): readonly Cell[] {
    const groups = splitTokens(tokens, (token) => token.type === 'column');
    while (groups.length > 1 && groups.at(-1)?.length === 0) groups.pop();
    if (groups.length > 1 && groups[0]?.length === 0 && startsWithBar(tokens)) groups.shift();
    const cells = groups.map((group) => this.cellOf(group));
    const [only] = cells;
    if (cells.length !== 1 || !only?.items.some((item) => item.type === 'stop' && item.mark === ';'))
      return cells;
    return splitTokens(tokens, (token) => token.type === 'mark' && token.mark === ';').map((group) =>
      this.cellOf(group),
    );
  }

  private cellOf(tokens: readonly Token[]): Cell {
    const { items, steps } = itemsOf(tokens, this.mark);
    this.steps += steps;
    return { items, span: spanOf(tokens) };
  }

  private row(cells: readonly Cell[]): void {
    const [first, ...bodies] = cells;
    if (!first) return;
    if (this.columns && cells.length === this.columns.length && cells.some(isFilled)) {
      if (cells.every((cell) => this.unitOf(cell) || cell.items.length === 0)) {
        this.columns = this.columns.map((label, index) => ({
          ...label,
          unit: this.unitOf(cells[index]) ?? label.unit,
        }));
        return;
      }
      this.columns.forEach((label, index) => {
        const cell = cells[index];
        if (cell && (cell.items.some(isTelling) || label.atoms.includes('model'))) this.take(label, cell);
      });
      return;
    }
    this.columns = undefined;
    if (isHeader(cells)) {
      this.columns = cells.map((cell) => labelOf(stripped(cell.items)));
      return;
    }
    const isLabelled = !first.items.some(isFigure);
    if (!isLabelled) {
      for (const cell of cells) this.freeLine(cell);
      return;
    }
    const label = labelOf(stripped(first.items));
    const filled = bodies.filter((cell) => cell.items.length > 0);
    if (filled.length === 0) this.freeLine(first);
    for (const cell of filled)
      this.take(first.items.length === 0 ? { ...label, isKnown: false } : label, cell);
  }

  private unitOf(cell: Cell | undefined) {
    if (!cell?.span) return undefined;
    return unitNamed(foldWord(this.text.slice(cell.span.start, cell.span.end)));
  }

  private freeLine(cell: Cell): void {
    this.columns = undefined;
    const colon = cell.items.findIndex((item) => item.type === 'stop' && item.mark === ':');
    const isLabelled = colon > 0 && !cell.items.slice(0, colon).some(isFigure);
    if (isLabelled && colon < cell.items.length - 1) {
      const start = cell.items[colon]?.end ?? 0;
      const body = { items: cell.items.slice(colon + 1), span: { start, end: cell.span?.end ?? start } };
      this.take(labelOf(cell.items.slice(0, colon)), body);
      return;
    }
    if (cell.items.some(isTelling)) this.take(NO_LABEL, cell);
    else this.headingLine(cell);
  }

  private headingLine(cell: Cell): void {
    const label = labelOf(stripped(cell.items));
    const { span } = cell;
    if (!span) return;
    if (label.isKnown && label.atoms.length > 0) {
      this.heading = label;
      return;
    }
    const words = this.folded.slice(span.start, Math.min(span.end, span.start + 60)).replace(/[:.]+ *$/, '');
    if (NEUTRAL_HEADING.test(words.trim()) || label.isKnown) {
      this.heading = NO_LABEL;
      return;
    }
    this.leave(span, 'no figure, and words the reader does not know');
    if (this.clauses.length > 0 && this.looksLikeHeading(span))
      this.heading = { ...NO_LABEL, isKnown: false };
  }

  private looksLikeHeading({ start, end }: TextSpan): boolean {
    if (end - start > 40) return false;
    const words = this.text.slice(start, end).trim();
    return words.endsWith(':') || /^\p{Lu}/u.test(words);
  }

  private take(label: Label, cell: Cell): void {
    const name = this.nameIn(label, cell);
    if (name) {
      this.names.push(name);
      return;
    }
    if (!cell.items.some(isTelling)) {
      if (cell.span) this.leave(cell.span, 'no figure, and words the reader does not know');
      return;
    }
    const clauses = clausesOf(underHeading(this.heading, label), cell.items);
    this.steps += cell.items.length + clauses.length;
    this.clauses.push(...clauses);
  }

  private nameIn({ atoms }: Label, { span }: Cell): NameFound | undefined {
    const [field, more] = atoms;
    if ((field !== 'maker' && field !== 'model') || more !== undefined || !span) return undefined;
    const raw = this.text.slice(span.start, span.end);
    const text = raw.trim();
    const start = span.start + raw.length - raw.trimStart().length;
    return text === '' ? undefined : { field, text, span: { start, end: start + text.length } };
  }

  private leave(span: TextSpan, why: string): void {
    this.leftovers.push({ span, why });
  }
}

function splitTokens(tokens: readonly Token[], isBreak: (token: Token) => boolean): Token[][] {
  const groups: Token[][] = [[]];
  for (const token of tokens) {
    if (isBreak(token)) groups.push([]);
    else groups.at(-1)?.push(token);
  }
  return groups;
}

function startsWithBar(tokens: readonly Token[]): boolean {
  const [first] = tokens;
  return first?.type === 'column';
}

function isFilled(cell: Cell): boolean {
  return (
    cell.items.some(isTelling) || cell.items.some((item) => item.type === 'unit') || cell.span !== undefined
  );
}

/** Every cell (but perhaps the first) is the label of a column. */
function isHeader(cells: readonly Cell[]): boolean {
  return cells.every((cell, index) => {
    const label = labelOf(cell.items);
    if (cell.items.some(isTelling)) return false;
    return (
      label.isKnown &&
      (label.atoms.some(isMeasure) || label.unit !== undefined || (index === 0 && cell.items.length === 0))
    );
  });
}

/** Without the colon at its end. */
function stripped(items: readonly Item[]): readonly Item[] {
  return items.filter((item) => item.type !== 'stop' || item.mark !== ':');
}
