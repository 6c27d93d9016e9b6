import type { AdjustmentValues, PartModel } from '../body';
import { buildBoxedDrive } from './boxed-drive';
import { buildM2Drive } from './m2-drive';
import type { DriveSpec } from './spec';

/** Body of a drive in the frame of `spec.ts`. */
export function buildDrive(spec: DriveSpec, _adjust: AdjustmentValues = {}): PartModel {
  return spec.form === 'M.2' ? buildM2Drive(spec) : buildBoxedDrive(spec);
}
