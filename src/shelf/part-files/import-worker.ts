/** Reads, keeps and writes part files beside the page. */
import { ImportSession } from './answer-import';
import type { ImportRequest } from './import-request';

const session = new ImportSession((reply) => postMessage(reply));

addEventListener('message', ({ data }: MessageEvent<ImportRequest>) => {
  void session.answer(data).then((reply) => postMessage(reply));
});
