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
export function promiseWords(worth: WorthMeasuring): string {
  const { measurements, settled } = worth;
  const last = measurements.at(-1);
  if (last && settled)
    return `Measure ${these(measurements)}: as the sheets say, that settles it. ${chanceWords(last)}`;
  if (!last || last.chanceDecided < WORTH_SAYING) return `Measuring cannot settle this: ${whyNot(worth)}`;
  return `Measuring settles this only if the readings are not as the sheets say: ${whyNot(worth)} ${chanceWords(last)}`;
}

/** 'with these three measured ± 0.9 mm stay, and the sheets put it 0.3 mm from what is wanted.' */
function whyNot({ measurements, leaves, lead, question, beyondCaliper }: WorthMeasuring): string {
  const edge = question === 'contact' ? 'touching' : 'what is wanted';
  const known =
    measurements.length === 0
      ? 'every dimension is known as well as a reading tells,'
      : `with ${these(measurements)} measured`;
  const long =
    beyondCaliper === 0
      ? ''
      : ` ${beyondCaliper === 1 ? 'One length is' : `${upper(countWord(beyondCaliper))} lengths are`} beyond a 150 mm caliper, and a steel rule is no better than the sheet; with a longer one type its ±.`;
  return `${known} ± ${formatMillimetres(leaves)} mm stay, and the sheets put the gap ${formatMillimetres(lead)} mm from ${edge}.${long} With the parts in, feeler gauges or modelling clay tell the gap itself.`;
}

function these({ length }: readonly Measurement[]): string {
  return length === 1 ? 'this one' : `these ${countWord(length)}`;
}

const COUNTS = ['no', 'one', 'two', 'three', 'four', 'five', 'six'];

function countWord(count: number): string {
  return COUNTS[count] ?? String(count);
}

function upper(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}

/** A smaller chance is no reason to measure. */
const WORTH_SAYING = 0.05;

/** Whatever the readings turn out to be. */
function chanceWords({ chanceDecided }: Measurement): string {
  return chanceDecided > 0.995
    ? 'It is all but certain that the readings decide.'
    : `Chance that the readings decide: ${Math.round(chanceDecided * 100)} %.`;
}

/** 'now ± 0.5, by caliper ± 0.1; leaves the gap ± 0.8' */
export function worthWords({ plusMinus, measuredPlusMinus, instrument, leaves }: Measurement): string {
  return `now ± ${formatMillimetres(plusMinus)}, by ${instrument} ± ${formatMillimetres(measuredPlusMinus)}; leaves the gap ± ${formatMillimetres(leaves)}`;
}
