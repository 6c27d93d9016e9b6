/** Asks how a plan is put together. Each question has a worker of its own, so that it can be stopped at any moment. */
import type { Plan } from '../../geometry';
import type { AssemblyAnswer, AssemblyProgress, AssemblyReply, AssemblyRequest } from './assembly-request';

interface Listener {
  readonly onProgress: (progress: AssemblyProgress) => void;
  readonly onAnswer: (answer: AssemblyAnswer) => void;
  readonly onProblem: (message: string) => void;
}

/** Answers already found; a plan that is edited is another object. */
const known = new WeakMap<Plan, AssemblyAnswer>();

export function knownAssembly(plan: Plan): AssemblyAnswer | undefined {
  return known.get(plan);
}

/** Returns a function that stops it; after that nothing more is told. */
export function askAssembly(plan: Plan, listener: Listener): () => void {
  let stopped = false;
  const take = (reply: AssemblyReply) => {
    if (stopped) return;
    if (reply.kind === 'progress') return listener.onProgress(reply.progress);
    stop();
    if (reply.kind === 'problem') return listener.onProblem(reply.message);
    known.set(plan, reply.answer);
    listener.onAnswer(reply.answer);
  };
  const worker = startWorker();
  const stop = () => {
    stopped = true;
    worker?.terminate();
  };
  const fallBack = () => {
    worker?.terminate();
    if (!stopped) void answerOnPage(plan, () => stopped).then((reply) => reply && take(reply));
  };
  if (!worker) {
    fallBack();
    return stop;
  }
  worker.addEventListener('message', (event: MessageEvent<AssemblyReply>) => take(event.data));
  worker.addEventListener('error', fallBack, { once: true });
  const request: AssemblyRequest = { plan };
  worker.postMessage(request);
  return stop;
}

function startWorker(): Worker | undefined {
  try {
    return new Worker(new URL('./assembly-worker.ts', import.meta.url), { type: 'module', name: 'assembly' });
  } catch {
    // No workers here: old browsers, test pages, pages opened from a file.
    return undefined;
  }
}

/** Holds the page up while it works, so nobody could see progress. Undefined when it was stopped before it began. */
async function answerOnPage(plan: Plan, isStopped: () => boolean): Promise<AssemblyReply | undefined> {
  try {
    const { answerAssembly } = await import('./answer-assembly');
    // The page gets to draw what it has before the work begins.
    await new Promise((resolve) => setTimeout(resolve));
    return isStopped() ? undefined : { kind: 'answer', answer: answerAssembly(plan) };
  } catch (error) {
    return { kind: 'problem', message: error instanceof Error ? error.message : String(error) };
  }
}
