/** Where a question is worked on: beside the page in a worker or, where there is none, on the page itself. */
import type { StudyMessage, StudyReply, StudyRequest } from './study-request';

export interface StudyRunner {
  /** One at a time. */
  run(request: StudyRequest): Promise<unknown>;
}

/** The worker cannot be had or has died; the question itself may be all right. */
export class WorkerLost extends Error {}

interface Waiting {
  readonly number: number;
  readonly resolve: (answer: unknown) => void;
  readonly reject: (reason: unknown) => void;
}

export class WorkerRunner implements StudyRunner {
  private readonly worker: Pick<Worker, 'postMessage' | 'terminate'>;
  private waiting: Waiting | undefined;
  private number = 0;

  constructor(worker: Pick<Worker, 'postMessage' | 'terminate' | 'addEventListener'>) {
    this.worker = worker;
    worker.addEventListener('message', (event) => this.take((event as MessageEvent<StudyReply>).data));
    worker.addEventListener('error', () => this.lose());
    worker.addEventListener('messageerror', () => this.lose());
  }

  run(request: StudyRequest): Promise<unknown> {
    return new Promise((resolve, reject) => {
      this.number += 1;
      this.waiting = { number: this.number, resolve, reject };
      const message: StudyMessage = { number: this.number, request };
      this.worker.postMessage(message);
    });
  }

  private take(reply: StudyReply): void {
    const { waiting } = this;
    if (!waiting || reply.number !== waiting.number) return;
    this.waiting = undefined;
    if (reply.ok) waiting.resolve(reply.answer);
    else waiting.reject(new Error(reply.message));
  }

  private lose(): void {
    this.worker.terminate();
    this.waiting?.reject(new WorkerLost('the worker is lost'));
    this.waiting = undefined;
  }
}

export class PageRunner implements StudyRunner {
  async run(request: StudyRequest): Promise<unknown> {
    const { answerStudy } = await import('./answer-study');
    // The page gets to draw what it has before the work begins.
    await new Promise((resolve) => setTimeout(resolve));
    return answerStudy(request);
  }
}
