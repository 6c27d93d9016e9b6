/** One figure under its label: the field it is, the fields it may be, or why it is left. */
import type { PartKind } from '../parts/part-spec';
import type { Figure } from './amounts';
import type { Clause } from './clauses';
import { type FigureRule, matches, sharedIgnored } from './figure-rules';
import { type Candidate, type ClauseFinding, left } from './findings';
import { kindRules } from './kinds/kind-rules';
import type { NumberReading } from './numbers';
import { isPlausible, plausibleSpan } from './plausible';
import { fieldUnitOf, flowUnits, lengthUnits, type Measure, type SheetUnit, unitNamed } from './units';

export const NOT_KNOWN = 'a figure under words the reader does not know';

/** `steps` counts the rules looked at. */
export interface FigureRead {
  readonly finding: ClauseFinding;
  readonly steps: number;
}

export function readFigure(kind: PartKind, clause: Clause, figure: Figure): FigureRead {
  const { own, figures } = kindRules[kind];
  let steps = 0;
  const unit = figure.unit ?? clause.unit;
  if (unit?.measure === 'foreign')
    return { finding: left(clause.span, 'in a unit that no field has'), steps: 1 };
  let unused: string | undefined;
  for (const rule of [...sharedIgnored, ...figures]) {
    steps += 1;
    if (!matches(rule, clause.atoms, own) || !fitsMeasure(rule, unit)) continue;
    const finding = applied(kind, rule, clause, figure, unit);
    if (finding.type !== 'left' || rule.paths.length === 0) return { finding, steps };
    unused ??= finding.why;
  }
  return { finding: left(clause.span, unused ?? NOT_KNOWN), steps };
}

function fitsMeasure({ measure }: FigureRule, unit: SheetUnit | undefined): boolean {
  if (measure === 'any') return true;
  if (measure === 'count') return unit === undefined;
  return unit === undefined ? mayLackUnit(measure) : unit.measure === measure;
}

/** Bare numbers are read under a label only for what sheets do leave without a unit. */
function mayLackUnit(measure: Measure): boolean {
  return measure === 'length' || measure === 'mass' || measure === 'power' || measure === 'temperature';
}

function applied(
  kind: PartKind,
  rule: FigureRule,
  clause: Clause,
  figure: Figure,
  unit: SheetUnit | undefined,
): ClauseFinding {
  const { span } = clause;
  if (rule.paths.length === 0) return left(span, rule.because);
  if (figure.readings.length === 0) return left(span, 'no number that can be read');
  // A figure without a unit and without a label says nothing.
  if (unit === undefined && clause.atoms.size === 0) return left(span, NOT_KNOWN);
  const all = candidatesOf(kind, rule, clause, figure, unit);
  const possible = all.filter(({ path, value }) => isPossible(kind, rule, path, Number(value)));
  const [only, second] = possible;
  if (!only) return left(span, outsideWords(kind, rule, all));
  const isGuess = unit === undefined && only.isConverted === true;
  if (rule.ask !== undefined || second !== undefined || isGuess)
    return {
      type: 'open',
      ask: rule.ask ?? (isGuess ? UNIT_QUESTION : questionFor(possible)),
      span,
      answers: possible.map((candidate) => [candidate]),
      yieldsTo: rule.yieldsToAny ? 'any' : rule.ask === undefined ? 'agreement' : 'explicit',
    };
  return { type: 'fact', candidates: [rule.asText ? { ...only, value: String(only.value) } : only] };
}

/** Sheets leave out the unit of millimetres; any other is asked for. */
export const UNIT_QUESTION = 'No unit is stated. Is it this one?';

function isPossible(kind: PartKind, rule: FigureRule, path: string, value: number): boolean {
  if (rule.among && !rule.among.includes(value)) return false;
  if (rule.measure === 'count' && path.endsWith('count') && !Number.isInteger(value)) return false;
  return isPlausible(kind, path, value);
}

function candidatesOf(
  kind: PartKind,
  rule: FigureRule,
  { span }: Clause,
  figure: Figure,
  unit: SheetUnit | undefined,
): readonly Candidate[] {
  const units = unit ? [unit] : unitsFor(rule, kind);
  return rule.paths.flatMap((path) =>
    units.flatMap((one) =>
      figure.readings.map((reading): Candidate => {
        const said = unit
          ? ''
          : one.name === ''
            ? ''
            : `; no unit is stated, only ${one.name} would be plausible`;
        return {
          path,
          ...inUnit(reading, one),
          ...bandOf(figure, reading, one),
          ...(one.measure === 'foreign' ? {} : { unit: fieldUnitOf[one.measure] }),
          span,
          rule: `${rule.because}${figure.isRange ? '; the upper end of the range' : ''}${said}`,
          ...(rule.isExplicit ? { isExplicit: true } : {}),
        };
      }),
    ),
  );
}

const NO_UNIT: SheetUnit = { name: '', measure: 'foreign', factor: 1 };

function unitsFor(rule: FigureRule, kind: PartKind): readonly SheetUnit[] {
  const [path] = rule.paths;
  if (rule.measure === 'length') return lengthUnits;
  if (rule.measure === 'mass') return [unitNamed('g'), unitNamed('kg')].flatMap((one) => one ?? []);
  if (rule.measure === 'count' && path?.endsWith('flow')) return flowUnits;
  if (rule.measure === 'count' && path?.endsWith('speed')) return [unitNamed('rpm') ?? NO_UNIT];
  const named =
    rule.measure === 'power' ? unitNamed('w') : rule.measure === 'temperature' ? unitNamed('°c') : undefined;
  return kind === undefined || !named ? [NO_UNIT] : [named];
}

export function inUnit(
  { value, halfStep }: NumberReading,
  { factor }: SheetUnit,
): { readonly value: number; readonly halfStep: number; readonly isConverted: boolean } {
  return { value: rounded(value * factor), halfStep: halfStep * factor, isConverted: factor !== 1 };
}

function bandOf(
  { band }: Figure,
  { value }: NumberReading,
  { factor }: SheetUnit,
): { readonly plusMinus?: number } {
  if (!band) return {};
  const half = band.isPercent ? (value * band.value) / 100 : band.value;
  return { plusMinus: rounded(half * factor) };
}

/** Without the noise of the arithmetic; a ten-thousandth of a unit is far below what any sheet states. */
export function rounded(value: number): number {
  return Number(value.toFixed(4));
}

function questionFor(possible: readonly Candidate[]): string {
  const paths = new Set(possible.map(({ path }) => path));
  if (paths.size > 1) return 'Which side of the part is this?';
  return possible.some(({ rule }) => rule.includes('no unit'))
    ? 'Which unit is this in?'
    : 'Which number is meant?';
}

function outsideWords(kind: PartKind, { among, paths }: FigureRule, all: readonly Candidate[]): string {
  const [first] = all;
  if (!first) return NOT_KNOWN;
  if (among) return `${String(first.value)} is none of ${among.join(', ')}`;
  const span = plausibleSpan(kind, paths[0] ?? '');
  const unit = first.unit ?? '';
  return span
    ? `${String(first.value)} ${unit} is outside ${span[0]} to ${span[1]} ${unit}, where this field lies`
    : NOT_KNOWN;
}
