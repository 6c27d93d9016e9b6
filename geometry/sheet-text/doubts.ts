/**
 * Figures that were not taken but may be another statement about a field: under words the reader does not know ('quiet
 * mode'), or with a condition no rule allows for. They fill nothing; they only make a differing one a question.
 */
import type { PartKind } from '../parts/part-spec';
import type { Figure } from './amounts';
import type { Clause } from './clauses';
import { type FigureRule, sharedIgnored } from './figure-rules';
import type { ClauseFinding } from './findings';
import { kindRules } from './kinds/kind-rules';
import { readFigure } from './read-figure';
import { type Atom, isSubject } from './words/atoms';

/** Measures that a unit alone gives away. */
const TELLING_UNITS: ReadonlySet<string> = new Set(['speed', 'flow', 'pressure', 'sound']);

/** Things whose figures are never those of the part. */
const OTHER_THINGS: readonly Atom[] = ['package', 'gross', 'min', 'idle'];

export function doubtful(
  kind: PartKind,
  clause: Clause,
  figure: Figure,
  finding: ClauseFinding,
): ClauseFinding {
  if (finding.type !== 'left' || OTHER_THINGS.some((atom) => clause.atoms.has(atom))) return finding;
  const unit = figure.unit ?? clause.unit;
  if (!unit || unit.measure === 'foreign') return finding;
  const rule = nearestRule(kind, clause);
  if (rule && (rule.paths.length === 0 || rule.yieldsToAny)) return finding;
  // A figure of some other thing says nothing about this one.
  const isOther = [...clause.atoms].some(
    (atom) => isSubject(atom) && !kindRules[kind].own.includes(atom) && !rule?.all.includes(atom),
  );
  if (isOther && !TELLING_UNITS.has(unit.measure)) return finding;
  if (!rule && !TELLING_UNITS.has(unit.measure)) return finding;
  const plain: Clause = { ...clause, atoms: new Set(rule?.all ?? []), isKnown: true };
  const again = readFigure(kind, plain, figure).finding;
  const [candidate] = again.type === 'fact' ? again.candidates : [];
  return candidate ? { type: 'doubt', candidate, why: finding.why } : finding;
}

/** The rule that asks for most of what the label says, whatever else the label says. */
function nearestRule(kind: PartKind, { atoms }: Clause): FigureRule | undefined {
  return [...sharedIgnored, ...kindRules[kind].figures]
    .filter(({ all }) => all.length > 0 && all.every((atom) => atoms.has(atom)))
    .toSorted((a, b) => b.all.length - a.all.length)[0];
}
