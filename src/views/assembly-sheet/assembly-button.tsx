/** Opens the assembly sheet; nothing of it is loaded before that. */
import { lazy, Suspense, useState } from 'react';

const AssemblyDialog = lazy(() =>
  import('./assembly-dialog').then((module) => ({ default: module.AssemblyDialog })),
);

export function AssemblyButton() {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" className="button small" onClick={() => setOpen(true)}>
        Assembly sheet
      </button>
      <Suspense>{open && <AssemblyDialog onClose={() => setOpen(false)} />}</Suspense>
    </>
  );
}
