import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, test } from './support/guarded-page';
import { expectVisibleFocus, tabTo } from './support/keyboard';
import { openExample, openPage, treePart, verdictOf, waitForShelf } from './support/plan-page';
import { makeLink } from './support/snapshot-links';

/** Asserts that axe finds nothing serious or critical; the message names the rule and the elements. */
async function expectNoSeriousFault(page: Page, where: string): Promise<void> {
  const { violations, passes } = await new AxeBuilder({ page }).analyze();
  expect(passes.length, 'rules that axe has looked at').toBeGreaterThan(10);
  const serious = violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html.slice(0, 160)).join(' | ')}`);
  expect(serious, `axe on ${where}`).toEqual([]);
}

const dialogs: readonly (readonly [name: string, open: (page: Page) => Promise<void>])[] = [
  ['Plans', (page) => page.getByRole('button', { name: 'Plans' }).click()],
  ['Send snapshot', (page) => page.getByRole('button', { name: 'Send snapshot' }).click()],
  ['Brief', (page) => page.getByRole('button', { name: 'Brief' }).click()],
  ['Keys', (page) => page.getByRole('button', { name: 'Keys' }).click()],
  ['New part', (page) => page.getByRole('button', { name: 'New part' }).click()],
  [
    'Cooler by number',
    async (page) => {
      await treePart(page, 'Cooler').click();
      await page.getByRole('button', { name: 'Edit by number' }).click();
    },
  ],
];

for (const sheet of ['light', 'dark'] as const) {
  test.describe(`on the ${sheet} sheet`, () => {
    test.use({ colorScheme: sheet });
    // Axe looks at every element of a page with a hundred rows, several times over.
    test.slow();

    test('axe finds nothing serious in the plan view, whatever is selected', async ({ page }) => {
      await openPage(page);
      await waitForShelf(page);
      await expect(page.locator('html')).toHaveAttribute('data-sheet', sheet);
      await expectNoSeriousFault(page, 'the plan view');
      await treePart(page, 'Card').click();
      await expectNoSeriousFault(page, 'a selected part');
      await page.getByRole('button', { name: 'Show the tightest clearance' }).click();
      await expectNoSeriousFault(page, 'a selected clearance');
      await page.getByRole('combobox', { name: 'Section' }).selectOption({ label: 'Cut z' });
      await expectNoSeriousFault(page, 'a section');
    });

    test('axe finds nothing serious in a plan with faults', async ({ page }) => {
      await openPage(page);
      await openExample(page, 'Wheelhouse renderer, first sketch');
      await expect(verdictOf(page)).toContainText('Does not fit yet');
      await page.getByRole('tab', { name: /^Findings/ }).click();
      await page.getByRole('list', { name: 'Findings' }).getByRole('button').first().click();
      await expectNoSeriousFault(page, 'the findings');
    });

    test('axe finds nothing serious in the dialogs', async ({ page }) => {
      await openPage(page);
      await waitForShelf(page);
      for (const [name, open] of dialogs)
        await test.step(name, async () => {
          await open(page);
          const dialog = page.getByRole('dialog', { name, exact: true });
          await expect(dialog.getByRole('button').last()).toBeVisible();
          await expectNoSeriousFault(page, `the dialog '${name}'`);
          await page.keyboard.press('Escape');
          await expect(dialog).toHaveCount(0);
        });
    });

    test('axe finds nothing serious in the client view and in a refused link', async ({ page }) => {
      await openPage(page);
      const link = await makeLink(page);
      await page.goto('about:blank');
      await page.goto(link);
      await expect(page.getByRole('button', { name: 'Take a copy' })).toBeVisible();
      await expectNoSeriousFault(page, 'the client view');
      await page.goto('about:blank');
      await page.goto('/#p=nonsense');
      await expect(page.getByRole('heading', { name: 'This link cannot be opened' })).toBeVisible();
      await expectNoSeriousFault(page, 'a refused link');
    });
  });
}

test('Tab goes through the whole page, shows where it is at each stop, and is caught nowhere', async ({
  page,
}) => {
  await openPage(page);
  await waitForShelf(page);
  // A short shelf, so that the way round the page is short as well.
  await page.getByRole('searchbox', { name: 'Find a part on the shelf' }).fill('Fathom 304 end');
  await page.getByRole('textbox', { name: 'Name of the plan' }).focus();
  const areas = new Set<string>();
  let last = '';
  let wentRound = false;
  for (let presses = 0; presses < 120 && !wentRound; presses++) {
    await page.keyboard.press('Tab');
    const stop = await page.evaluate(() => {
      const element = document.activeElement;
      if (!element || element === document.body) return undefined;
      const area = element.closest('header, main, [role="tree"], .panel-shelf, [role="tablist"], table');
      return { area: area?.className || area?.tagName || '', html: element.outerHTML };
    });
    wentRound = stop === undefined || stop.html.includes('Name of the plan');
    if (!stop) break;
    expect(stop.html === last, `Tab stays on ${stop.html.slice(0, 120)}`).toBe(false);
    last = stop.html;
    areas.add(stop.area);
    await expectVisibleFocus(page);
  }
  expect(wentRound, 'Tab comes to the end of the page').toBe(true);
  expect(areas.size, `areas on the way: ${[...areas].join(', ')}`).toBeGreaterThanOrEqual(6);
});

test('a dialog keeps the focus, closes on Escape, and gives the focus back', async ({ page }) => {
  await openPage(page);
  for (const name of ['Brief', 'Plans', 'Send snapshot']) {
    const opener = page.getByRole('button', { name, exact: true });
    await tabTo(page, opener);
    await page.keyboard.press('Enter');
    const dialog = page.getByRole('dialog', { name });
    await expect(dialog).toBeVisible();
    await expect(dialog.getByRole('button').last()).toBeVisible();
    for (let presses = 0; presses < 12; presses++) {
      await page.keyboard.press('Tab');
      const where = await dialog.evaluate((element) => {
        const { activeElement } = document;
        return element.contains(activeElement) || activeElement === document.body;
      });
      expect(where, `the focus stays out of the page behind '${name}'`).toBe(true);
    }
    await page.keyboard.press('Escape');
    await expect(dialog).toHaveCount(0);
    await expect(opener).toBeFocused();
  }
});

test('with a dialog open, no key reaches the plan behind it', async ({ page }) => {
  await openPage(page);
  await treePart(page, 'Cooler').click();
  const parts = await page.getByRole('treeitem').count();
  const name = page.getByRole('textbox', { name: 'Name of the plan' });
  const expectUntouched = async () => {
    await page.keyboard.press('Delete');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Escape');
    await expect(page.getByRole('dialog')).toHaveCount(0);
    await expect(page.getByRole('treeitem')).toHaveCount(parts);
  };

  await page.getByRole('button', { name: 'Send snapshot' }).click();
  // A click on plain text takes the focus away from every control.
  await page.getByText(/^The link holds the whole plan/).click();
  await expectUntouched();
  await expect(page.getByRole('button', { name: 'Undo', exact: true })).toBeDisabled();

  await page.getByRole('button', { name: 'Plans' }).click();
  await page.getByRole('button', { name: /^Rename/ }).click();
  // The field that has the focus goes away with Enter.
  await page.getByRole('textbox', { name: /^New name/ }).fill('Renamed');
  await page.keyboard.press('Enter');
  await expect(name).toHaveValue('Renamed');
  await expectUntouched();
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(name).not.toHaveValue('Renamed');
  await expect(page.getByRole('button', { name: 'Undo', exact: true })).toBeDisabled();
});

test('changes are read out: the verdict and what was done are live', async ({ page }) => {
  await openPage(page);
  await waitForShelf(page);
  await treePart(page, 'Card').click();
  await page
    .getByRole('combobox', { name: 'Replace with' })
    .selectOption({ label: 'Skua 347, 347 mm, 3 slots' });
  await expect(page.getByRole('status').filter({ hasText: 'Card is now Eiderfold Skua 347' })).toBeVisible();
  await expect(verdictOf(page)).toContainText('Does not fit yet');
});

test('colour is never alone: every clearance and finding has its word', async ({ page }) => {
  await openPage(page);
  await openExample(page, 'Wheelhouse renderer, first sketch');
  await expect(verdictOf(page)).toContainText('Does not fit yet');
  const words = /clearance fit|transition fit|interference fit/;
  for (const row of await page
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader') })
    .all())
    await expect(row).toContainText(words);
  await page.getByRole('tab', { name: /^Findings \d+ faults?/ }).click();
  for (const finding of await page.getByRole('list', { name: 'Findings' }).getByRole('listitem').all())
    await expect(finding).toContainText(/^(fault|caution|note)/);
});
