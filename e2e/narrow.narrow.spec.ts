import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expectDrawnCanvas } from './support/canvas';
import { expect, test } from './support/guarded-page';
import { openPage, readPlanPage, treePart, verdictOf } from './support/plan-page';
import { makeLink } from './support/snapshot-links';

/** Asserts that the page cannot be pushed sideways. */
async function expectNoSidewaysScroll(page: Page, where: string): Promise<void> {
  const width = await page.evaluate(() => ({
    content: document.documentElement.scrollWidth,
    screen: document.documentElement.clientWidth,
  }));
  expect(width.content, `width of ${where}`).toBeLessThanOrEqual(width.screen);
}

/** Controls on the screen that are smaller than a finger needs, by their names. */
async function smallTargets(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const least = 44;
    const controls = document.querySelectorAll<HTMLElement>(
      'button, select, input:not([type="file"]), [role="tab"], [role="treeitem"], a[href]',
    );
    return [...controls]
      .filter((control) => control.checkVisibility({ visibilityProperty: true }))
      .map((control) => {
        // A tick is pressed by its label.
        const target = control.matches('[type="checkbox"]') ? (control.closest('label') ?? control) : control;
        return { control, box: target.getBoundingClientRect() };
      })
      .filter(({ box }) => box.width > 1 && box.height > 1)
      .filter(({ box }) => Math.min(box.width, box.height) < least - 0.5)
      .map(({ control, box }) => {
        const name = control.getAttribute('aria-label') ?? control.textContent ?? control.id;
        return `${name.trim().slice(0, 40)} ${Math.round(box.width)} x ${Math.round(box.height)}`;
      });
  });
}

const openTab = (page: Page, name: string | RegExp) => page.getByRole('tab', { name }).tap();

test('on a phone every pane is a tap away, and nothing goes over the edge', async ({ page }) => {
  await openPage(page);
  await expectDrawnCanvas(page);
  await expect(verdictOf(page)).toBeVisible();
  await expectNoSidewaysScroll(page, 'the page');
  for (const [tab, content] of [
    [/^Findings/, page.getByRole('list', { name: 'Findings' })],
    ['Tree', page.getByRole('tree', { name: 'Parts of the plan' })],
    ['Shelf', page.getByRole('list', { name: 'Shelf' })],
    ['Details', page.getByText(/^Select a part/)],
    ['Clearances', page.getByRole('table')],
  ] as const) {
    await openTab(page, tab);
    await expect(content).toBeVisible();
    await expect(content).toBeInViewport();
    await expectNoSidewaysScroll(page, `the page at '${tab}'`);
  }
});

test('what is pressed with a finger is large enough for one', async ({ page }) => {
  await openPage(page);
  expect(await smallTargets(page), 'at the clearances').toEqual([]);
  for (const tab of [/^Findings/, 'Tree', 'Shelf']) {
    await openTab(page, tab);
    await expect(page.getByRole('tab', { name: tab })).toHaveAttribute('aria-selected', 'true');
    expect(await smallTargets(page), `at '${tab}'`).toEqual([]);
  }
  await openTab(page, 'Tree');
  await treePart(page, 'Cooler').tap();
  await openTab(page, 'Details');
  await expect(page.getByRole('article', { name: 'Selected part' })).toBeVisible();
  expect(await smallTargets(page), 'at the details').toEqual([]);
});

test('a part is placed by a tap, seen in the tree, and taken back', async ({ page }) => {
  await openPage(page);
  const before = await readPlanPage(page);
  await openTab(page, 'Shelf');
  await page.getByRole('searchbox', { name: 'Find a part on the shelf' }).fill('Flagstone');
  await page.getByRole('button', { name: 'Place Cobblestrand Flagstone 16' }).tap();
  await openTab(page, 'Tree');
  await expect(page.getByRole('treeitem', { name: /^Memory 3/ })).toBeVisible();
  await page.getByRole('button', { name: 'Undo', exact: true }).first().tap();
  await expect(page.getByRole('treeitem', { name: /^Memory 3/ })).toHaveCount(0);
  await openTab(page, 'Clearances');
  await expect.poll(() => readPlanPage(page)).toEqual(before);
});

test('a part is replaced on a phone, and the margin follows', async ({ page }) => {
  await openPage(page);
  await openTab(page, 'Tree');
  await treePart(page, 'Card').tap();
  await openTab(page, 'Details');
  await page
    .getByRole('combobox', { name: 'Replace with' })
    .selectOption({ label: 'Skua 347, 347 mm, 3 slots' });
  await expect(verdictOf(page)).toContainText('Does not fit yet');
});

test('dialogs and the client view stay within the screen', async ({ page }) => {
  await openPage(page);
  for (const name of ['Plans', 'Brief', 'Send snapshot']) {
    await page.getByRole('button', { name, exact: true }).tap();
    const dialog = page.getByRole('dialog', { name });
    await expect(dialog).toBeVisible();
    const box = await dialog.boundingBox();
    expect(box?.x, `left edge of '${name}'`).toBeGreaterThanOrEqual(0);
    expect((box?.x ?? 0) + (box?.width ?? 0), `right edge of '${name}'`).toBeLessThanOrEqual(390);
    expect(await smallTargets(page), `in '${name}'`).toEqual([]);
    await dialog.getByRole('button', { name: 'Close' }).tap();
  }
  const link = await makeLink(page);
  await page.goto('about:blank');
  await page.goto(link);
  await expect(page.getByRole('button', { name: 'Take a copy' })).toBeVisible();
  await expectNoSidewaysScroll(page, 'the client view');
  await expectDrawnCanvas(page);
  expect(await smallTargets(page), 'in the client view').toEqual([]);
});

test('axe finds nothing serious on a phone', async ({ page }) => {
  await openPage(page);
  for (const tab of ['Clearances', /^Findings/, 'Tree', 'Shelf']) {
    await openTab(page, tab);
    const { violations } = await new AxeBuilder({ page }).analyze();
    const serious = violations
      .filter(({ impact }) => impact === 'serious' || impact === 'critical')
      .map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html.slice(0, 160)).join(' | ')}`);
    expect(serious, `axe at '${tab}'`).toEqual([]);
  }
});
