/** Edits the sheet of an own part on the shelf; what it was stays in its history. */
import { useState } from 'react';
import type { PartSpec } from '../../../geometry';
import type { ShelfEntry } from '../../shelf/shelf-entry';
import { changeOwnPart } from '../../shelf/shelf-store';
import { announce } from '../../store/status-store';
import { FormDialog } from '../part-editor/form-dialog';
import { PartForm } from '../part-form/part-form';

interface EditOwnPartProps {
  readonly entry: ShelfEntry;
  readonly onClose: () => void;
}

export function EditOwnPart({ entry, onClose }: EditOwnPartProps) {
  const [start] = useState(entry);
  const [reason, setReason] = useState('');
  const save = (spec: PartSpec) =>
    void changeOwnPart(start.id, spec, start.revision ?? 1, reason.trim().slice(0, 200) || undefined).then(
      (result) => {
        if (!result.saved)
          return announce('Another tab has changed the part since; nothing was overwritten.');
        announce(`${spec.model} is changed on your shelf; plans keep what they have until you take it over.`);
        onClose();
      },
      () => announce('The browser keeps no data for this page, so the part was not changed.'),
    );
  return (
    <FormDialog title={`${start.spec.model} on your shelf`} onClose={onClose}>
      {(onDirty) => (
        <>
          <label className="labelled edit-reason">
            <span>Why it changes, for its history</span>
            <input
              className="field"
              maxLength={200}
              value={reason}
              onChange={(event) => setReason(event.target.value)}
            />
          </label>
          <PartForm kind={start.spec.kind} start={start.spec} onDirty={onDirty} onSave={save}>
            <button type="submit" className="button strong" value="save">
              Save
            </button>
          </PartForm>
        </>
      )}
    </FormDialog>
  );
}
