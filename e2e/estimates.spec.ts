import { expect, test } from './support/guarded-page';
import { openPage, waitForShelf } from './support/plan-page';

// Some fifty balances a load, on a machine that may be busy.
const patient = { timeout: 60_000 };

test('the estimates open on the plan, say that they are estimates, and follow the load', async ({ page }) => {
  await openPage(page);
  await waitForShelf(page);
  await page.getByRole('button', { name: 'Estimates', exact: true }).click();
  const dialog = page.getByRole('dialog', { name: 'Estimates' });
  const topic = (name: string) =>
    dialog.locator('.estimates-topic').filter({ hasText: new RegExp(`^${name}`) });
  await expect(topic('Power').locator('summary').first()).toContainText('estimate', patient);
  await expect(dialog.getByRole('button', { name: 'Game', exact: true })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
  const heat = topic('Heat').locator('summary').first();
  const ofGame = (await heat.textContent()) ?? '';

  await topic('Power').locator('summary').first().focus();
  await page.keyboard.press('Enter');
  await expect(topic('Power').getByRole('table', { name: 'Plugs' })).toBeVisible();

  await dialog.getByRole('button', { name: 'Idle', exact: true }).click();
  await expect(heat).not.toHaveText(ofGame, patient);
  await page.keyboard.press('Escape');
  await expect(dialog).toHaveCount(0);
});
