/**
 * Spec of an enclosure.
 *
 * Frame: the enclosure standing in its normal position, right-handed. x runs rear to front, y floor to top, z from
 * the board tray towards the side panel that the components face. x = 0 is the inner face of the rear wall, y = 0
 * the inner face of the floor, z = 0 the mounting face of the tray. Millimetres.
 */
import { z } from 'zod';
import { millimetres, position } from '../dimension';
import { identityFields, labelSchema } from '../identity';
import { driveFormSchema, fanSizeSchema, radiatorRowSchema, supplyFormSchema } from '../patterns';

/** The flat faces something can be screwed to. Coordinates on them are the two other axes, in world order. */
export const faceSchema = z.enum(['rear', 'front', 'top', 'floor', 'side', 'back', 'tray', 'tray back']);
export type Face = z.infer<typeof faceSchema>;

export const materialSchema = z.enum(['steel', 'aluminium', 'glass', 'mesh', 'plastic']);

const turnSchema = z.union([z.literal(0), z.literal(90), z.literal(180), z.literal(270)]);

/**
 * A place on a face: `at` is (y, z) on rear and front, (x, z) on top and floor, (x, y) on side, back and tray.
 * The seat's z axis points into the enclosure; `inset` moves it inwards (a bracket, a shelf); `turn` turns it about
 * that axis. At turn 0 the seat's x axis is the first of the face's two coordinates.
 */
const seatFields = {
  face: faceSchema.meta({ title: 'Face' }),
  at: z
    .tuple([position('First coordinate'), position('Second coordinate')])
    .meta({ title: 'Position on the face' }),
  inset: millimetres('Inset from the face', { min: 0 }).optional(),
  turn: turnSchema.optional().meta({ title: 'Turn', unit: 'deg' }),
} as const;

const rectangleFields = {
  from: z.tuple([position('From, first'), position('From, second')]).meta({ title: 'From' }),
  to: z.tuple([position('To, first'), position('To, second')]).meta({ title: 'To' }),
} as const;

const wallSchema = z.strictObject({
  thickness: millimetres('Thickness').optional(),
  material: materialSchema.optional().meta({ title: 'Material' }),
  removable: z.boolean().optional().meta({ title: 'Comes off' }),
  open: z.number().min(0.01).max(1).optional().meta({ title: 'Open share, if it is mesh' }),
});

export const enclosureFields = z.strictObject({
  kind: z.literal('enclosure'),
  ...identityFields,
  interior: z
    .strictObject({
      length: millimetres('Inner length', {
        datum: 'inner face of the rear wall to inner face of the front wall',
      }),
      height: millimetres('Inner height', { datum: 'inner face of the floor to inner face of the top' }),
      trayToSide: millimetres('Tray to side panel', {
        datum: 'mounting face of the tray to inner face of the side panel',
      }),
      behindTray: millimetres('Behind the tray', {
        datum: 'rear face of the tray to inner face of the back panel',
        min: 0,
      }),
    })
    .meta({ title: 'Interior' }),
  walls: z
    .strictObject({
      sheet: millimetres('Sheet thickness', { fallback: 1 }).optional(),
      rear: wallSchema.optional().meta({ title: 'Rear wall' }),
      front: wallSchema.optional().meta({ title: 'Front wall' }),
      top: wallSchema.optional().meta({ title: 'Top wall' }),
      floor: wallSchema.optional().meta({ title: 'Floor' }),
      side: wallSchema.optional().meta({ title: 'Side panel' }),
      back: wallSchema.optional().meta({ title: 'Back panel' }),
    })
    .optional()
    .meta({ title: 'Walls' }),
  tray: z
    .strictObject({
      thickness: millimetres('Tray thickness', { fallback: 1 }).optional(),
      ...z.strictObject(rectangleFields).partial().shape,
      cutout: z.strictObject(rectangleFields).optional().meta({ title: 'Processor cut-out (x, y)' }),
      openings: z
        .array(z.strictObject(rectangleFields))
        .max(20)
        .optional()
        .meta({ title: 'Lead openings (x, y)' }),
    })
    .optional()
    .meta({ title: 'Tray' }),
  board: z
    .strictObject({
      corner: z
        .tuple([position('x'), position('y'), position('z')])
        .optional()
        .meta({
          title: 'Rear top corner',
          help: 'Where the rear top corner of a board stands, on the tray face',
        }),
      fromTop: millimetres('Top wall to the board edge', {
        min: 0,
        datum: 'inner face of the top wall to the upper edge of the board',
      }).optional(),
      fromRear: millimetres('Rear wall to the board edge', {
        datum: 'inner face of the rear wall to the rear edge of the board',
        max: 50,
        fallback: 2.11,
      }).optional(),
      standoff: millimetres('Standoff height', {
        datum: 'mounting face of the tray to underside of the board',
      }),
      holes: z
        .string()
        .regex(/^[A-Z]{3,20}$/)
        .meta({ title: 'Standoffs by letter', help: 'Hole letters of the board form' }),
      slots: z.int().min(0).max(8).meta({ title: 'Slot openings' }),
      rotate: z.tuple([z.number(), z.number(), z.number()]).optional().meta({
        title: 'Board turned by',
        unit: 'deg',
        help: 'Turn about the world axes x, y, z from the upright position; 0 when absent',
      }),
    })
    .meta({ title: 'Board place' }),
  supplyBays: z
    .array(z.strictObject({ id: labelSchema, form: supplyFormSchema, ...seatFields }))
    .max(3)
    .meta({ title: 'Supply bays', help: "Place of the centre of the supply's screw face" }),
  fanSeats: z
    .array(
      z.strictObject({
        id: labelSchema,
        sizes: z.array(fanSizeSchema).min(1).max(5),
        outside: z.boolean().optional(),
        open: z.number().min(0.01).max(1).optional().meta({ title: 'Open share of its grille' }),
        ...seatFields,
      }),
    )
    .max(16)
    .optional()
    .meta({ title: 'Fan seats' }),
  radiatorRails: z
    .array(z.strictObject({ id: labelSchema, rows: z.array(radiatorRowSchema).min(1).max(5), ...seatFields }))
    .max(8)
    .optional()
    .meta({ title: 'Radiator rails' }),
  driveSeats: z
    .array(z.strictObject({ id: labelSchema, form: driveFormSchema.exclude(['M.2']), ...seatFields }))
    .max(12)
    .optional()
    .meta({ title: 'Drive seats' }),
  riser: z
    .strictObject({ ...seatFields, slots: z.int().min(1).max(4) })
    .optional()
    .meta({
      title: 'Riser socket',
      help: 'Where a riser holds the card, when the card does not stand in the board',
    }),
  vents: z
    .array(z.strictObject({ face: faceSchema, ...rectangleFields, open: z.number().min(0.01).max(1) }))
    .max(20)
    .optional()
    .meta({ title: 'Vents' }),
  shroud: z
    .strictObject({
      height: millimetres('Height of its upper face'),
      length: millimetres('Length from the rear wall'),
      thickness: millimetres('Thickness', { fallback: 1 }).optional(),
    })
    .optional()
    .meta({ title: 'Supply shroud' }),
  blocks: z
    .array(
      z.strictObject({
        id: labelSchema,
        from: z.tuple([position('x'), position('y'), position('z')]),
        to: z.tuple([position('x'), position('y'), position('z')]),
      }),
    )
    .max(40)
    .optional()
    .meta({
      title: 'Fixed blocks',
      help: 'Cages, front connectors, rails: anything solid that cannot be moved',
    }),
  feet: z
    .strictObject({
      height: millimetres('Height'),
      width: millimetres('Width'),
      length: millimetres('Length'),
      inset: millimetres('Inset', { min: 0 }),
    })
    .optional()
    .meta({ title: 'Feet' }),
  handle: z
    .strictObject({
      height: millimetres('Height'),
      length: millimetres('Length'),
      width: millimetres('Width'),
    })
    .optional()
    .meta({ title: 'Handle' }),
});
export type EnclosureSpec = z.infer<typeof enclosureFields>;
