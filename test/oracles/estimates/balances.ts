/** How well air, mass and heat balance in every example plan at every load. */
import { heatImbalance } from '../../../geometry/estimates/air/carry-heat';
import { middleValues } from '../../../geometry/estimates/assumptions';
import { heatLeaving } from '../../../geometry/estimates/heat/heat-in-place';
import { loads } from '../../../geometry/estimates/profile';
import { runMachine } from '../../../geometry/estimates/running/run';
import { examplePlan } from '../../estimates/example-plan';

export interface Balance {
  readonly plan: string;
  readonly load: string;
  /** Worst of the nodes, as a share of what flows. */
  readonly mass: number;
  /** Of the linear equations, and of heat put in against heat that leaves, as shares. */
  readonly heat: number;
  readonly energy: number;
  readonly settled: boolean;
}

export function balances(): readonly Balance[] {
  return (['demo', 'faults', 'small'] as const).flatMap((name) => {
    const { plan, scene } = examplePlan(name);
    return loads.map((load): Balance => {
      const result = runMachine(plan, scene, { load }, middleValues);
      if (!result.ok) throw new Error(result.because);
      const { state, question } = result.run;
      const put = [...question.heats.values()].reduce((sum, watts) => sum + watts, 0);
      const { byAir, throughWalls } = heatLeaving(state);
      return {
        plan: name,
        load,
        mass: state.solution.imbalance,
        heat: heatImbalance(state.carrier, state.watts, state.rises),
        energy: Math.abs(byAir + throughWalls - put) / put,
        settled: state.settled,
      };
    });
  });
}
