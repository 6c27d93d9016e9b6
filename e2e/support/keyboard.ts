import { expect, type Locator, type Page } from '@playwright/test';

/**
 * Presses Tab until the element has the focus, as a person without a mouse does. Fails after `most` presses.
 *
 * @param key 'Tab', or 'Shift+Tab' to go backwards
 */
export async function tabTo(
  page: Page,
  target: Locator,
  key: 'Tab' | 'Shift+Tab' = 'Tab',
  most = 150,
): Promise<void> {
  await expect(target).toBeVisible();
  for (let presses = 0; presses < most; presses++) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press(key);
  }
  throw new Error(`${key} did not reach ${target} within ${most} presses`);
}

/** Asserts that the element with the focus is drawn differently for it: an outline or a shadow round it. */
export async function expectVisibleFocus(page: Page): Promise<void> {
  const look = await page.evaluate(() => {
    const element = document.activeElement;
    if (!element || element === document.body) return undefined;
    const { outlineStyle, outlineWidth, outlineColor, boxShadow } = getComputedStyle(element);
    return { tag: element.outerHTML.slice(0, 120), outlineStyle, outlineWidth, outlineColor, boxShadow };
  });
  expect(look, 'something has the focus').toBeDefined();
  if (!look) return;
  const hasOutline = look.outlineStyle !== 'none' && Number.parseFloat(look.outlineWidth) >= 1;
  expect(hasOutline || look.boxShadow !== 'none', `focus is visible on ${look.tag}`).toBe(true);
}
