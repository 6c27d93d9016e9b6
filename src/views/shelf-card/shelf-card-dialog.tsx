/** Everything about one entry of the shelf: how it would sit, what a person remarks, what was measured, its past. */
import { useState } from 'react';
import { kindName, type PartSpec } from '../../../geometry';
import { keyDimension } from '../../shelf/key-dimension';
import { useSeatVerdict } from '../../shelf/seat-verdicts';
import type { ShelfEntry } from '../../shelf/shelf-entry';
import { dropOwnParts, keepOwnPart, restoreOwnParts } from '../../shelf/shelf-store';
import { useRemarks, useShelf } from '../../shelf/use-shelf';
import { announce } from '../../store/status-store';
import { Dialog } from '../../ui/dialog';
import { sentencesOfSeat } from '../shelf-list/seat-words';
import { EditOwnPart } from './edit-own-part';
import { EvidenceSection } from './evidence-section';
import { OwnRemarks } from './own-remarks';
import { PartHistory } from './part-history';
import { PartUses } from './part-uses';
import './shelf-card.css';

interface ShelfCardProps {
  readonly id: string;
  readonly onClose: () => void;
}

const NOT_KEPT = 'The browser keeps no data for this page, so that could not be kept.';

export function ShelfCard({ id, onClose }: ShelfCardProps) {
  const entry = useShelf().find((one) => one.id === id);
  const remarks = useRemarks().get(id);
  const verdict = useSeatVerdict(id);
  const [editing, setEditing] = useState(false);
  if (!entry) return null;
  if (editing) return <EditOwnPart entry={entry} onClose={() => setEditing(false)} />;
  const { spec, note, own } = entry;
  return (
    <Dialog title={`${spec.maker} ${spec.model}`} wide onClose={onClose}>
      <div className="dialog-body shelf-card">
        <p>
          {kindName(spec.kind)}, {keyDimension(spec)}
          {entry.generic ? ', by the standard' : ''}
          {own ? ', your own' : ''}
          {note !== undefined && <span className="quiet">. {note}</span>}
          {spec.remark !== undefined && <span className="quiet">. {spec.remark}</span>}
        </p>
        {verdict && (
          <section aria-label="In the open plan">
            <h3 className="heading">In the open plan</h3>
            {sentencesOfSeat(verdict).map((sentence) => (
              <p key={sentence}>{sentence}</p>
            ))}
          </section>
        )}
        <OwnRemarks key={id} id={id} spec={spec} remarks={remarks} />
        <EvidenceSection entry={entry} evidence={remarks?.evidence ?? []} />
        <PartUses entry={entry} formerIds={remarks?.formerIds} onOpened={onClose} />
        {own && <PartHistory entry={entry} />}
        <div className="buttons">
          {own ? (
            <>
              <button type="button" className="button" onClick={() => setEditing(true)}>
                Edit by number
              </button>
              <button
                type="button"
                className="button"
                aria-label={`Take ${spec.maker} ${spec.model} off your shelf`}
                onClick={() => forget(entry, onClose)}
              >
                Forget
              </button>
            </>
          ) : (
            <button type="button" className="button" onClick={() => copy(spec)}>
              Copy to your own parts
            </button>
          )}
        </div>
      </div>
    </Dialog>
  );
}

function forget({ id, spec }: ShelfEntry, onDone: () => void): void {
  dropOwnParts([id]).then(
    (dropped) => {
      announce(`${spec.maker} ${spec.model} is off your shelf.`, {
        label: 'Undo',
        run: () => void restoreOwnParts(dropped),
      });
      onDone();
    },
    () => announce('The browser did not let the part go.'),
  );
}

function copy(spec: PartSpec): void {
  keepOwnPart(spec).then(
    () => announce(`${spec.maker} ${spec.model} is among your own parts and can be edited.`),
    () => announce(NOT_KEPT),
  );
}
