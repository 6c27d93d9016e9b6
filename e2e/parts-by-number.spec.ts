import type { Page } from '@playwright/test';
import { expect, test } from './support/guarded-page';
import {
  expectGap,
  expectReading,
  gapOf,
  openPage,
  readPlanPage,
  shelfPart,
  treePart,
  verdictOf,
  waitForShelf,
  waitUntilSaved,
} from './support/plan-page';

const panel = 'Cooler to side panel';
const tip = /^Card tip to front (upper|lower) fan$/;

async function editByNumber(page: Page, label: string): Promise<ReturnType<Page['getByRole']>> {
  await treePart(page, label).click();
  await page.getByRole('button', { name: 'Edit by number' }).click();
  const dialog = page.getByRole('dialog', { name: `${label} by number` });
  await expect(dialog).toBeVisible();
  return dialog;
}

test.beforeEach(async ({ page }) => {
  await openPage(page);
  await waitForShelf(page);
});

// The fan of the cooler in the demo plan reaches 152 mm above the lid: above that the fins bind.
test('a height typed anew moves the margin by exactly the difference, either way', async ({ page }) => {
  const before = await readPlanPage(page);
  const room = await gapOf(page, panel);
  for (const typed of [153.4, 159.2]) {
    const dialog = await editByNumber(page, 'Cooler');
    const height = dialog.getByRole('textbox', { name: /^Height/ }).first();
    await expect(height).toHaveValue('155.2');
    await height.fill(String(typed));
    await dialog.getByRole('button', { name: 'Save' }).click();
    await expect(dialog).toHaveCount(0);
    await expectGap(page, panel, room + (155.2 - typed));
    await expect(verdictOf(page)).toContainText(
      typed > 155.2 + room ? 'Does not fit yet' : 'Everything fits',
    );
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expectReading(page, before);
  }
});

test('every figure stands with its unit and its source, and both are kept', async ({ page }) => {
  let dialog = await editByNumber(page, 'Cooler');
  const source = () => dialog.getByRole('combobox', { name: 'Height, source' }).first();
  await expect(source()).toHaveValue('sheet');
  await expect(dialog.getByText('mm', { exact: true }).first()).toBeVisible();
  await source().selectOption('measured');
  await dialog.getByRole('textbox', { name: 'Height, plus or minus' }).first().fill('0.4');
  await dialog.getByRole('button', { name: 'Save' }).click();
  await expect(dialog).toHaveCount(0);
  dialog = await editByNumber(page, 'Cooler');
  await expect(source()).toHaveValue('measured');
  await expect(dialog.getByRole('textbox', { name: 'Height, plus or minus' }).first()).toHaveValue('0.4');
});

const slips: readonly (readonly [what: string, typed: string])[] = [
  ['no number', 'high'],
  ['NaN', 'NaN'],
  ['infinity', 'Infinity'],
  ['an infinite power', '1e999'],
  ['a negative height', '-155.2'],
  ['an absurd height', '1550000'],
  ['nothing', ''],
];

test('a figure that cannot be is refused by the name of its field, and nothing typed is lost', async ({
  page,
}) => {
  const before = await readPlanPage(page);
  const room = await gapOf(page, panel);
  const dialog = await editByNumber(page, 'Cooler');
  const height = dialog.getByRole('textbox', { name: /^Height/ }).first();
  const summary = dialog.getByRole('alert');
  await dialog.getByRole('textbox', { name: /^Model/ }).fill('Typed before the slip');
  for (const [what, typed] of slips)
    await test.step(what, async () => {
      await height.fill(typed);
      await dialog.getByRole('button', { name: 'Save' }).click();
      await expect(summary).toContainText(/fields? needs? another look/);
      await summary.getByRole('button', { name: 'Height', exact: true }).click();
      await expect(height).toBeFocused();
      await expect(height).toHaveAttribute('aria-invalid', 'true');
      await expect(dialog.getByRole('textbox', { name: /^Model/ })).toHaveValue('Typed before the slip');
      await expectReading(page, before);
      await height.fill('153.4');
      await expect(summary).toHaveCount(0);
    });
  await dialog.getByRole('button', { name: 'Save' }).click();
  await expectGap(page, panel, room + (155.2 - 153.4));
});

test('a form with something typed in it asks before it lets go', async ({ page }) => {
  const dialog = await editByNumber(page, 'Cooler');
  await dialog
    .getByRole('textbox', { name: /^Height/ })
    .first()
    .fill('140');
  await page.keyboard.press('Escape');
  const question = page.getByRole('alertdialog', { name: 'Let go of what was typed?' });
  await expect(question).toBeVisible();
  await question.getByRole('button', { name: 'Keep editing' }).click();
  await expect(dialog.getByRole('textbox', { name: /^Height/ }).first()).toHaveValue('140');
  await page.keyboard.press('Escape');
  await question.getByRole('button', { name: 'Let it go' }).click();
  await expect(dialog).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Undo', exact: true })).toBeDisabled();
});

test('a card of one’s own is made from a sheet, kept on the shelf and put in', async ({ page }) => {
  const room = await gapOf(page, tip);
  await page.getByRole('button', { name: 'New part' }).click();
  const dialog = page.getByRole('dialog', { name: 'New part' });
  await dialog.getByRole('combobox', { name: 'Kind' }).selectOption({ label: 'Card' });
  await dialog
    .getByRole('combobox', { name: 'Start from' })
    .selectOption({ label: 'Fathom 304, 304 mm, 3 slots' });
  await dialog.getByRole('textbox', { name: /^Maker/ }).fill('Own bench');
  await dialog.getByRole('textbox', { name: /^Model/ }).fill('Long one');
  await dialog
    .getByRole('textbox', { name: /^Length/ })
    .first()
    .fill('330.5');
  await dialog.getByRole('button', { name: 'Keep on my shelf' }).click();
  await expect(dialog).toHaveCount(0);

  const row = shelfPart(page, 'Long one');
  await expect(row).toContainText('your own');
  await treePart(page, 'Card').click();
  await page.getByRole('button', { name: 'Replace the selected part with Own bench Long one' }).click();
  await expectGap(page, tip, room - (330.5 - 304));

  await waitUntilSaved(page);
  await page.reload();
  await waitForShelf(page);
  await expect(shelfPart(page, 'Long one'), 'it is still on the shelf').toHaveCount(1);
  await expect(treePart(page, 'Card')).toContainText('Long one');
  await page.getByRole('button', { name: 'Card of Own bench Long one' }).click();
  await page.getByRole('button', { name: 'Take Own bench Long one off your shelf' }).click();
  await expect(shelfPart(page, 'Long one')).toHaveCount(0);
  await expect(treePart(page, 'Card'), 'the plan keeps what it holds').toContainText('Long one');
});

const kinds = [
  'Enclosure',
  'Board',
  'Processor',
  'Cooler',
  'Memory',
  'Drive',
  'Card',
  'Supply',
  'Fan',
  'Radiator',
  'Adapter',
];

test('a new part of any kind goes from the form straight into the plan', async ({ page }) => {
  let parts = await page.getByRole('treeitem').count();
  for (const kind of kinds)
    await test.step(kind, async () => {
      await page.getByRole('button', { name: 'New part' }).click();
      const dialog = page.getByRole('dialog', { name: 'New part' });
      await dialog.getByRole('combobox', { name: 'Kind' }).selectOption({ label: kind });
      await dialog.getByRole('textbox', { name: /^Model/ }).fill(`Fresh ${kind}`);
      await dialog.getByRole('button', { name: 'Place in the plan' }).click();
      await expect(dialog).toHaveCount(0);
      parts += 1;
      await expect(page.getByRole('treeitem')).toHaveCount(parts);
      await expect(page.getByRole('article', { name: 'Selected part' })).toContainText(`Fresh ${kind}`);
      await expect(verdictOf(page)).toContainText(/[Ff]it/);
    });
});
