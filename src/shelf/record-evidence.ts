/** A measurement of the real part, kept with its entry; and taken into an own part's sheet when a person wants that. */
import { type Dimension, partSpecSchema, withStatement } from '../../geometry';
import { newKey } from '../store/plan-database';
import type { Evidence, Photo } from '../store/stored-records';
import { dropPhoto, keepPhoto } from './photos';
import type { ShelfEntry } from './shelf-entry';
import { changeOwnPart, remark } from './shelf-store';

export interface NewEvidence extends Omit<Evidence, 'id' | 'photo'> {
  readonly photo?: Omit<Photo, 'id' | 'entry'> | undefined;
}

/** Rejects with the schema's or the browser's reason, and then leaves nothing behind. */
export async function recordEvidence(entry: string, { photo, ...measured }: NewEvidence): Promise<void> {
  const picture = photo && (await keepPhoto(entry, photo));
  const evidence: Evidence = {
    ...measured,
    id: `evidence-${newKey()}`,
    ...(picture ? { photo: picture } : {}),
  };
  try {
    await remark(entry, (before) => ({ ...before, evidence: [evidence, ...(before.evidence ?? [])] }));
  } catch (error) {
    if (picture) await dropPhoto(picture);
    throw error;
  }
}

/** Lets a measurement go with its photo. */
export async function dropEvidence(entry: string, { id, photo }: Evidence): Promise<void> {
  await remark(entry, ({ evidence = [], ...others }) => {
    const left = evidence.filter((one) => one.id !== id);
    return left.length === 0 ? others : { ...others, evidence: left };
  });
  if (photo) await dropPhoto(photo);
}

/**
 * Puts the measured value into the sheet of an own part. Returns in words why that cannot be, and then changes
 * nothing.
 */
export async function takeIntoSheet(
  { id, spec, revision = 1 }: ShelfEntry,
  { path, title, value, plusMinus, who, when, how }: Omit<NewEvidence, 'photo'>,
): Promise<string | undefined> {
  if (path === undefined) return 'That is no dimension of the sheet.';
  const dimension: Dimension = {
    value,
    source: 'measured',
    ...(plusMinus === undefined ? {} : { plusMinus }),
    note: [how, who, when].filter(Boolean).join(', ').slice(0, 200),
  };
  const read = partSpecSchema.safeParse(withStatement(spec, path, dimension));
  if (!read.success) return read.error.issues[0]?.message ?? 'The sheet cannot be true with that value.';
  const result = await changeOwnPart(id, read.data, revision, `${title} measured`);
  return result.saved ? undefined : 'Another tab has changed the part since; look at it again.';
}
