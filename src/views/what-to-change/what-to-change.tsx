/** Ways out of a finding or a small gap, each tried on the model, each applied with one press and undone with one. */
import { useMemo, useState } from 'react';
import type { Change, Plan } from '../../../geometry';
import { useShelf } from '../../shelf/use-shelf';
import { usePlanStore } from '../../store/use-store';
import { useStudyAnswer } from '../../store/use-study-answer';
import { ChangeRow } from './change-row';
import './what-to-change.css';

/** So many are seen at once; the best stand first. */
const SEEN_FIRST = 4;

interface WhatToChangeProps {
  /** Id of the finding or clearance. */
  readonly target: string;
  /** Ids of the parts it is between. */
  readonly parts: readonly string[];
}

/** Parts of the shelf that are tried in a place; own shelves may hold thousands. */
const MOST_TRIED = 200;

export function WhatToChange({ target, parts }: WhatToChangeProps) {
  const plan = usePlanStore((state) => state.plan);
  // While something is dragged the ways out would be tried in vain.
  const dragging = usePlanStore((state) => state.preview !== undefined);
  const shelf = useShelf();
  const request = useMemo(() => {
    if (dragging) return undefined;
    const kinds = new Set(parts.map((id) => plan.parts[id]?.spec.kind));
    const alike = shelf
      .filter(({ spec }) => kinds.has(spec.kind))
      .slice(0, MOST_TRIED)
      .map(({ id, spec }) => ({ id, spec }));
    return { topic: 'ways to change', plan, target, shelf: alike } as const;
  }, [plan, dragging, target, parts, shelf]);
  const { answer, busy, problem } = useStudyAnswer(request);
  return (
    <section className="what-to-change" aria-label="What to change" aria-busy={busy}>
      <h4 className="heading">What to change</h4>
      {problem !== undefined && <p className="fault">The ways out could not be tried: {problem}.</p>}
      {busy && <p className="quiet">Trying what could be done…</p>}
      {!busy && answer?.length === 0 && <p className="quiet">Nothing that was tried makes it better.</p>}
      {!busy && request && answer && <ChangeList changes={answer} target={target} triedOn={request.plan} />}
    </section>
  );
}

interface ChangeListProps {
  readonly changes: readonly Change[];
  readonly target: string;
  readonly triedOn: Plan;
}

function ChangeList({ changes, target, triedOn }: ChangeListProps) {
  const [all, setAll] = useState(false);
  const seen = all ? changes : changes.slice(0, SEEN_FIRST);
  const more = changes.length - seen.length;
  return (
    <>
      <ul>
        {seen.map((change) => (
          <ChangeRow key={change.id} change={change} target={target} triedOn={triedOn} />
        ))}
      </ul>
      {more > 0 && (
        <button type="button" className="button plain small" onClick={() => setAll(true)}>
          {more} more
        </button>
      )}
    </>
  );
}
