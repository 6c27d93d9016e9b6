/** Several entries of the shelf become one, here and in the other tabs. */
import { type MergedParts, mergeInto, undoMerge } from './duplicates';
import { reloadOwnShelf } from './shelf-store';
import { tellOtherShelves } from './shelf-tabs';

/** Own parts give way to `kept`, which takes over what was remarked on them. */
export async function mergeEntries(kept: string, ids: readonly string[]): Promise<MergedParts> {
  const merged = await mergeInto(kept, ids);
  await reloadOwnShelf();
  tellOtherShelves(undefined);
  return merged;
}

export async function takeMergeBack(merged: MergedParts): Promise<void> {
  await undoMerge(merged);
  await reloadOwnShelf();
  tellOtherShelves(undefined);
}
