/** How the weight of a finding and the state of a clearance are marked. */
import { type Band, type Clearance, fitOfBand, type Verdict, type Weight } from '../../../geometry';
import type { Tone } from '../../ui/fit-mark';

const TONES: Readonly<Record<Weight, Tone>> = { fault: 'interference', caution: 'transition', note: 'note' };

export function weightTone(weight: Weight): Tone {
  return TONES[weight];
}

export interface Mark {
  readonly tone: Tone;
  readonly word: string;
}

/**
 * The fit in the words of ISO 286-1, from the band where one is known, else from the nominal sizes; a gap below the one
 * wanted is marked apart though it is a clearance fit.
 */
export function clearanceMark({ fit: nominal, millimetres, wanted }: Clearance, band?: Band): Mark {
  const fit = band ? fitOfBand(band) : nominal;
  if (fit === 'interference fit') return { tone: 'interference', word: fit };
  if (fit === 'transition fit') return { tone: 'transition', word: fit };
  return millimetres < wanted
    ? { tone: 'transition', word: 'clearance fit, less than wanted' }
    : { tone: 'clearance', word: fit };
}

export function verdictMark({ fits, cautions }: Verdict): Mark {
  if (!fits) return { tone: 'interference', word: 'Does not fit' };
  return cautions > 0
    ? { tone: 'transition', word: 'Fits, with cautions' }
    : { tone: 'clearance', word: 'Fits' };
}
