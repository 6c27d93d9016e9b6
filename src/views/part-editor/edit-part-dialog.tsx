/** Edits the figures of a part in the plan; saved as one step of undo. */
import { useState } from 'react';
import type { PartSpec } from '../../../geometry';
import { respecifyPart } from '../../store/part-actions';
import { enclosureOverlay } from '../enclosure-editor/enclosure-overlay';
import { EnclosureTools } from '../enclosure-editor/enclosure-tools';
import { PartForm } from '../part-form/part-form';
import { PasteSheetTool } from '../paste-sheet/paste-sheet-tool';
import { FormDialog } from './form-dialog';

interface EditPartDialogProps {
  readonly id: string;
  readonly label: string;
  readonly spec: PartSpec;
  readonly onClose: () => void;
}

export function EditPartDialog({ id, label, spec, onClose }: EditPartDialogProps) {
  const [sheet, setSheet] = useState('');
  return (
    <FormDialog title={`${label} by number`} onClose={onClose}>
      {(onDirty) => (
        <PartForm
          kind={spec.kind}
          start={spec}
          onDirty={onDirty}
          tools={(form) => (
            <>
              <PasteSheetTool form={form} text={sheet} onText={setSheet} />
              <EnclosureTools form={form} />
            </>
          )}
          overlay={enclosureOverlay}
          onSave={(next) => {
            respecifyPart(id, next);
            onClose();
          }}
        >
          <button type="submit" className="button strong" value="save">
            Save
          </button>
        </PartForm>
      )}
    </FormDialog>
  );
}
