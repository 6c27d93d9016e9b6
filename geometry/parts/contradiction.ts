/** Two fields of a spec that cannot both be true. */
import type { z } from 'zod';

export interface Contradiction {
  /** Where the person should look first, as a path into the spec. */
  readonly path: readonly (string | number)[];
  /** One sentence that names both fields with their values. */
  readonly message: string;
}

/** Passes contradictions on as issues of a schema: `schema.superRefine(refuse(coolerContradictions))`. */
export function refuse<Spec>(find: (spec: Spec) => readonly Contradiction[]) {
  return (spec: Spec, context: z.RefinementCtx<Spec>): void => {
    for (const { path, message } of find(spec)) {
      context.addIssue({ code: 'custom', path: [...path], message });
    }
  };
}
