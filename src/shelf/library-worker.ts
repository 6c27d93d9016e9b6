/** Packs and unpacks the library beside the page: tens of thousands of parts take seconds. */

import { type LibraryRequest, packLibrary, unpackLibrary } from './library-file';

addEventListener('message', ({ data }: MessageEvent<LibraryRequest>) => {
  postMessage('pack' in data ? packLibrary(data.pack) : unpackLibrary(data.unpack));
});
