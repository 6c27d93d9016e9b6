import { describe, expect, test, vi } from 'vitest';
import type { Plan } from '../../geometry';
import { ShelfClient, type ShelfRunner } from '../../src/workers/shelf-client';
import type { SeatVerdict, ShelfCandidate, ShelfReply, ShelfRequest } from '../../src/workers/shelf-request';

const verdict: SeatVerdict = { seat: 'none', where: '', fits: false, faults: [], covers: [] };
const plan = (name: string): Plan => ({ format: 1, name, parts: {} });
const candidate = (id: string): ShelfCandidate => ({
  id,
  spec: { kind: 'fan', maker: 'Quayside', model: id, size: 120 },
});
const named = (...ids: readonly string[]) => ids.map(candidate);
const idsOf = ({ candidates }: ShelfRequest) => candidates.map(({ id }) => id);

/** Answers when it is told to, as many as it is told to. */
class HeldRunner implements ShelfRunner {
  readonly budget = 1;
  readonly asked: ShelfRequest[] = [];
  private resolve: ((reply: ShelfReply) => void) | undefined;

  run(request: ShelfRequest): Promise<ShelfReply> {
    this.asked.push(request);
    return new Promise((resolve) => {
      this.resolve = resolve;
    });
  }

  async answer(count: number): Promise<void> {
    this.resolve?.({ number: this.asked.at(-1)?.number ?? 0, verdicts: Array(count).fill(verdict) });
    await new Promise((resolve) => setTimeout(resolve));
  }
}

function setUp() {
  const runner = new HeldRunner();
  const told: string[] = [];
  const client = new ShelfClient((found) => told.push(...found.map(([{ id }]) => id)), runner);
  return { runner, told, client };
}

describe('asking how parts sit', () => {
  test('goes on with what there was no time for', async () => {
    const { runner, told, client } = setUp();
    client.setQuestion(plan('A'), undefined);
    client.want(named('a', 'b', 'c'));
    await runner.answer(2);
    expect(told).toEqual(['a', 'b']);
    expect(runner.asked.map(idsOf)).toEqual([['a', 'b', 'c'], ['c']]);
    await runner.answer(1);
    expect(told).toEqual(['a', 'b', 'c']);
    expect(runner.asked).toHaveLength(2);
  });

  test('sends a plan once', async () => {
    const { runner, client } = setUp();
    client.setQuestion(plan('A'), undefined);
    client.want(named('a', 'b'));
    await runner.answer(1);
    await runner.answer(1);
    client.setQuestion(plan('B'), undefined);
    client.want(named('a'));
    expect(runner.asked.map((request) => request.plan?.name)).toEqual(['A', undefined, 'B']);
  });

  test('drops the answer about a plan that has changed, and asks about the new one next', async () => {
    const { runner, told, client } = setUp();
    client.setQuestion(plan('A'), undefined);
    client.want(named('a', 'b'));
    client.setQuestion(plan('B'), undefined);
    client.want(named('a', 'b'));
    await runner.answer(2);
    expect(told).toEqual([]);
    expect(runner.asked.at(-1)).toMatchObject({ plan: { name: 'B' } });
    await runner.answer(2);
    expect(told).toEqual(['a', 'b']);
  });

  test('what comes into view goes before what was waiting', async () => {
    const { runner, told, client } = setUp();
    client.setQuestion(plan('A'), undefined);
    client.want(named('a', 'b', 'c'));
    client.want(named('x', 'a', 'b', 'c'));
    await runner.answer(1);
    expect(idsOf(runner.asked[1]!)).toEqual(['x', 'b', 'c']);
    await runner.answer(3);
    expect(told).toEqual(['a', 'x', 'b', 'c']);
  });

  test('works on the page when the worker is lost', async () => {
    const told: string[] = [];
    const lost: ShelfRunner = { budget: 1, run: () => Promise.reject(new Error('lost')) };
    const client = new ShelfClient((found) => told.push(...found.map(([{ id }]) => id)), lost);
    client.setQuestion(plan('A'), undefined);
    client.want(named('a', 'b'));
    await vi.waitFor(() => expect(told).toEqual(['a', 'b']), { timeout: 20_000 });
  });
});
