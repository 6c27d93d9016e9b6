/** Packs and unpacks library files in a worker of their own or, where there is none, on the page. */
import { LIBRARY_LIMITS, type Library, type LibraryRequest, type ReadLibrary } from './library-file';

export function packInWorker(library: Library): Promise<Uint8Array<ArrayBuffer>> {
  return ask({ pack: library }, async () => (await import('./library-file')).packLibrary(library));
}

/** Looks at the size before the content. Never rejects for what is in the file. */
export async function readLibraryFile(file: File): Promise<ReadLibrary> {
  if (file.size > LIBRARY_LIMITS.fileBytes) {
    const message = `has ${file.size} bytes; a library has at most ${LIBRARY_LIMITS.fileBytes}`;
    return { ok: false, problems: [{ path: file.name, message }] };
  }
  const data = await file.arrayBuffer().then(
    (buffer) => new Uint8Array(buffer),
    () => undefined,
  );
  if (!data)
    return { ok: false, problems: [{ path: file.name, message: 'could not be read from the disk' }] };
  return ask({ unpack: data }, async () => (await import('./library-file')).unpackLibrary(data));
}

function ask<T>(request: LibraryRequest, onPage: () => Promise<T>): Promise<T> {
  const worker = makeWorker();
  if (!worker) return onPage();
  return new Promise((resolve, reject) => {
    worker.addEventListener('message', ({ data }: MessageEvent<T>) => {
      worker.terminate();
      resolve(data);
    });
    worker.addEventListener('error', () => {
      worker.terminate();
      onPage().then(resolve, reject);
    });
    worker.postMessage(request);
  });
}

function makeWorker(): Worker | undefined {
  try {
    return new Worker(new URL('./library-worker.ts', import.meta.url), { type: 'module', name: 'library' });
  } catch {
    // No workers here: old browsers, test pages, pages opened from a file.
    return undefined;
  }
}
