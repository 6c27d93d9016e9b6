/** Finds beside the page how a plan is put together, and tells how far it is. */
import { answerAssembly } from './answer-assembly';
import type { AssemblyReply, AssemblyRequest } from './assembly-request';

const reply = (message: AssemblyReply) => postMessage(message);

addEventListener('message', ({ data: { plan } }: MessageEvent<AssemblyRequest>) => {
  try {
    const answer = answerAssembly(plan, (progress) => reply({ kind: 'progress', progress }));
    reply({ kind: 'answer', answer });
  } catch (error) {
    reply({ kind: 'problem', message: error instanceof Error ? error.message : String(error) });
  }
});
