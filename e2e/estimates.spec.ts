import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expectDrawnCanvas } from './support/canvas';
import { expect, test } from './support/guarded-page';
import { openPage, waitForShelf } from './support/plan-page';

// Some fifty balances a load, on a machine that may be busy.
const patient = { timeout: 60_000 };

const sheetOf = (page: Page) => page.getByRole('dialog', { name: 'Estimates' });
const topicOf = (page: Page, name: string) =>
  sheetOf(page)
    .locator('.estimates-topic')
    .filter({ has: page.locator('.estimates-topic-name', { hasText: new RegExp(`^${name}$`) }) });
const headOf = (page: Page, name: string) => topicOf(page, name).locator('summary').first();

async function openEstimates(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Estimates', exact: true }).click();
  await expect(headOf(page, 'Power')).toContainText('estimate', patient);
}

test('the estimates open on the plan, follow the room, and take money that can be undone', async ({
  page,
}) => {
  await openPage(page);
  await waitForShelf(page);
  await openEstimates(page);
  const dialog = sheetOf(page);
  await expect(dialog.getByRole('button', { name: 'Game', exact: true })).toHaveAttribute(
    'aria-pressed',
    'true',
  );

  await headOf(page, 'Power').focus();
  await page.keyboard.press('Enter');
  await expect(topicOf(page, 'Power').getByRole('table', { name: 'Plugs' })).toBeVisible();

  await headOf(page, 'Air').click();
  await dialog.getByRole('combobox', { name: 'Fan shown' }).selectOption({ label: 'Cooler' });
  await expect(
    topicOf(page, 'Air').getByRole('img', { name: /^Cooler at .* the system curve rises/ }),
  ).toBeVisible();
  await expect(topicOf(page, 'Air').getByRole('table', { name: /^What changes if a fan/ })).toContainText(
    'Fan 1 turned round',
  );

  const ofGame = (await headOf(page, 'Heat').textContent()) ?? '';
  await dialog.getByRole('textbox', { name: 'Room' }).fill('34');
  await dialog.getByRole('textbox', { name: 'Room' }).press('Enter');
  await expect(headOf(page, 'Heat')).not.toHaveText(ofGame, patient);

  await headOf(page, 'Money').click();
  const sums = topicOf(page, 'Money').locator('.money-sums');
  await expect(sums).toContainText('2414 EUR');
  await dialog.getByRole('textbox', { name: 'Price of Card', exact: true }).fill('800');
  await dialog.getByRole('textbox', { name: 'Price of Card', exact: true }).press('Enter');
  await expect(sums).toContainText('2454 EUR');
  await page.keyboard.press('Escape');
  await expect(dialog).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeEnabled();
});

test('the air is drawn as arrows in a few draw calls, with a key, from the sheet and from the bar', async ({
  page,
}) => {
  await openPage(page);
  await expectDrawnCanvas(page);
  const canvas = page.locator('.viewport-host canvas');
  const calls = async () => Number(await canvas.getAttribute('data-drawcalls'));
  const before = await calls();
  const air = page.getByRole('button', { name: 'Air', exact: true });
  await air.click();
  const key = page.getByRole('region', { name: 'Air in the drawing' });
  await expect(key).toContainText(/\d+ °C/, patient);
  await expect.poll(calls, patient).toBeGreaterThan(before);
  expect((await calls()) - before).toBeLessThanOrEqual(3);
  await expect(page.locator('.air-plate').first()).toBeAttached();
  const warmest = (await key.locator('.air-scale-numbers').textContent()) ?? '';
  await key.getByRole('combobox').selectOption({ label: 'idle' });
  await expect(key.locator('.air-scale-numbers')).not.toHaveText(warmest, patient);
  await air.click();
  await expect(key).toHaveCount(0);
  await expect.poll(calls).toBe(before);
});

test('axe finds nothing serious in the estimates, drawings and fields open, on both sheets', async ({
  page,
}) => {
  test.slow();
  await openPage(page);
  await waitForShelf(page);
  await openEstimates(page);
  for (const topic of ['Power', 'Air', 'Heat', 'Money']) await headOf(page, topic).click();
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    await expect(page.locator('html')).toHaveAttribute('data-sheet', colorScheme);
    const { violations, passes } = await new AxeBuilder({ page }).include('dialog').analyze();
    expect(passes.length).toBeGreaterThan(10);
    const serious = violations
      .filter(({ impact }) => impact === 'serious' || impact === 'critical')
      .map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html.slice(0, 160)).join(' | ')}`);
    expect(serious, colorScheme).toEqual([]);
  }
});
