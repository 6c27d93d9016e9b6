// Installs the locked packages, but only when what is installed is not what the lock file says. Contents are
// compared, not file times: a fresh checkout gives every file the same, new time.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { root, runStep } from './run-step.mjs';

/** @typedef {{ version?: string, integrity?: string, optional?: boolean, devOptional?: boolean }} LockedPackage */

/**
 * @param {string} path
 * @returns {Record<string, LockedPackage> | undefined} packages by folder; undefined when there is no such file
 */
function packagesOf(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8')).packages ?? {};
  } catch {
    return undefined;
  }
}

/**
 * @param {Record<string, LockedPackage>} locked the packages of package-lock.json
 * @param {Record<string, LockedPackage> | undefined} installed what npm noted in node_modules, if anything
 * @returns {string | undefined} why an install is needed; undefined when it is not
 */
export function whyInstall(locked, installed) {
  if (!installed) return 'nothing is installed yet';
  for (const [folder, wanted] of Object.entries(locked)) {
    if (folder === '') continue;
    const present = installed[folder];
    // Packages for other platforms are locked but never installed here.
    if (!present && (wanted.optional || wanted.devOptional)) continue;
    if (!present) return `${folder} is missing`;
    if (present.version !== wanted.version || present.integrity !== wanted.integrity)
      return `${folder} is ${present.version}, locked is ${wanted.version}`;
  }
  const stray = Object.keys(installed).find((folder) => !(folder in locked));
  return stray ? `${stray} is installed but not locked` : undefined;
}

/** @returns {number} npm's exit code; 0 when there was nothing to do */
export function installIfNeeded() {
  const locked = packagesOf(join(root, 'package-lock.json'));
  if (!locked) {
    console.error('package-lock.json is missing or unreadable.');
    return 1;
  }
  const why = whyInstall(locked, packagesOf(join(root, 'node_modules', '.package-lock.json')));
  if (!why) return 0;
  console.log(`Installing the locked packages (${why}).`);
  return runStep('npm', ['ci', '--no-audit', '--no-fund']);
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href)
  process.exitCode = installIfNeeded();
