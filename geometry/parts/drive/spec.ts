/**
 * Spec of a drive.
 *
 * Frame of a 3.5 or 2.5 inch drive: origin at the middle of the connector end on the base; x from the connector end
 * to the far end, y across, z up from the base. Frame of an M.2 module: origin at the middle of the contact edge on
 * the lower face of its circuit board; x from the contacts to the far end, y across, z away from the board it sits
 * on. Millimetres.
 */
import { z } from 'zod';
import { m2Module } from '../../standards/m2-modules';
import { type Contradiction, refuse } from '../contradiction';
import { type Dimension, millimetres, nominal, nominalOr, rating } from '../dimension';
import { identityFields } from '../identity';
import { m2LengthSchema } from '../patterns';

const ratings = {
  watts: rating('Power', 'W', { max: 50 }).optional(),
  capacity: rating('Capacity', 'GB', { max: 200_000 }).optional(),
} as const;

const boxedFields = {
  kind: z.literal('drive'),
  ...identityFields,
  height: millimetres('Height'),
  length: millimetres('Length', { datum: 'connector end to far end' }).optional(),
  ...ratings,
} as const;

const drive35Schema = z.strictObject({ form: z.literal('3.5'), ...boxedFields });
const drive25Schema = z.strictObject({ form: z.literal('2.5'), ...boxedFields });

interface SinkFields {
  readonly above?: Dimension | undefined;
  readonly sink?: Dimension | undefined;
}

function sinkContradictions({ sink, above: stated }: SinkFields): readonly Contradiction[] {
  const above = nominalOr(stated, m2Module.highestPartEitherSide.value);
  if (sink === undefined || nominal(sink) > above) return [];
  const message = `"Own sink" (${nominal(sink)} mm) must be higher than "Parts above its board" (${above} mm)`;
  return [{ path: ['sink'], message }];
}

const driveM2Schema = z
  .strictObject({
    form: z.literal('M.2'),
    kind: z.literal('drive'),
    ...identityFields,
    length: m2LengthSchema.meta({ title: 'Length', unit: 'mm' }),
    above: millimetres('Parts above its board', { fallback: 1.5 }).optional(),
    below: millimetres('Parts below its board', { min: 0, fallback: 0 }).optional(),
    sink: millimetres('Own sink', { datum: 'top of the circuit board to top of the sink' }).optional(),
    ...ratings,
  })
  .superRefine(refuse(sinkContradictions));

export const driveSpecSchema = z.discriminatedUnion('form', [drive35Schema, drive25Schema, driveM2Schema]);
export type DriveSpec = z.infer<typeof driveSpecSchema>;
export type M2DriveSpec = z.infer<typeof driveM2Schema>;
export type BoxedDriveSpec = z.infer<typeof drive35Schema> | z.infer<typeof drive25Schema>;
