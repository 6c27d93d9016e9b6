/** Estimates a plan beside the page. One question for each worker: the asker ends it when nobody waits any more. */
import { answerEstimates } from './answer-estimates';
import type { EstimatesReply, EstimatesRequest } from './estimates-request';

addEventListener('message', ({ data }: MessageEvent<EstimatesRequest>) => postMessage(replyTo(data)));

function replyTo(request: EstimatesRequest): EstimatesReply {
  try {
    return { ok: true, answer: answerEstimates(request) };
  } catch (error) {
    return { ok: false, message: error instanceof Error ? error.message : String(error) };
  }
}
