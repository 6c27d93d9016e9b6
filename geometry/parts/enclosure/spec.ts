/** Spec of an enclosure: its fields, frame and units are in `fields.ts`; what contradicts itself is refused here. */
import { refuse } from '../contradiction';
import { enclosureContradictions } from './contradictions';
import { enclosureFields } from './fields';

export type { EnclosureSpec } from './fields';

export const enclosureSpecSchema = enclosureFields.superRefine(refuse(enclosureContradictions));
