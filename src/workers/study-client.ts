/**
 * Questions to the kernel that take longer than a frame, asked without holding up the page. Of each topic only the
 * newest question counts: an older one that has not been begun is never begun, and its answer, if it was, is dropped.
 */
import type { StudyAnswer, StudyRequest, StudyTopic } from './study-request';
import { PageRunner, type StudyRunner, WorkerLost, WorkerRunner } from './study-runners';

interface Job {
  readonly request: StudyRequest;
  /** With undefined when a newer question has taken the place of this one. */
  readonly resolve: (answer: unknown) => void;
  readonly reject: (reason: unknown) => void;
}

/** The answer a person waits for while dragging comes before all others. */
const FIRST: StudyTopic = 'stack-up';

export class StudyClient {
  private readonly waiting = new Map<StudyTopic, Job>();
  private running: Job | undefined;
  private runner: StudyRunner;

  constructor(runner: StudyRunner = makeRunner()) {
    this.runner = runner;
  }

  /** Undefined when a newer question of the same topic came before the answer. Rejects with what went wrong. */
  ask<R extends StudyRequest>(request: R): Promise<StudyAnswer<R> | undefined> {
    return new Promise((resolve, reject) => {
      const { topic } = request;
      this.waiting.get(topic)?.resolve(undefined);
      this.waiting.delete(topic);
      this.waiting.set(topic, { request, resolve: (answer) => resolve(answer as StudyAnswer<R>), reject });
      void this.runNext();
    });
  }

  private async runNext(): Promise<void> {
    if (this.running) return;
    const job = this.waiting.get(FIRST) ?? this.waiting.values().next().value;
    if (!job) return;
    this.waiting.delete(job.request.topic);
    this.running = job;
    try {
      const answer = await this.run(job.request);
      job.resolve(this.waiting.has(job.request.topic) ? undefined : answer);
    } catch (error) {
      job.reject(error);
    }
    this.running = undefined;
    void this.runNext();
  }

  private async run(request: StudyRequest): Promise<unknown> {
    try {
      return await this.runner.run(request);
    } catch (error) {
      if (!(error instanceof WorkerLost)) throw error;
      this.runner = new PageRunner();
      return this.runner.run(request);
    }
  }
}

function makeRunner(): StudyRunner {
  try {
    return new WorkerRunner(
      new Worker(new URL('./study-worker.ts', import.meta.url), { type: 'module', name: 'study' }),
    );
  } catch {
    // No workers here: old browsers, test pages, pages opened from a file.
    return new PageRunner();
  }
}

let client: StudyClient | undefined;

/** The one of this page; its worker starts with the first question. */
export function studyClient(): StudyClient {
  client ??= new StudyClient();
  return client;
}
