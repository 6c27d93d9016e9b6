/** The way into the pane from a form: a button, and what the last filling did. The pane is loaded when it is opened. */
import { lazy, Suspense, useState } from 'react';
import type { PartKind } from '../../../geometry';
import type { FilledValue } from '../part-form/fill-draft';
import type { FormHandle } from '../part-form/part-form';
import './paste-sheet.css';

const PasteSheetPane = lazy(() =>
  import('./paste-sheet-pane').then((module) => ({ default: module.PasteSheetPane })),
);

interface PasteSheetToolProps {
  readonly form: FormHandle;
  /** Kept outside, so that it outlives a change of kind. */
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly isNew?: boolean;
  readonly onKind?: (kind: PartKind) => void;
  /** Takes what an enclosure's sheet promises, where there is a panel for it. */
  readonly onLimits?: (limits: readonly FilledValue[]) => void;
}

export function PasteSheetTool({ form, text, onText, isNew = false, onKind, onLimits }: PasteSheetToolProps) {
  const [open, setOpen] = useState(text !== '');
  const [told, setTold] = useState('');
  return (
    <section className="sheet-tool" aria-label="Spec sheet">
      <div className="buttons">
        <button type="button" className="button" aria-expanded={open} onClick={() => setOpen(!open)}>
          Paste a spec sheet
        </button>
        <span role="status">{told}</span>
      </div>
      {open && (
        <Suspense fallback={<p className="quiet">One moment …</p>}>
          <PasteSheetPane
            form={form}
            text={text}
            onText={onText}
            isNew={isNew}
            onKind={onKind}
            onLimits={onLimits}
            onDone={(words) => {
              setTold(words);
              setOpen(false);
            }}
          />
        </Suspense>
      )}
    </section>
  );
}
