/** What every spec carries whatever its kind. */
import { z } from 'zod';
import { rating } from './dimension';

export const identityFields = {
  maker: z.string().trim().min(1).max(60).meta({ title: 'Maker' }),
  model: z.string().trim().min(1).max(80).meta({ title: 'Model' }),
  mass: rating('Mass', 'g', { max: 60_000 }).optional(),
  remark: z
    .string()
    .max(500)
    .optional()
    .meta({ title: 'Remark', help: 'Anything worth knowing about this part' }),
} as const;

/** Free name of something inside a spec; short, printable, unique where the list says so. */
export const labelSchema = z.string().trim().min(1).max(40);
