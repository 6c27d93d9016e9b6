/** Makes the link that carries the plan, and says what is in it. */
import { useEffect, useRef, useState } from 'react';
import { encodeSnapshot } from '../../sharing/snapshot';
import { shownPlan } from '../../store/plan-store';
import { Dialog } from '../../ui/dialog';
import './snapshot-dialog.css';

/** Some chat programs cut a link beyond this; measured by others at 2,048 characters. */
const SAFE_LENGTH = 2000;

type Link = { readonly text: string } | { readonly fault: string } | undefined;

export function SnapshotDialog({ onClose }: { readonly onClose: () => void }) {
  const [link, setLink] = useState<Link>();
  const [copied, setCopied] = useState('');
  const field = useRef<HTMLTextAreaElement>(null);
  useEffect(() => {
    encodeSnapshot(shownPlan()).then(
      (fragment) => {
        const { origin, pathname } = window.location;
        setLink({ text: `${origin}${pathname}#${fragment}` });
      },
      () => setLink({ fault: 'The link could not be made. Export the plan to a file instead.' }),
    );
  }, []);
  const copy = async () => {
    if (!link || !('text' in link)) return;
    try {
      await navigator.clipboard.writeText(link.text);
      setCopied('Copied.');
    } catch {
      field.current?.select();
      setCopied('The browser did not allow copying; the link is selected, copy it by hand.');
    }
  };
  return (
    <Dialog title="Send snapshot" onClose={onClose}>
      <div className="dialog-body">
        <p>
          The link holds the whole plan as it is now: its name, the brief, every part with its figures and its
          place. It goes through no server: whoever has the link has the plan. Later changes of yours do not
          reach it.
        </p>
        {link && 'text' in link && (
          <>
            <label className="labelled">
              <span>Link, {link.text.length.toLocaleString('en')} characters</span>
              <textarea ref={field} className="field snapshot-link" readOnly rows={5} value={link.text} />
            </label>
            {link.text.length > SAFE_LENGTH && (
              <p className="quiet">
                Some chat programs cut links longer than {SAFE_LENGTH.toLocaleString('en')} characters; send
                this one by mail.
              </p>
            )}
          </>
        )}
        {link && 'fault' in link && (
          <p className="fault" role="alert">
            {link.fault}
          </p>
        )}
        {!link && <p role="status">Making the link…</p>}
        <p role="status">{copied}</p>
      </div>
      <div className="dialog-actions">
        {link && 'text' in link && (
          <>
            <a className="button" href={link.text} target="_blank" rel="noreferrer">
              See what they will see
            </a>
            <button type="button" className="button strong" onClick={() => void copy()}>
              Copy the link
            </button>
          </>
        )}
      </div>
    </Dialog>
  );
}
