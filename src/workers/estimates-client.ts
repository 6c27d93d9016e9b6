/**
 * Asks for the estimates of a plan without holding up the page. Every question has a worker of its own: a balance once
 * begun can only be stopped by ending the worker, and a person who switches the load does not wait for the load before.
 */
import type { EstimatesAnswer, EstimatesReply, EstimatesRequest } from './estimates-request';

/** Rejects with what went wrong. Aborting ends the worker, and the question may then stay without an answer. */
export function askEstimates(request: EstimatesRequest, signal: AbortSignal): Promise<EstimatesAnswer> {
  const worker = makeWorker();
  if (!worker) return askOnPage(request);
  return new Promise((resolve, reject) => {
    signal.addEventListener('abort', () => worker.terminate());
    worker.addEventListener('message', ({ data }: MessageEvent<EstimatesReply>) => {
      worker.terminate();
      if (data.ok) resolve(data.answer);
      else reject(new Error(data.message));
    });
    const lose = () => {
      worker.terminate();
      if (!signal.aborted) askOnPage(request).then(resolve, reject);
    };
    worker.addEventListener('error', lose);
    worker.addEventListener('messageerror', lose);
    worker.postMessage(request);
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

async function askOnPage(request: EstimatesRequest): Promise<EstimatesAnswer> {
  const { answerEstimates } = await import('./answer-estimates');
  // The page gets to draw what it has before the work begins.
  await new Promise((resolve) => setTimeout(resolve));
  return answerEstimates(request);
}
