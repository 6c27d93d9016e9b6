import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expectDrawnCanvas } from './support/canvas';
import { expect, test } from './support/guarded-page';
import {
  clearanceTable,
  expectReading,
  openExample,
  openPage,
  readPlanPage,
  verdictOf,
  waitUntilSaved,
} from './support/plan-page';
import { forgeFragment, makeLink } from './support/snapshot-links';

const demoText = readFileSync(new URL('../public/plans/demo.json', import.meta.url), 'utf8');

/** Gives the open plan a name of its own, so that it can be told from every other. */
async function renamePlan(page: Page, name: string): Promise<void> {
  const field = page.getByRole('textbox', { name: 'Name of the plan' });
  await field.fill(name);
  await field.press('Enter');
  await waitUntilSaved(page);
}

async function expectRefusal(page: Page, reason: RegExp): Promise<void> {
  await expect(page.getByRole('heading', { name: 'This link cannot be opened' })).toBeVisible();
  await expect(page.getByRole('alert')).toContainText(reason);
}

test.describe('a link to send', () => {
  test('opens the same numbers and the same verdict in a browser that has never been here', async ({
    page,
    browser,
    watch,
  }) => {
    await openPage(page);
    const sent = await readPlanPage(page);
    const link = await makeLink(page);
    expect(link.length, 'characters of the link').toBeLessThanOrEqual(2000);

    const elsewhere = await browser.newContext();
    watch(elsewhere);
    const client = await elsewhere.newPage();
    await client.goto(link);
    await expect(client.getByRole('heading', { level: 1, name: 'Chart room workstation' })).toBeVisible();
    await expect(verdictOf(client)).toBeVisible();
    await expectReading(client, sent);
    await expectDrawnCanvas(client);
    // The parts by name, and nothing that edits.
    const names = await page.getByRole('treeitem').locator('.tree-label').allTextContents();
    for (const name of names)
      await expect(client.getByRole('rowheader', { name, exact: true })).toHaveCount(1);
    await expect(client.getByRole('textbox')).toHaveCount(0);
    await expect(client.getByRole('tree')).toHaveCount(0);
    await expect(client.getByRole('button', { name: /undo|remove|place|replace|edit/i })).toHaveCount(0);
    await client.keyboard.press('Delete');
    await expectReading(client, sent);
    await elsewhere.close();
  });

  test('carries a plan with faults, and every finding with it', async ({ page, context }) => {
    await openPage(page);
    await openExample(page, 'Wheelhouse renderer, first sketch');
    await expect(verdictOf(page)).toContainText('Does not fit yet');
    const sent = await readPlanPage(page);
    await page.getByRole('tab', { name: /^Findings/ }).click();
    const list = page.getByRole('list', { name: 'Findings' });
    const findings = await list.getByRole('listitem').allTextContents();
    const link = await makeLink(page);
    expect(link.length, 'characters of the link').toBeLessThanOrEqual(2000);
    const client = await context.newPage();
    await client.goto(link);
    await expectReading(client, sent);
    await expect(client.getByRole('list', { name: 'Findings' }).getByRole('listitem')).toHaveText(findings);
  });

  test('leaves the reader’s own plans alone until a copy is taken', async ({ page, context }) => {
    await openPage(page);
    await openExample(page, 'Shore kit, eleven litres');
    const link = await makeLink(page);
    await renamePlan(page, 'Mine, untouched');
    const own = await readPlanPage(page);

    const reader = await context.newPage();
    await reader.goto(link);
    await expect(reader.getByRole('heading', { level: 1, name: 'Shore kit, eleven litres' })).toBeVisible();
    await page.reload();
    await expect(page.getByRole('textbox', { name: 'Name of the plan' })).toHaveValue('Mine, untouched');
    await expectReading(page, own);
    await page.getByRole('button', { name: 'Plans' }).click();
    const plans = page.getByRole('list', { name: 'Your plans' }).getByRole('listitem');
    await expect(plans.first()).toBeVisible();
    await expect(plans.filter({ hasText: 'Shore kit' })).toHaveCount(0);
    const before = await plans.count();
    await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();

    await reader.getByRole('button', { name: 'Take a copy' }).click();
    await expect(reader.getByRole('textbox', { name: 'Name of the plan' })).toHaveValue(/Shore kit/);
    await expectReading(reader, own);
    expect(new URL(reader.url()).hash, 'the link is out of the address').toBe('');
    await waitUntilSaved(reader);
    await reader.getByRole('button', { name: 'Plans' }).click();
    const after = reader.getByRole('list', { name: 'Your plans' }).getByRole('listitem');
    await expect(after).toHaveCount(before + 1);
    await expect(after.filter({ hasText: 'Mine, untouched' })).toHaveCount(1);
  });

  test('goes back to one’s own plan without a trace', async ({ page }) => {
    await openPage(page);
    await renamePlan(page, 'Mine');
    await page.goto(`/${forgeFragment(demoText)}`);
    await page.getByRole('button', { name: 'Open my own plans' }).click();
    await expect(page.getByRole('textbox', { name: 'Name of the plan' })).toHaveValue('Mine');
    expect(new URL(page.url()).hash).toBe('');
  });
});

test.describe('a link that is not to be trusted', () => {
  const sound = forgeFragment(demoText);
  const middle = Math.floor(sound.length / 2);
  const other = sound[middle] === 'A' ? 'B' : 'A';
  const cases: readonly (readonly [what: string, fragment: string, reason: RegExp])[] = [
    ['damaged', `${sound.slice(0, middle)}${other}${sound.slice(middle + 1)}`, /damaged|cut off/i],
    ['cut off in the middle', sound.slice(0, middle), /damaged|cut off/i],
    ['empty', '#p=', /not a snapshot link|cut off/i],
    ['without a payload', '#p=1.', /damaged|cut off/i],
    ['with foreign characters', `${sound}%3Cscript%3E`, /characters|damaged/i],
    ['of another program', '#p=deadbeef', /not a snapshot link|cut off/i],
    ['made by a newer version', forgeFragment(demoText, 2), /newer version.*format 2/i],
    ['longer than any plan', `#p=1.${'A'.repeat(70_000)}`, /70000 characters.*at most/i],
    ['that unpacks to 40 MB', forgeFragment(Buffer.alloc(40_000_000, 0x20)), /unpacks to more than/i],
    ['that is no JSON', forgeFragment('x = alert(1)'), /JSON/],
    ['that holds a list', forgeFragment('[1, 2, 3]'), /not a plan/i],
    ['nested a thousand deep', forgeFragment('['.repeat(9_000) + ']'.repeat(9_000)), /plan|JSON/i],
    ['with an infinite length', forgeFragment(changed('"length": 1e999')), /length/i],
    ['with an absurd length', forgeFragment(changed('"length": 3e7')), /length/i],
    ['with a negative length', forgeFragment(changed('"length": -304')), /length/i],
    [
      'that says it is a later plan',
      forgeFragment(demoText.replace('"format": 1', '"format": 99')),
      /format.*newer/i,
    ],
  ];

  test('is refused in words that say what was met, and the open plan stays', async ({ page }) => {
    await openPage(page);
    await renamePlan(page, 'Mine');
    const own = await readPlanPage(page);
    const follow = (hash: string) =>
      page.evaluate((fragment) => {
        window.location.hash = fragment;
      }, hash);
    for (const [what, fragment, reason] of cases)
      await test.step(`a link ${what}`, async () => {
        // A refusal in other words between two cases, so that none passes on the words of the one before.
        await follow('#p=808.');
        await expectRefusal(page, /snapshot format 808/);
        await follow(fragment);
        await expectRefusal(page, reason);
      });
    await page.getByRole('button', { name: 'Open my own plans' }).click();
    await expect(page.getByRole('textbox', { name: 'Name of the plan' })).toHaveValue('Mine');
    await expectReading(page, own);
  });

  test('with markup in every text shows it as text and runs none of it', async ({ page }) => {
    await page.addInitScript(() => {
      Object.defineProperty(window, 'alert', {
        value: () => document.documentElement.setAttribute('data-hit', ''),
      });
    });
    const attack = '<img src=x onerror="alert(1)"><script>alert(2)</script>';
    const plan = JSON.parse(demoText);
    plan.name = attack;
    plan.notes = attack;
    plan.revision = '<b onload>';
    plan.brief = { client: attack, purpose: 'javascript:alert(3)', upgrades: [attack] };
    for (const part of Object.values<{ spec: Record<string, unknown> }>(plan.parts)) {
      part.spec.maker = '<svg/onload=alert(4)>';
      part.spec.remark = attack;
    }
    await page.goto(`/${forgeFragment(JSON.stringify(plan))}`);
    await expect(page.getByRole('heading', { level: 1 })).toContainText(attack);
    await expect(page.getByRole('definition').filter({ hasText: attack }).first()).toBeVisible();
    await page.getByRole('button', { name: 'Take a copy' }).click();
    await expect(page.getByRole('textbox', { name: 'Name of the plan' })).toHaveValue(attack);
    await page.getByRole('treeitem', { name: /^Cooler/ }).click();
    await expect(page.getByRole('article', { name: 'Selected part' })).toContainText('<svg/onload=alert(4)>');
    await expect(page.locator('html')).not.toHaveAttribute('data-hit');
    await expect(page.locator('#root img, #root script')).toHaveCount(0);
    await expect(page.locator('#root b, #root svg[onload]')).toHaveCount(0);
  });

  test('with a part mounted on itself opens, and says so', async ({ page }) => {
    await page.goto(`/${forgeFragment(selfMounted())}`);
    await expect(verdictOf(page)).toContainText('Does not fit yet');
    await expect(
      page
        .getByRole('list', { name: 'Findings' })
        .getByText(/carry each other|itself/)
        .first(),
    ).toBeVisible();
  });

  test('with names that are keys of every object does not reach the page’s own objects', async ({ page }) => {
    const poisoned = demoText.replace('"parts": {', '"parts": { "__proto__": { "polluted": true },');
    expect(poisoned).not.toBe(demoText);
    await page.goto(`/${forgeFragment(poisoned)}`);
    await expect(
      page.getByRole('heading', { name: 'This link cannot be opened' }).or(clearanceTable(page)),
    ).toBeVisible();
    expect(await page.evaluate(() => Object.hasOwn(Object.prototype, 'polluted'))).toBe(false);
  });
});

/** The demo plan with the length of its card put another way. */
function changed(length: string): string {
  const text = demoText.replace(/"length": \{\s*"value": 304,[^}]*\}|"length": 304/, length);
  if (text === demoText) throw new Error('the demo plan has no card of 304 mm');
  return text;
}

/** The demo plan with its board mounted on itself. */
function selfMounted(): string {
  const plan = JSON.parse(demoText);
  plan.parts.board.placement = { on: 'board', mount: 'processor' };
  return JSON.stringify(plan);
}
