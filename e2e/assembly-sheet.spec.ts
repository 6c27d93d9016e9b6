import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from './support/guarded-page';
import { openPage, waitForShelf, waitUntilSaved } from './support/plan-page';

test('the assembly sheet is found beside the page, a step is played, and a ticked step stays ticked', async ({
  page,
}) => {
  // The sheet is worked out twice, once for each load of the page.
  test.slow();
  const scripts: string[] = [];
  page.on('request', (request) => {
    if (/\.js$/.test(request.url())) scripts.push(new URL(request.url()).pathname);
  });
  await openPage(page);
  await waitForShelf(page);
  expect(
    scripts.filter((path) => path.includes('assembly')),
    'in the first load',
  ).toEqual([]);
  const open = () => page.getByRole('button', { name: 'Assembly sheet' }).click();
  const dialog = page.getByRole('dialog', { name: 'Assembly sheet' });
  const first = dialog.getByRole('checkbox', { name: /^1\. Take off / });

  await open();
  await expect(first).toBeVisible({ timeout: 90_000 });
  await expect(dialog.getByRole('region', { name: 'Before anything else' })).toContainText('unplug');
  await expect(first).not.toBeChecked();
  await first.check();
  await expect(dialog.getByText(/^1 of \d+ done$/)).toBeVisible();

  // Pictures come by themselves once the words stand.
  await expect(dialog.getByRole('img').first()).toBeVisible({ timeout: 60_000 });
  const { violations } = await new AxeBuilder({ page }).include('dialog').analyze();
  const serious = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
  expect(serious.map(({ id }) => id)).toEqual([]);

  await dialog.getByRole('button', { name: 'Play Put in the card' }).click();
  await expect(dialog).toHaveCount(0);
  const slider = page.getByRole('slider', { name: 'Along the way in' });
  await expect(slider).toBeVisible({ timeout: 60_000 });
  await slider.focus();
  await slider.press('Home');
  await expect(slider).toHaveAttribute('aria-valuetext', /^Sliding, \d+ mm to go, 0 % of the way$/);
  const canvas = page.locator('canvas').first();
  const frames = Number(await canvas.getAttribute('data-frames'));
  for (let press = 0; press < 5; press++) await slider.press('ArrowRight');
  await expect(slider).toHaveAttribute('aria-valuetext', /[123] % of the way$/);
  // The part moves with the slider: a frame or more for the five steps.
  await expect.poll(async () => Number(await canvas.getAttribute('data-frames'))).toBeGreaterThan(frames);
  await slider.press('End');
  await expect(slider).toHaveAttribute('aria-valuetext', 'Seated, 100 % of the way');
  await slider.press('Escape');
  await expect(slider).toHaveCount(0);

  await waitUntilSaved(page);
  await page.reload();
  await waitForShelf(page);
  await open();
  await expect(first).toBeChecked({ timeout: 90_000 });
  await expect(dialog.getByRole('checkbox', { checked: true })).toHaveCount(1);
});
