/**
 * Spec of a radiator.
 *
 * Frame: origin at the centre of the body; x along its length towards the end with the tube fittings, y across, z
 * through its thickness. Millimetres.
 */
import { z } from 'zod';
import { refuse } from '../contradiction';
import { millimetres, rating } from '../dimension';
import { identityFields } from '../identity';
import { radiatorRowSchema } from '../patterns';
import { radiatorContradictions } from './fan-row';

export const radiatorSpecSchema = z
  .strictObject({
    kind: z.literal('radiator'),
    ...identityFields,
    row: radiatorRowSchema.meta({ title: 'Fan row' }),
    length: millimetres('Length', { datum: 'over both end tanks', fallback: 'by row' }).optional(),
    width: millimetres('Width', { fallback: 'by row' }).optional(),
    thickness: millimetres('Thickness', { fallback: 27 }).optional(),
    resistance: rating('Heat resistance, liquid to air with fans at top speed', 'K/W', { max: 5 }).optional(),
    fitting: millimetres('Fittings stand out by', {
      datum: 'end of the tank to end of the fitting',
      min: 0,
      fallback: 15,
    }).optional(),
    bend: millimetres('Bend of the tubes', {
      datum: 'end of the fitting to the outside of the bent tube',
      min: 0,
      fallback: 35,
    }).optional(),
  })
  .superRefine(refuse(radiatorContradictions));
export type RadiatorSpec = z.infer<typeof radiatorSpecSchema>;
