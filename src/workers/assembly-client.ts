/**
 * Asks how a plan is put together, and how one part goes in. One worker answers both and keeps what it knows of the
 * plan; to stop a question it is ended, and the next question starts another.
 */
import type { InsertionPath, Plan } from '../../geometry';
import type {
  AssemblyAnswer,
  AssemblyProgress,
  AssemblyReply,
  AssemblyRequest,
  WayQuestion,
} from './assembly-request';

interface Problem {
  readonly onProblem: (message: string) => void;
}

interface Listener extends Problem {
  readonly onProgress: (progress: AssemblyProgress) => void;
  readonly onAnswer: (answer: AssemblyAnswer) => void;
}

interface WayListener extends Problem {
  readonly onPath: (path: InsertionPath) => void;
}

interface Pending {
  readonly request: AssemblyRequest;
  readonly take: (reply: AssemblyReply) => void;
}

/** Answers already found; a plan that is edited is another object. */
const known = new WeakMap<Plan, AssemblyAnswer>();
/** Questions without an answer, by number. */
const pending = new Map<number, Pending>();
let asked = 0;
let worker: Worker | undefined;

export function knownAssembly(plan: Plan): AssemblyAnswer | undefined {
  return known.get(plan);
}

/** Returns a function that stops it; after that nothing more is told. */
export function askAssembly(plan: Plan, listener: Listener): () => void {
  return ask({ kind: 'sheet', number: ++asked, plan }, (reply) => {
    if (reply.kind === 'progress') listener.onProgress(reply.progress);
    else if (reply.kind === 'problem') listener.onProblem(reply.message);
    else if (reply.kind === 'answer') {
      known.set(plan, reply.answer);
      listener.onAnswer(reply.answer);
    }
  });
}

/** Returns a function that stops it; after that nothing more is told. */
export function askWay(plan: Plan, question: WayQuestion, listener: WayListener): () => void {
  return ask({ kind: 'way', number: ++asked, plan, question }, (reply) => {
    if (reply.kind === 'problem') listener.onProblem(reply.message);
    else if (reply.kind === 'path') listener.onPath(reply.path);
  });
}

function ask(request: AssemblyRequest, take: (reply: AssemblyReply) => void): () => void {
  const { number } = request;
  pending.set(number, { request, take });
  worker ??= startWorker();
  if (worker) worker.postMessage(request);
  else void answerOnPage(number);
  return () => {
    // A worker in the middle of an answer hears nothing: the only way to stop it is to end it. A way is soon found, and
    // the worker keeps the machine it was found in, so its answer is let come and go.
    if (pending.delete(number) && request.kind === 'sheet') endWorker();
  };
}

function take(reply: AssemblyReply): void {
  const question = pending.get(reply.number);
  if (reply.kind !== 'progress') pending.delete(reply.number);
  question?.take(reply);
}

/** Ends the worker; what else was asked of it is asked anew. */
function endWorker(): void {
  worker?.terminate();
  worker = undefined;
  if (pending.size === 0) return;
  worker = startWorker();
  for (const { request } of pending.values()) worker?.postMessage(request);
}

function startWorker(): Worker | undefined {
  try {
    const started = new Worker(new URL('./assembly-worker.ts', import.meta.url), {
      type: 'module',
      name: 'assembly',
    });
    started.addEventListener('message', (event: MessageEvent<AssemblyReply>) => take(event.data));
    started.addEventListener('error', () => void answerWithout(started), { once: true });
    return started;
  } catch {
    // No workers here: old browsers, test pages, pages opened from a file.
    return undefined;
  }
}

/** The worker could not be loaded or died. */
async function answerWithout(dead: Worker): Promise<void> {
  dead.terminate();
  if (worker === dead) worker = undefined;
  for (const number of [...pending.keys()]) await answerOnPage(number);
}

/** Holds the page up while it works, so nobody could see progress. Nothing is done for what was stopped before. */
async function answerOnPage(number: number): Promise<void> {
  try {
    const { answerAssembly, answerWay } = await import('./answer-assembly');
    // The page gets to draw what it has before the work begins.
    await new Promise((resolve) => setTimeout(resolve));
    const request = pending.get(number)?.request;
    if (!request) return;
    if (request.kind === 'way')
      take({ number, kind: 'path', path: answerWay(request.plan, request.question) });
    else take({ number, kind: 'answer', answer: answerAssembly(request.plan) });
  } catch (error) {
    take({ number, kind: 'problem', message: error instanceof Error ? error.message : String(error) });
  }
}
