import { pathToFileURL } from 'node:url';
import type { BenchOptions } from '../table';
import { benchAllPairs } from './all-pairs';
import { benchOneMove } from './one-move';
import { benchPairQuestions } from './pair-questions';
import { benchSixWayTravel } from './six-way-travel';

/** The geometry kernel beside general-purpose libraries, on the four workloads it is made for. */
export async function runSpaceBenches(options: BenchOptions): Promise<void> {
  await benchOneMove(options);
  await benchAllPairs(options);
  await benchPairQuestions(options);
  await benchSixWayTravel(options);
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  await runSpaceBenches({ markdown: process.argv.includes('--markdown') });
}
