/** Spec of a board: its fields, frame and units are in `fields.ts`; what contradicts itself is refused here. */
import { refuse } from '../contradiction';
import { boardContradictions } from './contradictions';
import { boardFields } from './fields';

export type { BoardSpec } from './fields';

export const boardSpecSchema = boardFields.superRefine(refuse(boardContradictions));
