// Finds a Chromium to test in, or gets one: an installed browser, Playwright's own, Playwright's download, or
// Debian's package.
import { existsSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { runStep } from './run-step.mjs';

const usualPlaces = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/opt/google/chrome/chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

/**
 * @returns {string | undefined} the path of a browser installed on this machine; CHROMIUM_PATH comes first
 */
export function findInstalledChromium() {
  const named = process.env.CHROMIUM_PATH;
  if (named) {
    if (!existsSync(named)) throw new Error(`CHROMIUM_PATH names ${named}, which does not exist.`);
    return named;
  }
  return usualPlaces.find((path) => existsSync(path));
}

/** @returns {Promise<string | undefined>} the browser that Playwright downloaded for itself, if it did */
async function findPlaywrightsOwn() {
  const { chromium } = await import('@playwright/test');
  const path = chromium.executablePath();
  return existsSync(path) ? path : undefined;
}

/**
 * Makes sure that there is a Chromium, installing one if need be.
 *
 * @returns {Promise<string>} its path
 */
export async function ensureChromium() {
  const present = findInstalledChromium() ?? (await findPlaywrightsOwn());
  if (present) return present;

  console.log('No Chromium here yet: asking Playwright for its own.');
  if (runStep('npx', ['playwright', 'install', 'chromium']) === 0) {
    const downloaded = await findPlaywrightsOwn();
    if (downloaded) return downloaded;
  }

  if (process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
    console.log("Playwright's own is not to be had: installing Debian's package.");
    const environment = { DEBIAN_FRONTEND: 'noninteractive' };
    runStep('apt-get', ['update', '-q'], environment);
    const packages = ['chromium', 'fonts-dejavu-core'];
    runStep('apt-get', ['install', '-y', '-q', '--no-install-recommends', ...packages], environment);
    const installed = findInstalledChromium();
    if (installed) return installed;
  }
  throw new Error(
    'No Chromium found and none could be installed. Install one and set CHROMIUM_PATH to its path.',
  );
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href)
  console.log(`Chromium: ${await ensureChromium()}`);
