/** Parts that stand on the shelf twice, to be made one on request. */
import { useMemo, useState } from 'react';
import { type DuplicateGroup, findDuplicates } from '../../shelf/duplicates';
import { keyDimension } from '../../shelf/key-dimension';
import { mergeEntries, takeMergeBack } from '../../shelf/merge-entries';
import type { ShelfEntry } from '../../shelf/shelf-entry';
import { differencesOf } from '../../shelf/spec-differences';
import { useShelf } from '../../shelf/use-shelf';
import { announce } from '../../store/status-store';
import { Dialog } from '../../ui/dialog';
import { countOf } from '../../ui/numbers';
import { DifferenceList } from '../shelf-card/difference-list';

/** More groups are counted, not listed. */
const MOST_SHOWN = 50;

export function DuplicatesDialog({ onClose }: { readonly onClose: () => void }) {
  const entries = useShelf();
  const groups = useMemo(() => findDuplicates(entries), [entries]);
  return (
    <Dialog title="Duplicates on the shelf" wide onClose={onClose}>
      <div className="dialog-body">
        <p className="quiet">
          Parts of one maker and model, or with the same figures throughout. Merging keeps the one you choose
          with the remarks and measurements of all; plans go on finding it.
        </p>
        {groups.length === 0 && <p role="status">Every part stands on the shelf once.</p>}
        {groups.slice(0, MOST_SHOWN).map((group) => (
          <Group key={group.entries.map(({ id }) => id).join(' ')} group={group} />
        ))}
        {groups.length > MOST_SHOWN && <p>and {groups.length - MOST_SHOWN} more</p>}
      </div>
    </Dialog>
  );
}

function Group({ group: { entries, by } }: { readonly group: DuplicateGroup }) {
  // What comes with the page cannot be let go, so it is what stays.
  const [kept, setKept] = useState(() => entries.find(({ own }) => !own) ?? entries[0]);
  if (!kept) return null;
  const others = entries.filter(({ id, own }) => own && id !== kept.id);
  const name = `${kept.spec.maker} ${kept.spec.model}`;
  return (
    <fieldset className="duplicate-group">
      <legend>
        {name}, {by === 'equal' ? 'the same figures' : 'figures that differ'}
      </legend>
      {entries.map((entry) => (
        <div key={entry.id}>
          <label className="check">
            <input
              type="radio"
              name={`kept ${entries[0]?.id}`}
              checked={entry.id === kept.id}
              onChange={() => setKept(entry)}
            />
            Keep {entry.spec.maker} {entry.spec.model}, {keyDimension(entry.spec)}
            {entry.own ? ', your own' : ', comes with the page'}
          </label>
          {entry.id !== kept.id && by === 'name' && (
            <DifferenceList differences={differencesOf(kept.spec, entry.spec)} />
          )}
        </div>
      ))}
      <button
        type="button"
        className="button small"
        disabled={others.length === 0}
        aria-label={`Merge into ${name}`}
        onClick={() => merge(kept, others)}
      >
        Merge {countOf(others.length, 'part')} into it
      </button>
    </fieldset>
  );
}

function merge(kept: ShelfEntry, others: readonly ShelfEntry[]): void {
  mergeEntries(
    kept.id,
    others.map(({ id }) => id),
  ).then(
    (merged) =>
      announce(`${countOf(others.length, 'part')} merged into ${kept.spec.model}.`, {
        label: 'Undo',
        run: () => void takeMergeBack(merged),
      }),
    () => announce('The browser keeps no data for this page, so nothing was merged.'),
  );
}
