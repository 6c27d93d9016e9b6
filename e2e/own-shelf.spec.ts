import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, test } from './support/guarded-page';
import {
  expectGap,
  gapOf,
  openPage,
  shelfPart,
  treePart,
  waitForShelf,
  waitUntilSaved,
} from './support/plan-page';

const search = (page: Page) => page.getByRole('searchbox', { name: 'Find a part on the shelf' });
const rows = (page: Page) => page.getByRole('list', { name: 'Shelf' }).getByRole('listitem');
const height = 'Cooler to side panel';

async function expectAccessible(page: Page, what: string): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).include('dialog').analyze();
  expect(
    violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.target.join(' ')}`),
    what,
  ).toEqual([]);
}

test('the shelf says how each part would sit; an own part is measured, taken over by the plan, backed up and restored', async ({
  page,
  context,
}) => {
  await openPage(page);
  await waitForShelf(page);
  await page.getByRole('combobox', { name: 'Kind of part' }).selectOption({ label: 'Cooler' });
  await page.getByRole('checkbox', { name: 'Only what fits' }).check();
  await expect(shelfPart(page, 'Bittern 155')).toContainText('2.7 mm to side panel');
  await expect(rows(page).filter({ hasText: 'Does not fit' })).toHaveCount(0);
  await page.getByRole('checkbox', { name: 'Only what fits' }).uncheck();
  await expect(rows(page).filter({ hasText: 'Does not fit' }).first()).toBeVisible();

  const card = page.getByRole('dialog', { name: 'Dunlinmoor Bittern 155' });
  await test.step('a copy of one’s own, seen at once in another tab', async () => {
    const second = await context.newPage();
    await openPage(second);
    await waitForShelf(second);
    await page.getByRole('button', { name: 'Card of Dunlinmoor Bittern 155' }).click();
    await expectAccessible(page, 'the card');
    await card.getByRole('button', { name: 'Copy to your own parts' }).click();
    await card.getByRole('button', { name: 'Close' }).click();
    await expect(rows(second).filter({ hasText: 'your own' })).toHaveCount(1);
    await second.close();
  });
  await treePart(page, 'Cooler').click();
  const own = rows(page).filter({ hasText: 'your own' });
  await own.getByRole('button', { name: /^Replace/ }).click();
  await waitUntilSaved(page);
  const before = await gapOf(page, height);

  await test.step('a measurement changes the shelf, not the plan, until it is taken over', async () => {
    await own.getByRole('button', { name: /^Card of/ }).click();
    await expect(card.getByRole('region', { name: 'Used in' })).toContainText('Chart room workstation');
    await card.getByRole('button', { name: 'Add a measurement' }).click();
    await card
      .getByRole('combobox', { name: /What was measured/ })
      .selectOption({ label: 'Height (now 155.2 mm)' });
    await card.getByRole('textbox', { name: 'Measured, mm' }).fill('155,9');
    await card.getByRole('textbox', { name: 'Who' }).fill('M.');
    await card.getByRole('textbox', { name: /^How/ }).fill('caliper');
    await card.getByLabel(/^Photo/).setInputFiles('e2e/pictures/section.png');
    await card.getByRole('button', { name: 'Keep the measurement' }).click();
    await expect(card.getByRole('img', { name: 'Measuring Height' })).toBeVisible();
    await expect(card.getByRole('region', { name: 'History' })).toContainText('Height measured');
    await expectAccessible(page, 'the card with a measurement and a history');
    await card.getByRole('button', { name: 'Close' }).click();
    await expectGap(page, height, before);
    const details = page.getByRole('article', { name: 'Selected part' });
    await expect(details).toContainText('has changed on the shelf');
    await details.getByRole('button', { name: 'Take over what the shelf has' }).click();
    await expectGap(page, height, before - 0.7);
    await page.getByRole('button', { name: 'Undo', exact: true }).first().click();
    await expectGap(page, height, before);
  });

  await test.step('the whole library goes into a file and comes back', async () => {
    await page.getByRole('button', { name: 'More', exact: true }).click();
    await page.getByRole('button', { name: 'Backup' }).click();
    const dialog = page.getByRole('dialog', { name: 'Backup of the library' });
    const download = page.waitForEvent('download');
    await dialog.getByRole('button', { name: 'Save to a file' }).click();
    const file = await (await download).path();
    await expect(dialog.getByRole('status')).toContainText('1 plan, 1 own part, remarks on 1 part, 1 photo');
    await dialog.getByLabel('Library file').setInputFiles('e2e/pictures/section.png');
    await expect(dialog.getByRole('alert')).toContainText('not a zip archive');
    await dialog.getByRole('button', { name: 'Close' }).click();
    await own.getByRole('button', { name: /^Card of/ }).click();
    await card.getByRole('button', { name: /^Take .* off your shelf$/ }).click();
    await expect(own).toHaveCount(0);
    await page.getByRole('button', { name: 'Backup' }).click();
    await dialog.getByLabel('Library file').setInputFiles(file);
    await dialog.getByRole('button', { name: 'Merge' }).click();
    await expect(dialog.getByRole('status')).toContainText('merged in');
    await expectAccessible(page, 'the backup');
    await dialog.getByRole('button', { name: 'Close' }).click();
    await expect(own).toHaveCount(1);
  });
});

test('fifty thousand own parts: the list stays short in the page, is searched at once, and walked to its end', async ({
  page,
}) => {
  await openPage(page);
  await waitUntilSaved(page);
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('elbowroom');
        opening.onsuccess = () => {
          const transaction = opening.result.transaction('ownParts', 'readwrite');
          const store = transaction.objectStore('ownParts');
          for (let index = 0; index < 50_000; index++) {
            const spec = { kind: 'fan', maker: 'Quayside', model: `Breeze ${index}`, size: 120 };
            store.put({ id: `own-${String(index).padStart(5, '0')}`, spec, revision: 1, savedAt: 1 });
          }
          transaction.oncomplete = () => {
            opening.result.close();
            resolve();
          };
          transaction.onerror = () => reject(transaction.error);
        };
      }),
  );
  await page.reload();
  await expect(page.getByText('50100 parts')).toBeVisible({ timeout: 30_000 });
  expect(await rows(page).count()).toBeLessThan(60);
  await expect(rows(page).first()).toHaveAttribute('aria-setsize', '50100');
  await rows(page)
    .first()
    .getByRole('button', { name: /^Place/ })
    .focus();
  await page.keyboard.press('End');
  await expect(rows(page).last()).toHaveAttribute('aria-posinset', '50100');
  await expect(
    rows(page)
      .last()
      .getByRole('button', { name: /^Place/ }),
  ).toBeFocused();
  await search(page).fill('Breeze 49321');
  await expect(rows(page)).toHaveCount(1);
  await expect(rows(page)).toContainText('Breeze 49321');
  await expect(rows(page).locator('.fit-mark'), 'and is tried in the plan').toBeVisible();
});
