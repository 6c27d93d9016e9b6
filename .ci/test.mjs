// Runs all tests, or one runner's: node .ci/test.mjs [unit|e2e] [-- what the runner is given besides].
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { closingLine, countBrowserTests, countUnitTests, settleCount } from './count-tests.mjs';
import { installIfNeeded } from './install-if-needed.mjs';
import { heading, root, runStep } from './run-step.mjs';

const reports = join(root, 'test-results');

/**
 * @param {string} path
 * @returns {unknown} undefined when the report is absent or not JSON
 */
function readReport(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return undefined;
  }
}

/**
 * @param {string[]} besides
 */
function runUnitTests(besides) {
  heading('Unit tests (Vitest)');
  const path = join(reports, 'unit.json');
  rmSync(path, { force: true });
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${path}`];
  const exitCode = runStep('vitest', ['run', ...reporters, ...besides]);
  const report = readReport(path);
  return settleCount('Vitest', exitCode, report === undefined ? undefined : countUnitTests(report));
}

/**
 * @param {string[]} besides
 */
async function runBrowserTests(besides) {
  heading('Browser tests (Playwright)');
  const path = join(reports, 'browser.json');
  rmSync(path, { force: true });
  const { ensureChromium } = await import('./find-chromium.mjs');
  console.log(`Chromium: ${await ensureChromium()}`);
  const exitCode = runStep('playwright', ['test', '--reporter=list,json', ...besides], {
    PLAYWRIGHT_JSON_OUTPUT_FILE: path,
  });
  const report = readReport(path);
  return settleCount('Playwright', exitCode, report === undefined ? undefined : countBrowserTests(report));
}

const [first, ...rest] = process.argv.slice(2);
const only = first === 'unit' || first === 'e2e' ? first : undefined;
const besides = only ? rest : [];
if (first !== undefined && !only) {
  console.error(`Say unit or e2e, not ${first}; without either, both are run.`);
  process.exit(1);
}
if (installIfNeeded() !== 0) process.exit(1);
mkdirSync(reports, { recursive: true });

const counts = [];
if (only !== 'e2e') counts.push(runUnitTests(besides));
if (only !== 'unit') counts.push(await runBrowserTests(besides));

heading('Tests');
for (const note of counts.flatMap((count) => count.notes)) console.log(`Note: ${note}`);
console.log(closingLine(counts));
process.exitCode = counts.some((count) => count.failed > 0) ? 1 : 0;
