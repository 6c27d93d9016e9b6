import { crc32, deflateRawSync } from 'node:zlib';
import { expect, type Page } from '@playwright/test';

/** Makes the link in the dialog and closes the dialog again. */
export async function makeLink(page: Page): Promise<string> {
  await page.getByRole('button', { name: 'Send snapshot' }).click();
  const dialog = page.getByRole('dialog', { name: 'Send snapshot' });
  const link = await dialog.getByRole('textbox', { name: /^Link/ }).inputValue();
  await dialog.getByRole('button', { name: 'Close' }).click();
  await expect(dialog).toHaveCount(0);
  return link;
}

/**
 * The fragment of a link with any text in it, packed as the page packs it: four bytes of CRC-32, then raw deflate. An
 * attacker can do the same, so integrity alone protects from nothing.
 */
export function forgeFragment(text: string | Buffer, format = 1): string {
  const bytes = Buffer.from(text);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(crc32(bytes));
  const payload = Buffer.concat([check, deflateRawSync(bytes, { level: 9 })]);
  return `#p=${format}.${payload.toString('base64url')}`;
}
