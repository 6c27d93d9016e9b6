/** The verdict as one sentence with its mark. Read out when it changes. */

import { useSolutionStore } from '../../store/use-store';
import { selectClearance } from '../../store/view-store';
import { FitMark } from '../../ui/fit-mark';
import { keepUnits } from '../../ui/numbers';
import { verdictMark } from '../findings/weight-tone';
import './verdict-line.css';

export function VerdictLine() {
  const verdict = useSolutionStore((state) => state.solution.verdict);
  const isEmpty = useSolutionStore((state) => state.scene.parts.length === 0);
  const mark = verdictMark(verdict);
  const { headline, detail, tightest } = verdict;
  if (isEmpty)
    return (
      <div className="verdict" role="status" aria-label="Verdict">
        <p>Nothing placed yet.</p>
      </div>
    );
  return (
    <div className={`verdict ${mark.tone}`} role="status" aria-label="Verdict">
      <FitMark {...mark} />
      <p title={`${headline} ${detail}`}>
        <strong>{keepUnits(headline)}</strong> {keepUnits(detail)}
      </p>
      {tightest !== undefined && (
        <button
          type="button"
          className="button small plain verdict-show"
          aria-label="Show the tightest clearance"
          onClick={() => selectClearance(tightest)}
        >
          Show
        </button>
      )}
    </div>
  );
}
