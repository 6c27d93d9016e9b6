/** One thing on the shelf: a spec with a name to refer to it by. */
import { z } from 'zod';
import { describeIssues, type PartKind, type PartSpec, type Problem, partSpecSchema } from '../../geometry';

export interface ShelfEntry {
  readonly id: string;
  readonly spec: PartSpec;
  readonly note?: string | undefined;
  /** Made by the standard alone, of no maker. */
  readonly generic?: boolean | undefined;
  /** Made by this person, kept in this browser. */
  readonly own?: boolean;
  /** Of an own part: the version that stands in storage. */
  readonly revision?: number;
}

const entrySchema = z.strictObject({
  id: z.string().min(1).max(80),
  spec: partSpecSchema,
  note: z.string().max(300).optional(),
  generic: z.boolean().optional(),
});

/** Reads the shelf of one kind; an entry that cannot be read is left out and named. */
export function readShelf(
  kind: PartKind,
  value: unknown,
): { readonly entries: readonly ShelfEntry[]; readonly problems: readonly Problem[] } {
  if (!Array.isArray(value))
    return { entries: [], problems: [{ path: `shelf/${kind}`, message: 'is not a list' }] };
  const entries: ShelfEntry[] = [];
  const problems: Problem[] = [];
  for (const [index, item] of value.entries()) {
    const parsed = entrySchema.safeParse(item, { reportInput: true });
    if (parsed.success && parsed.data.spec.kind === kind) entries.push(parsed.data);
    else if (parsed.success) problems.push({ path: `shelf/${kind}/${index}`, message: 'is of another kind' });
    else
      for (const { path, message } of describeIssues(parsed.error.issues, item))
        problems.push({ path: `shelf/${kind}/${index}/${path}`, message });
  }
  return { entries, problems };
}
