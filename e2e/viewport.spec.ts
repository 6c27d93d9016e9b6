import type { Locator, Page } from '@playwright/test';
import { expectDrawnCanvas } from './support/canvas';
import { expect, test } from './support/guarded-page';
import {
  expectReading,
  openExample,
  openPage,
  readPlanPage,
  shelfPart,
  treePart,
  waitForShelf,
} from './support/plan-page';

/** Draw calls of the busiest picture; the batches are few whatever the machine has in it. */
const MOST_DRAW_CALLS = 60;

const canvasOf = (page: Page): Locator => page.locator('canvas');
const framesOf = async (page: Page) => Number(await canvasOf(page).getAttribute('data-frames'));
const callsOf = async (page: Page) => Number(await canvasOf(page).getAttribute('data-drawcalls'));
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

/** Waits until the camera has come to rest. */
async function rest(page: Page): Promise<number> {
  let frames = -1;
  await expect
    .poll(
      async () => {
        const before = frames;
        frames = await framesOf(page);
        return frames === before;
      },
      { intervals: [400] },
    )
    .toBe(true);
  return frames;
}

async function expectNewFrame(page: Page, what: string, act: () => Promise<unknown>): Promise<void> {
  const before = await rest(page);
  await act();
  await expect.poll(() => framesOf(page), { message: `a frame after ${what}` }).toBeGreaterThan(before);
}

/**
 * A place in the window where the pointer is over the part: the one with the most of the part round it. Asked of the
 * page in one go, or a drawing without a graphics card would be drawn anew under each place.
 */
async function findOnCanvas(page: Page, part: string): Promise<{ x: number; y: number }> {
  const found = await canvasOf(page).evaluate((canvas, id) => {
    if (!(canvas instanceof HTMLCanvasElement)) return undefined;
    const { left, top, right, bottom } = canvas.getBoundingClientRect();
    const places: { x: number; y: number }[] = [];
    for (let y = top + 8; y < bottom; y += 5) {
      for (let x = left + 8; x < right; x += 12) {
        canvas.dispatchEvent(
          new PointerEvent('pointermove', { clientX: x, clientY: y, pointerType: 'mouse' }),
        );
        if (canvas.dataset.over === id) places.push({ x, y });
      }
    }
    const away = (a: { x: number; y: number }, b: { x: number; y: number }) =>
      Math.hypot(a.x - b.x, a.y - b.y);
    const sum = (place: { x: number; y: number }) =>
      places.reduce((all, other) => all + away(place, other), 0);
    return places.sort((a, b) => sum(a) - sum(b))[0];
  }, part);
  if (!found) throw new Error(`${part} is nowhere under the pointer`);
  return found;
}

const seatOf = (page: Page) =>
  page.getByLabel('Sits on').evaluate((select) => {
    return select instanceof HTMLSelectElement ? (select.selectedOptions[0]?.textContent ?? '') : '';
  });

test.beforeEach(async ({ page }) => {
  await openPage(page);
  await waitForShelf(page);
  await expectDrawnCanvas(page);
});

test('an idle page draws nothing, and every kind of change draws', async ({ page }) => {
  const idle = await rest(page);
  await page.waitForTimeout(1000);
  expect(await framesOf(page)).toBe(idle);

  await expectNewFrame(page, 'selecting', () => treePart(page, 'Card').click());
  await expectNewFrame(page, 'an x-ray', () => button(page, 'X-ray').click());
  await expectNewFrame(page, 'reserved spaces', () => button(page, 'Reserved').click());
  await expectNewFrame(page, 'another view', () => button(page, 'Front').click());
  await expectNewFrame(page, 'fitting', () => button(page, 'Fit').click());
  await expectNewFrame(page, 'a change of theme', () => page.emulateMedia({ colorScheme: 'dark' }));
  await expectNewFrame(page, 'another plan', () => openExample(page, 'Wheelhouse renderer, first sketch'));
  await expectNewFrame(page, 'turning', async () => {
    const box = await canvasOf(page).boundingBox();
    await page.mouse.move((box?.x ?? 0) + 12, (box?.y ?? 0) + 12);
    await page.mouse.down();
    await page.mouse.move((box?.x ?? 0) + 90, (box?.y ?? 0) + 40, { steps: 3 });
    await page.mouse.up();
  });
});

test('the busiest picture costs a few draw calls', async ({ page }) => {
  await openExample(page, 'Wheelhouse renderer, first sketch');
  await treePart(page, 'Cooler').click();
  await button(page, 'Reserved').click();
  await page.getByRole('combobox', { name: 'Section' }).selectOption({ index: 1 });
  await rest(page);
  expect(await callsOf(page)).toBeGreaterThan(5);
  expect(await callsOf(page)).toBeLessThan(MOST_DRAW_CALLS);
  await expectDrawnCanvas(page);
});

test('a card dragged from slot to slot seats itself, in one step of undo; Escape brings it back', async ({
  page,
}) => {
  await shelfPart(page, 'Harbour Link x1')
    .getByRole('button', { name: /^Place / })
    .click();
  await button(page, 'Side').click();
  await rest(page);
  const home = await seatOf(page);
  const before = await readPlanPage(page);
  const card = await findOnCanvas(page, 'card-2');

  await page.mouse.move(card.x, card.y);
  await page.mouse.down();
  await page.mouse.move(card.x, card.y + 160, { steps: 8 });
  await expect.poll(() => seatOf(page), { message: 'previewed slot' }).not.toBe(home);
  await page.keyboard.press('Escape');
  await expect.poll(() => seatOf(page)).toBe(home);
  await page.mouse.up();
  await expectReading(page, before);

  await page.mouse.move(card.x, card.y);
  await page.mouse.down();
  await page.mouse.move(card.x, card.y + 160, { steps: 8 });
  await page.mouse.up();
  await expect.poll(() => seatOf(page), { message: 'slot after dropping' }).not.toBe(home);
  expect(await seatOf(page)).toMatch(/^Slot \d/);
  await button(page, 'Undo').click();
  await treePart(page, 'Card 2').click();
  await expect.poll(() => seatOf(page), { message: 'slot after one undo' }).toBe(home);
});

test('with Alt held a card stands free where the pointer is, and its margins follow', async ({ page }) => {
  await button(page, 'Side').click();
  await rest(page);
  const before = await readPlanPage(page);
  const card = await findOnCanvas(page, 'card');
  await page.mouse.move(card.x, card.y);
  await page.mouse.down();
  await page.keyboard.down('Alt');
  await page.mouse.move(card.x + 40, card.y, { steps: 6 });
  await expect.poll(() => seatOf(page)).toContain('free place');
  expect((await readPlanPage(page)).clearances).not.toEqual(before.clearances);
  await page.keyboard.up('Alt');
  await expect.poll(() => seatOf(page), { message: 'back on its slot' }).toMatch(/^Slot/);
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await expectReading(page, before);
  // The camera answers as before: nothing was left switched off.
  await expectNewFrame(page, 'zooming', () => page.mouse.wheel(0, -200));
});

test('a click selects the part under the pointer in the tree, and beside the machine selects nothing', async ({
  page,
}) => {
  const { x, y } = await findOnCanvas(page, 'cooler');
  await page.mouse.click(x, y);
  await expect(treePart(page, 'Cooler')).toHaveAttribute('aria-selected', 'true');
  const box = await canvasOf(page).boundingBox();
  await page.mouse.click((box?.x ?? 0) + 6, (box?.y ?? 0) + 6);
  await expect(treePart(page, 'Cooler')).toHaveAttribute('aria-selected', 'false');
});

test('the drawing says what it shows and is no trap for the keyboard', async ({ page }) => {
  await expect(page.getByRole('img', { name: /^Drawing of the plan\. Everything fits/ })).toBeVisible();
  expect(await canvasOf(page).getAttribute('tabindex')).toBeNull();
});
