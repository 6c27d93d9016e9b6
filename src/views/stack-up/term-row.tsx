/** One dimension of a stack-up. Pointing at it shows its two faces in the drawing; opening it takes a measured value. */
import { useId } from 'react';
import type { StackUpTerm } from '../../../geometry';
import { pointAtDimension } from '../../store/chain-store';
import { formatMillimetres } from '../../ui/numbers';
import { MeasureForm } from './measure-form';
import { dimensionName, sourceWords, summand } from './sum-rows';

interface TermRowProps {
  readonly term: StackUpTerm;
  readonly readOnly: boolean;
  /** Whether a measured value is being typed. */
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
}

export function TermRow({ term, readOnly, open, onOpen }: TermRowProps) {
  const own = term.source === 'measured' && !term.isDefault ? term.plusMinus : undefined;
  const form = useId();
  const pointing = {
    onPointerEnter: () => pointAtDimension(term),
    onPointerLeave: () => pointAtDimension(undefined),
    onFocus: () => pointAtDimension(term),
    onBlur: () => pointAtDimension(undefined),
  };
  if (readOnly)
    return (
      <div className="term" {...pointing}>
        <TermFacts term={term} />
      </div>
    );
  return (
    <>
      <button
        type="button"
        className="term"
        aria-expanded={open}
        aria-controls={open ? form : undefined}
        title={term.datum === undefined ? 'Type a measured value' : `Measured ${term.datum}`}
        onClick={() => onOpen(!open)}
        {...pointing}
      >
        <TermFacts term={term} />
      </button>
      {open && (
        <div id={form}>
          <MeasureForm dimension={term} plusMinus={own} onDone={() => onOpen(false)} />
        </div>
      )}
    </>
  );
}

function TermFacts({ term }: { readonly term: StackUpTerm }) {
  const percent = Math.round(term.share * 100);
  return (
    <>
      <span className="term-title">{dimensionName(term)}</span>
      <span className="number">{summand(term)}</span>
      <span className="number">± {formatMillimetres(term.contribution)}</span>
      <span className="term-source quiet">{sourceWords(term)}</span>
      <span className="term-share">
        <span className="share-bar" aria-hidden="true">
          <span style={{ width: `${Math.max(1, term.share * 100)}%` }} />
        </span>
        <span className="quiet">
          {percent < 1 ? '<1' : percent} %<span className="unseen"> of the spread</span>
        </span>
      </span>
    </>
  );
}
