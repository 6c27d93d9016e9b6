/** One way out with all it does. */
import type { Change, Plan } from '../../../geometry';
import { applyChange } from '../../store/apply-change';
import { announce } from '../../store/status-store';
import { hoverPart } from '../../store/view-store';
import { FitMark } from '../../ui/fit-mark';
import { countOf } from '../../ui/numbers';
import { weightTone } from '../findings/weight-tone';
import { alsoGone, gapWords, isWorthSaying, marginWords } from './change-words';

interface ChangeRowProps {
  readonly change: Change;
  /** Id of the finding or clearance it is to put right. */
  readonly target: string;
  /** The plan it was tried on. */
  readonly triedOn: Plan;
}

export function ChangeRow({ change, target, triedOn }: ChangeRowProps) {
  const { kind, title, solves, part, effects } = change;
  const apply = () => {
    if (!applyChange(triedOn, change)) announce('The plan has changed since; the ways out are tried again.');
  };
  const margins = effects.margins.filter(isWorthSaying);
  const gap = gapWords(change);
  return (
    <li className="change" onPointerEnter={() => hoverPart(part)} onPointerLeave={() => hoverPart(undefined)}>
      <div className="change-head">
        <span className="change-title">{title}</span>
        {kind !== 'measure' && (
          <button type="button" className="button small" aria-label={`Apply: ${title}`} onClick={apply}>
            Apply
          </button>
        )}
      </div>
      <p className="change-outcome">
        {kind === 'measure' ? (
          <span className="quiet">Changes no part. Type what you measure into the stack-up.</span>
        ) : (
          <FitMark
            tone={solves ? 'clearance' : 'transition'}
            word={solves ? 'puts it right' : 'better, not enough'}
            worded
          />
        )}
        {kind !== 'measure' && gap !== undefined && <span className="number">{gap}</span>}
      </p>
      <Effects change={change} target={target} />
      {margins.length > 0 && (
        <ul className="change-margins quiet">
          {margins.map((margin) => (
            <li key={margin.id}>{marginWords(margin)}</li>
          ))}
        </ul>
      )}
    </li>
  );
}

function Effects({ change: { effects }, target }: Pick<ChangeRowProps, 'change' | 'target'>) {
  const { caused } = effects;
  const { told, more } = alsoGone(effects.fixed, target);
  if (caused.length + told.length + more === 0) return null;
  return (
    <ul className="change-effects">
      {caused.map(({ id, weight, sentence }) => (
        <li key={id} className={weightTone(weight)}>
          <FitMark tone={weightTone(weight)} word={weight} /> New: {sentence}
        </li>
      ))}
      {told.map(({ id, sentence }) => (
        <li key={id} className="clearance">
          Gone too: {sentence}
        </li>
      ))}
      {more > 0 && (
        <li className="clearance">Gone too: {told.length > 0 ? `${more} more` : countOf(more, 'finding')}</li>
      )}
    </ul>
  );
}
