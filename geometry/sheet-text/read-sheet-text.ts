/**
 * Reads the text of a spec sheet: deterministic, local, in one pass. What is certain becomes a value, what is not
 * becomes a question, and everything else is left over with the reason. Never throws, whatever the text.
 */
import type { PartKind } from '../parts/part-spec';
import type { SheetContext } from './box';
import type { Clause } from './clauses';
import { doubtful } from './doubts';
import { type Candidate, type ClauseFinding, left } from './findings';
import { foldText } from './fold-text';
import { readBox } from './read-box';
import { readFigure } from './read-figure';
import { readWords } from './read-words';
import {
  LARGEST_SHEET_TEXT,
  type Leftover,
  MOST_LEFTOVERS,
  type ReadValue,
  type SheetAnswer,
  type SheetQuestion,
  type SheetReading,
} from './reading';
import { type NameFound, rowsOf } from './rows';
import { settle } from './settle';

export interface SheetOptions {
  /** The style the form is set to already ('tower', 'M.2'), for sheets that do not say. */
  readonly style?: string;
}

export function readSheetText(text: string, kind: PartKind, options: SheetOptions = {}): SheetReading {
  const read = text.slice(0, LARGEST_SHEET_TEXT);
  const rows = rowsOf(read, foldText(read));
  const words = rows.clauses.map((clause) => (clause.isKnown ? readWords(kind, clause) : []));
  const context = contextOf(words.flat(), options);
  let { steps } = rows;
  const findings: ClauseFinding[] = rows.names.flatMap(nameFinding);
  rows.clauses.forEach((clause, index) => {
    const told = words[index] ?? [];
    const figures = figuresOf(kind, clause, context, told.length > 0);
    steps += figures.steps + 1;
    findings.push(...told, ...figures.findings);
  });
  const settled = settle(withoutForeign(kind, context, rows.clauses, findings));
  const leftovers = [...rows.leftovers, ...settled.leftovers, ...beyond(text)].toSorted(
    (a, b) => a.span.start - b.span.start,
  );
  return {
    kind,
    values: settled.values.toSorted((a, b) => a.span.start - b.span.start),
    questions: [...settled.questions, ...unsaidOf(settled.values)],
    leftovers: leftovers.slice(0, MOST_LEFTOVERS),
    moreLeftovers: Math.max(0, leftovers.length - MOST_LEFTOVERS),
    readTo: read.length,
    steps: steps + findings.length,
  };
}

/** What the form needs and no sheet says: which edge of a card its sockets face. */
function unsaidOf(values: readonly ReadValue[]): readonly SheetQuestion[] {
  const sockets = values.find(({ path }) => path.startsWith('power.'));
  if (!sockets) return [];
  const { span } = sockets;
  const answers = ['top', 'end', 'bracket end'].map((value): SheetAnswer => {
    const rule = 'your answer';
    return { label: value, fills: [{ path: SOCKET_EDGE, value, span, rule }] };
  });
  return [{ id: SOCKET_EDGE, ask: 'Which edge of the card do its power sockets face?', span, answers }];
}

const SOCKET_EDGE = 'power.edge';

function beyond(text: string): readonly Leftover[] {
  if (text.length <= LARGEST_SHEET_TEXT) return [];
  const why = `beyond the first ${LARGEST_SHEET_TEXT} characters, which is as far as the reader goes`;
  return [{ span: { start: LARGEST_SHEET_TEXT, end: text.length }, why }];
}

const LONGEST_NAME = { maker: 60, model: 80 } as const;

function nameFinding({ field, text, span }: NameFound): readonly ClauseFinding[] {
  if (text.length > LONGEST_NAME[field]) return [left(span, 'too long for a name')];
  return [
    {
      type: 'fact',
      candidates: [{ path: field, value: text, halfStep: 0, span, rule: `named as ${field}` }],
    },
  ];
}

/** What the words of the sheet say about the part as a whole, if they say one thing. */
function contextOf(told: readonly ClauseFinding[], options: SheetOptions): SheetContext {
  const said = (path: string): string | undefined => {
    const values = new Set(
      told
        .flatMap((one) => (one.type === 'fact' ? one.candidates : []))
        .flatMap((one) => (one.path === path ? [String(one.value)] : [])),
    );
    return values.size === 1 ? [...values][0] : undefined;
  };
  return { form: said('form') ?? options.style, style: said('style') ?? options.style };
}

function figuresOf(
  kind: PartKind,
  clause: Clause,
  context: SheetContext,
  isTold: boolean,
): { readonly findings: readonly ClauseFinding[]; readonly steps: number } {
  if (!clause.isKnown) {
    const unread = left(clause.span, 'words the reader does not know');
    const doubts = clause.amounts.flatMap(({ figures: [one, second] }) =>
      one && !second ? doubtful(kind, clause, one, unread) : [],
    );
    return { findings: doubts.length > 0 ? doubts : [unread], steps: 1 + doubts.length };
  }
  const findings: ClauseFinding[] = [];
  let steps = 0;
  for (const amount of clause.amounts) {
    const [only, second] = amount.figures;
    if (!only) continue;
    if (second) {
      findings.push(...readBox(kind, clause, amount, context));
      steps += amount.figures.length;
      continue;
    }
    const isCounting = only.unit === undefined && clause.unit === undefined && isTold;
    if (isCounting) continue;
    const read = readFigure(kind, clause, only);
    steps += read.steps;
    // Words already took this figure ('2.5 inch', '3 x 120 mm'): it is not left over.
    if (read.finding.type !== 'left' || !isTold) findings.push(doubtful(kind, clause, only, read.finding));
  }
  if (findings.length === 0 && !isTold) findings.push(left(clause.span, 'nothing the form asks for'));
  return { findings, steps };
}

/** Figures that the form of the part has no field for after all. */
function withoutForeign(
  kind: PartKind,
  context: SheetContext,
  clauses: readonly Clause[],
  findings: readonly ClauseFinding[],
): readonly ClauseFinding[] {
  const isModule = kind === 'drive' && context.form === 'M.2';
  const isTwin =
    kind === 'cooler' &&
    clauses.some(({ values }) =>
      values.some((one) => one.slot === 'cooler style' && one.value === 'twin tower'),
    );
  if (!isModule && !isTwin) return findings;
  const isForeign = ({ path, unit }: Candidate) => (isModule ? unit === 'mm' : path === 'depth');
  const why = isModule
    ? 'an M.2 module is told by its name; the form has no field for this'
    : 'over both fin stacks; the form asks for each';
  return findings.flatMap((finding): readonly ClauseFinding[] => {
    if (finding.type === 'left' || finding.type === 'doubt') return [finding];
    if (finding.type === 'open')
      return finding.answers.flat().some(isForeign) ? [left(finding.span, why)] : [finding];
    const kept = finding.candidates.filter((one) => !isForeign(one));
    if (kept.length === finding.candidates.length) return [finding];
    const span = finding.candidates[0]?.span ?? { start: 0, end: 0 };
    return [...(kept.length > 0 ? [{ ...finding, candidates: kept }] : []), left(span, why)];
  });
}
