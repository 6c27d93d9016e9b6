import { Inflate } from 'fflate';

/** Bytes fed to the inflater at a time: one step can unpack at most about a thousand times as much. */
const STEP_BYTES = 256;

/**
 * Inflates raw deflate data and stops as soon as the output passes `limit` bytes, so that a small payload cannot fill
 * the memory. Throws on damaged data.
 */
export function inflateWithin(
  data: Uint8Array,
  limit: number,
  dictionary: Uint8Array,
): Uint8Array | 'too large' {
  const pieces: Uint8Array[] = [];
  let total = 0;
  let ended = false;
  const inflater = new Inflate({ dictionary }, (piece, final) => {
    total += piece.length;
    if (total <= limit) pieces.push(piece);
    ended ||= final;
  });
  for (let at = 0; at < data.length && total <= limit; at += STEP_BYTES) {
    const end = Math.min(at + STEP_BYTES, data.length);
    inflater.push(data.subarray(at, end), end === data.length);
  }
  if (total > limit) return 'too large';
  if (!ended) throw new Error('the data ends too early');
  const whole = new Uint8Array(total);
  let offset = 0;
  for (const piece of pieces) {
    whole.set(piece, offset);
    offset += piece.length;
  }
  return whole;
}
