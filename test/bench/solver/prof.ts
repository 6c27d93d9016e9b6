import { demoLikeBuild } from '../../solver/demo-like-build';
import { placePlan } from '../../../geometry/plan/place-plan';
import { createSolver } from '../../../geometry/solver/solve';
const scene = placePlan(demoLikeBuild());
for(let i=0;i<300;i++) createSolver().solve(scene);
const ts:number[]=[]; for(let i=0;i<200;i++){const t=performance.now();createSolver().solve(scene);ts.push(performance.now()-t);} ts.sort((a,b)=>a-b); console.log('full median',ts[100],'min',ts[0]);
