/**
 * Spec of a processor.
 *
 * Frame: origin at the centre of the package on the socket's seating plane; x and y parallel to the board's, z out
 * of the board. Millimetres.
 */
import { z } from 'zod';
import { millimetres, rating } from '../dimension';
import { identityFields } from '../identity';
import { socketPatternSchema } from '../patterns';

export const processorSpecSchema = z.strictObject({
  kind: z.literal('processor'),
  ...identityFields,
  socket: socketPatternSchema.meta({ title: 'Fits sockets with hole pattern' }),
  width: millimetres('Package width', { datum: 'along x' }),
  depth: millimetres('Package depth', { datum: 'along y' }),
  height: millimetres('Package height', {
    datum: 'seating plane to top of the lid',
    fallback: 4.381,
  }).optional(),
  class: rating('Power class', 'W', { min: 1, max: 500 }),
  sustained: rating('Sustained power', 'W', { max: 1000 }).optional(),
  peak: rating('Peak power', 'W', { max: 2000 }).optional(),
  resistance: rating('Heat resistance, die to lid', 'K/W', { max: 5 }).optional(),
  limit: rating('Highest temperature', '°C', { max: 150 }).optional(),
});
export type ProcessorSpec = z.infer<typeof processorSpecSchema>;
