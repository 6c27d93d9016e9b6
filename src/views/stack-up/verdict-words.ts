/** What the band of a clearance means, in a sentence or two. */
import type { StackUp } from '../../../geometry';
import { formatMillimetres } from '../../ui/numbers';
import { fallingShort, touching } from './odds-words';

/** 'With ordinary tolerances about 1 build in 13 touches; about 9 builds in 10 fall short of the 3.0 mm wanted.' */
export function verdictWords(stackUp: StackUp): string {
  const { fit, wantedKept, wanted, worstCase, terms } = stackUp;
  const least = formatMillimetres(worstCase[0]);
  if (terms.length === 0) return 'No dimension behind it has a tolerance.';
  const bands = terms.some((term) => term.isDefault) ? 'With ordinary tolerances' : 'With these tolerances';
  // Where faces take over from one another, the odds are those of the likelier alone.
  const odds = stackUp.kinked ? `${bands}, at the least,` : bands;
  const short = fallingShort(stackUp.probabilityBelowWanted, formatMillimetres(wanted));
  if (fit === 'interference fit') return 'Whatever pieces you get, they overlap.';
  if (fit === 'transition fit') {
    const contact = `${odds} ${touching(stackUp.probabilityOfContact)}`;
    return wanted > 0 ? `${contact}; ${short}.` : `${contact}.`;
  }
  if (wantedKept === 'always')
    return wanted > 0
      ? `Whatever pieces you get, the ${formatMillimetres(wanted)} mm wanted are kept.`
      : `Whatever pieces you get, at least ${least} mm stay free.`;
  if (wantedKept === 'never')
    return `No build touches, but none keeps the ${formatMillimetres(wanted)} mm wanted.`;
  return `No build touches: at worst ${least} mm stay. ${odds} ${short}.`;
}
