import { afterEach, expect, test, vi } from 'vitest';
import { keepTicks, readTicks, useStepTicks } from '../../../src/views/assembly-sheet/step-ticks';
import { doing, render } from '../render';

afterEach(() => {
  vi.unstubAllGlobals();
  localStorage.clear();
});

function Ticks({ planId }: { readonly planId: string }) {
  const { ticks, tick, clear } = useStepTicks(planId);
  return (
    <>
      <output>{[...ticks].join(', ')}</output>
      <button type="button" onClick={() => tick('put in card', true)}>
        tick
      </button>
      <button type="button" onClick={() => tick('put in card', false)}>
        untick
      </button>
      <button type="button" onClick={clear}>
        clear
      </button>
    </>
  );
}

const press = (host: HTMLElement, name: string) =>
  doing(() => [...host.querySelectorAll('button')].find(({ textContent }) => textContent === name)?.click());

test('ticks are kept by plan and taken back', async () => {
  keepTicks('other', new Set(['put in supply']));
  const host = await render(<Ticks planId="mine" />);
  await press(host, 'tick');
  expect(host.querySelector('output')?.textContent).toBe('put in card');
  expect([...readTicks('mine')]).toEqual(['put in card']);
  await press(host, 'untick');
  expect([...readTicks('mine')]).toEqual([]);
  await press(host, 'tick');
  await press(host, 'clear');
  expect([...readTicks('mine')]).toEqual([]);
  expect([...readTicks('other')]).toEqual(['put in supply']);
});

test('whatever else is in the storage counts as no tick', () => {
  for (const junk of ['{', 'null', '{"a":1}', '[1,null]']) {
    localStorage.setItem('elbowroom.assembly.mine', junk);
    expect([...readTicks('mine')], junk).toEqual([]);
  }
});

test('without storage a step is still ticked on the screen', async () => {
  const forbidden = () => {
    throw new Error('storage is forbidden');
  };
  vi.stubGlobal('localStorage', {
    getItem: forbidden,
    setItem: forbidden,
    removeItem: forbidden,
    clear: () => {},
  });
  const host = await render(<Ticks planId="mine" />);
  await press(host, 'tick');
  expect(host.querySelector('output')?.textContent).toBe('put in card');
});

test('a plan that has no place of its own leaves nothing in the storage', async () => {
  const host = await render(<Ticks planId="" />);
  await press(host, 'tick');
  expect(host.querySelector('output')?.textContent).toBe('put in card');
  expect(localStorage.length).toBe(0);
});
