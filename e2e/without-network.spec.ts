import { expect, test } from './support/guarded-page';
import { openPage, readPlanPage, treePart, waitForShelf, waitUntilSaved } from './support/plan-page';

test.use({ serviceWorkers: 'allow' });

test('once kept, the page plans, opens its dialogs and opens again where there is no network', async ({
  page,
  context,
}) => {
  await openPage(page);
  await waitForShelf(page);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);

  await context.setOffline(true);
  await treePart(page, 'Fan 3').click();
  await page.getByRole('button', { name: 'Remove' }).click();
  await expect(treePart(page, 'Fan 3')).toHaveCount(0);
  await page.getByRole('button', { name: 'Estimates' }).click();
  await expect(page.getByRole('dialog', { name: /Estimates/ })).toBeVisible();
  await page.keyboard.press('Escape');

  await waitUntilSaved(page);
  const before = await readPlanPage(page);
  await page.reload();
  await waitForShelf(page);
  await expect.poll(() => readPlanPage(page)).toEqual(before);
});
