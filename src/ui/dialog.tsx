/** A modal dialog on the browser's own element: it traps focus, closes on Escape and gives focus back. */
import { type MouseEvent, type ReactNode, useEffect, useId, useRef } from 'react';
import { createPortal } from 'react-dom';
import './dialog.css';

interface DialogProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
  readonly wide?: boolean;
}

export function Dialog({ title, onClose, children, wide = false }: DialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const heading = useId();
  useEffect(() => {
    const element = dialog.current;
    const before = document.activeElement;
    element?.showModal();
    return () => {
      element?.close();
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
  const closeOnBackdrop = (event: MouseEvent) => {
    if (event.target === dialog.current) onClose();
  };
  return createPortal(
    <dialog
      ref={dialog}
      className={wide ? 'dialog wide' : 'dialog'}
      aria-labelledby={heading}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      onMouseDown={closeOnBackdrop}
    >
      <div className="dialog-sheet">
        <header>
          <h2 id={heading}>{title}</h2>
          <button type="button" className="button plain small" onClick={onClose}>
            Close
          </button>
        </header>
        {children}
      </div>
    </dialog>,
    document.body,
  );
}
