/** Opens the list of what to measure; nothing of it is loaded before that. */
import { lazy, Suspense, useState } from 'react';

const MeasureListDialog = lazy(() =>
  import('./measure-list-dialog').then((module) => ({ default: module.MeasureListDialog })),
);

export function MeasureListButton() {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" className="button small" onClick={() => setOpen(true)}>
        Measure these
      </button>
      <Suspense>{open && <MeasureListDialog onClose={() => setOpen(false)} />}</Suspense>
    </>
  );
}
