/** The plans in this browser: open, duplicate, delete with a way back. */
import { useState } from 'react';
import type { StoredPlan } from '../../store/plan-database';
import type { PlanListing } from '../../store/plan-library';
import {
  deleteStoredPlan,
  duplicateStoredPlan,
  openStoredPlan,
  renameStoredPlan,
  restoreStoredPlan,
} from '../../store/plan-session';
import { countOf } from '../../ui/numbers';

interface OwnPlansProps {
  readonly plans: readonly PlanListing[];
  readonly openId: string;
  readonly onChanged: () => Promise<void>;
  readonly onDone: () => void;
}

export function OwnPlans({ plans, openId, onChanged, onDone }: OwnPlansProps) {
  const [deleted, setDeleted] = useState<StoredPlan>();
  const [message, setMessage] = useState('');
  const attempt = async (action: () => Promise<void>) => {
    try {
      setMessage('');
      await action();
    } catch {
      setMessage('The browser did not let that happen. Nothing has changed.');
    }
    await onChanged();
  };
  const open = (plan: PlanListing) =>
    attempt(async () => {
      const [problem] = await openStoredPlan(plan.id);
      if (problem) setMessage(`'${plan.name}' cannot be opened: ${problem.path} ${problem.message}.`);
      else onDone();
    });
  return (
    <>
      <p role="status" className={message ? 'fault' : undefined}>
        {message}
        {deleted && (
          <span className="library-undo">
            Deleted '{deleted.plan.name}'.
            <button
              type="button"
              className="button small"
              onClick={() =>
                void attempt(async () => {
                  await restoreStoredPlan(deleted);
                  setDeleted(undefined);
                })
              }
            >
              Undo
            </button>
          </span>
        )}
      </p>
      <ul className="library-list" aria-label="Your plans">
        {plans.map((plan) => (
          <PlanRow
            key={plan.id}
            plan={plan}
            isOpen={plan.id === openId}
            onOpen={() => void open(plan)}
            onRename={(name) => void attempt(() => renameStoredPlan(plan.id, name))}
            onDuplicate={() => void attempt(() => duplicateStoredPlan(plan.id))}
            onDelete={() => void attempt(async () => setDeleted(await deleteStoredPlan(plan.id)))}
          />
        ))}
      </ul>
    </>
  );
}

interface PlanRowProps {
  readonly plan: PlanListing;
  readonly isOpen: boolean;
  readonly onOpen: () => void;
  readonly onRename: (name: string) => void;
  readonly onDuplicate: () => void;
  readonly onDelete: () => void;
}

function PlanRow({ plan, isOpen, onOpen, onRename, onDuplicate, onDelete }: PlanRowProps) {
  const [typed, setTyped] = useState<string>();
  const { name, parts, savedAt } = plan;
  const take = () => {
    const next = typed?.trim();
    setTyped(undefined);
    if (next && next !== name) onRename(next);
  };
  return (
    <li className="library-row" data-open={isOpen}>
      {typed === undefined ? (
        <span className="library-name">
          <span>{name}</span>
          <span className="quiet">
            {countOf(parts, 'part')}, saved{' '}
            {new Date(savedAt).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' })}
            {isOpen && ', open'}
          </span>
        </span>
      ) : (
        <input
          className="field library-name"
          aria-label={`New name of ${name}`}
          // biome-ignore lint/a11y/noAutofocus: the field stands where the person just pressed Rename.
          autoFocus
          maxLength={120}
          value={typed}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={take}
          onKeyDown={(event) => {
            if (event.key === 'Enter') take();
            if (event.key !== 'Escape') return;
            event.preventDefault();
            event.stopPropagation();
            setTyped(undefined);
          }}
        />
      )}
      <span className="buttons">
        <button
          type="button"
          className="button small"
          disabled={isOpen}
          aria-label={`Open ${name}`}
          onClick={onOpen}
        >
          Open
        </button>
        <button
          type="button"
          className="button small"
          aria-label={`Rename ${name}`}
          onClick={() => setTyped(name)}
        >
          Rename
        </button>
        <button type="button" className="button small" aria-label={`Duplicate ${name}`} onClick={onDuplicate}>
          Duplicate
        </button>
        <button type="button" className="button small" aria-label={`Delete ${name}`} onClick={onDelete}>
          Delete
        </button>
      </span>
    </li>
  );
}
