import { expect, test } from './support/guarded-page';
import { openPage, waitForShelf, waitUntilSaved } from './support/plan-page';

test('the assembly sheet is found beside the page, and a ticked step stays ticked', async ({ page }) => {
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

  await dialog.getByRole('button', { name: 'Close' }).click();
  await waitUntilSaved(page);
  await page.reload();
  await waitForShelf(page);
  await open();
  await expect(first).toBeChecked({ timeout: 90_000 });
  await expect(dialog.getByRole('checkbox', { checked: true })).toHaveCount(1);
});
