import type { Page } from '@playwright/test';
import { expectDrawnCanvas } from './canvas';
import { expect, expectNoMisdeeds, forgiveErrors, test } from './guarded-page';

// The watch and the canvas check must be able to fail, so each is shown failing here.

/** Opens a page of our own making at the site's own address. */
async function openPage(page: Page, script: string): Promise<void> {
  await page.route('**/made-for-this-test.html', (route) =>
    route.fulfill({
      contentType: 'text/html',
      body: `<canvas width="300" height="200"></canvas><script>
        const canvas = document.querySelector('canvas');
        ${script}
      </script>`,
    }),
  );
  await page.goto('/made-for-this-test.html');
}

/** Draws twelve bands of different colours over the left half of the canvas. */
const drawBands = `
  const gl = canvas.getContext('webgl2', { preserveDrawingBuffer: true });
  gl.enable(gl.SCISSOR_TEST);
  for (let band = 0; band < 12; band++) {
    gl.scissor(0, band * 16, 150, 16);
    gl.clearColor(band / 12, 0.5, 1 - band / 12, 1);
    gl.clear(gl.COLOR_BUFFER_BIT);
  }`;

test.describe('the watch over every page', () => {
  test('makes a test fail that is otherwise content', async ({ page }) => {
    test.fail();
    await openPage(page, "console.error('on purpose')");
  });

  test('sees an error in the console', async ({ page, misdeeds }) => {
    await openPage(page, "console.error('on purpose')");
    expect(() => expectNoMisdeeds(misdeeds)).toThrow(/errors in the console/);
    await forgiveErrors(misdeeds, /on purpose/);
    expectNoMisdeeds(misdeeds);
  });

  test('sees an uncaught exception', async ({ page, misdeeds }) => {
    await openPage(page, "throw new Error('on purpose')");
    await forgiveErrors(misdeeds, /on purpose/);
  });

  test('sees a request to another origin', async ({ page, misdeeds }) => {
    await openPage(page, "fetch('http://localhost:9/').catch(() => {})");
    await forgiveErrors(misdeeds, /ERR_/);
    expect(() => expectNoMisdeeds(misdeeds)).toThrow(/requests to another origin/);
    expect(misdeeds.foreignRequests).toEqual(['http://localhost:9/']);
    misdeeds.foreignRequests = [];
  });

  test('sees the pages of a context that a test opens itself', async ({ browser, watch, misdeeds }) => {
    const context = await browser.newContext();
    watch(context);
    await openPage(await context.newPage(), "console.error('on purpose')");
    await forgiveErrors(misdeeds, /on purpose/);
    await context.close();
  });
});

test.describe('the canvas check', () => {
  const least = { colours: 8, inked: 0.01 };
  const check = (page: Page) => expectDrawnCanvas(page, page.locator('canvas'), least, 1_500);

  test('accepts a drawing', async ({ page }) => {
    await openPage(page, drawBands);
    await expectDrawnCanvas(page);
  });

  test('refuses a blank canvas', async ({ page }) => {
    await openPage(page, "canvas.getContext('webgl2')");
    await expect(check(page)).rejects.toThrow(/colours in the drawing/);
  });

  test('refuses a canvas without WebGL', async ({ page }) => {
    await openPage(page, "canvas.getContext('2d').fillRect(0, 0, 50, 50)");
    await expect(check(page)).rejects.toThrow(/a WebGL context that is not lost/);
  });

  test('refuses a lost context', async ({ page }) => {
    await openPage(page, `${drawBands} gl.getExtension('WEBGL_lose_context').loseContext();`);
    await expect(check(page)).rejects.toThrow(/a WebGL context that is not lost/);
  });

  test('does not take a label over a blank canvas for a drawing', async ({ page }) => {
    await openPage(
      page,
      `canvas.getContext('webgl2');
       const label = document.createElement('p');
       label.textContent = 'Some text in many shades of grey';
       label.style = 'position: absolute; top: 20px; left: 20px; font-size: 30px';
       document.body.append(label);`,
    );
    await expect(check(page)).rejects.toThrow(/colours in the drawing/);
  });
});
