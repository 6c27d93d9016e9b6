import { buf as crc32 } from 'crc-32';
import { deflateSync, strFromU8, strToU8 } from 'fflate';
import { type Plan, type Problem, planSchema, readPlan } from '../../geometry';
import { fromBase64Url, isBase64Url, toBase64Url } from './base64url';
import { inflateWithin } from './inflate-within';
import {
  CHECKSUM_BYTES,
  LARGEST_SNAPSHOT_TEXT,
  LONGEST_PAYLOAD,
  SNAPSHOT_FORMAT,
  SNAPSHOT_KEY,
} from './snapshot-format';

export type DecodeResult =
  | { readonly ok: true; readonly plan: Plan }
  | { readonly ok: false; readonly message: string; readonly problems: readonly Problem[] };

/** The fragment, without '#', that carries the plan. Fields go in the order of the schema, as in the dictionary. */
export async function encodeSnapshot(plan: Plan): Promise<string> {
  const text = strToU8(JSON.stringify(planSchema.parse(plan)));
  const packed = deflateSync(text, { level: 9, mem: 12, dictionary: await dictionary() });
  const payload = new Uint8Array(CHECKSUM_BYTES + packed.length);
  new DataView(payload.buffer).setInt32(0, crc32(text));
  payload.set(packed, CHECKSUM_BYTES);
  return `${SNAPSHOT_KEY}=${SNAPSHOT_FORMAT}.${toBase64Url(payload)}`;
}

/** Reads a fragment, with or without '#'. Never throws; says what it met when it cannot. */
export async function decodeSnapshot(fragment: string): Promise<DecodeResult> {
  // A phone may wrap a long link, and some programs escape what needs no escape.
  const compact = fragment.replace(/^#/, '').replaceAll(/%20|\s/g, '');
  const match = /^p=(\d{1,6})\.(.*)$/.exec(compact);
  if (!match) return refuse('This is not a snapshot link, or its beginning was cut off.');
  const [, number = '', payload = ''] = match;
  const format = Number(number);
  if (format > SNAPSHOT_FORMAT) {
    return refuse(
      `This link was made by a newer version (snapshot format ${format}; this version reads up to ${SNAPSHOT_FORMAT}).`,
    );
  }
  if (format < 1) return refuse(`There is no snapshot format ${format}.`);
  if (payload.length > LONGEST_PAYLOAD) {
    return refuse(
      `The link is ${payload.length} characters long; a snapshot has at most ${LONGEST_PAYLOAD}.`,
    );
  }
  if (!isBase64Url(payload))
    return refuse('The link holds characters that no snapshot has: it was damaged on the way.');
  const text = unpack(fromBase64Url(payload), await dictionary());
  if (!text.ok) return refuse(text.message);
  const read = readPlan(text.value);
  if (read.ok) return { ok: true, plan: read.plan };
  const first = read.problems[0];
  return {
    ok: false,
    message: `The link is whole, but its plan cannot be read: ${first ? `${first.path} ${first.message}` : 'unknown reason'}.`,
    problems: read.problems,
  };
}

type Unpacked =
  | { readonly ok: true; readonly value: string }
  | { readonly ok: false; readonly message: string };

function unpack(bytes: Uint8Array, dictionary: Uint8Array): Unpacked {
  const damaged: Unpacked = { ok: false, message: 'The link is damaged or was cut off; ask for it again.' };
  if (bytes.length <= CHECKSUM_BYTES) return damaged;
  const expected = new DataView(bytes.buffer, bytes.byteOffset).getInt32(0);
  try {
    const text = inflateWithin(bytes.subarray(CHECKSUM_BYTES), LARGEST_SNAPSHOT_TEXT, dictionary);
    if (text === 'too large') {
      return {
        ok: false,
        message: `The link unpacks to more than ${LARGEST_SNAPSHOT_TEXT} bytes; it is not a plan.`,
      };
    }
    if (crc32(text) !== expected) return damaged;
    return { ok: true, value: strFromU8(text) };
  } catch {
    return damaged;
  }
}

/** The dictionary of format 1, the only one so far; loaded only when a link is made or opened. */
async function dictionary(): Promise<Uint8Array> {
  const { default: words } = await import('./dictionary-1.txt?raw');
  return strToU8(words);
}

function refuse(message: string): DecodeResult {
  return { ok: false, message, problems: [] };
}
