import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from './support/guarded-page';
import { openPage, waitForShelf } from './support/plan-page';

const header = 'maker,model,size (mm),thickness (in),speed (rpm),flow (CFM),sound (dB)';
const row = (index: number, size = 120) =>
  `Tarnwater,Reed ${index},${size},1,${900 + (index % 900)},${40 + (index % 40)},24.5`;
const csv = (rows: number) =>
  [header, ...Array.from({ length: rows }, (_, index) => row(index, index === 7 ? 121 : 120))].join('\r\n');

test('a table is matched, checked row by row, kept and taken back; a large one can be called off', async ({
  page,
}) => {
  await openPage(page);
  await waitForShelf(page);
  await page.getByRole('button', { name: 'More', exact: true }).click();
  await page.getByRole('button', { name: 'Part files' }).click();
  const dialog = page.getByRole('dialog', { name: 'Parts from a file, or into one' });
  const choose = (name: string, text: string) =>
    dialog
      .getByLabel('File with parts')
      .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });

  await test.step('a file that is none changes nothing', async () => {
    await choose('nothing.json', '{"format": 12, "parts": []}');
    await expect(dialog.getByRole('alert')).toContainText('Nothing was changed');
  });

  await test.step('good rows are kept, the bad one is named, and all is taken back', async () => {
    await choose('fans.csv', csv(40));
    await dialog.getByRole('combobox', { name: 'Every row is a' }).selectOption('fan');
    await expect(dialog.getByText('7 of 7 columns are matched')).toBeVisible();
    const { violations } = await new AxeBuilder({ page }).include('dialog').analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.target.join(' ')}`)).toEqual([]);
    await dialog.getByRole('button', { name: 'Check the rows' }).click();
    await expect(dialog.getByRole('row', { name: /^9 size \(mm\) must be one of/ })).toBeVisible();
    await dialog.getByRole('button', { name: 'Keep 39 parts' }).click();
    await expect(dialog.getByText('39 parts are on your shelf.')).toBeVisible();
    await dialog.getByRole('button', { name: 'Undo' }).click();
    await expect(dialog.getByText('39 parts taken off the shelf again.')).toBeVisible();
  });

  await test.step('fifty thousand rows are called off half way', async () => {
    await choose('many.csv', csv(50_000));
    await dialog.getByRole('combobox', { name: 'Every row is a' }).selectOption('fan');
    await expect(dialog.getByText('as you matched this table last time')).toBeVisible();
    await dialog.getByRole('button', { name: 'Check the rows' }).click();
    await expect(dialog.getByRole('progressbar')).toBeVisible();
    await dialog.getByRole('button', { name: 'Cancel' }).click();
    await expect(dialog.getByText('Called off. Nothing was changed.')).toBeVisible();
  });
});
