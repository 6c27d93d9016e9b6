import { readFileSync } from 'node:fs';
import { placePlan } from '../../../geometry/plan/place-plan';
import { readPlan } from '../../../geometry/plan/read-plan';
import { insertionPath } from '../../../geometry/solver/assembly/insertion-path';
import { routeLeads } from '../../../geometry/solver/assembly/leads/route-leads';
import { assemblyOrder } from '../../../geometry/solver/assembly/order/assembly-order';
import { serviceOrder } from '../../../geometry/solver/assembly/order/service-order';
import { median } from '../measure';
import type { BenchOptions } from '../table';

/*
 * The four questions of assembly on the example plans. Limits: an order with reach under 2 s from cold, under 0.5 s
 * after an edit (every part placed anew). Cold is the first call in the process, so the first plan alone pays for it.
 * In 'tilted' and 'blocked' no way that a mount suggests will do, so their order searches for one as well.
 */
export async function runAssemblyBenches(_options: BenchOptions): Promise<void> {
  for (const name of ['demo', 'small', 'faults', 'tilted', 'blocked', 'knot']) {
    const text = readFileSync(new URL(`../../../public/plans/${name}.json`, import.meta.url), 'utf8');
    const read = readPlan(text);
    if (!read.ok) throw new Error(`${name} does not read`);
    const scene = () => placePlan(read.plan);
    const timed = (run: () => unknown): number => {
      const start = performance.now();
      run();
      return performance.now() - start;
    };
    // The knot has no card; its cooler is what cannot pass.
    const part = read.plan.parts.card ? 'card' : 'cooler';
    const first = timed(() => assemblyOrder(scene()));
    const again = Array.from({ length: 7 }, () => timed(() => assemblyOrder(scene())));
    const rows: readonly (readonly [string, number])[] = [
      ['order, first', first],
      ['order, after an edit', median(again)],
      ['service order', timed(() => serviceOrder(scene()))],
      [`way of the ${part}`, timed(() => insertionPath(scene(), part))],
      ['leads', timed(() => routeLeads(scene()))],
    ];
    console.log(`${name}: ${rows.map(([what, ms]) => `${what} ${ms.toFixed(0)} ms`).join(', ')}`);
  }
}
