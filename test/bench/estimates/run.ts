import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { machineAirOf } from '../../../geometry/estimates/air/machine-air';
import { solveNetwork } from '../../../geometry/estimates/air/solve-network';
import { middleValues } from '../../../geometry/estimates/assumptions';
import { estimatePlan } from '../../../geometry/estimates/estimate-plan';
import { fanSpeedFor } from '../../../geometry/estimates/running/fan-speed';
import { runMachine } from '../../../geometry/estimates/running/run';
import { placePlan } from '../../../geometry/plan/place-plan';
import { readPlan } from '../../../geometry/plan/read-plan';
import { median } from '../measure';
import { type BenchOptions, printTable, short } from '../table';

/*
 * Processor time of the estimates, milliseconds (other work on the machine does not count): the balance of air, heat and controls; the question at which fan speed the
 * noise wish is met (the coupled one, 50 ms at most); everything without and with bands. Scene and cells are made
 * beforehand, as the page has them; the first column says what making the cells costs.
 */

const LIMIT_MS = 50;
const WARM_UP = 15;

export async function runEstimateBenches(options: BenchOptions): Promise<void> {
  const head = [
    'plan',
    'cells',
    'nodes',
    'links',
    'one network, cold',
    'one balance',
    'fan speed for a wish',
    'all, no bands',
    'all, with bands',
  ];
  const rows = ['demo', 'faults', 'small'].map(rowOf);
  printTable(
    `Estimates, median processor ms (fan speed for a wish: at most ${LIMIT_MS})`,
    [head, ...rows],
    options,
  );
}

function rowOf(name: string): readonly string[] {
  const read = readPlan(readFileSync(new URL(`../../../public/plans/${name}.json`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { plan } = read;
  const scene = placePlan(plan);
  const cells = time(1, () => machineAirOf(placePlan(plan)));
  const profile = { load: 'game' } as const;
  const run = runMachine(plan, scene, profile, middleValues);
  if (!run.ok) throw new Error(run.because);
  const { network } = run.run.state;
  return [
    name,
    short(cells),
    String(network.nodes),
    String(network.links.length),
    short(time(30, () => solveNetwork(network.nodes, network.links))),
    short(time(30, () => runMachine(plan, scene, profile, middleValues))),
    short(time(15, () => fanSpeedFor(plan, scene, profile, 36))),
    short(time(5, () => estimatePlan(plan, scene, profile, { bands: false }))),
    short(time(3, () => estimatePlan(plan, scene, profile))),
  ];
}

function time(rounds: number, work: () => unknown): number {
  const times: number[] = [];
  const warm = Math.min(WARM_UP, rounds);
  for (let round = 0; round < warm + rounds; round++) {
    const start = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(start);
    if (round >= warm) times.push((user + system) / 1000);
  }
  return median(times);
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  await runEstimateBenches({ markdown: process.argv.includes('--markdown') });
}
