import type { PlacedView } from '../part-drawing/sheet-layout';
import type { FormHandle } from '../part-form/part-form';
import { FittingMarks } from './fitting-marks';

/** Handles over the views of an enclosure; nothing over those of other parts. */
export function enclosureOverlay(form: FormHandle, view: PlacedView) {
  return form.spec?.kind === 'enclosure' ? <FittingMarks form={form} spec={form.spec} view={view} /> : null;
}
