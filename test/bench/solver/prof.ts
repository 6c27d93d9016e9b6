import { movePart } from '../../../geometry/plan/edit-plan';
import { placePlan } from '../../../geometry/plan/place-plan';
import { createSolver } from '../../../geometry/solver/solve';
import { demoLikeBuild } from '../../solver/demo-like-build';

const plan = demoLikeBuild();
const scenes = [0, 1].map((x) => {
  const p = plan.parts['card']!.placement;
  return placePlan(movePart(plan, 'card', { ...p, shift: [x, 0, 0] } as never));
});
const solver = createSolver();
for (let i = 0; i < 500; i++) solver.solve(scenes[i % 2]!);
const c = process.cpuUsage();
const N = 6000;
const t0 = performance.now();
const ts = [];
for (let i = 0; i < N; i++) {
  const t = performance.now();
  solver.solve(scenes[i % 2]!);
  ts.push(performance.now() - t);
}
const d = process.cpuUsage(c);
ts.sort((a, b) => a - b);
console.log(
  'wall',
  (performance.now() - t0) / N,
  'cpu',
  (d.user + d.system) / 1000 / N,
  'min',
  ts[0],
  'p10',
  ts[N / 10],
  'med',
  ts[N / 2],
);
