/** How a part of the shelf would sit, in a few words for its row and in sentences for its card. */

import type { Tone } from '../../ui/fit-mark';
import { formatMillimetres } from '../../ui/numbers';
import type { SeatVerdict } from '../../workers/shelf-request';

export function toneOfSeat({ seat, fits, tightest }: SeatVerdict): Tone {
  if (seat === 'none') return 'note';
  if (!fits) return 'interference';
  return tightest && tightest.millimetres < tightest.wanted ? 'transition' : 'clearance';
}

/** The verdict in a word, for those who do not see the mark. */
export function wordOfSeat(verdict: SeatVerdict): string {
  switch (toneOfSeat(verdict)) {
    case 'clearance':
      return 'Fits';
    case 'transition':
      return 'Fits tightly';
    case 'interference':
      return 'Does not fit';
    case 'note':
      return 'No seat';
  }
}

/** '2.7 mm to side panel', 'no mount takes it': what stands beside the mark. */
export function gapOfSeat({ seat, fits, tightest, faults }: SeatVerdict): string {
  if (seat === 'none') return 'no mount here takes it';
  if (seat === 'unbuildable') return 'its sheet contradicts itself';
  const gap = tightest && `${formatMillimetres(tightest.millimetres)} mm ${tightest.between}`;
  if (fits) return gap ?? 'nothing near it';
  // A clash that is no gap along a direction (a plug, a lead, a lost mount) is said in its own words.
  return tightest && tightest.millimetres < 0 ? (gap ?? '') : (faults[0] ?? gap ?? '');
}

/** All of it, one sentence each. */
export function sentencesOfSeat(verdict: SeatVerdict): readonly string[] {
  const { seat, where, tightest, faults, covers } = verdict;
  const place: Readonly<Record<SeatVerdict['seat'], string>> = {
    mount: `It would go on ${where}.`,
    replace: `It would take the place of ${where}.`,
    free: 'It would stand by itself.',
    none: 'No mount of the open plan takes it.',
    unbuildable: 'No body can be built from its sheet: the figures contradict each other.',
  };
  return [
    place[seat],
    ...(tightest
      ? [
          `Its tightest gap is ${formatMillimetres(tightest.millimetres)} mm, ${tightest.between}; ${formatMillimetres(tightest.wanted)} mm is wanted.`,
        ]
      : []),
    ...faults,
    ...covers,
  ];
}
