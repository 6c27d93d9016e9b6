/**
 * Spec of an adapter.
 *
 * Frame of a supply plate: as the supply whose opening it fills (z right and y up seen from outside, x inwards),
 * origin at the lower left corner of its outer face. Frame of a riser socket: as a slot, origin at the key notch on
 * the seat of the card; x along the card from the bracket, y towards the card's solder side, z towards the card.
 * Frame of a riser plug: the same, origin at the key notch of the slot it stands in. Millimetres.
 */
import { z } from 'zod';
import { millimetres, position } from '../dimension';
import { identityFields } from '../identity';
import { supplyFormSchema } from '../patterns';

const shared = { kind: z.literal('adapter'), ...identityFields } as const;

export const supplyPlateFields = z.strictObject({
  form: z.literal('supply plate'),
  ...shared,
  opening: supplyFormSchema.meta({ title: 'Fills an opening for' }),
  takes: supplyFormSchema.meta({ title: 'Takes a supply of' }),
  thickness: millimetres('Plate thickness', { fallback: 1.2 }).optional(),
  offset: z
    .tuple([position('up'), position('right')])
    .optional()
    .meta({
      title: 'Offset of the supply from the middle of the opening',
      help: 'up, right, seen from outside',
    }),
});

export const riserSocketFields = z.strictObject({
  form: z.literal('riser socket'),
  ...shared,
  boardHeight: millimetres('Height of its circuit board below the socket', { fallback: 8 }).optional(),
  cable: millimetres('Cable length').optional(),
});

export const riserPlugFields = z.strictObject({
  form: z.literal('riser plug'),
  ...shared,
  height: millimetres('Height above the slot', { fallback: 12 }).optional(),
  bend: millimetres('Bend of the ribbon', { fallback: 20 }).optional(),
});

export type SupplyPlateSpec = z.infer<typeof supplyPlateFields>;
export type RiserSocketSpec = z.infer<typeof riserSocketFields>;
export type RiserPlugSpec = z.infer<typeof riserPlugFields>;
