import { spawnSync } from 'node:child_process';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder that holds package.json. */
export const root = resolve(dirname(fileURLToPath(import.meta.url)), '..');

/**
 * Runs a program in the project folder with its output shown, and gives back its exit code. The project's own
 * installed programs are found by name, also when this was not started by npm.
 *
 * @param {string} program
 * @param {string[]} args
 * @param {Record<string, string>} [environment] added to this process's own
 * @returns {number} the exit code; 1 when the program could not be started or was ended by a signal
 */
export function runStep(program, args, environment = {}) {
  const separator = process.platform === 'win32' ? ';' : ':';
  const path = [join(root, 'node_modules', '.bin'), process.env.PATH ?? ''].join(separator);
  const result = spawnSync(program, args, {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, PATH: path, ...environment },
    shell: process.platform === 'win32',
  });
  if (result.error) console.error(`${program} could not be started: ${result.error.message}`);
  return result.status ?? 1;
}

/**
 * Prints a heading that is easy to find in a long log.
 *
 * @param {string} title
 */
export function heading(title) {
  console.log(`\n=== ${title} ===`);
}
