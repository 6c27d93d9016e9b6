/**
 * The plan: the document a person saves, shares and compares. Parts carry the whole spec they had when they were
 * placed, so that a plan opens the same for ever, whatever happens to the shelf. Lengths in millimetres, angles in
 * degrees.
 */
import { z } from 'zod';
import { partSpecSchema } from '../parts/part-spec';

/** Number of the format written today. Every released format stays readable: see `migrations.ts`. */
export const PLAN_FORMAT = 1;

/** No compact machine has more parts than this; more is a mistake or an attack. */
export const MOST_PARTS = 200;

export const partIdSchema = z.string().regex(/^[a-z][a-z0-9-]{0,31}$/);

const coordinate = z.number().min(-5000).max(5000);
const angle = z.number().min(-360).max(360);
const pointSchema = z.tuple([coordinate, coordinate, coordinate]);

/** On a mount of another part. `shift` is in the mount's frame (its z points away from the carrier). */
const seatedSchema = z.strictObject({
  on: partIdSchema,
  mount: z.string().min(1).max(60),
  foot: z.string().min(1).max(60).optional(),
  turn: angle.optional(),
  shift: pointSchema.optional(),
});

/** Anywhere: origin and turns (about the fixed axes x, then y, then z) of the part's frame in the world. */
const freeSchema = z.strictObject({ at: pointSchema, rotate: z.tuple([angle, angle, angle]).optional() });

export const placementSchema = z.union([seatedSchema, freeSchema]);
export type Placement = z.infer<typeof placementSchema>;
export type SeatedPlacement = z.infer<typeof seatedSchema>;
export type FreePlacement = z.infer<typeof freeSchema>;

export const planPartSchema = z.strictObject({
  spec: partSpecSchema,
  /** The shelf entry the spec was copied from, to be able to say when that entry has changed since. */
  shelf: z.string().min(1).max(80).optional(),
  placement: placementSchema,
  adjust: z.record(z.string().min(1).max(60), z.number().min(-1000).max(1000)).optional(),
});
export type PlanPart = z.infer<typeof planPartSchema>;

const text = (most: number) => z.string().max(most);

export const briefSchema = z.strictObject({
  client: text(120).optional(),
  purpose: text(1000).optional(),
  budget: z.number().min(0).max(1e7).optional(),
  currency: z
    .string()
    .regex(/^[A-Z]{3}$/)
    .optional(),
  roomTemperature: z.number().min(-20).max(60).optional(),
  noiseWish: z
    .strictObject({ decibels: z.number().min(0).max(100), metres: z.number().min(0.1).max(10) })
    .optional(),
  stands: text(200).optional(),
  /** Height above sea level where it will run, m. */
  altitude: z.number().min(-430).max(6000).optional(),
  mains: z.union([z.literal(115), z.literal(230)]).optional(),
  carried: z.enum(['never', 'yearly', 'monthly', 'weekly', 'daily']).optional(),
  /** A bag, shelf or gap that it must go into: clear inner size, mm. */
  mustGoInto: z
    .strictObject({
      name: text(60),
      length: z.number().min(1).max(5000),
      height: z.number().min(1).max(5000),
      width: z.number().min(1).max(5000),
      upright: z.boolean().optional(),
    })
    .optional(),
  upgrades: z.array(text(200)).max(20).optional(),
});
export type Brief = z.infer<typeof briefSchema>;

const money = z.number().min(0).max(1e6);
const day = z.iso.date();

/** A price as typed: the amount alone, or with what it rests on. */
export const priceSchema = z.union([
  money,
  z.strictObject({
    amount: money,
    currency: z
      .string()
      .regex(/^[A-Z]{3}$/)
      .optional(),
    date: day.optional(),
    shop: text(80).optional(),
  }),
]);
export type Price = z.infer<typeof priceSchema>;

/** What a quote adds to the parts. `tax` is a share of the net sum. */
export const quoteSchema = z.strictObject({
  date: day.optional(),
  validDays: z.int().min(1).max(365).optional(),
  tax: z.number().min(0).max(1).optional(),
  pricesIncludeTax: z.boolean().optional(),
  lines: z
    .array(z.strictObject({ label: text(80), amount: z.number().min(-1e6).max(1e6) }))
    .max(30)
    .optional(),
  /** What a wish costs: the price of the plainer part that would do, and its sound at 1 m as its sheet has it. */
  wishes: z
    .array(
      z.strictObject({
        label: text(80),
        part: partIdSchema,
        plainPrice: money,
        plainDecibels: z.number().min(0).max(100).optional(),
      }),
    )
    .max(30)
    .optional(),
});
export type Quote = z.infer<typeof quoteSchema>;

export const cameraSchema = z.strictObject({
  name: text(60),
  eye: pointSchema,
  target: pointSchema,
});

/** What a person says of a lead: points it is led through, in the world, in order; its measured length, mm. */
export const leadWishSchema = z.strictObject({
  through: z.array(pointSchema).max(6).optional(),
  length: z.number().min(20).max(3000).optional(),
});
export type LeadWish = z.infer<typeof leadWishSchema>;

export const planSchema = z.strictObject({
  format: z.literal(PLAN_FORMAT),
  name: z.string().trim().min(1).max(120),
  revision: text(20).optional(),
  brief: briefSchema.optional(),
  parts: z
    .record(partIdSchema, planPartSchema)
    .refine((parts) => Object.keys(parts).length <= MOST_PARTS, { error: `more than ${MOST_PARTS} parts` }),
  /** Wanted gaps by clearance rule, mm; what is not named has the rule's own default. */
  gaps: z.record(z.string().min(1).max(60), z.number().min(0).max(200)).optional(),
  prices: z.record(partIdSchema, priceSchema).optional(),
  quote: quoteSchema.optional(),
  /** By lead: 'main 24-pin', 'fan cooler'. */
  leads: z
    .record(z.string().min(1).max(80), leadWishSchema)
    .refine((leads) => Object.keys(leads).length <= MOST_PARTS, { error: `more than ${MOST_PARTS} leads` })
    .optional(),
  notes: text(10_000).optional(),
  cameras: z.array(cameraSchema).max(20).optional(),
});
export type Plan = z.infer<typeof planSchema>;

export function isSeated(placement: Placement): placement is SeatedPlacement {
  return 'on' in placement;
}
