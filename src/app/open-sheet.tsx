/** The sheet over the plan, whichever is open; none is loaded before it is asked for. */
import { lazy, Suspense } from 'react';
import { closeSheet, useOpenSheet } from '../store/sheet-store';
import { stepPicturePort } from './step-picture-port';

const AssemblyDialog = lazy(() =>
  import('../views/assembly-sheet/assembly-dialog').then((module) => ({ default: module.AssemblyDialog })),
);
const EnvelopeDialog = lazy(() =>
  import('../views/upgrade-envelope/envelope-dialog').then((module) => ({ default: module.EnvelopeDialog })),
);
const EstimatesDialog = lazy(() =>
  import('../views/estimates/estimates-dialog').then((module) => ({ default: module.EstimatesDialog })),
);
const MeasureListDialog = lazy(() =>
  import('../views/measure-list/measure-list-dialog').then((module) => ({
    default: module.MeasureListDialog,
  })),
);
const WantedGapsDialog = lazy(() =>
  import('../views/wanted-gaps/wanted-gaps-dialog').then((module) => ({ default: module.WantedGapsDialog })),
);

export function OpenSheet() {
  const open = useOpenSheet();
  return (
    <Suspense>
      {open === 'upgrade envelope' && <EnvelopeDialog onClose={closeSheet} />}
      {open === 'measure list' && <MeasureListDialog onClose={closeSheet} />}
      {open === 'wanted gaps' && <WantedGapsDialog onClose={closeSheet} />}
      {open === 'estimates' && <EstimatesDialog onClose={closeSheet} />}
      {open === 'assembly sheet' && <AssemblyDialog onClose={closeSheet} drawSteps={stepPicturePort} />}
    </Suspense>
  );
}
