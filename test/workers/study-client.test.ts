import { describe, expect, test } from 'vitest';
import { StudyClient } from '../../src/workers/study-client';
import type { StudyMessage, StudyRequest } from '../../src/workers/study-request';
import { type StudyRunner, WorkerRunner } from '../../src/workers/study-runners';
import { samplePlan } from '../store/sample-plan';

const plan = samplePlan();
const all = { topic: 'stack-ups', plan } as const;
const one = (clearance: string) => ({ topic: 'stack-up', plan, clearance }) as const;

/** Takes questions and answers when told to. */
class HeldRunner implements StudyRunner {
  readonly begun: StudyRequest[] = [];
  private finish: ((answer: unknown) => void) | undefined;

  run(request: StudyRequest): Promise<unknown> {
    this.begun.push(request);
    return new Promise((resolve) => {
      this.finish = resolve;
    });
  }

  async answer(value: unknown): Promise<void> {
    this.finish?.(value);
    await new Promise((resolve) => setTimeout(resolve));
  }
}

describe('questions to the kernel', () => {
  test('are worked on one at a time, and only the newest of a topic is begun', async () => {
    const runner = new HeldRunner();
    const client = new StudyClient(runner);
    const first = client.ask(all);
    const second = client.ask(all);
    const third = client.ask(all);
    await expect(second).resolves.toBeUndefined();
    expect(runner.begun).toHaveLength(1);
    await runner.answer(['stale']);
    await expect(first, 'answered after a newer question').resolves.toBeUndefined();
    await runner.answer(['fresh']);
    await expect(third).resolves.toEqual(['fresh']);
    expect(runner.begun).toHaveLength(2);
  });

  test('put the one clearance under the pointer before the rest', async () => {
    const runner = new HeldRunner();
    const client = new StudyClient(runner);
    void client.ask({ topic: 'envelope', plan });
    void client.ask(all);
    void client.ask(one('card tip'));
    await runner.answer([]);
    expect(runner.begun.at(-1)?.topic).toBe('stack-up');
  });

  test('go on after one that fails, and say what was wrong with it', async () => {
    const client = new StudyClient({
      run: ({ topic }) =>
        topic === 'stack-ups' ? Promise.reject(new RangeError('no part 7')) : Promise.resolve(undefined),
    });
    const failing = client.ask(all);
    const next = client.ask(one('gone'));
    await expect(failing).rejects.toThrow('no part 7');
    await expect(next).resolves.toBeUndefined();
  });

  test('are answered on the page when the worker dies under one', async () => {
    const dying = new EventTarget();
    let terminated = false;
    const runner = new WorkerRunner(
      Object.assign(dying, {
        postMessage: () => setTimeout(() => dying.dispatchEvent(new Event('error'))),
        terminate: () => {
          terminated = true;
        },
      }),
    );
    const client = new StudyClient(runner);
    await expect(client.ask(one('no such clearance'))).resolves.toBeUndefined();
    const { clearances } = await client.ask(all).then((stackUps) => ({
      clearances: stackUps?.map((stackUp) => stackUp.clearance),
    }));
    expect(terminated).toBe(true);
    expect(clearances).toBeInstanceOf(Array);
  });

  test('cross to the worker with a number, and an answer with another number is not theirs', async () => {
    const target = new EventTarget();
    const sent: StudyMessage[] = [];
    const runner = new WorkerRunner(
      Object.assign(target, {
        postMessage: (message: StudyMessage) => sent.push(message),
        terminate: () => undefined,
      }),
    );
    const reply = (data: unknown) => target.dispatchEvent(new MessageEvent('message', { data }));
    const answer = runner.run(all);
    reply({ number: 99, ok: true, answer: 'of somebody else' });
    reply({ number: sent[0]?.number, ok: false, message: 'cannot say' });
    await expect(answer).rejects.toThrow('cannot say');
  });
});
