/**
 * Spec of a board.
 *
 * Frame: the published one. Looking at the component side with the rear (connector) edge on the left, the origin is
 * the rear top corner of the component-side surface; x runs down from the top edge, y forward from the rear edge, z
 * out of the component face. Millimetres.
 */
import { z } from 'zod';
import { millimetres, position } from '../dimension';
import { identityFields, labelSchema } from '../identity';
import {
  boardFormSchema,
  headerTypeSchema,
  m2LengthSchema,
  moduleFormSchema,
  slotSizeSchema,
  socketPatternSchema,
} from '../patterns';

const pointSchema = z.tuple([position('x'), position('y')]);

export const boardDirectionSchema = z.enum(['+x', '-x', '+y', '-y']);
export type BoardDirection = z.infer<typeof boardDirectionSchema>;

export const boardFields = z.strictObject({
  kind: z.literal('board'),
  ...identityFields,
  form: boardFormSchema.meta({ title: 'Form' }),
  width: millimetres('Width', {
    datum: 'along x, top edge to slot-side edge',
    fallback: 'by form',
  }).optional(),
  depth: millimetres('Depth', { datum: 'along y, rear edge to front edge', fallback: 'by form' }).optional(),
  thickness: millimetres('Thickness', { fallback: 1.57 }).optional(),
  holes: z
    .string()
    .regex(/^[A-Z]{3,20}$/)
    .optional()
    .meta({ title: 'Holes by letter', fallback: 'by form' }),
  socket: z
    .strictObject({
      pattern: socketPatternSchema.meta({ title: 'Cooler hole pattern' }),
      at: pointSchema.meta({ title: 'Centre' }),
      seat: millimetres('Seating plane', {
        datum: 'board surface to the plane the processor sits on',
        fallback: 3.4,
      }).optional(),
    })
    .meta({ title: 'Processor socket' }),
  memory: z
    .strictObject({
      form: moduleFormSchema.meta({ title: 'Module' }),
      count: z.int().min(1).max(8).meta({ title: 'Slots' }),
      at: pointSchema.meta({ title: 'Centre of the slot nearest the socket' }),
      pitch: millimetres('Slot pitch', { fallback: 9.5 }).optional(),
      along: z.enum(['x', 'y']).optional().meta({ title: 'Slots run along', fallback: 'x' }),
    })
    .meta({ title: 'Memory' }),
  slots: z
    .array(z.strictObject({ position: z.int().min(1).max(7), size: slotSizeSchema }))
    .max(7)
    .meta({ title: 'Expansion slots', help: 'Position 1 is the slot nearest the processor' }),
  slotPlace: z
    .strictObject({
      seat: millimetres('Seat of the cards', {
        datum: 'board surface to the finger tips of a seated card',
        max: 20,
        fallback: 3.4,
      }).optional(),
      holeBToSlot1: millimetres('Hole B to slot 1', {
        datum: 'centre of hole B to the centreline of slot 1, towards the top edge',
        min: 30,
        max: 60,
        fallback: 47.29,
      }).optional(),
      holeRowToKeyNotch: millimetres('Hole row to key notch', {
        datum: 'hole row A, B, C to the key notch of the connectors, forward',
        min: 30,
        max: 60,
        fallback: 46.94,
      }).optional(),
    })
    .optional()
    .meta({ title: 'Place of the slots' }),
  m2: z
    .array(
      z.strictObject({
        id: labelSchema,
        at: pointSchema.meta({ title: 'Middle of the connector' }),
        towards: boardDirectionSchema.meta({ title: 'Drive points towards' }),
        lengths: z.array(m2LengthSchema).min(1).max(5),
        sink: millimetres('Sink height', { datum: 'board surface to top of the sink' }).optional(),
        behind: z.boolean().optional().meta({ title: 'On the back of the board' }),
      }),
    )
    .max(6)
    .optional()
    .meta({ title: 'M.2 sockets' }),
  headers: z
    .array(
      z.strictObject({
        id: labelSchema.optional(),
        type: headerTypeSchema,
        at: pointSchema.meta({ title: 'Centre' }),
        along: z.enum(['x', 'y']).optional().meta({ title: 'Runs along', fallback: 'y' }),
        faces: z
          .union([z.literal('up'), boardDirectionSchema])
          .optional()
          .meta({ title: 'Plug leaves towards', fallback: 'up' }),
      }),
    )
    .max(40)
    .optional()
    .meta({ title: 'Headers' }),
  sinks: z
    .array(
      z.strictObject({
        id: labelSchema,
        from: pointSchema,
        to: pointSchema,
        height: millimetres('Height above the board'),
      }),
    )
    .max(10)
    .optional()
    .meta({ title: 'Regulator sinks' }),
  rearConnectors: z
    .array(
      z.strictObject({
        from: position('From x'),
        to: position('To x'),
        height: millimetres('Height'),
        depth: millimetres('Depth', { fallback: 22 }).optional(),
      }),
    )
    .min(1)
    .max(10)
    .optional()
    .meta({ title: 'Rear connector block' }),
  coinCell: pointSchema.optional().meta({ title: 'Coin cell centre' }),
  watts: z.number().min(0).max(500).optional().meta({ title: 'Own power', unit: 'W' }),
});
export type BoardSpec = z.infer<typeof boardFields>;
