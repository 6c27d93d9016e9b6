/** Finding a part on the shelf by what a person types. */
import { kindName, type PartKind } from '../../geometry';
import { keyDimension } from './key-dimension';
import type { ShelfEntry } from './shelf-entry';

/** Entries of the kind (all when undefined) that contain every word typed, in the order of the shelf. */
export function searchShelf(
  entries: readonly ShelfEntry[],
  typed: string,
  kind: PartKind | undefined,
): readonly ShelfEntry[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  return entries.filter((entry) => {
    if (kind !== undefined && entry.spec.kind !== kind) return false;
    const text = searchText(entry);
    return words.every((word) => text.includes(word));
  });
}

function searchText({ spec, note = '' }: ShelfEntry): string {
  return `${kindName(spec.kind)} ${spec.maker} ${spec.model} ${keyDimension(spec)} ${note}`.toLowerCase();
}
