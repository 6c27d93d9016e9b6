import { useState } from 'react';
import { expect, test, vi } from 'vitest';
import { Dialog } from '../../src/ui/dialog';
import { ErrorBoundary } from '../../src/ui/error-boundary';
import { Tabs } from '../../src/ui/tabs';
import { doing, press, render } from '../views/render';

test('a dialog is named by its title, closes by its button and by Escape', async () => {
  const onClose = vi.fn();
  await render(
    <Dialog title="Plans" onClose={onClose}>
      <p>inside</p>
    </Dialog>,
  );
  const dialog = document.querySelector('dialog')!;
  expect(document.getElementById(dialog.getAttribute('aria-labelledby')!)?.textContent).toBe('Plans');
  await doing(() => dialog.querySelector('button')?.click());
  await doing(() => dialog.dispatchEvent(new Event('cancel', { cancelable: true })));
  expect(onClose).toHaveBeenCalledTimes(2);
});

function TwoTabs() {
  const [chosen, choose] = useState('one');
  const tabs = [
    { id: 'one', label: 'One' },
    { id: 'two', label: 'Two' },
  ];
  return (
    <Tabs label="Numbers" tabs={tabs} chosen={chosen} onChoose={choose}>
      <p>{chosen}</p>
    </Tabs>
  );
}

test('tabs are chosen by arrow keys, in a circle', async () => {
  const host = await render(<TwoTabs />);
  const panel = () => host.querySelector('[role="tabpanel"]')?.textContent;
  const chosen = () => host.querySelector('[role="tab"][aria-selected="true"]')!;
  await press(chosen(), 'ArrowRight');
  expect(panel()).toBe('two');
  await press(chosen(), 'ArrowRight');
  expect(panel()).toBe('one');
});

function FragilePicture({ picture }: { readonly picture: { readonly isBroken: boolean } }) {
  if (picture.isBroken) throw new Error('no context');
  return <p>drawn</p>;
}

test('what throws while drawing is caught, said, and can be tried again', async () => {
  vi.spyOn(console, 'error').mockImplementation(() => {});
  const picture = { isBroken: true };
  const host = await render(
    <ErrorBoundary
      fallback={(message, tryAgain) => (
        <button type="button" onClick={tryAgain}>
          {message}
        </button>
      )}
    >
      <FragilePicture picture={picture} />
    </ErrorBoundary>,
  );
  expect(host.textContent).toBe('no context');
  picture.isBroken = false;
  await doing(() => host.querySelector('button')?.click());
  expect(host.textContent).toBe('drawn');
});
