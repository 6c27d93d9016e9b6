import { expect, test } from './support/guarded-page';
import {
  clearanceTable,
  openExample,
  openPage,
  readPlanPage,
  verdictOf,
  waitForShelf,
} from './support/plan-page';

test.beforeEach(async ({ page }) => {
  await openPage(page);
  await waitForShelf(page);
});

const undo = (page: Parameters<typeof openPage>[0]) =>
  page.getByRole('button', { name: 'Undo', exact: true }).first();

test('the clearance under the panel is a sum of dimensions; a measured one narrows its band at once, undo widens it', async ({
  page,
}) => {
  await clearanceTable(page)
    .getByRole('button', { name: /^Cooler.*to side panel/ })
    .click();
  const stack = page.getByRole('region', { name: 'Stack-up' });
  const worst = stack.locator('.sum-range');
  await expect(worst).toHaveText(/to/);
  const before = await worst.textContent();
  await expect(stack.getByRole('img', { name: /^Spread of the gap/ })).toBeVisible();
  // Cooler, processor, socket, board and standoffs up to the panel, and the room between tray and panel.
  await expect(page.locator('.viewport-chain g')).toHaveCount(6);

  await stack.getByRole('button', { name: /^Processor, package height −/ }).click();
  const form = stack.getByRole('form', { name: /^Measured: Processor/ });
  await form.getByRole('textbox', { name: '±, mm' }).fill('0.02');
  await form.getByRole('button', { name: 'Take' }).click();
  await expect(worst).not.toHaveText(before ?? '');
  const width = async () => {
    const [least = 0, most = 0] = ((await worst.textContent()) ?? '').split(' to ').map(Number);
    return most - least;
  };
  const [wasLeast = 0, wasMost = 0] = (before ?? '').split(' to ').map(Number);
  // 0.2 mm either way became 0.02 mm: the band is 0.36 mm narrower, read to a tenth at either end.
  expect(Math.abs(wasMost - wasLeast - (await width()) - 0.36)).toBeLessThan(0.11);

  await undo(page).click();
  await expect(worst).toHaveText(before ?? '');
});

test('a way out of a fault is applied, the fault is gone, and one undo brings it back', async ({ page }) => {
  await openExample(page, 'Wheelhouse renderer, first sketch');
  await expect(verdictOf(page)).toContainText('overlaps');
  const before = await readPlanPage(page);
  await page.getByRole('tab', { name: /^Findings/ }).click();
  const fault = page.getByRole('list', { name: 'Findings' }).getByRole('button', { name: /overlaps/ });
  await fault.first().click();
  const ways = page.getByRole('region', { name: 'What to change' });
  const first = ways
    .getByRole('listitem')
    .filter({ has: page.getByRole('button', { name: /^Apply/ }) })
    .first();
  await expect(first).toContainText('puts it right');
  await first.getByRole('button', { name: /^Apply/ }).click();
  await expect(fault).toHaveCount(0);
  await expect(verdictOf(page)).not.toContainText('overlaps');
  await expect(undo(page)).toBeEnabled();

  await undo(page).click();
  await expect(fault).not.toHaveCount(0);
  await page.getByRole('tab', { name: 'Clearances' }).click();
  await expect.poll(() => readPlanPage(page), { message: 'as it was before' }).toEqual(before);
  await expect(undo(page), 'one way out, one step').toBeDisabled();
});

test('the upgrade envelope names every kind of mount, and on paper it stands alone', async ({ page }) => {
  await page.getByRole('button', { name: 'What would still go here' }).click();
  const sheet = page.getByRole('dialog', { name: 'What would still go here' });
  const table = sheet.getByRole('table');
  await expect(table).toBeVisible();
  for (const kind of ['Card', 'Cooler', 'Memory', 'Drive', 'Supply', 'Fan'])
    await expect(table.getByRole('rowheader', { name: kind, exact: true })).toBeVisible();
  await page.emulateMedia({ media: 'print' });
  await expect(table).toBeVisible();
  await expect(page.locator('#root')).toBeHidden();
  await expect(sheet.getByRole('button')).toHaveCount(0);
  await page.emulateMedia({ media: 'screen' });
  await page.keyboard.press('Escape');
  await expect(sheet).toHaveCount(0);
});

test('what is worth measuring is listed for the whole plan, and typing it there is one step', async ({
  page,
}) => {
  await page.getByRole('button', { name: 'Measure these' }).click();
  const list = page.getByRole('dialog', { name: 'Measure these' });
  await expect(list.getByRole('heading', { name: /^Cooler to side panel/ })).toBeVisible();
  await list.getByRole('listitem').first().getByRole('button').click();
  await list.getByRole('button', { name: 'Take' }).click();
  await page.keyboard.press('Escape');
  await expect(undo(page)).toBeEnabled();
  await undo(page).click();
  await expect(undo(page)).toBeDisabled();
});
