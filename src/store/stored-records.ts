/**
 * What is kept in the browser beside the plans: own parts with their earlier versions, what a person remarks on any
 * entry of the shelf, and photos. The schemas guard the border; a record that does not pass is not shown.
 */
import { z } from 'zod';
import { partSpecSchema } from '../../geometry';

const keySchema = z.string().min(1).max(80);
const millisecondsSchema = z.number().min(0).max(8.64e15);
const revisionSchema = z.int().min(1).max(1e9);
const text = (most: number) => z.string().trim().max(most);

export const storedPartSchema = z.strictObject({
  id: keySchema,
  spec: partSpecSchema,
  /** Rises with each change; a tab that holds an older number must not overwrite. */
  revision: revisionSchema,
  /** Milliseconds since 1970. */
  savedAt: millisecondsSchema,
});
export type StoredPart = z.infer<typeof storedPartSchema>;

/** What a part was until it was changed. */
export const partVersionSchema = z.strictObject({
  part: keySchema,
  revision: revisionSchema,
  spec: partSpecSchema,
  /** When this version was written. */
  savedAt: millisecondsSchema,
  /** Why it gave way to the next one, in a person's words. */
  reason: text(200).optional(),
});
export type PartVersion = z.infer<typeof partVersionSchema>;

/** A length or mass that somebody has measured on the real part. */
export const evidenceSchema = z.strictObject({
  id: keySchema,
  /** Path of the dimension in the spec ('height'), when it is one of those. */
  path: z.string().min(1).max(120).optional(),
  title: text(120).min(1),
  value: z.number().min(-2000).max(60_000),
  unit: z.enum(['mm', 'g']),
  /** Half-width of its band, in the unit. */
  plusMinus: z.number().min(0).max(100).optional(),
  who: text(80),
  when: z.iso.date(),
  how: text(200),
  photo: keySchema.optional(),
});
export type Evidence = z.infer<typeof evidenceSchema>;

export const remarksSchema = z.strictObject({
  /** Id of the entry, of the person's own shelf or of the one that comes with the page. */
  entry: keySchema,
  favourite: z.boolean().optional(),
  note: text(2000).optional(),
  price: z
    .strictObject({
      amount: z.number().min(0).max(1e6),
      currency: z
        .string()
        .regex(/^[A-Z]{3}$/)
        .optional(),
    })
    .optional(),
  /** As weighed, g. */
  mass: z.number().min(0).max(60_000).optional(),
  /** Ids of entries that were merged into this one, so that plans that name them still find it. */
  formerIds: z.array(keySchema).max(500).optional(),
  evidence: z.array(evidenceSchema).max(100).optional(),
});
export type Remarks = z.infer<typeof remarksSchema>;

/** No photo in storage is larger, bytes: some 1,600 pixels along its longer edge. */
export const LARGEST_PHOTO = 1_000_000;

export const photoSchema = z.strictObject({
  id: keySchema,
  entry: keySchema,
  type: z.enum(['image/jpeg', 'image/webp', 'image/png']),
  width: z.int().min(1).max(4096),
  height: z.int().min(1).max(4096),
  bytes: z.instanceof(Uint8Array).refine((bytes) => bytes.length > 0 && bytes.length <= LARGEST_PHOTO, {
    error: `must have between 1 and ${LARGEST_PHOTO} bytes`,
  }),
});
export type Photo = z.infer<typeof photoSchema>;
