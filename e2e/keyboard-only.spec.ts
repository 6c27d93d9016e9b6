import type { Page } from '@playwright/test';
import { expect, test } from './support/guarded-page';
import { tabTo } from './support/keyboard';
import {
  expectGap,
  expectReading,
  gapOf,
  openPage,
  readPlanPage,
  treePart,
  verdictOf,
  waitForShelf,
} from './support/plan-page';

// The same job as with the mouse, and not one click: everything here goes through page.keyboard.

const tip = /^Card tip to front (upper|lower) fan$/;
/** Lengths on the spec sheets of the card in the demo plan and of the longest on the shelf, mm. */
const [fathomLength, skuaLength] = [304, 347];

/** Walks down the tree to a part; selection follows the focus. */
async function walkTo(page: Page, label: string): Promise<void> {
  const target = treePart(page, label);
  await tabTo(page, page.getByRole('tree').locator('[tabindex="0"]'));
  await page.keyboard.press('Home');
  const rows = await page.getByRole('treeitem').count();
  for (let row = 0; row < rows; row++) {
    if ((await target.getAttribute('aria-selected')) === 'true') return;
    await page.keyboard.press('ArrowDown');
  }
  await expect(target).toHaveAttribute('aria-selected', 'true');
}

/** Leaves the tree backwards for the tool bar of the drawing, where the arrow keys nudge what is selected. */
async function leaveForDrawing(page: Page): Promise<void> {
  await tabTo(page, page.getByRole('button', { name: 'Fit', exact: true }), 'Shift+Tab');
}

test.beforeEach(async ({ page }) => {
  await openPage(page);
  await waitForShelf(page);
});

test('a longer card goes in from the shelf, clashes, and is undone and redone', async ({ page }) => {
  const before = await readPlanPage(page);
  const room = await gapOf(page, tip);
  await walkTo(page, 'Card');
  await tabTo(page, page.getByRole('searchbox', { name: 'Find a part on the shelf' }));
  await page.keyboard.type('Skua 347');
  const replace = page.getByRole('button', { name: 'Replace the selected part with Eiderfold Skua 347' });
  await tabTo(page, replace);
  await page.keyboard.press('Enter');

  await expectGap(page, tip, room - (skuaLength - fathomLength));
  await expect(verdictOf(page)).toContainText('Does not fit yet');
  const clash = await readPlanPage(page);
  await page.keyboard.press('Control+z');
  await expectReading(page, before);
  await page.keyboard.press('Control+Shift+z');
  await expectReading(page, clash);
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+y');
  await expectReading(page, clash);
});

test('a part from the shelf is placed with Enter and taken out with Delete', async ({ page }) => {
  const before = await readPlanPage(page);
  const parts = await page.getByRole('treeitem').count();
  await tabTo(page, page.getByRole('searchbox', { name: 'Find a part on the shelf' }));
  await page.keyboard.type('Flagstone 16');
  await tabTo(page, page.getByRole('button', { name: 'Place Cobblestrand Flagstone 16' }));
  await page.keyboard.press('Enter');
  await expect(page.getByRole('treeitem')).toHaveCount(parts + 1);
  await expect(page.getByRole('article', { name: 'Selected part' })).toContainText('Flagstone 16');
  await page.keyboard.press('Delete');
  await expect(page.getByRole('treeitem')).toHaveCount(parts);
  await expectReading(page, before);
});

test('arrow keys nudge the selected part by 1 mm and by 0.1 mm, and a run of them is one step', async ({
  page,
}) => {
  const before = await readPlanPage(page);
  const room = await gapOf(page, tip);
  await walkTo(page, 'Card');
  await leaveForDrawing(page);
  // A run is what follows within a second: the page's clock stands still, so that a slow machine makes no two of it.
  await page.clock.install();
  await page.clock.pauseAt((await page.evaluate(() => Date.now())) + 1000);
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Shift+ArrowLeft');
  await page.clock.resume();
  await expectGap(page, tip, room - 3 + 0.1);
  await page.keyboard.press('Control+z');
  await expectReading(page, before);
});

test('a position is typed, and a slip of the fingers is refused in words', async ({ page }) => {
  const room = await gapOf(page, tip);
  await walkTo(page, 'Card');
  const field = page.getByRole('textbox', { name: /^Shift across/ });
  await tabTo(page, field);
  await page.keyboard.press('Control+a');
  await page.keyboard.type('abc');
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByRole('alert').filter({ hasText: 'Not a number' })).toBeVisible();
  await page.keyboard.press('Enter');
  await expectGap(page, tip, room);
  await page.keyboard.press('Escape');

  // The frame of a slot runs along it from rear to front, as the card's length does.
  for (const across of [-2.5, 0.7]) {
    await page.keyboard.press('Control+a');
    await page.keyboard.type(String(across));
    await page.keyboard.press('Enter');
    await expectGap(page, tip, room - across);
  }
});

test('a part is freed from its mount and stands where it is told', async ({ page }) => {
  const room = await gapOf(page, tip);
  await walkTo(page, 'Card');
  const seat = page.getByRole('combobox', { name: 'Sits on' });
  await tabTo(page, seat);
  await page.keyboard.press('Home');
  await expect(seat).toHaveValue('free');
  await expectGap(page, tip, room);
  const x = page.getByRole('textbox', { name: 'At x, mm' });
  await tabTo(page, x);
  const at = Number(await x.inputValue());
  await page.keyboard.press('Control+a');
  await page.keyboard.type(String(at + 4));
  await page.keyboard.press('Enter');
  await expectGap(page, tip, room - 4);
});

test('the views, the selection and the list of keys answer to keys', async ({ page }) => {
  await walkTo(page, 'Cooler');
  await leaveForDrawing(page);
  await page.keyboard.press('5');
  await expect(page.getByRole('button', { name: 'Top', exact: true })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
  await page.keyboard.press('x');
  await expect(page.getByRole('button', { name: 'X-ray' })).toHaveAttribute('aria-pressed', 'true');
  await page.keyboard.press('Escape');
  await expect(treePart(page, 'Cooler')).toHaveAttribute('aria-selected', 'false');
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog', { name: 'Keys' })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toHaveCount(0);
});
