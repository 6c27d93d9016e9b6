/**
 * Spec of a fan.
 *
 * Frame: origin at the centre of the frame; z along the air (from the intake face to the exhaust face), x and y along
 * the edges of the frame. Millimetres.
 */
import { z } from 'zod';
import { millimetres, rating } from '../dimension';
import { identityFields } from '../identity';
import { fanSizeSchema } from '../patterns';

export const fanSpecSchema = z.strictObject({
  kind: z.literal('fan'),
  ...identityFields,
  size: fanSizeSchema.meta({ title: 'Frame', unit: 'mm' }),
  thickness: millimetres('Thickness', { fallback: 25 }).optional(),
  speed: rating('Top speed', 'rpm', { max: 10_000 }).optional(),
  flow: rating('Free flow at top speed', 'm³/h', { max: 1000 }).optional(),
  pressure: rating('Shut-off pressure at top speed', 'Pa', { max: 1000 }).optional(),
  sound: rating('Sound at top speed, 1 m', 'dB', { max: 100 }).optional(),
  curve: z
    .array(
      z.strictObject({
        flow: rating('Flow', 'm³/h', { max: 1000 }),
        pressure: rating('Pressure', 'Pa', { max: 1000 }),
      }),
    )
    .min(2)
    .max(12)
    .optional()
    .meta({
      title: 'Curve at top speed',
      help: 'Points from shut-off to free flow; a straight line between the two ratings when absent',
    }),
  watts: rating('Power at top speed', 'W', { max: 60 }).optional(),
});
export type FanSpec = z.infer<typeof fanSpecSchema>;
