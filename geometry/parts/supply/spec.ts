/**
 * Spec of a power supply.
 *
 * Frame: looking at the screw face from outside the enclosure, origin at the lower left corner of that face; z to the
 * right (the published u), y up (the published v), x inwards along the depth. Millimetres.
 */
import { z } from 'zod';
import { refuse } from '../contradiction';
import { millimetres, rating } from '../dimension';
import { identityFields } from '../identity';
import { plugTypeSchema, supplyFormSchema } from '../patterns';
import { supplyContradictions } from './plug-rows';

export const supplySideSchema = z.enum(['-y', '+y', '-z', '+z']);

export const supplySpecSchema = z
  .strictObject({
    kind: z.literal('supply'),
    ...identityFields,
    form: supplyFormSchema.meta({ title: 'Form' }),
    depth: millimetres('Depth', {
      datum: 'screw face to plug face, without plugs',
      fallback: 'by form',
    }).optional(),
    width: millimetres('Width', { fallback: 'by form' }).optional(),
    height: millimetres('Height', { fallback: 'by form' }).optional(),
    fan: z
      .strictObject({ side: supplySideSchema, size: millimetres('Diameter') })
      .optional()
      .meta({ title: 'Fan' }),
    plugs: z
      .array(
        z.strictObject({
          type: plugTypeSchema,
          count: z.int().min(1).max(12),
          sockets: z.int().min(0).max(12).optional(),
          grade: z
            .union([z.literal(150), z.literal(300), z.literal(450), z.literal(600)])
            .optional()
            .meta({
              title: 'Power grade',
              unit: 'W',
              help: 'Of a card 16-pin plug: what its sense pins tell',
            }),
        }),
      )
      .max(10)
      .meta({
        title: 'Plugs it offers',
        help: 'Sockets: how many modular sockets on the plug face feed them',
      }),
    modular: z.boolean().meta({ title: 'Modular leads' }),
    plugDepth: millimetres('Plug depth', {
      datum: 'plug face to end of a seated plug',
      fallback: 20,
    }).optional(),
    bend: millimetres('Bend of the leads', {
      datum: 'end of the plug to the outside of the bent leads',
      fallback: 15,
    }).optional(),
    watts: rating('Rated power', 'W', { min: 1, max: 3000 }),
    sound: rating('Sound at full load, 1 m', 'dB', { max: 100 }).optional(),
    grade: z
      .enum(['base', 'bronze', 'silver', 'gold', 'platinum', 'titanium'])
      .optional()
      .meta({ title: 'Efficiency level' }),
  })
  .superRefine(refuse(supplyContradictions));
export type SupplySpec = z.infer<typeof supplySpecSchema>;
