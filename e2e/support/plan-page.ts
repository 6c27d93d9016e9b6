import { expect, type Locator, type Page } from '@playwright/test';

/** A row of the clearances table, in millimetres; negative is overlap. */
export interface ClearanceRow {
  readonly between: string;
  readonly gap: number;
  readonly wanted: number;
}

/** The verdict sentence at the top of the page. */
export const verdictOf = (page: Page): Locator => page.getByRole('status', { name: 'Verdict' });

export const clearanceTable = (page: Page): Locator => page.getByRole('table', { name: /^Clearances/ });

/** A part in the mounting tree, by the beginning of what the tree calls it. */
export const treePart = (page: Page, label: string): Locator =>
  page.getByRole('treeitem', { name: new RegExp(`^${label}\\b`) });

/** A part on the shelf, by its model. */
export const shelfPart = (page: Page, model: string): Locator =>
  page
    .getByRole('list', { name: 'Shelf' })
    .getByRole('listitem')
    .filter({ has: page.getByText(model, { exact: true }) });

const signed = (text: string): number => Number(text.replace('\u2212', '-'));

/** Reads the whole clearances table, in the order on the screen. */
export async function readClearances(page: Page): Promise<readonly ClearanceRow[]> {
  const rows = await clearanceTable(page)
    .locator('tbody tr')
    .evaluateAll((all) =>
      all.map((row) => ({
        between: [...row.querySelectorAll('th span')].map((part) => part.textContent).join(' '),
        figures: row.querySelector('td:last-child')?.textContent ?? '',
      })),
    );
  return rows.map(({ between, figures }) => {
    const found = /([\u2212\d.]+)\s*wanted\s*≥?\s*([\d.]+)$/.exec(figures);
    if (!found) throw new Error(`no gap in '${figures}' of '${between}'`);
    return { between, gap: signed(found[1] ?? ''), wanted: signed(found[2] ?? '') };
  });
}

/** A row of the table by its words. */
type Between = string | RegExp;

const isBetween = (row: ClearanceRow, between: Between): boolean =>
  typeof between === 'string' ? row.between === between : between.test(row.between);

/** The gap on the screen between two faces; fails when the table does not have exactly one such row. */
export async function gapOf(page: Page, between: Between): Promise<number> {
  const rows = (await readClearances(page)).filter((row) => isBetween(row, between));
  expect(rows, `rows for '${between}'`).toHaveLength(1);
  return rows[0]?.gap ?? Number.NaN;
}

/** Waits until a gap shows a figure, to the tenth of a millimetre that is on the screen. */
export async function expectGap(page: Page, between: Between, millimetres: number): Promise<void> {
  await expect
    .poll(async () => (await readClearances(page)).find((row) => isBetween(row, between))?.gap, {
      message: `gap between ${between}`,
    })
    .toBeCloseTo(millimetres, 1);
}

/** Everything that is said about the plan as it stands: the verdict and each number. */
export interface Reading {
  readonly verdict: string;
  readonly clearances: readonly ClearanceRow[];
}

/** Reads verdict and numbers as they are on the screen. */
export async function readPlanPage(page: Page): Promise<Reading> {
  return {
    verdict: ((await verdictOf(page).locator('p').textContent()) ?? '').replaceAll(/\s+/g, ' '),
    clearances: await readClearances(page),
  };
}

/** Waits until verdict and numbers read as they did before. */
export async function expectReading(page: Page, reading: Reading): Promise<void> {
  await expect.poll(() => readPlanPage(page), { message: 'verdict and clearances' }).toEqual(reading);
}

/** Opens the page and waits for a plan with a verdict and a table of clearances. */
export async function openPage(page: Page, address = '/'): Promise<void> {
  await page.goto(address);
  await expect(verdictOf(page)).toContainText(/[Ff]it/);
  await expect(clearanceTable(page)).toBeVisible();
}

/** Waits until the shelf has been fetched. */
export async function waitForShelf(page: Page): Promise<void> {
  await expect(page.getByRole('button', { name: /^Place / }).first()).toBeVisible();
}

/** Opens a copy of one of the example plans by its name in the library. */
export async function openExample(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: 'Plans' }).click();
  await page.getByRole('button', { name: `Open a copy of ${name}` }).click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
}

/** Waits until everything typed so far is in the browser's storage. */
export async function waitUntilSaved(page: Page): Promise<void> {
  await expect(page.getByText('Saved', { exact: true })).toBeVisible();
}
