import AxeBuilder from '@axe-core/playwright';
import { expect, test } from './support/guarded-page';
import { openPage, shelfPart, waitForShelf } from './support/plan-page';

test('an enclosure from published limits: built, a fan seat added and dragged, kept on the shelf', async ({
  page,
}) => {
  await openPage(page);
  await waitForShelf(page);
  await page.getByRole('button', { name: 'New part' }).click();
  const dialog = page.getByRole('dialog', { name: 'New part' });
  await dialog.getByRole('combobox', { name: /^Kind/ }).selectOption('enclosure');
  await dialog.getByText('From a layout and published limits').click();
  await dialog
    .getByRole('textbox', { name: /^Largest cooler height/ })
    .first()
    .fill('165');
  await dialog
    .getByRole('textbox', { name: /^Largest card length/ })
    .first()
    .fill('13"');
  await dialog
    .getByRole('textbox', { name: /^Thickness of the fan/ })
    .first()
    .fill('25');
  await dialog
    .getByRole('textbox', { name: /^Room behind the tray/ })
    .first()
    .fill('20+5');
  await expect(dialog.getByText(/of six inner faces are still unknown/)).toBeVisible();
  const report = await new AxeBuilder({ page }).include('dialog').analyze();
  expect(report.violations).toEqual([]);
  await dialog.getByRole('button', { name: 'Build the enclosure' }).click();
  await dialog.getByText('From a layout and published limits').click();
  await expect(dialog.getByRole('textbox', { name: /^Tray to side panel/ }).first()).toHaveValue('180.8558');
  await dialog.getByLabel('What to add').selectOption('fan seat');
  await dialog.getByLabel('On which face').selectOption('top');
  await dialog.getByRole('button', { name: 'Add it' }).click();
  const seat = dialog.getByRole('button', { name: /^Fan seat top fan at/ });
  const before = await seat.getAttribute('aria-label');
  const box = await seat.boundingBox();
  if (!box) throw new Error('the seat is on the drawing');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x - 12, y, { steps: 4 });
  await page.mouse.up();
  await expect(seat).not.toHaveAttribute('aria-label', before ?? '');
  await dialog.getByRole('button', { name: 'Undo in the form' }).click();
  await expect(seat).toHaveAttribute('aria-label', before ?? '');
  // A dimension leads to its field.
  await dialog.getByRole('button', { name: /^Interior, inner height, .*: go to its field/ }).press('Enter');
  await expect(dialog.getByRole('textbox', { name: /^Inner height/ }).first()).toBeFocused();
  await dialog.getByRole('textbox', { name: /^Maker/ }).fill('Quayside');
  await dialog.getByRole('textbox', { name: /^Model/ }).fill('Breakwater 30');
  await dialog.getByRole('button', { name: 'Keep on my shelf' }).click();
  await expect(dialog).toHaveCount(0);
  await expect(shelfPart(page, 'Breakwater 30')).toBeVisible();
});
