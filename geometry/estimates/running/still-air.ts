/** What the machine sheds with every fan stopped: warm air rises out of it and the walls lose a little. */
import type { Plan } from '../../plan/plan-schema';
import type { Scene } from '../../plan/scene';
import { machineAirOf } from '../air/machine-air';
import type { AssumptionId, AssumptionValues } from '../assumptions';
import type { Figure } from '../estimate';
import { questionOf } from '../heat/ask';
import { heatLeaving, settle } from '../heat/settle';
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

/** Heat at which the air inside stands 15 K over the room with every fan stopped. */
export function stillAirFigure(plan: Plan, scene: Scene, profile: Profile, values: AssumptionValues): Figure {
  const figure: Figure = {
    id: 'air still floor',
    topic: 'air',
    title: `Heat shed with every fan stopped, air inside ${STILL_AIR_RISE} K over the room`,
    unit: 'W',
    formula:
      'The same network without fans: a column of warm air drives itself with density, gravity, height and rise, and the walls lose some.',
    inputs: [],
  };
  const air = machineAirOf(scene);
  if (!air) return { ...figure, because: 'the plan has no enclosure' };
  const idle = questionOf(plan, scene, air, { ...profile, load: 'idle' }, values);
  const stopped = Object.fromEntries(
    air.devices.flatMap((device) => [
      [device.id, 0],
      ...device.streams.flatMap(({ fans }) => fans.map(({ part }) => [part.id, 0] as const)),
    ]),
  );
  const total = [...idle.heats.values()].reduce((sum, watts) => sum + watts, 0);
  if (!(total > 0)) return { ...figure, because: 'no part of the plan makes heat' };
  let watts = total;
  for (let step = 0; step < MOST_STEPS; step++) {
    const heats = new Map([...idle.heats].map(([id, heat]) => [id, (heat * watts) / total] as const));
    const settled = settle({ ...idle, heats, fanShares: stopped });
    if (!settled.ok) return { ...figure, because: settled.because };
    const { state } = settled;
    let rise = 0;
    for (let cell = 1; cell <= air.cells.count; cell++) rise += (state.rises[cell] ?? 0) / air.cells.count;
    if (Math.abs(rise - STILL_AIR_RISE) < 0.05 || heatLeaving(state).byAir < 0) break;
    // Through openings heat goes with the rise to the power 3/2, through walls with the rise.
    watts *= (STILL_AIR_RISE / rise) ** 1.3;
  }
  return { ...figure, value: watts };
}

const MOST_STEPS = 6;
