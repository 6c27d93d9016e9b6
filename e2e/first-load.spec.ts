import type { Page } from '@playwright/test';
import { expectDrawnCanvas } from './support/canvas';
import { expect, test } from './support/guarded-page';
import { expectGap, gapOf, openPage, treePart, waitForShelf } from './support/plan-page';

const framesOf = (page: Page) => page.locator('canvas').evaluate((canvas) => Number(canvas.dataset.frames));

/** Waits until nothing has been drawn for a second. */
async function waitUntilIdle(page: Page): Promise<number> {
  let frames = -1;
  await expect
    .poll(
      async () => {
        const before = frames;
        frames = await framesOf(page);
        return frames - before;
      },
      { message: 'frames drawn in the last second', intervals: [1000], timeout: 30_000 },
    )
    .toBe(0);
  return frames;
}

test('the page asks nobody but its own server, and what it loads first is little', async ({
  page,
  baseURL,
  misdeeds,
}) => {
  const scripts: string[] = [];
  const asked: string[] = [];
  page.on('request', (request) => {
    asked.push(request.url());
    if (request.resourceType() === 'script') scripts.push(new URL(request.url()).pathname);
  });
  await openPage(page);
  await waitForShelf(page);
  await expectDrawnCanvas(page);
  expect(
    asked.filter((address) => !/^(data|blob):/.test(address) && !address.startsWith(baseURL ?? '')),
  ).toEqual([]);
  expect(misdeeds.foreignRequests).toEqual([]);
  expect(scripts.length).toBeGreaterThan(0);
  // What only dialogs and links need comes when they are opened.
  for (const later of ['plan-library', 'snapshot', 'brief-dialog', 'part-form', 'client-screen'])
    expect(
      scripts.filter((path) => path.includes(later)),
      `${later} in the first load`,
    ).toEqual([]);
});

test('an idle drawing draws nothing, and a change draws again', async ({ page }) => {
  await openPage(page);
  await waitForShelf(page);
  // The bands come from the worker a little later and may move the panels: a page still at work is not idle.
  await expect(page.getByText(/^± \d/).first()).toBeVisible({ timeout: 60_000 });
  const still = await waitUntilIdle(page);
  // Two seconds of nothing is what is asked for, so here time itself is the measure.
  await page.waitForTimeout(2000);
  expect(await framesOf(page), 'frames in two idle seconds').toBe(still);

  const room = await gapOf(page, 'Cooler to side panel');
  await treePart(page, 'Cooler').click();
  await page.getByRole('button', { name: 'Fit', exact: true }).focus();
  await page.keyboard.press('PageDown');
  await expectGap(page, 'Cooler to side panel', room + 1);
  await expect.poll(() => framesOf(page), { message: 'frames after a change' }).toBeGreaterThan(still);
  await waitUntilIdle(page);
});
