/** Asks the kernel for every estimate of a plan. Runs in the worker, or on the page where there is none. */
import { estimatePlan, type PlanEstimates, placePlan } from '../../geometry';
import type { EstimatesAnswer, EstimatesRequest } from './estimates-request';

export function answerEstimates({ plan, load, today }: EstimatesRequest): EstimatesAnswer {
  const scene = placePlan(plan);
  const { topics, wishes, refused, power, running } = estimatePlan(plan, scene, { load }, { today });
  const { bars, rated, excursions, plugs, sharedLeads } = power;
  return {
    empty: scene.parts.length === 0,
    load,
    topics,
    wishes,
    refused,
    power: { bars, rated, excursions, plugs, sharedLeads },
    ...(running ? { running: rowsOf(running) } : {}),
  };
}

function rowsOf({
  fans,
  sounds,
}: NonNullable<PlanEstimates['running']>): NonNullable<EstimatesAnswer['running']> {
  return {
    fans: fans.map(({ stream, label, share, at }) => ({
      stream,
      label,
      share,
      flow: at.flow,
      pressure: at.pressure,
    })),
    sounds: sounds.map(({ id, label, atOneMetre, share, starved }) => ({
      id,
      label,
      atOneMetre,
      ...(share === undefined ? {} : { share }),
      starved: starved ?? false,
    })),
  };
}
