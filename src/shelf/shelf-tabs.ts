/** Word between tabs of this browser that show the same shelf. */

export interface ShelfNews {
  /** Entries that were added, changed, remarked on or dropped; undefined for too many to name. */
  readonly entries: readonly string[] | undefined;
}

/** More than this many are not named: the other tab reads everything anew. */
const MOST_NAMED = 200;

let channel: BroadcastChannel | undefined;

/** Listens for the rest of the page's life; browsers without the channel see the changes at the next start. */
export function hearOtherShelves(onNews: (news: ShelfNews) => void): void {
  if (typeof BroadcastChannel === 'undefined') return;
  channel ??= new BroadcastChannel('elbowroom shelf');
  channel.onmessage = (event: MessageEvent<ShelfNews>) => onNews(event.data);
}

export function tellOtherShelves(entries: readonly string[] | undefined): void {
  const news: ShelfNews = { entries: entries && entries.length > MOST_NAMED ? undefined : entries };
  channel?.postMessage(news);
}
