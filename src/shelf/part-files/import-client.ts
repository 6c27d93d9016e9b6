/** The page's end of the work on part files: one worker a file, ended at once when the person calls it off. */
import { reloadOwnShelf } from '../shelf-store';
import { tellOtherShelves } from '../shelf-tabs';
import type { ImportReply, ImportRequest } from './import-request';

export class ImportClient {
  private readonly worker: Worker;
  private answer: ((reply: ImportReply) => void) | undefined;

  constructor(private readonly onShare: (share: number) => void) {
    this.worker = new Worker(new URL('./import-worker.ts', import.meta.url), {
      type: 'module',
      name: 'part-files',
    });
    this.worker.addEventListener('message', ({ data }: MessageEvent<ImportReply>) => {
      if (data.type === 'share') this.onShare(data.share);
      else this.settle(data);
    });
    this.worker.addEventListener('error', () =>
      this.settle({ type: 'failed', message: 'The file could not be worked on.' }),
    );
  }

  /** One at a time. */
  async ask(request: ImportRequest): Promise<ImportReply> {
    const reply = await new Promise<ImportReply>((resolve) => {
      this.answer = resolve;
      this.worker.postMessage(request);
    });
    if (reply.type === 'kept' || reply.type === 'undone') {
      await reloadOwnShelf();
      tellOtherShelves(undefined);
    }
    return reply;
  }

  /** Ends the work wherever it is: a transaction that is not done yet is as if it had never begun. */
  close(): void {
    this.worker.terminate();
    this.settle({ type: 'failed', message: 'Called off. Nothing was changed.' });
  }

  private settle(reply: ImportReply): void {
    this.answer?.(reply);
    this.answer = undefined;
  }
}
