import { expectDrawnCanvas, readSignal } from './support/canvas';
import { expect, test } from './support/guarded-page';
import {
  expectGap,
  expectReading,
  gapOf,
  openExample,
  openPage,
  readPlanPage,
  shelfPart,
  treePart,
  verdictOf,
  waitForShelf,
} from './support/plan-page';
import { carryFromShelf, dropFromShelf } from './support/shelf-drag';

// From the spec sheets of the cards, mm: by what one card is longer than another, its tip is nearer to the fan. The
// thickness counts from the backplate, so the fan side lies at thickness less backplate below the circuit board.
const fathom = { model: 'Fathom 304', length: 304, below: 58.4 - 3.5 };
const skua322 = { model: 'Skua 322', length: 322.5, below: 55.1 - 3 };
const skua347 = { model: 'Skua 347', length: 347, below: 71.1 - 4 };
// Both front fans stand in the same plane and the card reaches over both.
const tip = /^Card tip to front (upper|lower) fan$/;
const under = 'Card, fan side to supply';

test.beforeEach(async ({ page }) => {
  await openPage(page);
  await waitForShelf(page);
});

test('the page opens on a machine with its verdict, and the drawing is there', async ({ page }) => {
  await expect(page.getByRole('textbox', { name: 'Name of the plan' })).toHaveValue(/./);
  const { verdict, clearances } = await readPlanPage(page);
  // The verdict and the table say the same: the tightest gap is the first row.
  const gaps = clearances.map((row) => row.gap);
  expect(gaps).toEqual([...gaps].sort((a, b) => a - b));
  expect(verdict).toContain(`Tightest: ${clearances[0]?.gap.toFixed(1)} mm`);
  await expectDrawnCanvas(page);
  expect(await readSignal(page), 'nothing overlaps').toEqual({ lines: 0, stripes: 0 });
});

test('a card carried from the shelf shows its margins before it is let go, and Escape leaves no trace', async ({
  page,
}) => {
  const before = await readPlanPage(page);
  await carryFromShelf(page, shelfPart(page, skua322.model), treePart(page, `Card .*${skua322.model}`));
  await expect(treePart(page, 'Card'), 'the new card takes the place of the old one').toHaveCount(1);
  const tipBefore = before.clearances.find((row) => tip.test(row.between))?.gap ?? Number.NaN;
  await expectGap(page, tip, tipBefore - (skua322.length - fathom.length));
  await page.keyboard.press('Escape');
  await expectReading(page, before);
  await page.mouse.up();
  await expectReading(page, before);
  await expect(page.getByRole('button', { name: 'Undo', exact: true })).toBeDisabled();
});

test('a longer card dragged into the slot takes the margin its sheet says; undo and redo give exact numbers', async ({
  page,
}) => {
  const before = await readPlanPage(page);
  const [tipBefore, underBefore] = [await gapOf(page, tip), await gapOf(page, under)];
  await carryFromShelf(page, shelfPart(page, skua322.model), treePart(page, `Card .*${skua322.model}`));
  await dropFromShelf(page);
  await expectGap(page, tip, tipBefore - (skua322.length - fathom.length));
  await expectGap(page, under, underBefore - (skua322.below - fathom.below));
  const after = await readPlanPage(page);

  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expectReading(page, before);
  await expect(page.getByRole('button', { name: 'Undo', exact: true }), 'one drag, one step').toBeDisabled();
  await page.getByRole('button', { name: 'Redo' }).click();
  await expectReading(page, after);
});

test('a card too long clashes: verdict, finding and hatched overlap; undo takes all of it away', async ({
  page,
}) => {
  const before = await readPlanPage(page);
  const overlap = skua347.length - fathom.length - (await gapOf(page, tip));
  expect(overlap, 'the card is longer than its room').toBeGreaterThan(0);
  await carryFromShelf(page, shelfPart(page, skua347.model), treePart(page, `Card .*${skua347.model}`));
  await dropFromShelf(page);

  await expect(verdictOf(page)).toContainText('Does not fit yet');
  await expectGap(page, tip, -overlap);
  await page.getByRole('tab', { name: /^Findings/ }).click();
  const finding = page
    .getByRole('list', { name: 'Findings' })
    .getByRole('button', { name: new RegExp(`card.*fan.*${overlap.toFixed(1)} mm`, 'i') });
  await finding.first().click();
  const card = page.getByRole('article', { name: 'Selected finding' });
  await expect(card).toContainText(`${overlap.toFixed(1)} mm`);
  await expect(card.getByRole('heading', { name: 'Ways out' })).toBeVisible();
  await expect.poll(async () => (await readSignal(page)).lines, { message: 'overlap' }).toBeGreaterThan(20);

  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await page.getByRole('tab', { name: 'Clearances' }).click();
  await expectReading(page, before);
  await expect.poll(async () => (await readSignal(page)).lines, { message: 'overlap' }).toBe(0);
});

test('the plan with faults shows its overlap hatched in place', async ({ page }) => {
  await openExample(page, 'Wheelhouse renderer, first sketch');
  await expect(verdictOf(page)).toContainText('overlaps memory 1 by 7.3 mm');
  await expectDrawnCanvas(page);
  const { lines, stripes } = await readSignal(page);
  expect(lines, 'pixels in the colour of overlap').toBeGreaterThan(100);
  expect(stripes, 'hatch lines side by side').toBeGreaterThanOrEqual(3);
});

test('one selection runs through tree, table and drawing', async ({ page }) => {
  await page.getByRole('button', { name: /^Card tip to front/ }).click();
  const details = page.getByRole('article', { name: 'Selected clearance' });
  await expect(details).toContainText(`${(await gapOf(page, tip)).toFixed(1)} mm`);
  await details.getByRole('button', { name: 'Card', exact: true }).click();
  await expect(treePart(page, 'Card')).toHaveAttribute('aria-selected', 'true');
  await expect(page.getByRole('article', { name: 'Selected part' })).toContainText(fathom.model);
});

test('a part is replaced by another of its kind in one step, and removed with what it carries', async ({
  page,
}) => {
  const before = await readPlanPage(page);
  await treePart(page, 'Cooler').click();
  await page
    .getByRole('combobox', { name: 'Replace with' })
    .selectOption({ label: 'Cairn 148, 148 mm tall' });
  await expect(treePart(page, 'Cooler')).toContainText('Cairn 148');
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expectReading(page, before);

  await treePart(page, 'Processor').click();
  await page.getByRole('button', { name: 'Remove' }).click();
  await expect(treePart(page, 'Processor')).toHaveCount(0);
  await expect(treePart(page, 'Cooler')).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo', exact: true }).first().click();
  await expectReading(page, before);
});
