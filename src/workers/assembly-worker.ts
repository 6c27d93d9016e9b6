/** Finds beside the page how a plan is put together, and tells how far it is. */
import { answerAssembly, answerWay } from './answer-assembly';
import type { AssemblyReply, AssemblyRequest } from './assembly-request';

const reply = (message: AssemblyReply) => postMessage(message);

addEventListener('message', ({ data: request }: MessageEvent<AssemblyRequest>) => {
  const { number, plan } = request;
  try {
    if (request.kind === 'way') reply({ number, kind: 'path', path: answerWay(plan, request.question) });
    else {
      const answer = answerAssembly(plan, (progress) => reply({ number, kind: 'progress', progress }));
      reply({ number, kind: 'answer', answer });
    }
  } catch (error) {
    reply({ number, kind: 'problem', message: error instanceof Error ? error.message : String(error) });
  }
});
