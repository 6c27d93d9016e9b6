/**
 * The whole library as one file, `<day>.elbowroom-library.zip`: `library.json` with plans, parts, their history and
 * remarks, and one file for each photo. Read with limits, so that neither a wrong nor a hostile file fills the memory,
 * and checked field by field before anything of it is used.
 */
import { strFromU8, strToU8, Unzip, UnzipInflate, type Zippable, zipSync } from 'fflate';
import { z } from 'zod';
import { describeIssues, type Problem, readPlanValue } from '../../geometry';
import type { StoredPlan } from '../store/plan-database';
import {
  type PartVersion,
  type Photo,
  partVersionSchema,
  photoSchema,
  type Remarks,
  remarksSchema,
  type StoredPart,
  storedPartSchema,
} from '../store/stored-records';

export const LIBRARY_FORMAT = 1;

/** Everything that a person keeps here. */
export interface Library {
  readonly plans: readonly StoredPlan[];
  readonly parts: readonly StoredPart[];
  readonly versions: readonly PartVersion[];
  readonly remarks: readonly Remarks[];
  readonly photos: readonly Photo[];
}

/** What is asked of the worker. */
export type LibraryRequest = { readonly pack: Library } | { readonly unpack: Uint8Array };

/** What a file may hold at the most; told to the person who chooses one. */
export const LIBRARY_LIMITS = {
  fileBytes: 500_000_000,
  textBytes: 100_000_000,
  plans: 5_000,
  parts: 100_000,
  versions: 200_000,
  remarks: 100_000,
  photos: 5_000,
} as const;

const TEXT_NAME = 'library.json';
const photoName = (id: string) => `photos/${id}`;
/** No name in the archive is longer: 'photos/' and an id. */
const LONGEST_NAME = 100;
/** Bytes unpacked between two looks at the limits: one step unpacks at most about a thousand times as much. */
const STEP_BYTES = 16_384;

const storedPlanSchema = z.strictObject({
  id: z.string().min(1).max(80),
  revision: z.int().min(1).max(1e9),
  savedAt: z.number().min(0).max(8.64e15),
  plan: z.unknown(),
});

const librarySchema = z.strictObject({
  format: z.literal(LIBRARY_FORMAT),
  plans: z.array(storedPlanSchema).max(LIBRARY_LIMITS.plans),
  parts: z.array(storedPartSchema).max(LIBRARY_LIMITS.parts),
  versions: z.array(partVersionSchema).max(LIBRARY_LIMITS.versions),
  remarks: z.array(remarksSchema).max(LIBRARY_LIMITS.remarks),
  photos: z.array(photoSchema.omit({ bytes: true })).max(LIBRARY_LIMITS.photos),
});

export function packLibrary({ photos, ...rest }: Library): Uint8Array<ArrayBuffer> {
  const described = photos.map(({ bytes: _, ...photo }) => photo);
  const text = JSON.stringify({ format: LIBRARY_FORMAT, ...rest, photos: described });
  const files: Zippable = { [TEXT_NAME]: [strToU8(text), { level: 6 }] };
  // Pictures are packed already.
  for (const { id, bytes } of photos) files[photoName(id)] = [bytes, { level: 0 }];
  return zipSync(files);
}

export type ReadLibrary =
  | { readonly ok: true; readonly library: Library }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Never throws. All or nothing: one thing that cannot be read refuses the file, and is named. */
export function unpackLibrary(data: Uint8Array): ReadLibrary {
  const files = unpackFiles(data);
  if (typeof files === 'string') return refuse('file', files);
  const text = files.get(TEXT_NAME);
  if (!text) return refuse('file', `is no library: it has no ${TEXT_NAME}`);
  let value: unknown;
  try {
    value = JSON.parse(strFromU8(text));
  } catch {
    return refuse(TEXT_NAME, 'is not JSON, or was cut off');
  }
  return readLibrary(value, files);
}

function readLibrary(value: unknown, files: ReadonlyMap<string, Uint8Array>): ReadLibrary {
  const parsed = librarySchema.safeParse(value, { reportInput: true });
  if (!parsed.success) {
    const problems = describeIssues(parsed.error.issues, value);
    // The word for the whole is that of a plan; here it is the library.
    return {
      ok: false,
      problems: problems.map((one) => (one.path === 'plan' ? { ...one, path: TEXT_NAME } : one)),
    };
  }
  const { plans, photos, parts, versions, remarks } = parsed.data;
  const read: StoredPlan[] = [];
  for (const [index, { plan, ...record }] of plans.entries()) {
    const result = readPlanValue(plan);
    if (!result.ok)
      return {
        ok: false,
        problems: result.problems.map(({ path, message }) => ({
          path: `plans.${index}.plan.${path}`,
          message,
        })),
      };
    read.push({ ...record, plan: result.plan });
  }
  const pictures: Photo[] = [];
  for (const [index, photo] of photos.entries()) {
    const whole = photoSchema.safeParse({ ...photo, bytes: files.get(photoName(photo.id)) });
    if (!whole.success)
      return refuse(`photos.${index}`, `has no picture ${photoName(photo.id)} that can be read`);
    pictures.push(whole.data);
  }
  return { ok: true, library: { plans: read, parts, versions, remarks, photos: pictures } };
}

function refuse(path: string, message: string): ReadLibrary {
  return { ok: false, problems: [{ path, message }] };
}

/** The files of the archive by name, or in words why it is refused. */
function unpackFiles(data: Uint8Array): ReadonlyMap<string, Uint8Array> | string {
  if (data.length > LIBRARY_LIMITS.fileBytes)
    return `has ${data.length} bytes; a library has at most ${LIBRARY_LIMITS.fileBytes}`;
  if (data[0] !== 0x50 || data[1] !== 0x4b) return 'is no library: it is not a zip archive';
  const files = new Map<string, Uint8Array>();
  let fault: string | undefined;
  let open = 0;
  const unzip = new Unzip((file) => {
    const limit = file.name === TEXT_NAME ? LIBRARY_LIMITS.textBytes : 1_000_000;
    if (file.name.length > LONGEST_NAME || files.size + open > LIBRARY_LIMITS.photos) {
      fault ??= 'holds too many files, or names that are too long';
      return;
    }
    // An archive that is honest about it need not be unpacked to be refused.
    if ((file.originalSize ?? 0) > limit) {
      fault ??= tooLarge(file.name, limit);
      return;
    }
    const pieces: Uint8Array[] = [];
    let total = 0;
    open += 1;
    file.ondata = (error, piece, isLast) => {
      if (error) fault ??= `cannot be unpacked: ${file.name} is damaged`;
      else total += piece.length;
      if (total > limit) fault ??= tooLarge(file.name, limit);
      if (fault !== undefined) return;
      pieces.push(piece);
      if (!isLast) return;
      open -= 1;
      files.set(file.name, joined(pieces, total));
    };
    file.start();
  });
  unzip.register(UnzipInflate);
  try {
    for (let at = 0; at < data.length && fault === undefined; at += STEP_BYTES)
      unzip.push(data.subarray(at, at + STEP_BYTES), at + STEP_BYTES >= data.length);
  } catch {
    return fault ?? 'cannot be unpacked: it is damaged or was cut off';
  }
  if (fault !== undefined) return fault;
  return open === 0 ? files : 'ends too early';
}

function tooLarge(name: string, limit: number): string {
  return `holds ${name}, which is larger than ${limit} bytes`;
}

function joined(pieces: readonly Uint8Array[], total: number): Uint8Array {
  const whole = new Uint8Array(total);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
