/** The union of all kinds of part. */
import { z } from 'zod';
import { adapterSpecSchema } from './adapter/spec';
import { boardSpecSchema } from './board/spec';
import { cardSpecSchema } from './card/spec';
import { coolerSpecSchema } from './cooler/spec';
import { driveSpecSchema } from './drive/spec';
import { enclosureSpecSchema } from './enclosure/spec';
import { fanSpecSchema } from './fan/spec';
import { memorySpecSchema } from './memory/spec';
import { processorSpecSchema } from './processor/spec';
import { radiatorSpecSchema } from './radiator/spec';
import { supplySpecSchema } from './supply/spec';

export const partSpecSchema = z.discriminatedUnion('kind', [
  enclosureSpecSchema,
  boardSpecSchema,
  processorSpecSchema,
  coolerSpecSchema,
  memorySpecSchema,
  driveSpecSchema,
  cardSpecSchema,
  supplySpecSchema,
  fanSpecSchema,
  radiatorSpecSchema,
  adapterSpecSchema,
]);
export type PartSpec = z.infer<typeof partSpecSchema>;
export type PartKind = PartSpec['kind'];

/** All kinds in the order a builder plans them. */
export const partKinds = [
  'enclosure',
  'board',
  'processor',
  'cooler',
  'memory',
  'drive',
  'card',
  'supply',
  'fan',
  'radiator',
  'adapter',
] as const satisfies readonly PartKind[];
