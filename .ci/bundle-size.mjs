// Adds up the JavaScript, gzipped, that the built page loads before it can show anything, and fails above the
// limit. What the page asks for is read from the built index.html; what those files import, from the files.
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { gzipSync } from 'node:zlib';
import { parseSync } from 'oxc-parser';
import { root } from './run-step.mjs';

const limit = 400 * 1000;
const site = join(root, 'dist');

/**
 * @param {string} html
 * @returns {string[]} paths of the scripts and preloaded modules
 */
function scriptsOf(html) {
  const tags = html.match(/<(?:script|link)\b[^>]*>/g) ?? [];
  return tags
    .filter((tag) => tag.startsWith('<script') || /rel="?modulepreload/.test(tag))
    .map((tag) => /(?:src|href)="([^"]+)"/.exec(tag)?.[1])
    .filter((address) => address !== undefined)
    .map((address) => join(site, address));
}

/**
 * @param {string} path
 * @returns {string[]} paths of the files that it imports at once (not those it may import later)
 */
function staticImportsOf(path) {
  const { module } = parseSync(path, readFileSync(path, 'utf8'));
  const requests = [
    ...module.staticImports.map((statement) => statement.moduleRequest.value),
    ...module.staticExports.flatMap((statement) =>
      statement.entries.flatMap((entry) => (entry.moduleRequest ? [entry.moduleRequest.value] : [])),
    ),
  ];
  return requests.map((request) => resolve(dirname(path), request));
}

if (!existsSync(join(site, 'index.html'))) {
  console.error('There is no build to weigh: npm run build makes one.');
  process.exit(1);
}
const waiting = scriptsOf(readFileSync(join(site, 'index.html'), 'utf8'));
if (waiting.length === 0) {
  console.error('The built page loads no script at all, so there is nothing to weigh.');
  process.exit(1);
}
/** @type {Map<string, number>} */
const sizes = new Map();
while (waiting.length > 0) {
  const path = waiting.pop();
  if (path === undefined || sizes.has(path)) continue;
  sizes.set(path, gzipSync(readFileSync(path), { level: 9 }).length);
  waiting.push(...staticImportsOf(path));
}

const total = [...sizes.values()].reduce((sum, size) => sum + size, 0);
/** @param {number} bytes */
const inKilobytes = (bytes) => `${(bytes / 1000).toFixed(1).padStart(7)} kB`;
for (const [path, size] of [...sizes].sort((a, b) => b[1] - a[1]))
  console.log(`${inKilobytes(size)}  ${relative(site, path)}`);
console.log(`${inKilobytes(total)}  JavaScript at first load, gzipped; the limit is ${limit / 1000} kB`);
process.exitCode = total > limit ? 1 : 0;
