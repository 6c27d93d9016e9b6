import { dimensionsOf } from '../../../geometry/parts/stated-dimensions/stated-dimensions';
import { addPart } from '../../../geometry/plan/edit-plan';
import { placePlan } from '../../../geometry/plan/place-plan';
import type { Plan } from '../../../geometry/plan/plan-schema';
import { limitsOf } from '../../../geometry/solver/limits/limits-of-plan';
import { upgradeEnvelope } from '../../../geometry/solver/limits/upgrade-envelope';
import { solve } from '../../../geometry/solver/solve';
import { studyOf } from '../../../geometry/solver/stack-up/plan-study';
import { planWithValues } from '../../../geometry/solver/stack-up/plan-values';
import { stackUpOf, stackUpsOf } from '../../../geometry/solver/stack-up/stack-ups';
import { demoLikeBuild } from '../../solver/demo-like-build';
import { examplePlan } from '../../solver/stack-up/example-plans';
import { median } from '../measure';
import { type BenchOptions, printTable, short } from '../table';

const WARM_UP = 8;
const ROUNDS = 25;

/**
 * Stack-ups, limits and the envelope, in milliseconds and as multiples of a full solve timed in the same rounds. A part
 * that moved leaves the sheets as they are (warm: 'sheets known'); a plan just read has them all to look at (cold). The
 * general way to the same sensitivities is to write each dimension off by its band into the plan, and to place and
 * solve that from the beginning; how many times longer it takes stands in the last column.
 */
export async function runStackUpBenches(options: BenchOptions): Promise<void> {
  const rows = [['work', 'parts', 'clearances', 'median ms', 'full solves', 'target ms', 'each solved anew']];
  for (const [name, plan] of [
    ['demo plan', examplePlan('demo')],
    ['25 parts', twentyFiveParts()],
  ] as const) {
    const anew = solvedAnew(plan);
    const all = (tried: Plan) => stackUpsOf(tried).length;
    rows.push(
      row(`${name}: all stack-ups, warm (sheets known)`, plan, sameSheets, all, '30', anew),
      row(`${name}: all stack-ups, cold (plan just read)`, plan, structuredClone, all, '', anew),
      row(`${name}: the tightest stack-up`, plan, sameSheets, tightest, '16.7'),
      row(`${name}: limits of every part`, plan, sameSheets, (tried) => limitsOf(tried).length, '100'),
      row(`${name}: upgrade envelope`, plan, sameSheets, (tried) => upgradeEnvelope(tried).length, ''),
    );
  }
  printTable('Stack-ups and limits', rows, options);
}

/** A new plan object, as after a move. */
function sameSheets(plan: Plan): Plan {
  return { ...plan, parts: { ...plan.parts } };
}

function tightest(plan: Plan): number {
  const [first] = studyOf(plan).solution.clearances;
  return first && stackUpOf(plan, first.id) ? 1 : 0;
}

/** The larger test build with six slim fans standing in its free corners. */
function twentyFiveParts(): Plan {
  let plan = demoLikeBuild();
  for (let number = 0; number < 6; number++) {
    const spec = { kind: 'fan', maker: 'Generic', model: '40 x 10 fan', size: 40, thickness: 10 } as const;
    plan = addPart(plan, spec, { at: [60 + 45 * number, 25, 150] }).plan;
  }
  return plan;
}

/** Median of so many rounds: each takes a second or two. */
const SLOW_ROUNDS = 3;

/** Milliseconds for every dimension at either end of its band, one at a time, placed and solved from the beginning. */
function solvedAnew(plan: Plan): number {
  const times: number[] = [];
  for (let round = 0; round < SLOW_ROUNDS; round++) {
    const start = performance.now();
    for (const [id, { spec }] of Object.entries(plan.parts)) {
      for (const { path, nominal, plusMinus } of dimensionsOf(spec)) {
        if (plusMinus === 0) continue;
        for (const side of [1, -1]) {
          const values = new Map([[id, new Map([[path, nominal + side * plusMinus]])]]);
          solve(placePlan(planWithValues(plan, values)));
        }
      }
    }
    times.push(performance.now() - start);
  }
  return median(times);
}

function row(
  name: string,
  plan: Plan,
  renew: (plan: Plan) => Plan,
  ask: (plan: Plan) => number,
  target: string,
  anew?: number,
): string[] {
  const times: number[] = [];
  const solves: number[] = [];
  for (let round = 0; round < WARM_UP + ROUNDS; round++) {
    const tried = renew(plan);
    const { scene } = studyOf(tried);
    const start = performance.now();
    solve(scene);
    const solved = performance.now();
    void studyOf(tried).solution;
    const asked = performance.now();
    ask(tried);
    if (round < WARM_UP) continue;
    solves.push(solved - start);
    times.push(performance.now() - asked);
  }
  const time = median(times);
  const { parts } = placePlan(plan);
  const { clearances } = studyOf(plan).solution;
  return [
    name,
    String(parts.length),
    String(clearances.length),
    short(time),
    short(time / median(solves)),
    target,
    anew === undefined ? '' : `${short(anew / time)} x`,
  ];
}
