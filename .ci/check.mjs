// Everything that can be said about the code without running it. All parts run, so one look shows all faults.
import { installIfNeeded } from './install-if-needed.mjs';
import { heading, runStep } from './run-step.mjs';

/** @type {{ name: string, title: string, program: string, args: string[] }[]} */
const parts = [
  {
    name: 'lint',
    title: 'Lint and format (Biome)',
    program: 'biome',
    args: ['check', '--error-on-warnings', '.'],
  },
  {
    name: 'types',
    title: 'Types: the whole project',
    program: 'tsc',
    args: ['--project', 'tsconfig.json'],
  },
  {
    name: 'types',
    title: 'Types: geometry alone, with neither a page nor Node around it',
    program: 'tsc',
    args: ['--project', 'geometry/tsconfig.json'],
  },
  {
    name: 'house',
    title: 'House rules: dependencies point one way, no cycles, no large files',
    program: 'tsx',
    args: ['test/house/check-house.ts'],
  },
  {
    name: 'unused',
    title: 'Unused files, exports and packages (knip)',
    program: 'knip',
    args: [],
  },
];

const wanted = process.argv.slice(2);
const unknown = wanted.filter((name) => !parts.some((part) => part.name === name));
if (unknown.length > 0) {
  console.error(`No such check: ${unknown.join(', ')}.`);
  process.exit(1);
}
if (installIfNeeded() !== 0) process.exit(1);

const failed = parts
  .filter((part) => wanted.length === 0 || wanted.includes(part.name))
  .filter((part) => {
    heading(part.title);
    const ok = runStep(part.program, part.args) === 0;
    if (ok) console.log('Nothing to complain about.');
    return !ok;
  });

heading('Check');
console.log(failed.length === 0 ? 'All clear.' : failed.map((part) => `FAILED: ${part.title}`).join('\n'));
process.exitCode = failed.length === 0 ? 0 : 1;
