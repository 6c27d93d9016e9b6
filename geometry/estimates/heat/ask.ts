/** From a plan, a scene and a profile to the question the balance is asked. */
import { nominal } from '../../parts/dimension';
import type { Plan } from '../../plan/plan-schema';
import type { Scene } from '../../plan/scene';
import { deviceRatings } from '../air/device-ratings';
import type { MachineAir } from '../air/machine-air';
import type { AssumptionValues } from '../assumptions';
import { firstSupply } from '../power/connectors';
import { type Demand, demandsOf } from '../power/demand';
import { heatsAtLoad } from '../power/power-figures';
import { lossAt } from '../power/wall-figures';
import { caseFanShares, circumstancesOf, type Profile } from '../profile';
import type { Question } from './question';

export function questionOf(
  plan: Plan,
  scene: Scene,
  air: MachineAir,
  profile: Profile,
  values: AssumptionValues,
): Question {
  const demands = demandsOf(scene, values);
  const heats = new Map(heatsAtLoad(demands, profile.load, values));
  const output = [...heats.values()].reduce((sum, watts) => sum + watts, values.extrasWatts);
  const { room, altitude, mains } = circumstancesOf(plan, profile, values);
  const supply = firstSupply(scene);
  let supplyLoad = 0;
  if (supply?.spec.kind === 'supply') {
    supplyLoad = output / nominal(supply.spec.watts);
    heats.set(supply.id, lossAt(supply.spec, output, mains, values));
  }
  return {
    scene,
    air,
    values,
    ratings: deviceRatings(values),
    room,
    altitude,
    heats,
    sustained: sustainedHeats(demands),
    supplyLoad,
    caseShare: profile.fanCap ?? caseFanShares[profile.load],
    coolerMost: profile.fanCap ?? 1,
    fanShares: profile.fanShares ?? {},
  };
}

function sustainedHeats(demands: readonly Demand[]): ReadonlyMap<string, number> {
  return new Map(demands.map(({ part, heat }) => [part.id, heat]));
}
