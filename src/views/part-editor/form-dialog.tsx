/** A dialog that asks before it lets go of what was typed. */
import { type ReactNode, useState } from 'react';
import { Dialog } from '../../ui/dialog';

interface FormDialogProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: (onDirty: () => void) => ReactNode;
}

export function FormDialog({ title, onClose, children }: FormDialogProps) {
  const [dirty, setDirty] = useState(false);
  const [asking, setAsking] = useState(false);
  return (
    <Dialog title={title} wide onClose={() => (dirty ? setAsking(true) : onClose())}>
      {asking && (
        <div className="form-asking" role="alertdialog" aria-label="Let go of what was typed?">
          <p>What was typed here is not saved yet.</p>
          <div className="buttons">
            <button type="button" className="button small" onClick={onClose}>
              Let it go
            </button>
            {/* biome-ignore lint/a11y/noAutofocus: the safe answer takes the focus, as in any question that interrupts. */}
            <button type="button" className="button small strong" autoFocus onClick={() => setAsking(false)}>
              Keep editing
            </button>
          </div>
        </div>
      )}
      {children(() => setDirty(true))}
    </Dialog>
  );
}
