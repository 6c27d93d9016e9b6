/** Makes a new part of any kind, starting from one on the shelf; it goes into the plan or on the person's own shelf. */
import { useState } from 'react';
import { kindName, type PartKind, type PartSpec, partKinds } from '../../../geometry';
import { keyDimension } from '../../shelf/key-dimension';
import { keepOwnPart } from '../../shelf/shelf-store';
import { useShelf } from '../../shelf/use-shelf';
import { placePart } from '../../store/part-actions';
import { announce } from '../../store/status-store';
import { enclosureOverlay } from '../enclosure-editor/enclosure-overlay';
import { EnclosureTools } from '../enclosure-editor/enclosure-tools';
import type { FilledValue } from '../part-form/fill-draft';
import { PartForm } from '../part-form/part-form';
import { PasteSheetTool } from '../paste-sheet/paste-sheet-tool';
import { FormDialog } from './form-dialog';

interface NewPartDialogProps {
  readonly kind: PartKind;
  readonly onClose: () => void;
}

const EMPTY = 'empty';

export function NewPartDialog({ kind: firstKind, onClose }: NewPartDialogProps) {
  const shelf = useShelf();
  const [kind, setKind] = useState(firstKind);
  const [startId, setStartId] = useState<string>();
  const [sheet, setSheet] = useState('');
  const [limits, setLimits] = useState<readonly FilledValue[]>();
  const entries = shelf.filter((entry) => entry.spec.kind === kind);
  const start = startId === EMPTY ? undefined : (entries.find((entry) => entry.id === startId) ?? entries[0]);
  const changeKind = (next: PartKind) => {
    setKind(next);
    setStartId(undefined);
  };
  const save = (spec: PartSpec, action: string) => {
    if (action === 'place') placePart(spec);
    else
      void keepOwnPart(spec).then(
        () => announce(`${spec.maker} ${spec.model} is on your shelf.`),
        () => announce('The browser keeps no data for this page, so the part could not be kept.'),
      );
    onClose();
  };
  return (
    <FormDialog title="New part" onClose={onClose}>
      {(onDirty) => (
        <>
          <div className="form-start">
            <label className="labelled">
              <span>Kind</span>
              <select
                className="select"
                value={kind}
                onChange={(event) => changeKind(partKinds.find((one) => one === event.target.value) ?? kind)}
              >
                {partKinds.map((one) => (
                  <option key={one} value={one}>
                    {kindName(one)}
                  </option>
                ))}
              </select>
            </label>
            <label className="labelled">
              <span>Start from</span>
              <select
                className="select"
                value={start?.id ?? EMPTY}
                onChange={(event) => setStartId(event.target.value)}
              >
                {entries.map((entry) => (
                  <option key={entry.id} value={entry.id}>
                    {entry.spec.model}, {keyDimension(entry.spec)}
                  </option>
                ))}
                <option value={EMPTY}>An empty form</option>
              </select>
            </label>
          </div>
          <PartForm
            key={`${kind}/${start?.id ?? EMPTY}`}
            kind={kind}
            start={start?.spec}
            onDirty={onDirty}
            onSave={save}
            tools={(form) => (
              <>
                <PasteSheetTool
                  form={form}
                  text={sheet}
                  onText={setSheet}
                  isNew
                  onKind={changeKind}
                  onLimits={setLimits}
                />
                <EnclosureTools form={form} pasted={limits} />
              </>
            )}
            overlay={enclosureOverlay}
          >
            <button type="submit" className="button" value="keep">
              Keep on my shelf
            </button>
            <button type="submit" className="button strong" value="place">
              Place in the plan
            </button>
          </PartForm>
        </>
      )}
    </FormDialog>
  );
}
