import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expectDrawnCanvas } from './support/canvas';
import { expect, test } from './support/guarded-page';
import { tabTo } from './support/keyboard';
import {
  clearanceTable,
  openExample,
  openPage,
  treePart,
  verdictOf,
  waitForShelf,
} from './support/plan-page';
import { makeLink } from './support/snapshot-links';

// Takes the pictures of the running page for the README, for eyes to look at: PICTURES=<folder> npx playwright test pictures
const folder = process.env.PICTURES;
test.skip(!folder, 'pictures are taken on demand');

async function photograph(page: Page, name: string): Promise<void> {
  await expectDrawnCanvas(page);
  await page.evaluate(() => document.fonts.ready);
  // The pointer must not light up whatever it was left on.
  await page.mouse.move(2, 2);
  mkdirSync(folder ?? '', { recursive: true });
  await page.screenshot({ path: join(folder ?? '', `${name}.png`), caret: 'initial' });
}

async function openFaults(page: Page): Promise<void> {
  await openPage(page);
  await waitForShelf(page);
  await openExample(page, 'Wheelhouse renderer, first sketch');
  await expect(verdictOf(page)).toContainText('Does not fit yet');
}

for (const sheet of ['light', 'dark'] as const) {
  test.describe(`${sheet} sheet`, () => {
    test.use({ colorScheme: sheet });

    test('the whole window', async ({ page }) => {
      await openPage(page);
      await waitForShelf(page);
      await photograph(page, `plan-${sheet}`);
    });

    test('the faults, each in place', async ({ page }) => {
      await openFaults(page);
      await page.getByRole('tab', { name: /^Findings/ }).click();
      const first = page.getByRole('list', { name: 'Findings' }).getByRole('button').first();
      await first.click();
      await photograph(page, `faults-${sheet}`);
      const canvas = await page.locator('canvas').boundingBox();
      if (!canvas) throw new Error('the drawing has no place on the page');
      // The memory that the fan runs into stands right of the middle, in the upper part of the drawing.
      await page.mouse.move(canvas.x + canvas.width * 0.5, canvas.y + canvas.height * 0.25);
      for (let notch = 0; notch < 3; notch++) await page.mouse.wheel(0, -200);
      await photograph(page, `faults-close-${sheet}`);
    });
  });
}

test('the client view', async ({ page }) => {
  await openFaults(page);
  const link = await makeLink(page);
  await page.goto('about:blank');
  await page.goto(link);
  await expect(page.getByRole('button', { name: 'Take a copy' })).toBeVisible();
  await photograph(page, 'client');
});

test('a section through the card, with reserved spaces', async ({ page }) => {
  await openPage(page);
  await waitForShelf(page);
  await page.getByRole('button', { name: 'Side', exact: true }).click();
  await page.getByRole('combobox', { name: 'Section' }).selectOption({ label: 'Cut z' });
  await page.getByRole('slider', { name: /^Place of the cut/ }).fill('60');
  await photograph(page, 'section');
  await page.getByRole('combobox', { name: 'Section' }).selectOption({ label: 'No cut' });
  await page.getByRole('button', { name: '3D', exact: true }).click();
  await page.getByRole('button', { name: 'Reserved' }).click();
  await photograph(page, 'reserved');
});

test('the air in the drawing, and the estimates', async ({ page }) => {
  await openPage(page);
  await page.getByRole('button', { name: 'Air', exact: true }).click();
  await expect(page.locator('.air-plate').first()).toBeVisible({ timeout: 60_000 });
  await photograph(page, 'air');
  await page.getByRole('button', { name: 'Estimates', exact: true }).click();
  const heat = page
    .locator('.estimates-topic')
    .filter({ has: page.locator('.estimates-topic-name', { hasText: /^Heat$/ }) })
    .locator('summary')
    .first();
  await heat.click({ timeout: 60_000 });
  await heat.evaluate((summary) => {
    const body = summary.closest('.dialog-body');
    if (body) body.scrollTop += summary.getBoundingClientRect().top - body.getBoundingClientRect().top;
  });
  await photograph(page, 'estimates');
});

test('a card that only goes in tilted, on its way', async ({ page }) => {
  await openPage(page);
  await waitForShelf(page);
  await openExample(page, 'Lamp room drawing desk');
  await treePart(page, 'Card').click();
  await page.getByRole('button', { name: 'How it goes in' }).click();
  const slider = page.getByRole('slider', { name: 'Along the way in' });
  await expect(slider).toBeVisible({ timeout: 60_000 });
  await slider.fill('0.62');
  await photograph(page, 'tilted');
});

test('the assembly sheet', async ({ page }) => {
  await openPage(page);
  await waitForShelf(page);
  await page.getByRole('button', { name: 'Assembly sheet' }).click();
  const step = page.getByRole('listitem').filter({ hasText: /Put in the cooler’s front fan/ });
  await expect(step.getByRole('img')).toBeVisible({ timeout: 90_000 });
  await step.scrollIntoViewIfNeeded();
  await photograph(page, 'assembly-sheet');
});

test('an enclosure in the part editor', async ({ page }) => {
  await openPage(page);
  await waitForShelf(page);
  await treePart(page, 'Enclosure').click();
  await page.getByRole('button', { name: 'Edit by number' }).click();
  await page
    .getByRole('button', { name: /^Interior, tray to side panel, .*: go to its field/ })
    .press('Enter');
  await photograph(page, 'part-editor');
});

test('a clearance as a sum of its dimensions, walked in the drawing', async ({ page }) => {
  await openPage(page);
  await waitForShelf(page);
  await clearanceTable(page)
    .getByRole('button', { name: /^Cooler.*to side panel/ })
    .click();
  await expect(page.getByRole('img', { name: /^Spread of the gap/ })).toBeVisible();
  await expect(page.locator('.viewport-chain g')).toHaveCount(6);
  await photograph(page, 'stack-up');
});

test('the focus of the keyboard', async ({ page }) => {
  await openPage(page);
  await waitForShelf(page);
  await tabTo(page, page.getByRole('tree').locator('[tabindex="0"]'));
  for (let row = 0; row < 3; row++) await page.keyboard.press('ArrowDown');
  await expect(treePart(page, 'Cooler')).toBeFocused();
  await photograph(page, 'focus-tree');
  await tabTo(page, page.getByRole('button', { name: 'Card tip to front', exact: false }));
  await page.keyboard.press('Enter');
  await photograph(page, 'focus-clearance');
});

test('a part by number, the plans, the link', async ({ page }) => {
  await openPage(page);
  await waitForShelf(page);
  await treePart(page, 'Cooler').click();
  await photograph(page, 'selected-part');
  await page.getByRole('button', { name: 'Edit by number' }).click();
  await expect(page.getByRole('dialog')).toBeVisible();
  await photograph(page, 'by-number');
  await page.keyboard.press('Escape');
  for (const [name, file] of [
    ['Plans', 'plans'],
    ['Send snapshot', 'link'],
    ['Brief', 'brief'],
  ] as const) {
    await page.getByRole('button', { name, exact: true }).click();
    await expect(page.getByRole('dialog').getByRole('button').last()).toBeVisible();
    await photograph(page, file);
    await page.keyboard.press('Escape');
  }
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true });

  test('every pane', async ({ page }) => {
    await openPage(page);
    await photograph(page, 'phone');
    for (const tab of ['Findings', 'Tree', 'Shelf'] as const) {
      await page.getByRole('tab', { name: new RegExp(`^${tab}`) }).tap();
      await photograph(page, `phone-${tab.toLowerCase()}`);
    }
    await page.getByRole('tab', { name: /^Tree/ }).tap();
    await treePart(page, 'Cooler').tap();
    await page.getByRole('tab', { name: 'Details' }).tap();
    await photograph(page, 'phone-details');
    const link = await makeLink(page);
    await page.goto('about:blank');
    await page.goto(link);
    await expect(page.getByRole('button', { name: 'Take a copy' })).toBeVisible();
    await photograph(page, 'phone-client');
  });
});
