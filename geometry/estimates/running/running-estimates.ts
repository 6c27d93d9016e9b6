/** Air, heat and sound as estimates: one balance for each assumption varied, shared by all three. */
import type { Plan } from '../../plan/plan-schema';
import type { Scene } from '../../plan/scene';
import {
  type AssumptionId,
  type AssumptionValues,
  assumptionIds,
  assumptions,
  middleValues,
} from '../assumptions';
import { estimatesOf } from '../banded';
import type { Estimate, Figure } from '../estimate';
import { massAssumptions } from '../mass/mass-assumptions';
import type { Profile } from '../profile';
import { soundAssumptions } from '../sound/sound-assumptions';
import { airFigures } from './air-figures';
import { heatFigures } from './heat-figures';
import { heard, type Run, runMachine } from './run';
import { soundFigures } from './sound-figures';

/** What cannot move air, heat or sound. */
const elsewhere: ReadonlySet<AssumptionId> = new Set<AssumptionId>([
  ...(Object.keys(massAssumptions) as (keyof typeof massAssumptions)[]),
  'peakOverSustained',
  'peakShareAt10ms',
  'peakShareAt100ms',
  'supplyReserve',
  'powerFactor',
  'leadLength',
  'leadContact',
]);

/** Assumptions that move only what is heard of a machine in balance. */
const heardOnly: ReadonlySet<string> = new Set(Object.keys(soundAssumptions));

export const runningAssumptions: readonly AssumptionId[] = assumptionIds.filter((id) => !elsewhere.has(id));

export function runningEstimates(
  plan: Plan,
  scene: Scene,
  profile: Profile,
  bands: boolean,
  base: AssumptionValues = middleValues,
): readonly Estimate[] {
  const first = runMachine(plan, scene, profile, base);
  if (!first.ok) return estimatesOf(() => [unknownFigure(first.because)], []);
  const { run } = first;
  const figuresAt = (values: AssumptionValues): readonly Figure[] => {
    if (values === base) return figuresOf(run, plan, profile);
    const changed = assumptionIds.filter((id) => values[id] !== base[id]);
    if (changed.every((id) => heardOnly.has(id)))
      return figuresOf(heard(plan, profile, { ...run.question, values }, run.state), plan, profile);
    const again = runMachine(plan, scene, profile, values, run.state);
    return again.ok ? figuresOf(again.run, plan, profile) : [];
  };
  return estimatesOf(figuresAt, bands ? relevant(plan, run) : [], base);
}

function figuresOf(run: Run, plan: Plan, profile: Profile): readonly Figure[] {
  return [...airFigures(run), ...heatFigures(run, plan, profile), ...soundFigures(run, plan, profile)];
}

function unknownFigure(because: string): Figure {
  return {
    id: 'air drawn in',
    topic: 'air',
    title: 'Air drawn from the room',
    unit: 'm³/h',
    because,
    formula: 'Flows that balance at every place of the machine.',
    inputs: [],
  };
}

/** Leaves out assumptions about kinds of part and circumstances that this plan does not have. */
function relevant(plan: Plan, { question }: Run): readonly AssumptionId[] {
  const kinds = new Set(question.scene.parts.map(({ kind }) => kind));
  const without: readonly (readonly [boolean, readonly AssumptionId[]])[] = [
    [
      kinds.has('card'),
      [
        'cardOfConnectors',
        'idleCard',
        'renderCard',
        'cardFlowPerArea',
        'cardPressure',
        'cardExhaustBack',
        'cardRise',
        'cardTarget',
        'cardLeastSpeed',
        'cardLimit',
        'cardFanSound',
      ],
    ],
    [kinds.has('radiator'), ['coreLoss', 'blockToLiquid', 'radiatorPerSeat', 'pumpWatts', 'pumpSound']],
    [
      kinds.has('supply'),
      ['supplyFlowPerArea', 'supplyPressure', 'supplyLeastSpeed', 'lossOverCertified', 'lossWithoutLevel'],
    ],
    [plan.brief?.roomTemperature === undefined, ['roomTemperature']],
    [plan.brief?.noiseWish === undefined, ['earDistance']],
    // Limits are what figures are held against; they are no part of them.
    [false, ['processorLimit', 'cardLimit', 'driveLimit']],
  ];
  const out = new Set(without.flatMap(([present, ids]) => (present ? [] : ids)));
  return runningAssumptions.filter((id) => !out.has(id) && id in assumptions);
}
