/** Opens the estimates; nothing of them is loaded before that. */
import { lazy, Suspense, useState } from 'react';

const EstimatesDialog = lazy(() =>
  import('./estimates-dialog').then((module) => ({ default: module.EstimatesDialog })),
);

export function EstimatesButton() {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" className="button small" onClick={() => setOpen(true)}>
        Estimates
      </button>
      <Suspense>{open && <EstimatesDialog onClose={() => setOpen(false)} />}</Suspense>
    </>
  );
}
