import { runAssemblyBenches } from './assembly/run';
import { runEstimateBenches } from './estimates/run';
import { runSolverBenches } from './solver/run';
import { runStackUpBenches } from './solver/stack-up';
import { runSpaceBenches } from './space/run';
import type { BenchOptions } from './table';

/*
 * Runs the benchmark suites, all or those named: `npx tsx test/bench/run.ts [suite ...] [--markdown]`. Prints to the
 * terminal only.
 */

const suites: readonly { readonly name: string; readonly run: (options: BenchOptions) => Promise<void> }[] = [
  { name: 'space', run: runSpaceBenches },
  { name: 'assembly', run: runAssemblyBenches },
  { name: 'solver', run: runSolverBenches },
  { name: 'stack-up', run: runStackUpBenches },
  { name: 'estimates', run: runEstimateBenches },
];

const wanted = process.argv.slice(2).filter((argument) => !argument.startsWith('--'));
const unknown = wanted.filter((name) => !suites.some((suite) => suite.name === name));
if (unknown.length > 0)
  throw new Error(`no suite named ${unknown.join(', ')}; there are: ${suites.map((s) => s.name).join(', ')}`);

for (const suite of suites) {
  if (wanted.length === 0 || wanted.includes(suite.name)) {
    await suite.run({ markdown: process.argv.includes('--markdown') });
  }
}
