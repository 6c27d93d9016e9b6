/** The saved plans that use a part of the shelf. */
import { useEffect, useState } from 'react';
import type { ShelfEntry } from '../../shelf/shelf-entry';
import { findUses, type PartUse } from '../../shelf/where-used';
import { openStoredPlan, saveNow } from '../../store/plan-session';
import { announce } from '../../store/status-store';
import { usePlanStore } from '../../store/use-store';

interface PartUsesProps {
  readonly entry: ShelfEntry;
  readonly formerIds: readonly string[] | undefined;
  readonly onOpened: () => void;
}

export function PartUses({ entry, formerIds, onOpened }: PartUsesProps) {
  const [uses, setUses] = useState<readonly PartUse[]>();
  const openId = usePlanStore((state) => state.planId);
  useEffect(() => {
    // The open plan counts as it stands on the screen.
    saveNow()
      .then(() => findUses(entry, formerIds))
      .then(setUses, () => setUses([]));
  }, [entry, formerIds]);
  const open = async (use: PartUse) => {
    const [problem] = await openStoredPlan(use.planId).catch(() => [
      { path: 'plan', message: 'could not be read' },
    ]);
    if (problem) announce(`'${use.planName}' cannot be opened: ${problem.path} ${problem.message}.`);
    else onOpened();
  };
  return (
    <section aria-label="Used in">
      <h3 className="heading">Used in</h3>
      {uses?.length === 0 && <p className="quiet">No saved plan uses it.</p>}
      <ul className="use-list">
        {uses?.map((use) => (
          <li key={use.planId}>
            {use.planName}
            {use.count > 1 && ` (${use.count} of them)`}
            {use.planId === openId ? (
              <span className="quiet">, open now</span>
            ) : (
              <button
                type="button"
                className="button small plain"
                aria-label={`Open ${use.planName}`}
                onClick={() => void open(use)}
              >
                Open
              </button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
