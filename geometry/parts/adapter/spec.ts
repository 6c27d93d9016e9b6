/** Spec of an adapter: its fields, frames and units are in `fields.ts`; what contradicts itself is refused here. */
import { z } from 'zod';
import { refuse } from '../contradiction';
import { riserPlugFields, riserSocketFields, supplyPlateFields } from './fields';
import { supplyPlateContradictions } from './supply-plate';

export const adapterSpecSchema = z.discriminatedUnion('form', [
  supplyPlateFields.superRefine(refuse(supplyPlateContradictions)),
  riserSocketFields,
  riserPlugFields,
]);
export type AdapterSpec = z.infer<typeof adapterSpecSchema>;
