import { expect, type Locator, type Page } from '@playwright/test';

/**
 * Takes a row of the shelf with the mouse and carries it over the drawing, from the top down, until `seated` is on
 * the screen. Leaves the button pressed. Fails when the part never comes to that place.
 */
export async function carryFromShelf(page: Page, row: Locator, seated: Locator): Promise<void> {
  await row.scrollIntoViewIfNeeded();
  const from = await row.boundingBox();
  const canvas = await page.locator('canvas').boundingBox();
  if (!from || !canvas) throw new Error('the row or the drawing has no place on the page');
  await page.mouse.move(from.x + from.width / 3, from.y + from.height / 2);
  await page.mouse.down();
  await page.mouse.move(from.x + from.width / 3 + 12, from.y + from.height / 2, { steps: 3 });
  for (let down = 0.2; down < 0.9; down += 0.05) {
    await page.mouse.move(canvas.x + canvas.width * 0.47, canvas.y + canvas.height * down, { steps: 2 });
    if ((await seated.count()) === 1) return;
  }
  await page.mouse.up();
  throw new Error('the part found no such place');
}

/** Lets go of what the mouse carries and waits until the step can be undone. */
export async function dropFromShelf(page: Page): Promise<void> {
  await page.mouse.up();
  await expect(page.getByRole('button', { name: 'Undo', exact: true })).toBeEnabled();
}
