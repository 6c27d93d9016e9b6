/**
 * Spec of a memory module.
 *
 * Frame: origin at the middle of the module's lower (contact) edge; x along the module, y through its thickness, z
 * away from the board. Millimetres.
 */
import { z } from 'zod';
import { millimetres, rating } from '../dimension';
import { identityFields } from '../identity';
import { moduleFormSchema } from '../patterns';

export const memorySpecSchema = z.strictObject({
  kind: z.literal('memory'),
  ...identityFields,
  form: moduleFormSchema.meta({ title: 'Module' }),
  height: millimetres('Height', {
    datum: 'contact edge to top of the module with its spreader',
    fallback: 'by form: 31.25 or 30',
  }).optional(),
  thickness: millimetres('Thickness', { datum: 'over both sides with the spreader' }),
  capacity: rating('Capacity', 'GB', { max: 4096 }).optional(),
  watts: rating('Power', 'W', { max: 50 }).optional(),
});
export type MemorySpec = z.infer<typeof memorySpecSchema>;
