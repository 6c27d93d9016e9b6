/** Mounts a piece of the screen in the test page and takes it away after the test. */
import { act, type ReactNode } from 'react';
import { createRoot } from 'react-dom/client';
import { onTestFinished, vi } from 'vitest';

Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true });

export async function render(node: ReactNode): Promise<HTMLElement> {
  const host = document.createElement('div');
  document.body.append(host);
  const root = createRoot(host);
  onTestFinished(async () => {
    await act(async () => root.unmount());
    host.remove();
  });
  await act(async () => root.render(node));
  return host;
}

export async function doing(action: () => void): Promise<void> {
  await act(async () => action());
}

export async function press(target: Element, key: string, more: KeyboardEventInit = {}): Promise<void> {
  await doing(() =>
    target.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...more })),
  );
}

/** Types as a person does: the browser's own setter, then the event that React listens to. */
export async function type(input: HTMLInputElement | HTMLSelectElement, text: string): Promise<void> {
  await doing(() => {
    Object.getOwnPropertyDescriptor(Object.getPrototypeOf(input), 'value')?.set?.call(input, text);
    input.dispatchEvent(
      new Event(input instanceof HTMLSelectElement ? 'change' : 'input', { bubbles: true }),
    );
  });
}

/** Waits for what comes by itself: from storage, a worker or a timer. */
export async function eventually(check: () => void): Promise<void> {
  Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: false });
  try {
    await vi.waitFor(check, { timeout: 30_000 });
  } finally {
    Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true });
  }
}
