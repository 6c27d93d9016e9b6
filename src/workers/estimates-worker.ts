/** Estimates a plan beside the page. One question for each worker: the asker ends it when nobody waits any more. */
import { answerAir, answerEstimates } from './answer-estimates';
import type { AirAnswer, EstimatesAnswer, EstimatesMessage, EstimatesReply } from './estimates-request';

addEventListener('message', ({ data }: MessageEvent<EstimatesMessage>) => postMessage(replyTo(data)));

function replyTo(message: EstimatesMessage): EstimatesReply<EstimatesAnswer | AirAnswer> {
  try {
    return { ok: true, answer: message.kind === 'air' ? answerAir(message) : answerEstimates(message) };
  } catch (error) {
    return { ok: false, message: error instanceof Error ? error.message : String(error) };
  }
}
