import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { expect, test } from './support/guarded-page';
import {
  expectReading,
  openExample,
  openPage,
  readPlanPage,
  treePart,
  verdictOf,
  waitUntilSaved,
} from './support/plan-page';

const planName = (page: Page) => page.getByRole('textbox', { name: 'Name of the plan' });
const ownPlans = (page: Page) => page.getByRole('list', { name: 'Your plans' }).getByRole('listitem');

async function openLibrary(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Plans' }).click();
  await expect(page.getByRole('dialog', { name: 'Plans' })).toBeVisible();
}

async function closeDialog(page: Page): Promise<void> {
  await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
}

async function renamePlan(page: Page, name: string): Promise<void> {
  await planName(page).fill(name);
  await planName(page).press('Enter');
}

/** Exports the open plan from the library and reads the file. */
async function exportPlan(page: Page): Promise<{ readonly name: string; readonly text: string }> {
  await openLibrary(page);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Export the open plan' }).click();
  const file = await download;
  const text = await readFile(await file.path(), 'utf8');
  await closeDialog(page);
  return { name: file.suggestedFilename(), text };
}

/** Chooses a file in the library, which must be open. */
async function importText(page: Page, text: string | Buffer, name = 'given.elbowroom.json'): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Import a file' }).click();
  await (await chooser).setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

test('a plan goes out to a file and comes back the same', async ({ page }) => {
  await openPage(page);
  const before = await readPlanPage(page);
  const file = await exportPlan(page);
  expect(file.name).toBe('chart-room-workstation.elbowroom.json');
  expect(JSON.parse(file.text)).toMatchObject({ format: 1, name: 'Chart room workstation' });

  await openExample(page, 'Shore kit, eleven litres');
  await expect(planName(page)).toHaveValue('Shore kit, eleven litres');
  await openLibrary(page);
  await importText(page, file.text);
  await expect(planName(page)).toHaveValue('Chart room workstation');
  await expectReading(page, before);
  expect((await exportPlan(page)).text, 'a second export is the same file').toBe(file.text);
});

type Edit = (plan: ReturnType<typeof JSON.parse>) => void;

const faults: readonly (readonly [what: string, edit: Edit, field: RegExp, reason: RegExp])[] = [
  [
    'a negative dimension',
    (plan) => {
      plan.parts.cooler.spec.height = -155;
    },
    /cooler.*height/,
    /155|least|small/i,
  ],
  [
    'an absurd dimension',
    (plan) => {
      plan.parts.card.spec.length = 4.2e9;
    },
    /card.*length/,
    /most|large|4200000000/i,
  ],
  [
    'a text for a number',
    (plan) => {
      plan.parts.card.spec.thickness = 'three slots';
    },
    /card.*thickness/,
    /number/i,
  ],
  [
    'a number that is none',
    (plan) => {
      plan.parts.fan.placement = { at: [null, 0, 0] };
    },
    /fan.*at/,
    /number/i,
  ],
  [
    'a missing dimension',
    (plan) => {
      plan.parts.cooler.spec.height = undefined;
    },
    /cooler.*height/,
    /./,
  ],
  [
    'an unknown kind of part',
    (plan) => {
      plan.parts.card.spec.kind = 'teapot';
    },
    /card.*kind/,
    /./,
  ],
  [
    'a newer format',
    (plan) => {
      plan.format = 7;
    },
    /format/,
    /newer version/,
  ],
];

test('a file with a wrong field is refused by the name of that field, and the open plan stays', async ({
  page,
}) => {
  await openPage(page);
  const { text } = await exportPlan(page);
  const before = await readPlanPage(page);
  await waitUntilSaved(page);
  for (const [what, edit, field, reason] of faults)
    await test.step(`a file with ${what}`, async () => {
      const plan = JSON.parse(text);
      edit(plan);
      await openLibrary(page);
      await importText(page, JSON.stringify(plan), 'wrong.json');
      const refusal = page.getByRole('alert').filter({ hasText: "'wrong.json' cannot be opened" });
      await expect(refusal).toBeVisible();
      const line = refusal.getByRole('listitem').first();
      await expect(line.locator('strong')).toHaveText(field);
      await expect(line).toContainText(reason);
      await expect(ownPlans(page)).toHaveCount(1);
      await closeDialog(page);
      await expectReading(page, before);
    });
});

const foreign: readonly (readonly [what: string, text: string | Buffer, reason: RegExp])[] = [
  [
    'infinite numbers',
    '{"format": 1, "name": "x", "parts": {"a": {"spec": {"kind": "fan", "size": 1e999}}}}',
    /size|finite|number/,
  ],
  ['NaN, which JSON does not know', '{"format": 1, "name": "x", "gaps": NaN, "parts": {}}', /JSON/],
  ['half of its text', '{"format": 1, "name": "Cut o', /JSON/],
  ['a picture', Buffer.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10]), /JSON/],
  ['another program’s JSON', '{"version": "2.0", "scene": {"objects": []}}', /format/],
  ['nothing in it', '', /JSON/],
  ['more than a plan can hold', ' '.repeat(2_100_000), /2100000.*at most/],
];

test('a file that is no plan is refused, and the open plan stays', async ({ page }) => {
  await openPage(page);
  const before = await readPlanPage(page);
  for (const [what, text, reason] of foreign)
    await test.step(`a file with ${what}`, async () => {
      await openLibrary(page);
      await importText(page, text, 'wrong.json');
      await expect(page.getByRole('alert').filter({ hasText: 'cannot be opened' })).toContainText(reason);
      await closeDialog(page);
      await expectReading(page, before);
    });
});

test('what was typed is there again after a reload', async ({ page }) => {
  await openPage(page);
  await treePart(page, 'Fan 3').click();
  await page.getByRole('button', { name: 'Remove' }).click();
  const before = await readPlanPage(page);
  await renamePlan(page, 'Without the rear fan');
  // At once: what is not saved yet must come through.
  await page.reload();
  await expect(planName(page)).toHaveValue('Without the rear fan');
  await expectReading(page, before);
  await expect(treePart(page, 'Fan 3')).toHaveCount(0);
});

test('several plans live side by side: new, duplicate, rename, open, delete and back', async ({ page }) => {
  await openPage(page);
  await waitUntilSaved(page);
  await openExample(page, 'Wheelhouse renderer, first sketch');
  await waitUntilSaved(page);
  await openLibrary(page);
  await expect(ownPlans(page)).toHaveCount(2);
  await page.getByRole('button', { name: 'Duplicate Chart room workstation' }).click();
  await expect(ownPlans(page)).toHaveCount(3);
  await page.getByRole('button', { name: 'Rename Chart room workstation, copy' }).click();
  await page
    .getByRole('textbox', { name: 'New name of Chart room workstation, copy' })
    .fill('Second thoughts');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Open Second thoughts' }).click();
  await expect(planName(page)).toHaveValue('Second thoughts');
  await expect(verdictOf(page)).toContainText('Everything fits');

  await openLibrary(page);
  await page.getByRole('button', { name: 'Delete Wheelhouse renderer, first sketch' }).click();
  await expect(ownPlans(page)).toHaveCount(2);
  await page.getByRole('dialog').getByRole('button', { name: 'Undo' }).click();
  await expect(ownPlans(page)).toHaveCount(3);
  await page.getByRole('button', { name: 'Open Wheelhouse renderer, first sketch' }).click();
  await expect(verdictOf(page)).toContainText('Does not fit yet');

  await openLibrary(page);
  await page.getByRole('button', { name: 'New plan' }).click();
  await expect(verdictOf(page)).toContainText('Nothing placed yet');
});

test.describe('two tabs with the same plan', () => {
  test('the one that is behind says so, overwrites nothing, and can take over what the other saved', async ({
    page,
    context,
  }) => {
    await openPage(page);
    await waitUntilSaved(page);
    const second = await context.newPage();
    await openPage(second);
    await waitUntilSaved(second);

    await renamePlan(page, 'From the first tab');
    await waitUntilSaved(page);
    const warning = second.getByRole('alert').filter({ hasText: 'Another tab saved a newer version' });
    await expect(warning).toBeVisible();
    await renamePlan(second, 'From the second tab');
    await expect(warning).toBeVisible();

    const third = await context.newPage();
    await openPage(third);
    await expect(planName(third), 'the second tab has written nothing').toHaveValue('From the first tab');
    await second.getByRole('button', { name: 'Load theirs' }).click();
    await expect(planName(second)).toHaveValue('From the first tab');
    await expect(warning).toHaveCount(0);
  });

  test('the one that is behind can keep its own as a copy', async ({ page, context }) => {
    await openPage(page);
    await waitUntilSaved(page);
    const second = await context.newPage();
    await openPage(second);
    await waitUntilSaved(second);
    await renamePlan(page, 'From the first tab');
    await waitUntilSaved(page);
    await expect(second.getByRole('alert').filter({ hasText: 'Another tab' })).toBeVisible();
    await renamePlan(second, 'From the second tab');
    await second.getByRole('button', { name: 'Keep mine as a copy' }).click();
    await waitUntilSaved(second);
    await openLibrary(second);
    await expect(ownPlans(second).filter({ hasText: 'From the first tab' })).toHaveCount(1);
    await expect(ownPlans(second).filter({ hasText: 'From the second tab, copy' })).toHaveCount(1);
  });
});

test.describe('without storage', () => {
  const warning = (page: Page) => page.getByRole('alert').filter({ hasText: 'Saving is off' });

  test('a browser without IndexedDB says that saving is off; planning and export go on', async ({ page }) => {
    await page.addInitScript(() => {
      Reflect.deleteProperty(window, 'indexedDB');
    });
    await openPage(page);
    expect(await page.evaluate(() => 'indexedDB' in window), 'the browser really has none').toBe(false);
    await expect(warning(page)).toContainText('keeps no data');
    await treePart(page, 'Fan 3').click();
    await page.getByRole('button', { name: 'Remove' }).click();
    await expect(treePart(page, 'Fan 3')).toHaveCount(0);
    const download = page.waitForEvent('download');
    await warning(page).getByRole('button', { name: 'Export to a file' }).click();
    const plan = JSON.parse(await readFile(await (await download).path(), 'utf8'));
    expect(Object.keys(plan.parts)).not.toContain('fan-3');
    expect(Object.keys(plan.parts)).toContain('card');
    await openLibrary(page);
    await expect(page.getByRole('dialog').getByRole('alert')).toContainText('cannot be listed');
    await importText(page, JSON.stringify({ ...plan, name: 'Back from a file' }));
    await expect(planName(page)).toHaveValue('Back from a file');
    await expect(warning(page)).toBeVisible();
  });

  test('a full disk is named, and saving goes on once there is room', async ({ page }) => {
    await page.addInitScript(() => {
      const put = IDBObjectStore.prototype.put;
      IDBObjectStore.prototype.put = function (...given) {
        if (sessionStorage.getItem('disk') === 'full') throw new DOMException('full', 'QuotaExceededError');
        return put.apply(this, given);
      };
    });
    await openPage(page);
    await waitUntilSaved(page);
    await page.evaluate(() => sessionStorage.setItem('disk', 'full'));
    await renamePlan(page, 'On a full disk');
    await expect(warning(page)).toContainText('storage is full');
    await page.evaluate(() => sessionStorage.setItem('disk', 'room'));
    await renamePlan(page, 'With room again');
    await waitUntilSaved(page);
    await page.reload();
    await expect(planName(page)).toHaveValue('With room again');
  });
});
