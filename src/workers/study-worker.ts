/** Answers questions about a plan beside the page. */
import { answerStudy } from './answer-study';
import type { StudyMessage, StudyReply } from './study-request';

addEventListener('message', ({ data: { number, request } }: MessageEvent<StudyMessage>) => {
  postMessage(replyTo(number, request));
});

function replyTo(number: number, request: StudyMessage['request']): StudyReply {
  try {
    return { number, ok: true, answer: answerStudy(request) };
  } catch (error) {
    return { number, ok: false, message: error instanceof Error ? error.message : String(error) };
  }
}
