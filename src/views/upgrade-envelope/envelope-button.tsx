/** Opens the upgrade envelope; nothing of it is loaded before that. */
import { lazy, Suspense, useState } from 'react';

const EnvelopeDialog = lazy(() =>
  import('./envelope-dialog').then((module) => ({ default: module.EnvelopeDialog })),
);

export function EnvelopeButton() {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" className="button small" onClick={() => setOpen(true)}>
        What would still go here
      </button>
      <Suspense>{open && <EnvelopeDialog onClose={() => setOpen(false)} />}</Suspense>
    </>
  );
}
