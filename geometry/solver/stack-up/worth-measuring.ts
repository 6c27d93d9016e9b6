/** What measuring would be worth: which dimensions, read on the pieces at hand, decide an undecided clearance. */
import type { Plan } from '../../plan/plan-schema';
import { type Instrument, instrumentFor } from '../../standards/general-tolerances';
import type { Band } from './fit-verdict';
import { probabilityBelow } from './normal-distribution';
import type { StackUp, StackUpTerm } from './stack-up';
import { stackUpOf, stackUpsOf } from './stack-ups';

/** One thing to measure, and what is known once it and all before it are measured. */
export interface Measurement {
  readonly part: string;
  readonly partLabel: string;
  readonly path: string;
  readonly title: string;
  readonly datum: string | undefined;
  /** mm, and its band as it is now and as a reading leaves it. */
  readonly nominal: number;
  readonly plusMinus: number;
  readonly measuredPlusMinus: number;
  readonly instrument: Instrument['name'];
  /** Half-width of what is left of the band, mm. */
  readonly leaves: number;
  /** Chance that the readings decide, whatever they turn out to be. */
  readonly chanceDecided: number;
}

export interface WorthMeasuring {
  readonly clearance: string;
  /** What is undecided: whether the two touch at all, or whether the wanted gap is kept. */
  readonly question: 'contact' | 'wanted gap';
  /** The gap on which it turns, mm. */
  readonly threshold: number;
  readonly nominal: number;
  readonly band: Band;
  /** The most telling first. */
  readonly measurements: readonly Measurement[];
  /** With all of them measured, and as the sheets say, the question is settled. */
  readonly settled: boolean;
  /** Half-width of the band when all of them are measured, and how far from the threshold the sheets put it, mm. */
  readonly leaves: number;
  readonly lead: number;
  /** Lengths too long for the caliper, whose band a steel rule does not narrow. */
  readonly beyondCaliper: number;
}

/** Nobody measures more than this for one answer. */
const MOST_MEASUREMENTS = 6;

/** Undefined when the plan has no such clearance or its band leaves nothing undecided. */
export function worthMeasuring(plan: Plan, clearanceId: string): WorthMeasuring | undefined {
  const stack = stackUpOf(plan, clearanceId);
  return stack && worthOf(stack);
}

/** Of every undecided clearance, the tightest first. */
export function allWorthMeasuring(plan: Plan): readonly WorthMeasuring[] {
  return stackUpsOf(plan).flatMap((stack) => worthOf(stack) ?? []);
}

function worthOf(stack: StackUp): WorthMeasuring | undefined {
  const question = questionOf(stack);
  if (question === undefined) return undefined;
  const threshold = question === 'contact' ? 0 : stack.wanted;
  const lead = stack.nominal - threshold;
  const measurements: Measurement[] = [];
  let leaves = stack.terms.reduce((sum, term) => sum + term.contribution, 0);
  let variance = 0;
  for (const { term, after, instrument } of byNarrowing(stack.terms)) {
    if (measurements.length === MOST_MEASUREMENTS || leaves <= Math.abs(lead)) break;
    leaves -= term.contribution * (1 - after / term.plusMinus);
    variance += (term.contribution / term.sigmas) ** 2;
    measurements.push({
      part: term.part,
      partLabel: term.partLabel,
      path: term.path,
      title: term.title,
      datum: term.datum,
      nominal: term.nominal,
      plusMinus: term.plusMinus,
      measuredPlusMinus: after,
      instrument,
      leaves,
      chanceDecided: chanceDecided(lead, leaves, Math.sqrt(variance)),
    });
  }
  return {
    clearance: stack.clearance,
    question,
    threshold,
    nominal: stack.nominal,
    band: stack.worstCase,
    measurements,
    settled: leaves <= Math.abs(lead),
    leaves,
    lead: Math.abs(lead),
    beyondCaliper: stack.terms.filter(isBeyondCaliper).length,
  };
}

function isBeyondCaliper({ nominal, plusMinus }: StackUpTerm): boolean {
  const { name, plusMinus: after } = instrumentFor(nominal);
  return name === 'steel rule' && after >= plusMinus && plusMinus > instrumentFor(0).plusMinus;
}

function questionOf({ fit, wantedKept }: StackUp): WorthMeasuring['question'] | undefined {
  if (fit === 'transition fit') return 'contact';
  return wantedKept === 'depending on the pieces' ? 'wanted gap' : undefined;
}

/** Dimensions that a reading narrows, the one that narrows the gap most first. */
function byNarrowing(terms: readonly StackUpTerm[]) {
  return terms
    .map((term) => {
      const { name, plusMinus } = instrumentFor(term.nominal);
      return { term, after: plusMinus, instrument: name };
    })
    .filter(({ term, after }) => after < term.plusMinus)
    .sort((a, b) => narrowing(b) - narrowing(a));
}

function narrowing({ term, after }: { readonly term: StackUpTerm; readonly after: number }): number {
  return term.contribution * (1 - after / term.plusMinus);
}

/** Readings move the middle of the band by as much as the dimensions were uncertain; beyond what is left they decide. */
function chanceDecided(lead: number, leaves: number, sigma: number): number {
  return probabilityBelow(lead - leaves, 0, sigma) + probabilityBelow(-lead - leaves, 0, sigma);
}
