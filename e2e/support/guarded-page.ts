import { type BrowserContext, test as base, expect } from '@playwright/test';

/** What the pages of one test did that no page of ours may do. */
export interface Misdeeds {
  /** Errors in the console (refusals by the content security policy among them) and uncaught exceptions. */
  errors: string[];
  /** Addresses asked for outside the page's own server. */
  foreignRequests: string[];
}

const ownSchemes = ['data:', 'blob:', 'about:'];

function isForeign(address: string, home: string): boolean {
  const url = new URL(address);
  return !ownSchemes.includes(url.protocol) && url.host !== new URL(home).host;
}

/** Fails when there is anything on the list. */
export function expectNoMisdeeds(misdeeds: Misdeeds): void {
  expect(misdeeds.errors, 'errors in the console').toEqual([]);
  expect(misdeeds.foreignRequests, 'requests to another origin').toEqual([]);
}

/**
 * Takes errors off the list, for a test that provokes them on purpose. Waits for them, and fails when there are
 * none.
 */
export async function forgiveErrors(misdeeds: Misdeeds, pattern: RegExp): Promise<void> {
  await expect
    .poll(() => misdeeds.errors.some((error) => pattern.test(error)), { message: `an error like ${pattern}` })
    .toBe(true);
  misdeeds.errors = misdeeds.errors.filter((error) => !pattern.test(error));
}

/**
 * Playwright's test, on watch over every page of its context: an error in the console, an uncaught exception or a
 * request to another origin fails the test, whatever it expected besides. A test that opens a context of its own
 * puts it under the same watch with `watch`.
 */
export const test = base.extend<{ misdeeds: Misdeeds; watch: (context: BrowserContext) => void }>({
  misdeeds: [
    // biome-ignore lint/correctness/noEmptyPattern: Playwright reads a fixture's needs from this pattern.
    async ({}, use) => {
      const misdeeds: Misdeeds = { errors: [], foreignRequests: [] };
      await use(misdeeds);
      expectNoMisdeeds(misdeeds);
    },
    { auto: true },
  ],
  watch: async ({ misdeeds, baseURL }, use) => {
    await use((context) => {
      context.on('console', (message) => {
        if (message.type() === 'error') misdeeds.errors.push(message.text());
      });
      context.on('weberror', (error) => {
        misdeeds.errors.push(String(error.error()));
      });
      context.on('request', (request) => {
        if (isForeign(request.url(), baseURL ?? '')) misdeeds.foreignRequests.push(request.url());
      });
    });
  },
  context: async ({ context, watch }, use) => {
    watch(context);
    await use(context);
  },
});

export { expect };
