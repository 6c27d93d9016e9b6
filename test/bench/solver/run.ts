import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { movePart } from '../../../geometry/plan/edit-plan';
import { placePlan } from '../../../geometry/plan/place-plan';
import { isSeated, type Plan } from '../../../geometry/plan/plan-schema';
import { readPlan } from '../../../geometry/plan/read-plan';
import type { Scene } from '../../../geometry/plan/scene';
import { createSolver, solve } from '../../../geometry/solver/solve';
import { demoLikeBuild } from '../../solver/demo-like-build';
import { median } from '../measure';
import { type BenchOptions, printTable, short } from '../table';

const WARM_UP = 100;
const ROUNDS = 300;

/** The whole solve and the solve after one part has moved, in milliseconds, each on a warm machine. */
export async function runSolverBenches(options: BenchOptions): Promise<void> {
  const fitting = demoLikeBuild();
  const demo = demoPlan();
  const large = withSecondBoard(fitting);
  const rows = [
    ['work', 'parts', 'boxes', 'median ms', 'target ms'],
    fullRow('full solve, demo plan', demo),
    ...['card', 'cooler', 'fan', 'supply', 'board'].map((part) => moveRow('demo plan', demo, part)),
    fullRow('full solve, plan that fits', fitting),
    fullRow('full solve, plan with faults', withFaults(fitting)),
    ...['card', 'cooler', 'fan-2', 'supply', 'board'].map((part) => moveRow('plan that fits', fitting, part)),
    moveRow('plan with faults', withFaults(fitting), 'card'),
    fullRow('full solve, with a second board', large),
    ...['card', 'cooler', 'fan-2', 'supply'].map((part) => moveRow('with a second board', large, part)),
  ];
  printTable('Solver', rows, options);
}

/** The plan the app opens with. */
function demoPlan(): Plan {
  const read = readPlan(readFileSync(new URL('../../../public/plans/demo.json', import.meta.url), 'utf8'));
  if (!read.ok) throw new Error('the demo plan cannot be read');
  return read.plan;
}

/** Some 400 boxes: a second board with cooler, memory and card stands in front of the machine, as on a full bench. */
function withSecondBoard(plan: Plan): Plan {
  const second = ['board', 'processor', 'cooler', 'memory', 'memory-2', 'card'].flatMap((id) => {
    const part = plan.parts[id];
    if (!part) throw new Error(`the plan has no ${id}`);
    const { placement } = part;
    const on =
      isSeated(placement) && id !== 'board' ? { ...placement, on: `second ${placement.on}` } : undefined;
    return [
      [`second ${id}`, { ...part, placement: on ?? { at: [700, 330, 10] as [number, number, number] } }],
    ];
  });
  return { ...plan, parts: { ...plan.parts, ...Object.fromEntries(second) } };
}

function withFaults(plan: Plan): Plan {
  const { card, memory } = plan.parts;
  if (card?.spec.kind !== 'card' || memory?.spec.kind !== 'memory') throw new Error('not the plan expected');
  const parts = {
    ...plan.parts,
    card: { ...card, spec: { ...card.spec, length: 400 } },
    memory: { ...memory, spec: { ...memory.spec, height: 46 } },
  };
  return { ...plan, parts };
}

function fullRow(name: string, plan: Plan): string[] {
  const scene = placePlan(plan);
  const times: number[] = [];
  for (let round = 0; round < WARM_UP + ROUNDS; round++) {
    const start = performance.now();
    solve(scene);
    if (round >= WARM_UP) times.push(performance.now() - start);
  }
  return [name, ...sizeOf(scene), short(median(times)), '3'];
}

/** One part goes to and fro by 1 mm; what is mounted on it goes with it. */
function moveRow(name: string, plan: Plan, part: string): string[] {
  const scenes = [0, 1].map((shift) => placePlan(shifted(plan, part, shift)));
  const solver = createSolver();
  const times: number[] = [];
  for (let round = 0; round < WARM_UP + ROUNDS; round++) {
    const scene = scenes[round % 2];
    if (!scene) throw new Error('no scene');
    const start = performance.now();
    solver.solve(scene);
    if (round >= WARM_UP) times.push(performance.now() - start);
  }
  const [first] = scenes;
  return [`one part moved: ${part}, ${name}`, ...(first ? sizeOf(first) : []), short(median(times)), '0.3'];
}

function shifted(plan: Plan, id: string, by: number): Plan {
  const placement = plan.parts[id]?.placement;
  if (!placement || !isSeated(placement)) throw new Error(`${id} is not seated`);
  return movePart(plan, id, { ...placement, shift: [by, 0, 0] });
}

function sizeOf(scene: Scene): string[] {
  return [String(scene.parts.length), String(scene.boxes.length)];
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  await runSolverBenches({ markdown: process.argv.includes('--markdown') });
}
