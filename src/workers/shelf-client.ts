/**
 * Asks how parts of the shelf would sit in the open plan without holding up the page. It asks in small bites, the most
 * urgent first, and one bite at a time: when the plan changes or the list is scrolled, at most one bite is waited for.
 */
import type { Plan } from '../../geometry';
import type { SeatVerdict, ShelfCandidate, ShelfReply, ShelfRequest } from './shelf-request';

/** What crosses at a time, and for how long it is worked on, ms. */
const BITE = 24;
const BUDGET_IN_WORKER = 40;
/** On the page a bite must stay within a frame. */
const BUDGET_ON_PAGE = 10;

export interface ShelfRunner {
  /** Rejects when it cannot answer any more. */
  run(request: ShelfRequest): Promise<ShelfReply>;
  readonly budget: number;
}

type OnVerdicts = (found: readonly (readonly [candidate: ShelfCandidate, verdict: SeatVerdict])[]) => void;

export class ShelfClient {
  private readonly onVerdicts: OnVerdicts;
  private runner: ShelfRunner;
  private plan: Plan | undefined;
  private selected: string | undefined;
  private planNumber = 0;
  /** The plan that the runner has. */
  private sentNumber = 0;
  private number = 0;
  private running = false;
  /** Raised with every change of the question: what is asked under an older one is not told any more. */
  private question = 0;
  private queue: readonly ShelfCandidate[] = [];

  constructor(onVerdicts: OnVerdicts, runner: ShelfRunner = makeRunner()) {
    this.onVerdicts = onVerdicts;
    this.runner = runner;
  }

  /** From now on parts are tried in this plan; nothing is told about the one before. */
  setQuestion(plan: Plan, selected: string | undefined): void {
    if (plan !== this.plan) this.planNumber += 1;
    else if (selected === this.selected) return;
    this.plan = plan;
    this.selected = selected;
    this.question += 1;
    this.queue = [];
  }

  /** What is to be tried from now on, the most urgent first; takes the place of what was wanted before. */
  want(candidates: readonly ShelfCandidate[]): void {
    this.queue = candidates;
    if (!this.running) void this.work();
  }

  private async work(): Promise<void> {
    this.running = true;
    while (this.plan && this.queue.length > 0) {
      const { question, queue } = this;
      const bite = queue.slice(0, BITE);
      const reply = await this.ask(this.plan, bite);
      if (!reply) break;
      if (question !== this.question) continue;
      const found = reply.verdicts.flatMap((verdict, index) => {
        const candidate = bite[index];
        return candidate ? [[candidate, verdict] as const] : [];
      });
      const done = new Set(found.map(([{ id }]) => id));
      // The queue may have been put in another order meanwhile; what is answered need not be asked again.
      this.queue =
        this.queue === queue ? queue.slice(found.length) : this.queue.filter(({ id }) => !done.has(id));
      this.onVerdicts(found);
    }
    this.running = false;
  }

  /** Undefined when not even the page itself can answer. */
  private async ask(plan: Plan, candidates: readonly ShelfCandidate[]): Promise<ShelfReply | undefined> {
    for (const isLast of [false, true]) {
      const { planNumber, selected } = this;
      this.number += 1;
      try {
        const reply = await this.runner.run({
          number: this.number,
          planNumber,
          ...(this.sentNumber === planNumber ? {} : { plan }),
          selected,
          candidates,
          budget: this.runner.budget,
        });
        this.sentNumber = planNumber;
        return reply;
      } catch {
        this.sentNumber = 0;
        if (!isLast) this.runner = new PageRunner();
      }
    }
    return undefined;
  }
}

class WorkerRunner implements ShelfRunner {
  readonly budget = BUDGET_IN_WORKER;
  private readonly worker: Worker;
  private waiting: { resolve: (reply: ShelfReply) => void; reject: (reason: Error) => void } | undefined;

  constructor(worker: Worker) {
    this.worker = worker;
    worker.addEventListener('message', ({ data }: MessageEvent<ShelfReply>) => this.waiting?.resolve(data));
    const lose = () => {
      worker.terminate();
      this.waiting?.reject(new Error('the worker is lost'));
    };
    worker.addEventListener('error', lose);
    worker.addEventListener('messageerror', lose);
  }

  run(request: ShelfRequest): Promise<ShelfReply> {
    return new Promise((resolve, reject) => {
      this.waiting = { resolve, reject };
      this.worker.postMessage(request);
    });
  }
}

class PageRunner implements ShelfRunner {
  readonly budget = BUDGET_ON_PAGE;

  async run(request: ShelfRequest): Promise<ShelfReply> {
    const { answerShelf } = await import('./answer-shelf');
    // The page gets to draw and to take input between two bites.
    await new Promise((resolve) => setTimeout(resolve));
    return answerShelf(request);
  }
}

function makeRunner(): ShelfRunner {
  try {
    return new WorkerRunner(
      new Worker(new URL('./shelf-worker.ts', import.meta.url), { type: 'module', name: 'shelf' }),
    );
  } catch {
    // No workers here: old browsers, test pages, pages opened from a file.
    return new PageRunner();
  }
}
