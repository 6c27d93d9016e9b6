/** Asks the kernel for every estimate of a plan. Runs in the worker, or on the page where there is none. */
import {
  assumptionRanking,
  estimatePlan,
  type FanChange,
  fanChanges,
  fanSpeedFor,
  moneySum,
  type Plan,
  type PlanEstimates,
  type Profile,
  placePlan,
  type Scene,
  solve,
  speedSweep,
  strongestAssumptions,
} from '../../geometry';
import { droopRows } from './droop-clearances';
import type {
  AirAnswer,
  AirRequest,
  EstimatesAnswer,
  EstimatesRequest,
  FanChangeRow,
} from './estimates-request';

export function answerEstimates({ plan, profile, today }: EstimatesRequest): EstimatesAnswer {
  const scene = placePlan(plan);
  const { topics, wishes, refused, power, running } = estimatePlan(plan, scene, profile, { today });
  const { cards: _, ...powerRows } = power;
  const banded = Object.values(topics).flatMap(({ estimates }) => estimates);
  return {
    empty: scene.parts.length === 0,
    profile,
    topics,
    wishes,
    refused,
    currency: moneySum(plan).currency ?? '',
    power: powerRows,
    ...(running ? { running: runningRows(plan, scene, profile, running, topics) } : {}),
    droops: droopRows(plan, scene),
    strongest: strongestAssumptions(banded.filter(({ id, part }) => isHeadline(scene, id, part))),
    ranking: assumptionRanking(banded),
  };
}

const headlines = ['power sustained', 'power wall', 'air drawn in', 'sound at the ear', 'mass'];

/** Figures that a person asks for first: those at the head of the topics, processor and cards. */
function isHeadline(scene: Scene, id: string, part: string | undefined): boolean {
  if (headlines.includes(id)) return true;
  const kind = scene.parts.find((one) => one.id === part)?.kind;
  return id === `heat of ${part}` && (kind === 'processor' || kind === 'card');
}

/** Air for the drawing alone. */
export function answerAir({ plan, profile }: AirRequest): AirAnswer {
  const scene = placePlan(plan);
  const { running, topics } = estimatePlan(plan, scene, profile, { bands: false });
  if (running) return { picture: running.picture };
  const because = topics.air.estimates.find(({ unknown }) => unknown !== undefined)?.unknown;
  return because === undefined ? {} : { because: because.replace('unknown, because ', '') };
}

function runningRows(
  plan: Plan,
  scene: Scene,
  profile: Profile,
  { picture, breaths, spaces, fans, sounds, beating }: NonNullable<PlanEstimates['running']>,
  topics: PlanEstimates['topics'],
): NonNullable<EstimatesAnswer['running']> {
  const { fanCap: _, ...uncapped } = profile;
  const wished = fanSpeedFor(plan, scene, uncapped);
  return {
    picture,
    breaths,
    spaces,
    fans,
    beating,
    sounds: sounds.map(({ id, label, atOneMetre, share, starved }) => ({
      id,
      label,
      atOneMetre,
      ...(share === undefined ? {} : { share }),
      starved: starved ?? false,
    })),
    speeds: wished,
    sweep: wished.kind === 'unknown' ? speedSweep(plan, scene, uncapped) : wished.sweep,
    changes: fanChanges(plan, scene, profile).map((change) => changeRow(scene, change)),
    watched: topics.heat.estimates.flatMap(({ id, part, title, limit }) => {
      if (part === undefined || limit === undefined || !id.startsWith('heat of ')) return [];
      const kind = scene.parts.find((one) => one.id === part)?.kind;
      if (kind !== 'processor' && kind !== 'card') return [];
      return [{ part, label: title.replace(', temperature', ''), limit: limit.value }];
    }),
  };
}

/** A fan put in or turned round may run into something: the solver says what. */
function changeRow(scene: Scene, { changed, ...change }: FanChange): FanChangeRow {
  if (!changed) return change;
  const after = placePlan(changed.plan);
  const overlap = solve(after).findings.find(
    ({ kind, parts }) => kind === 'interference' && parts.includes(changed.part),
  );
  if (!overlap) return change;
  const other = overlap.parts.find((id) => id !== changed.part);
  const label = after.parts.find(({ id }) => id === other)?.label;
  return {
    ...change,
    inTheWay: label ?? scene.parts.find(({ id }) => id === other)?.label ?? 'another part',
  };
}
