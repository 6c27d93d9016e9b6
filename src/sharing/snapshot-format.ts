/**
 * The snapshot link: a whole plan in the fragment of a URL, which browsers never send to a server.
 *
 *     #p=<format>.<payload>
 *     payload = base64url( CRC-32 of the text, 4 bytes big-endian | raw deflate of the text )
 *     text    = the plan as compact JSON, UTF-8
 *
 * Deflate starts from a dictionary that belongs to the format number, so that the words every plan repeats cost
 * nothing. A format and its dictionary are never changed once released; a new one gets the next number.
 */
export const SNAPSHOT_KEY = 'p';
export const SNAPSHOT_FORMAT = 1;

/** Longest payload that is looked at. Chat programs cut links far below this; a longer one is damaged or hostile. */
export const LONGEST_PAYLOAD = 64_000;

/** Most text that is unpacked. A plan with 200 parts stays below it; inflation stops when it is passed. */
export const LARGEST_SNAPSHOT_TEXT = 1_000_000;

export const CHECKSUM_BYTES = 4;

/** Whether a fragment, with or without '#', claims to be a snapshot at all. */
export function isSnapshotFragment(fragment: string): boolean {
  return fragment.replace(/^#/, '').startsWith(`${SNAPSHOT_KEY}=`);
}
