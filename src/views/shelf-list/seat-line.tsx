/** How a part of the shelf would sit in the open plan, on one line. */
import { useSeatVerdict } from '../../shelf/seat-verdicts';
import { FitMark } from '../../ui/fit-mark';
import { countOf } from '../../ui/numbers';
import { gapOfSeat, sentencesOfSeat, toneOfSeat, wordOfSeat } from './seat-words';

export function SeatLine({ id }: { readonly id: string }) {
  const verdict = useSeatVerdict(id);
  // The line keeps its height, so that the list does not move when the answer comes.
  if (!verdict) return <span className="seat-line quiet" aria-hidden="true" />;
  const { seat, where, covers, fresh } = verdict;
  return (
    <span
      className="seat-line"
      data-stale={fresh ? undefined : true}
      title={sentencesOfSeat(verdict).join('\n')}
    >
      <FitMark tone={toneOfSeat(verdict)} word={wordOfSeat(verdict)} />
      <span className="number">{gapOfSeat(verdict)}</span>
      {covers.length > 0 && <span>covers {countOf(covers.length, 'thing')}</span>}
      {seat === 'replace' && <span className="quiet">for {where}</span>}
    </span>
  );
}
