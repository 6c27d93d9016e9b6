/** What makers publish about an enclosure instead of its inner dimensions. Millimetres. */
import { z } from 'zod';
import { millimetres } from '../dimension';
import { boardFormSchema, radiatorRowSchema, supplyFormSchema } from '../patterns';

/** How the board stands, and with it which wall each published limit is about. */
export const enclosureLayoutSchema = z.enum([
  'upright tower',
  'board lying flat',
  'card behind the board on a riser',
  'cube with the board on a shelf',
  'board turned a quarter',
]);
export type EnclosureLayoutName = z.infer<typeof enclosureLayoutSchema>;

export const publishedLimitsSchema = z.strictObject({
  layout: enclosureLayoutSchema.meta({ title: 'Layout' }),
  boardForm: boardFormSchema.meta({ title: 'Largest board' }),
  slots: z.int().min(0).max(8).meta({ title: 'Slot openings' }),
  coolerHeight: millimetres('Largest cooler height', {
    datum: 'top of the processor lid to the panel',
  }).optional(),
  cardLength: millimetres('Largest card length', {
    datum: 'card-side face of the bracket to what ends it',
  }).optional(),
  frontFan: millimetres('Thickness of the fan that stands in front of the card', {
    min: 0,
    fallback: 0,
    help: 'When the length was published with a front fan in place',
  }).optional(),
  cardThickness: millimetres('Largest card thickness', {
    datum: 'back of the backplate to what lies under the fans, first slot',
  }).optional(),
  cardHeight: millimetres('Largest card height', {
    datum: 'finger tips to what the upper edge meets',
  }).optional(),
  behindTray: millimetres('Room behind the tray', { min: 0 }).optional(),
  supply: supplyFormSchema.optional().meta({ title: 'Supply' }),
  supplyLength: millimetres('Largest supply length').optional(),
  supplyLengthWithPlugs: z
    .boolean()
    .optional()
    .meta({ title: 'The supply length includes plugs and the bend of the leads' }),
  topRadiator: radiatorRowSchema.optional().meta({ title: 'Radiator at the top' }),
  frontRadiator: radiatorRowSchema.optional().meta({ title: 'Radiator at the front' }),
  outerLength: millimetres('Outer length', { datum: 'rear to front, without what sticks out' }).optional(),
  outerHeight: millimetres('Outer height', { datum: 'without feet' }).optional(),
  outerWidth: millimetres('Outer width', { datum: 'back panel to side panel' }).optional(),
  sheet: millimetres('Sheet thickness', { fallback: 1 }).optional(),
  glass: millimetres('Glass of the side panel', { help: 'Left empty for a sheet panel' }).optional(),
});
export type PublishedLimits = z.infer<typeof publishedLimitsSchema>;
