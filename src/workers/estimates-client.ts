/**
 * Asks for the estimates of a plan without holding up the page. Every question has a worker of its own: a balance once
 * begun can only be stopped by ending the worker, and a person who switches the load does not wait for the load before.
 */
import type {
  AirAnswer,
  AirRequest,
  EstimatesAnswer,
  EstimatesMessage,
  EstimatesReply,
  EstimatesRequest,
} from './estimates-request';

/** Rejects with what went wrong. Aborting ends the worker, and the question may then stay without an answer. */
export function askEstimates(request: EstimatesRequest, signal: AbortSignal): Promise<EstimatesAnswer> {
  return ask({ kind: 'estimates', ...request }, signal, async () => {
    const { answerEstimates } = await import('./answer-estimates');
    return answerEstimates(request);
  });
}

/** The arrows alone, without bands: quick enough to follow a hand. */
export function askAir(request: AirRequest, signal: AbortSignal): Promise<AirAnswer> {
  return ask({ kind: 'air', ...request }, signal, async () => {
    const { answerAir } = await import('./answer-estimates');
    return answerAir(request);
  });
}

function ask<Answer>(
  message: EstimatesMessage,
  signal: AbortSignal,
  onPage: () => Promise<Answer>,
): Promise<Answer> {
  const worker = makeWorker();
  if (!worker) return afterDrawing(onPage);
  return new Promise((resolve, reject) => {
    signal.addEventListener('abort', () => worker.terminate());
    worker.addEventListener('message', ({ data }: MessageEvent<EstimatesReply<Answer>>) => {
      worker.terminate();
      if (data.ok) resolve(data.answer);
      else reject(new Error(data.message));
    });
    const lose = () => {
      worker.terminate();
      if (!signal.aborted) afterDrawing(onPage).then(resolve, reject);
    };
    worker.addEventListener('error', lose);
    worker.addEventListener('messageerror', lose);
    worker.postMessage(message);
  });
}

function makeWorker(): Worker | undefined {
  try {
    return new Worker(new URL('./estimates-worker.ts', import.meta.url), {
      type: 'module',
      name: 'estimates',
    });
  } catch {
    // No workers here: old browsers, test pages, pages opened from a file.
    return undefined;
  }
}

/** The page gets to draw what it has before the work begins. */
async function afterDrawing<Answer>(onPage: () => Promise<Answer>): Promise<Answer> {
  await new Promise((resolve) => setTimeout(resolve));
  return onPage();
}
