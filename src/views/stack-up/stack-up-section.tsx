/** The stack-up of one clearance, written as a sum; loaded when the first clearance is chosen. */
import { useState } from 'react';
import type { Clearance, StackUp } from '../../../geometry';
import { keyOfDimension } from '../../store/chain-store';
import { useStackUp, useStudyProblem } from '../../store/study-store';
import { usePlanStore } from '../../store/use-store';
import { formatMillimetres } from '../../ui/numbers';
import { ChainOfCard } from './chain-of-card';
import { MeasureThese } from './measure-these';
import { SpreadCurve } from './spread-curve';
import { restOf, signed } from './sum-rows';
import { TermRow } from './term-row';
import { verdictWords } from './verdict-words';
import './stack-up.css';

export function StackUpSection({ clearance }: { readonly clearance: Clearance }) {
  const stackUp = useStackUp(clearance.id);
  const problem = useStudyProblem();
  const readOnly = usePlanStore((state) => state.readOnly);
  const [open, setOpen] = useState<string>();
  if (problem !== undefined) return <p className="fault">The stack-up could not be found: {problem}.</p>;
  if (!stackUp) return <p className="quiet">Looking for the dimensions behind it…</p>;
  return (
    <section className="stack-up" aria-label="Stack-up">
      <ChainOfCard clearance={clearance.id} />
      <p>{verdictWords(stackUp)}</p>
      <Sum stackUp={stackUp} readOnly={readOnly} open={open} onOpen={setOpen} />
      {stackUp.kinks.length > 0 && <Kinks stackUp={stackUp} />}
      {stackUp.sigma > 0 && <SpreadCurve stackUp={stackUp} />}
      {!readOnly && isUndecided(stackUp) && (
        <MeasureThese clearance={clearance.id} onChoose={(chosen) => setOpen(keyOfDimension(chosen))} />
      )}
    </section>
  );
}

function isUndecided({ fit, wantedKept }: StackUp): boolean {
  return fit === 'transition fit' || wantedKept === 'depending on the pieces';
}

interface SumProps {
  readonly stackUp: StackUp;
  readonly readOnly: boolean;
  /** Key of the dimension for which a measured value is being typed. */
  readonly open: string | undefined;
  readonly onOpen: (key: string | undefined) => void;
}

function Sum({ stackUp, readOnly, open, onOpen }: SumProps) {
  const { nominal, rss, worstCase, terms } = stackUp;
  const rest = restOf(stackUp);
  return (
    <div className="sum">
      <ol aria-label="Dimensions, the largest share of the spread first">
        {terms.map((term) => {
          const key = keyOfDimension(term);
          return (
            <li key={key}>
              <TermRow
                term={term}
                readOnly={readOnly}
                open={open === key}
                onOpen={(opened) => onOpen(opened ? key : undefined)}
              />
            </li>
          );
        })}
        {rest !== undefined && (
          <li className="sum-line">
            <span className="quiet">Other dimensions, taken as exact</span>
            <span className="number">{signed(rest)}</span>
          </li>
        )}
      </ol>
      <dl className="sum-total">
        <div className="sum-line">
          <dt>Gap, root sum of squares</dt>
          <dd className="number">{formatMillimetres(nominal)}</dd>
          <dd className="number">± {formatMillimetres(rss)}</dd>
        </div>
        <div className="sum-line quiet">
          <dt>Worst case</dt>
          <dd className="number sum-range">
            {formatMillimetres(worstCase[0])} to {formatMillimetres(worstCase[1])}
          </dd>
        </div>
      </dl>
    </div>
  );
}

function Kinks({ stackUp: { kinks } }: { readonly stackUp: StackUp }) {
  return (
    <div className="kinks">
      <p>Not one plain sum over the whole band; the worst case holds all the same.</p>
      <ul>
        {[...new Set(kinks.map((kink) => kink.sentence))].map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </div>
  );
}
