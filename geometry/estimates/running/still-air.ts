/** What the machine sheds with every fan stopped: warm air rises out of it and the walls lose a little. */
import type { Plan } from '../../plan/plan-schema';
import type { Scene } from '../../plan/scene';
import { cellNode } from '../air/build-network';
import { type MachineAir, machineAirOf } from '../air/machine-air';
import type { AssumptionId, AssumptionValues } from '../assumptions';
import type { Figure } from '../estimate';
import { questionOf } from '../heat/ask';
import type { Settled } from '../heat/question';
import { settle } from '../heat/settle';
import type { Profile } from '../profile';

/** Rise of the leaving air at which the floor is stated, K; what a fan-stop idle is usually planned for. */
export const STILL_AIR_RISE = 15;

/** Assumptions that move the floor. */
export const stillAirAssumptions: readonly AssumptionId[] = [
  'grilleOpen',
  'meshOpen',
  'openingCoefficient',
  'seamGap',
  'slotCoverArea',
  'stoppedFan',
  'wallLoss',
  'eddies',
];

/**
 * Heat at which the air inside stands 15 K over the room with every fan stopped, as a function of the assumption
 * values. Each answer starts from the one before, which differs little.
 */
export function stillAirModel(
  plan: Plan,
  scene: Scene,
  profile: Profile,
): (values: AssumptionValues) => Figure {
  let last: { readonly watts: number; readonly state: Settled } | undefined;
  return (values) => {
    const air = machineAirOf(scene);
    if (!air) return { ...figure, because: 'the plan has no enclosure' };
    const idle = questionOf(plan, scene, air, { ...profile, load: 'idle' }, values);
    const total = [...idle.heats.values()].reduce((sum, watts) => sum + watts, 0);
    if (!(total > 0)) return { ...figure, because: 'no part of the plan makes heat' };
    const fanShares = stoppedFans(air);
    let watts = last?.watts ?? total;
    let state = last?.state;
    for (let step = 0; step < MOST_STEPS; step++) {
      const scale = watts / total;
      const heats = new Map([...idle.heats].map(([id, heat]) => [id, heat * scale] as const));
      const settled = settle({ ...idle, heats, fanShares }, state);
      if (!settled.ok) return { ...figure, because: settled.because };
      state = settled.state;
      const rise = meanRise(air, state);
      if (Math.abs(rise - STILL_AIR_RISE) < NEAR_ENOUGH || !(rise > 0)) break;
      // Through openings heat goes with the rise to the power 3/2, through walls with the rise.
      watts *= (STILL_AIR_RISE / rise) ** 1.3;
    }
    if (state) last = { watts, state };
    return { ...figure, value: watts };
  };
}

const MOST_STEPS = 8;

/** Of the 15 K. */
const NEAR_ENOUGH = 0.1;

const figure: Figure = {
  id: 'air still floor',
  topic: 'air',
  title: `Heat shed with every fan stopped, air inside ${STILL_AIR_RISE} K over the room`,
  unit: 'W',
  formula:
    'The same network without fans: a column of warm air drives itself with density, gravity, height and rise, and the walls lose some.',
  inputs: [],
};

function stoppedFans({ devices }: MachineAir): Readonly<Record<string, number>> {
  return Object.fromEntries(
    devices.flatMap(({ id, streams }) => [
      [id, 0] as const,
      ...streams.flatMap(({ fans }) => fans.map(({ part }) => [part.id, 0] as const)),
    ]),
  );
}

function meanRise(air: MachineAir, state: Settled): number {
  let sum = 0;
  for (let cell = 0; cell < air.cells.count; cell++) sum += state.rises[cellNode(cell)] ?? 0;
  return sum / air.cells.count;
}
