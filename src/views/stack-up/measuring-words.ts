/** What measuring would be worth, in words. */
import type { Measurement, WorthMeasuring } from '../../../geometry';
import { formatMillimetres } from '../../ui/numbers';

/** 'Whether they touch' or 'Whether the 3.0 mm wanted are kept': what is undecided. */
export function questionWords({ question, threshold }: WorthMeasuring): string {
  return question === 'contact'
    ? 'Whether they touch depends on the pieces.'
    : `Whether the ${formatMillimetres(threshold)} mm wanted are kept depends on the pieces.`;
}

/** 'Measure these three: as the sheets say, that settles it. Chance that the readings decide: 96 %.' */
export function promiseWords({ measurements, settled }: WorthMeasuring): string {
  const count = measurements.length;
  const last = measurements.at(-1);
  if (!last) return 'Measuring would not narrow it: every dimension is known as well as a reading tells.';
  const these = count === 1 ? 'Measure this one' : `Measure these ${COUNTS[count] ?? count}`;
  if (settled) return `${these}: as the sheets say, that settles it. ${chanceWords(last)}`;
  const open = `${these} to narrow it to ± ${formatMillimetres(last.leaves)}; as the sheets say, it stays open.`;
  return last.chanceDecided < WORTH_SAYING ? open : `${open} ${chanceWords(last)}`;
}

const COUNTS: Readonly<Record<number, string>> = { 2: 'two', 3: 'three', 4: 'four', 5: 'five', 6: 'six' };

/** A smaller chance is no reason to measure. */
const WORTH_SAYING = 0.05;

/** Whatever the readings turn out to be. */
function chanceWords({ chanceDecided }: Measurement): string {
  return chanceDecided > 0.995
    ? 'It is all but certain that the readings decide.'
    : `Chance that the readings decide: ${Math.round(chanceDecided * 100)} %.`;
}

/** 'now ± 0.5, then ± 0.1; leaves ± 0.8 of the gap' */
export function worthWords({ plusMinus, measuredPlusMinus, leaves }: Measurement): string {
  return `now ± ${formatMillimetres(plusMinus)}, then ± ${formatMillimetres(measuredPlusMinus)}; leaves the gap ± ${formatMillimetres(leaves)}`;
}
