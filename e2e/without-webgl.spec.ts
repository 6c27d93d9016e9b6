import type { Page } from '@playwright/test';
import { expectDrawnCanvas } from './support/canvas';
import { expect, test } from './support/guarded-page';
import {
  clearanceTable,
  expectGap,
  gapOf,
  openPage,
  readClearances,
  treePart,
  verdictOf,
  waitForShelf,
} from './support/plan-page';
import { makeLink } from './support/snapshot-links';

async function takeWebGlAway(page: Page): Promise<void> {
  await page.addInitScript(() => {
    HTMLCanvasElement.prototype.getContext = () => null;
  });
}

test('without WebGL the page says why the view is blank, and everything else works', async ({ page }) => {
  await takeWebGlAway(page);
  await openPage(page);
  await waitForShelf(page);
  await expect(page.getByRole('main').getByText(/WebGL/)).toBeVisible();
  await expect(
    page
      .getByRole('main')
      .getByText(/tree|tables/)
      .first(),
  ).toBeVisible();

  const tip = /^Card tip to front (upper|lower) fan$/;
  const room = await gapOf(page, tip);
  await treePart(page, 'Card').click();
  await page
    .getByRole('combobox', { name: 'Replace with' })
    .selectOption({ label: 'Skua 347, 347 mm, 3 slots' });
  await expectGap(page, tip, room - (347 - 304));
  await expect(verdictOf(page)).toContainText('Does not fit yet');
  await page.getByRole('tab', { name: /^Findings/ }).click();
  await expect(page.getByRole('list', { name: 'Findings' }).getByRole('button').first()).toBeVisible();
  for (const view of ['Side', 'Top', '3D', 'Fit'])
    await page.getByRole('button', { name: view, exact: true }).click();
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(verdictOf(page)).toContainText('Everything fits');
});

test('a client without WebGL still reads the numbers', async ({ page, context }) => {
  await openPage(page);
  const sent = await readClearances(page);
  const link = await makeLink(page);
  const client = await context.newPage();
  await takeWebGlAway(client);
  await client.goto(link);
  await expect(client.getByText(/WebGL/)).toBeVisible();
  await expect(clearanceTable(client)).toBeVisible();
  expect(await readClearances(client)).toEqual(sent);
});

test('a context that is lost is said, and the drawing comes back with it', async ({ page, misdeeds }) => {
  await openPage(page);
  await expectDrawnCanvas(page);
  await page.locator('canvas').evaluate((canvas) => {
    if (!(canvas instanceof HTMLCanvasElement)) throw new Error('no canvas');
    const extension = canvas.getContext('webgl2')?.getExtension('WEBGL_lose_context');
    if (!extension) throw new Error('this browser cannot lose a context on purpose');
    Object.assign(window, { giveBack: () => extension.restoreContext() });
    extension.loseContext();
  });
  const message = page.getByRole('main').getByText(/the view is blank/);
  await expect(message).toBeVisible();
  await treePart(page, 'Cooler').click();
  await expect(page.getByRole('article', { name: 'Selected part' })).toBeVisible();
  await page.evaluate(() => {
    const give: unknown = Reflect.get(window, 'giveBack');
    if (typeof give === 'function') give();
  });
  await expect(message).toHaveCount(0);
  await expectDrawnCanvas(page);
  misdeeds.errors = misdeeds.errors.filter((error) => !/Context Lost/i.test(error));
});
