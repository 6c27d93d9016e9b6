/** Two or three sides given together: which is which, by their letters, or by what the part can be. */
import type { PartKind } from '../parts/part-spec';
import type { Amount, Figure } from './amounts';
import type { BoxAnswer, BoxFill, BoxRule, Measured, SheetContext } from './box';
import { boxRules } from './box-rules';
import type { Clause } from './clauses';
import { matches, sharedIgnored } from './figure-rules';
import { type Candidate, type ClauseFinding, left } from './findings';
import { kindRules } from './kinds/kind-rules';
import { inUnit, NOT_KNOWN, UNIT_QUESTION } from './read-figure';
import type { Side } from './sides';
import { lengthUnits, type SheetUnit } from './units';

export function readBox(
  kind: PartKind,
  clause: Clause,
  amount: Amount,
  context: SheetContext,
): readonly ClauseFinding[] {
  const { own } = kindRules[kind];
  const { span } = clause;
  const known = [...sharedIgnored, ...kindRules[kind].figures.filter((rule) => rule.paths.length === 0)].find(
    (rule) => rule.measure === 'any' && matches(rule, clause.atoms, own),
  );
  if (known) return [left(span, known.because)];
  const rule = boxRules[kind].find(
    (one) =>
      one.sides === amount.figures.length &&
      matches({ ...one, paths: [], measure: 'any' }, clause.atoms, own),
  );
  if (!rule) return [left(span, NOT_KNOWN)];
  const sets = readableSets(amount.figures, clause.unit);
  if (sets === undefined) return [left(span, 'no lengths that can be read')];
  return settleSets(rule, clause, sets, sidesOf(amount, clause), context);
}

/** The figures in each unit they may be in; undefined when one cannot be read. */
function readableSets(
  figures: readonly Figure[],
  labelUnit: SheetUnit | undefined,
): readonly (readonly Measured[])[] | undefined {
  const stated = figures[0]?.unit ?? labelUnit;
  if (figures.some(({ unit }) => unit !== undefined && unit.measure !== 'length')) return undefined;
  if (labelUnit !== undefined && labelUnit.measure !== 'length') return undefined;
  // '1.234 x 5.678' can be read in two ways at each place; nobody writes sides so, and none is taken.
  const readings = figures.map((figure) => (figure.readings.length === 1 ? figure.readings[0] : undefined));
  if (readings.some((reading) => reading === undefined)) return undefined;
  const units = stated ? [undefined] : lengthUnits;
  return units.map((unit) =>
    readings.flatMap((reading, index) =>
      reading ? [inUnit(reading, unit ?? figures[index]?.unit ?? labelUnit ?? lengthUnits[0] ?? MM)] : [],
    ),
  );
}

const MM: SheetUnit = { name: 'mm', measure: 'length', factor: 1 };

function sidesOf(amount: Amount, { sides }: Clause): readonly Side[] {
  const own = amount.figures.map(({ side }) => side);
  if (own.every((side) => side !== undefined)) return own;
  return sides.length === amount.figures.length ? sides : [];
}

/** What all answers agree on is a fact; the rest is a question. */
function settleSets(
  rule: BoxRule,
  clause: Clause,
  sets: readonly (readonly Measured[])[],
  sides: readonly Side[],
  context: SheetContext,
): readonly ClauseFinding[] {
  const answers = unlike(sets.flatMap((set) => rule.arrange(set, sides, clause, context)));
  const [first] = answers;
  const { span } = clause;
  if (!first) return [left(span, rule.nothing)];
  // Sheets leave out the unit of millimetres; any other is asked for.
  const isGuess =
    sets.length > 1 && answers.every(({ fills }) => fills.some(({ measured }) => measured.isConverted));
  const isUnsure = ({ path, measured }: BoxFill): boolean =>
    isGuess ||
    (first.ask !== undefined && (first.unsure ?? [path]).includes(path)) ||
    !answers.every(({ fills }) =>
      fills.some((one) => one.path === path && one.measured.value === measured.value),
    );
  const candidates = (answer: BoxAnswer, unsure: boolean): readonly Candidate[] =>
    answer.fills
      .filter((fill) => isUnsure(fill) === unsure)
      .map((fill) => candidateOf(fill, answer.because, clause));
  const facts = candidates(first, false);
  const open = answers.map((answer) => candidates(answer, true)).filter((one) => one.length > 0);
  const ask =
    first.ask ??
    (isGuess
      ? UNIT_QUESTION
      : sets.length > 1
        ? 'Which unit are these in, and which side is which?'
        : 'Which side is which?');
  return [
    ...(facts.length > 0 ? [{ type: 'fact', candidates: facts } as const] : []),
    ...(open.length > 0
      ? [
          {
            type: 'open',
            ask,
            span,
            answers: open,
            yieldsTo: first.ask === undefined ? 'agreement' : 'explicit',
          } as const,
        ]
      : []),
  ];
}

function candidateOf(
  { path, measured, value, isExplicit }: BoxFill,
  because: string,
  { span }: Clause,
): Candidate {
  return {
    path,
    value: value ?? measured.value,
    halfStep: measured.halfStep,
    isConverted: measured.isConverted,
    ...(value === undefined ? { unit: 'mm' as const } : {}),
    span,
    rule: because,
    ...(isExplicit ? { isExplicit: true } : {}),
  };
}

function unlike<
  A extends { readonly fills: readonly { readonly path: string; readonly measured: Measured }[] },
>(answers: readonly A[]): readonly A[] {
  const seen = new Set<string>();
  return answers.filter(({ fills }) => {
    const key = fills
      .map(({ path, measured }) => `${path}=${measured.value}`)
      .toSorted()
      .join(' ');
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
