import { expect, forgiveErrors, test } from './support/guarded-page';

test('the page says what it is, in which language', async ({ page }) => {
  await page.goto('/');
  await expect(page).toHaveTitle(/Elbowroom/);
  await expect(page.locator('html')).toHaveAttribute('lang', 'en');
  await expect(page.locator('#root')).not.toBeEmpty();
});

test('the built page runs no script but its own files', async ({ page, misdeeds }) => {
  await page.goto('/');
  await page.evaluate(() => {
    const script = document.createElement('script');
    script.textContent = 'document.documentElement.dataset.broken = "inline"';
    document.head.append(script);
    const link = document.createElement('a');
    link.setAttribute('onclick', 'document.documentElement.dataset.broken = "handler"');
    document.body.append(link);
    link.click();
    link.remove();
  });
  expect(await page.locator('html').getAttribute('data-broken')).toBeNull();
  await forgiveErrors(misdeeds, /inline script.*Content Security Policy/);
  await forgiveErrors(misdeeds, /inline event handler.*Content Security Policy/);
});

test('the built page can reach nobody else', async ({ page, misdeeds }) => {
  await page.goto('/');
  const answer = await page.evaluate(() => fetch('http://localhost:9/').then(String, () => 'refused'));
  expect(answer).toBe('refused');
  await forgiveErrors(misdeeds, /Content Security Policy/);
});

test('the built page can be served from any folder', async ({ page, baseURL }) => {
  const asked: string[] = [];
  await page.route('**/some/folder/**', async (route) => {
    const path = new URL(route.request().url()).pathname.replace('/some/folder/', '/');
    asked.push(path);
    await route.fulfill({ response: await route.fetch({ url: new URL(path, baseURL).href }) });
  });
  await page.goto('/some/folder/');
  await expect(page.locator('#root')).not.toBeEmpty();
  expect(asked.filter((path) => path.endsWith('.js')).length).toBeGreaterThan(0);
});
