import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from './support/guarded-page';
import { expectGap, gapOf, openPage, treePart, waitForShelf } from './support/plan-page';

const panel = 'Cooler to side panel';
const sheet = [
  'Tarnwater Spire 158',
  'Manufacturer: Tarnwater',
  'Model: Spire 158',
  'Type: single tower',
  'Height (without fan): 153 mm',
  'Width: 124 mm',
  'Depth (without fan): 50 mm',
  'Weight: 810 g',
  'TDP: 190 W',
  'Fan: 120 x 120 x 25 mm',
  'Fan speed: 400-1500 rpm ±10%',
  'Static pressure: 1.85 mmH2O',
  'Noise: 18 dB(A) in quiet mode, 24.6 dB(A) at full speed',
  'Warranty: 6 years',
].join('\n');

// A newcomer's path: paste, answer, correct one field, place, see the margin.
test('a pasted sheet becomes a part in the plan, with its margin', async ({ page }) => {
  await openPage(page);
  await waitForShelf(page);
  const room = await gapOf(page, panel);
  await treePart(page, 'Cooler').click();
  await page.getByRole('button', { name: 'Remove' }).click();
  await expect(treePart(page, 'Cooler')).toHaveCount(0);
  await page.getByRole('button', { name: 'New part' }).click();
  const dialog = page.getByRole('dialog', { name: 'New part' });
  await dialog.getByRole('combobox', { name: 'Kind' }).selectOption('fan');
  await dialog.getByRole('button', { name: 'Paste a spec sheet' }).click();
  await dialog.getByRole('textbox', { name: 'Text of the spec sheet' }).fill(sheet);

  await test.step('the kind is remarked on, and changed only when asked', async () => {
    await dialog.getByRole('button', { name: 'Make it a cooler' }).click();
    await expect(dialog.getByRole('combobox', { name: 'Kind' })).toHaveValue('cooler');
    await expect(dialog.getByRole('textbox', { name: 'Text of the spec sheet' })).toHaveValue(sheet);
  });
  await test.step('each phrase is marked, beside the field it goes to; two sounds are a question', async () => {
    await expect(dialog.locator('mark.read', { hasText: 'Height (without fan): 153 mm' })).toBeVisible();
    await expect(dialog.getByRole('region', { name: 'Read' })).toContainText('153 mm');
    const { violations } = await new AxeBuilder({ page }).include('dialog').analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.target.join(' ')}`)).toEqual([]);
    await dialog.getByRole('radio', { name: '24.6 dB', exact: true }).check();
  });
  await test.step('the form is filled: one field is corrected, and the part placed', async () => {
    await dialog.getByRole('button', { name: 'Fill the form' }).click();
    await expect(dialog.getByText(/fields filled from the sheet/)).toBeVisible();
    const height = dialog.locator('[id="field-height"]');
    await expect(height).toHaveValue('153');
    await height.fill('153.4');
    await dialog.getByRole('button', { name: 'Place in the plan' }).click();
    await expect(dialog).toHaveCount(0);
  });
  await expect(treePart(page, 'Cooler').filter({ hasText: 'Spire 158' })).toBeVisible();
  // The cooler that stood there is 155.2 high.
  await expectGap(page, panel, room + 155.2 - 153.4);
});
