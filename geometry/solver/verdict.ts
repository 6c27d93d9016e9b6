/** The verdict: one sentence that says whether everything fits, and a second for what else matters. */
import type { Clearance, Finding, Verdict } from './finding';
import { millimetresInWords } from './part-names';

/** Names of the two sides of a clearance as the headline says them. */
export type NamesOf = (clearance: Clearance) => readonly [string, string];

/** `findings` worst first, `clearances` tightest first. */
export function verdictOf(
  findings: readonly Finding[],
  clearances: readonly Clearance[],
  namesOf: NamesOf,
): Verdict {
  const faults = findings.filter((finding) => finding.weight === 'fault');
  const cautions = findings.filter((finding) => finding.weight === 'caution');
  const fits = faults.length === 0;
  const tightest = clearances[0];
  return {
    fits,
    faults: faults.length,
    cautions: cautions.length,
    headline: headlineOf(faults, tightest, namesOf),
    detail: detailOf(faults, cautions),
    ...(tightest ? { tightest: tightest.id } : {}),
  };
}

function headlineOf(faults: readonly Finding[], tightest: Clearance | undefined, namesOf: NamesOf): string {
  const [worst] = faults;
  if (worst) return `Does not fit yet. ${worst.sentence}`;
  if (!tightest) return 'Everything fits.';
  const [from, to] = namesOf(tightest);
  return `Everything fits. Tightest: ${millimetresInWords(tightest.millimetres)} between ${from} and ${to}.`;
}

/** How many covered things are named before the rest is only counted. */
const NAMED_COVERED = 2;

function detailOf(faults: readonly Finding[], cautions: readonly Finding[]): string {
  const sentences: string[] = [];
  const more = faults.length - 1;
  if (more > 0) sentences.push(more === 1 ? 'There is one more fault.' : `There are ${more} more faults.`);
  const covered = cautions.filter((finding) => finding.kind === 'covered');
  sentences.push(...covered.slice(0, NAMED_COVERED).map((finding) => finding.sentence));
  const uncounted = covered.length - NAMED_COVERED;
  if (uncounted > 0) sentences.push(`${uncounted} more ${uncounted === 1 ? 'is' : 'are'} covered.`);
  return sentences.join(' ');
}
