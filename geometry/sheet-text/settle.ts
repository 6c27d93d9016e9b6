/** Holds everything a sheet says against everything else it says: what agrees is a fact, what does not is asked. */
import type { Candidate, ClauseFinding } from './findings';
import type { Leftover, ReadValue, SheetAnswer, SheetQuestion, TextSpan } from './reading';

/** More statements about one field than this say nothing new. */
const MOST_STATEMENTS = 24;

/** Values closer than this are one, whatever the places written. */
const SAME = 1e-9;

/** Roundly written figures agree within their last place, but never by more than this share. */
const LARGEST_SLACK = 0.02;

export interface Settled {
  readonly values: readonly ReadValue[];
  readonly questions: readonly SheetQuestion[];
  readonly leftovers: readonly Leftover[];
}

type Open = Extract<ClauseFinding, { readonly type: 'open' }>;
type Doubt = Extract<ClauseFinding, { readonly type: 'doubt' }>;

export function settle(findings: readonly ClauseFinding[]): Settled {
  const facts = new Map<string, Candidate[]>();
  const open: Open[] = [];
  const doubts: Doubt[] = [];
  const leftovers: Leftover[] = [];
  for (const finding of findings) {
    if (finding.type === 'left') leftovers.push({ span: finding.span, why: finding.why });
    else if (finding.type === 'open') open.push(finding);
    else if (finding.type === 'doubt') doubts.push(finding);
    else for (const candidate of finding.candidates) addTo(facts, candidate, leftovers);
  }
  for (const { candidate, why } of doubts) {
    const said = facts.get(candidate.path);
    if (said?.some((fact) => !saysTheSame(fact, candidate))) addTo(facts, candidate, leftovers);
    else leftovers.push({ span: candidate.span, why });
  }
  const conflicts = new Map<string, readonly Candidate[]>();
  const values: ReadValue[] = [];
  for (const [path, all] of facts) {
    const chosen = agreed(all);
    if (chosen) values.push(readValue(chosen));
    else conflicts.set(path, distinct(all));
  }
  const questions: SheetQuestion[] = [];
  for (const one of mergedOpen(open)) askAbout(one, { facts, conflicts, values, questions, leftovers });
  for (const [path, all] of conflicts) questions.push(conflictQuestion(path, all));
  const asked = new Set(
    questions.flatMap(({ answers }) => answers.flatMap(({ fills }) => fills.map(({ path }) => path))),
  );
  return { values: values.filter(({ path }) => !asked.has(path)), questions, leftovers };
}

function addTo(facts: Map<string, Candidate[]>, candidate: Candidate, leftovers: Leftover[]): void {
  const before = facts.get(candidate.path);
  if (!before) facts.set(candidate.path, [candidate]);
  else if (before.length < MOST_STATEMENTS) before.push(candidate);
  else leftovers.push({ span: candidate.span, why: 'said many times over already' });
}

/** The one to take when all of them say the same: an explicit one first, then the most exactly written. */
function agreed(all: readonly Candidate[]): Candidate | undefined {
  const explicit = all.filter(({ isExplicit }) => isExplicit === true);
  const pool = explicit.length > 0 ? explicit : all;
  const [best] = pool.toSorted(byPreference);
  if (!best) return undefined;
  const isSaid =
    pool.every((one) => saysTheSame(one, best)) && !isContradicted(all, best, explicit.length > 0);
  return isSaid ? best : undefined;
}

/** With its band before without, in the field's own unit before converted, exactly before roughly written. */
function byPreference(a: Candidate, b: Candidate): number {
  const bands = Number(b.plusMinus !== undefined) - Number(a.plusMinus !== undefined);
  const converted = Number(a.isConverted ?? false) - Number(b.isConverted ?? false);
  return bands || converted || a.halfStep - b.halfStep;
}

/** A plain figure may differ from an explicit one: it is then of the whole, fan and all. */
function isContradicted(all: readonly Candidate[], best: Candidate, hasExplicit: boolean): boolean {
  return !hasExplicit && all.some((one) => !saysTheSame(one, best));
}

function saysTheSame(a: Candidate, b: Candidate): boolean {
  if (typeof a.value !== 'number' || typeof b.value !== 'number') return a.value === b.value;
  if (a.plusMinus !== undefined && b.plusMinus !== undefined && Math.abs(a.plusMinus - b.plusMinus) > SAME)
    return false;
  if (a.unit === undefined || b.unit === undefined) return a.value === b.value;
  const slack =
    a.halfStep === b.halfStep ? 0 : Math.min(a.halfStep + b.halfStep, LARGEST_SLACK * Math.abs(a.value));
  return Math.abs(a.value - b.value) <= slack + SAME;
}

function distinct(all: readonly Candidate[]): readonly Candidate[] {
  return all.filter((one, index) => all.findIndex((other) => saysTheSame(one, other)) === index);
}

/** Two questions about the same fields become one with all their answers. */
function mergedOpen(open: readonly Open[]): readonly Open[] {
  const byPaths = new Map<string, Open>();
  for (const one of open) {
    const key = [...new Set(one.answers.flat().map(({ path }) => path))].toSorted().join(' ');
    const before = byPaths.get(key);
    if (!before) byPaths.set(key, one);
    else if (before.answers.length < MOST_STATEMENTS)
      byPaths.set(key, { ...before, answers: [...before.answers, ...one.answers], yieldsTo: 'explicit' });
  }
  return [...byPaths.values()];
}

interface Ledger {
  readonly facts: ReadonlyMap<string, readonly Candidate[]>;
  readonly conflicts: Map<string, readonly Candidate[]>;
  readonly values: ReadValue[];
  readonly questions: SheetQuestion[];
  readonly leftovers: Leftover[];
}

function askAbout(one: Open, { facts, conflicts, values, questions, leftovers }: Ledger): void {
  const paths = [...new Set(one.answers.flat().map(({ path }) => path))];
  const known = paths.filter((path) => facts.has(path));
  const isExplicit = known.some((path) => facts.get(path)?.some((fact) => fact.isExplicit === true));
  const isSaid = one.answers.some((answer) =>
    answer.every(
      (candidate) => facts.get(candidate.path)?.some((fact) => saysTheSame(fact, candidate)) === true,
    ),
  );
  if (known.length > 0 && (isSaid || (isExplicit && one.yieldsTo === 'explicit') || one.yieldsTo === 'any')) {
    leftovers.push({
      span: one.span,
      why: isSaid ? 'the same as said elsewhere' : 'another figure; the plain one was taken',
    });
    return;
  }
  const agreeing = one.answers.filter((answer) =>
    answer.every(
      (candidate) => facts.get(candidate.path)?.some((fact) => !saysTheSame(fact, candidate)) !== true,
    ),
  );
  const [only, second] = agreeing;
  if (known.length > 0 && one.yieldsTo === 'agreement' && only && !second) {
    const rest = only.filter(({ path }) => !facts.has(path));
    values.push(
      ...rest.map((candidate) =>
        readValue({ ...candidate, rule: `${candidate.rule}; the only way that agrees with the rest` }),
      ),
    );
    return;
  }
  // A plain figure and one with a condition side by side: only a person can say which is meant.
  const said = known.flatMap((path) => (facts.get(path) ?? []).slice(0, 1).map((fact) => [fact]));
  for (const path of known) conflicts.delete(path);
  questions.push(questionOf(one.ask, one.span, uniqueAnswers([...said, ...one.answers])));
}

function conflictQuestion(path: string, all: readonly Candidate[]): SheetQuestion {
  const span = all[0]?.span ?? { start: 0, end: 0 };
  return {
    ...questionOf(
      'The sheet says different things. Which one holds?',
      span,
      all.map((one) => [one]),
    ),
    id: path,
  };
}

function questionOf(ask: string, span: TextSpan, answers: readonly (readonly Candidate[])[]): SheetQuestion {
  return {
    id: [...new Set(answers.flat().map(({ path }) => path))].join(' '),
    ask,
    span,
    answers: answers.map(answerOf),
  };
}

function uniqueAnswers(answers: readonly (readonly Candidate[])[]): readonly (readonly Candidate[])[] {
  const key = (answer: readonly Candidate[]) =>
    answer.map(({ path, value }) => `${path}=${String(value)}`).join(' ');
  return answers.filter((one, index) => answers.findIndex((other) => key(other) === key(one)) === index);
}

function answerOf(candidates: readonly Candidate[]): SheetAnswer {
  const fills = candidates.map(readValue);
  const label = fills
    .map(({ path, value, unit }) => `${path} ${words(value)}${unit ? ` ${unit}` : ''}`)
    .join(', ');
  return { label, fills };
}

function words(value: ReadValue['value']): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return String(value);
}

function readValue({ path, value, plusMinus, unit, span, rule }: Candidate): ReadValue {
  return {
    path,
    value,
    ...(plusMinus === undefined ? {} : { plusMinus }),
    ...(unit === undefined ? {} : { unit }),
    span,
    rule,
  };
}
