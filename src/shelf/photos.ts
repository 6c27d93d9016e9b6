/** Photos as evidence: scaled down on this page, kept in this browser, sent nowhere. */
import { newKey, planDatabase } from '../store/plan-database';
import { LARGEST_PHOTO, type Photo, photoSchema } from '../store/stored-records';

/** A picture file that is taken in at all, bytes. */
export const LARGEST_PICTURE_FILE = 30_000_000;
/** Longer edge of what is kept, px: a scale in the picture stays readable. */
const LONGEST_EDGE = 1600;
/** Tried one after the other until the photo is small enough. */
const QUALITIES = [0.82, 0.65, 0.45] as const;

/**
 * Scales a picture to at most 1,600 pixels and 1 MB as JPEG; place and camera that the file may name are not carried
 * over. Rejects with a plain sentence when the file is too large or no picture.
 */
export async function scaleDown(file: File): Promise<Omit<Photo, 'id' | 'entry'>> {
  if (file.size > LARGEST_PICTURE_FILE)
    throw new Error(`'${file.name}' has ${file.size} bytes; a picture may have ${LARGEST_PICTURE_FILE}.`);
  const picture = await createImageBitmap(file).catch(() => {
    throw new Error(`'${file.name}' is no picture that this browser can read.`);
  });
  const { width, height } = sizeWithin(picture.width, picture.height);
  const canvas = document.createElement('canvas');
  Object.assign(canvas, { width, height });
  canvas.getContext('2d')?.drawImage(picture, 0, 0, width, height);
  picture.close();
  for (const quality of QUALITIES) {
    const bytes = await jpegOf(canvas, quality);
    if (bytes && bytes.length <= LARGEST_PHOTO) return { type: 'image/jpeg', width, height, bytes };
  }
  throw new Error(`'${file.name}' could not be made small enough to keep.`);
}

/** Same proportions, longer edge at most 1,600 pixels, no edge under one. */
export function sizeWithin(width: number, height: number): { width: number; height: number } {
  const scale = Math.min(1, LONGEST_EDGE / Math.max(width, height));
  const scaled = (edge: number) => Math.max(1, Math.round(edge * scale));
  return { width: scaled(width), height: scaled(height) };
}

async function jpegOf(canvas: HTMLCanvasElement, quality: number): Promise<Photo['bytes'] | undefined> {
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', quality));
  return blob ? new Uint8Array(await blob.arrayBuffer()) : undefined;
}

/** Keeps a photo of an entry and returns its id. Rejects when the browser keeps nothing. */
export async function keepPhoto(entry: string, photo: Omit<Photo, 'id' | 'entry'>): Promise<string> {
  const id = `photo-${newKey()}`;
  await (await planDatabase()).put('photos', photoSchema.parse({ ...photo, id, entry }));
  return id;
}

export async function findPhoto(id: string): Promise<Photo | undefined> {
  const parsed = photoSchema.safeParse(await (await planDatabase()).get('photos', id));
  return parsed.success ? parsed.data : undefined;
}

export async function dropPhoto(id: string): Promise<void> {
  await (await planDatabase()).delete('photos', id);
}
