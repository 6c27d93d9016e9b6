/** What is said about the air of a running machine. */

import { SECONDS_PER_HOUR } from '../air/air-laws';
import { ROOM } from '../air/build-network';
import type { Device } from '../air/devices';
import { ratedFrameFan } from '../air/fan-ratings';
import type { EstimateInput, Figure } from '../estimate';
import { flowOf, heatLeaving } from '../heat/heat-in-place';
import type { Run } from './run';

/** Flows between room and machine, m3/s: through fans, and through openings and seams, each way. */
export interface Exchange {
  readonly drawnByFans: number;
  readonly drawnElsewhere: number;
  readonly blownByFans: number;
  readonly blownElsewhere: number;
}

export function exchangeOf({ state }: Run): Exchange {
  const sums = { drawnByFans: 0, drawnElsewhere: 0, blownByFans: 0, blownElsewhere: 0 };
  state.network.links.forEach((link, i) => {
    if (link.from !== ROOM && link.to !== ROOM) return;
    const flow = (state.solution.flows[i] ?? 0) * (link.from === ROOM ? 1 : -1);
    const byFan = link.role.kind === 'stream' || link.role.kind === 'outlet';
    if (flow >= 0) sums[byFan ? 'drawnByFans' : 'drawnElsewhere'] += flow;
    else sums[byFan ? 'blownByFans' : 'blownElsewhere'] -= flow;
  });
  return sums;
}

export function airFigures(run: Run): readonly Figure[] {
  const { state, question } = run;
  const exchange = exchangeOf(run);
  const { byAir, throughWalls } = heatLeaving(state);
  const drawn = exchange.drawnByFans + exchange.drawnElsewhere;
  const fans = question.air.devices.filter(({ kind }) => kind === 'case fan' || kind === 'radiator');
  const inputs = fans.flatMap(({ streams }) =>
    streams.flatMap(({ fans: places }) =>
      places.flatMap((place): readonly EstimateInput[] => ratedFrameFan(place, question.values).inputs),
    ),
  );
  const missing = fans.flatMap(({ streams }) =>
    streams.flatMap(({ fans: places }) =>
      places.flatMap((place) => ratedFrameFan(place, question.values).missing),
    ),
  );
  const shared = { topic: 'air', inputs, missing } as const;
  return [
    {
      ...shared,
      id: 'air drawn in',
      title: 'Air drawn from the room',
      unit: 'm³/h',
      value: drawn * SECONDS_PER_HOUR,
      formula:
        'Flows at which every fan meets the resistance of its grille, fins and the machine behind it, and as much air leaves every place as comes to it.',
    },
    {
      ...shared,
      id: 'air unfiltered',
      title: 'Of it, through openings without a fan',
      unit: 'm³/h',
      value: exchange.drawnElsewhere * SECONDS_PER_HOUR,
      formula:
        'What comes in by vents and seams because the inside is below the room, or because warm air rises.',
    },
    {
      ...shared,
      id: 'air pressure inside',
      title: 'Pressure inside against the room',
      unit: 'Pa',
      value: insidePressure(run),
      formula: 'Mean over the inside. Above zero, air leaves by the seams; below, dust comes in by them.',
    },
    {
      ...shared,
      id: 'air rise of exhaust',
      title: 'Air that leaves is warmer than the room by',
      unit: 'K',
      value:
        exchange.blownByFans + exchange.blownElsewhere > 0
          ? byAir / (state.network.density * 1005 * (exchange.blownByFans + exchange.blownElsewhere)) +
            state.drawnInRise
          : 0,
      formula: 'Heat that leaves with the air over density, specific heat and flow.',
    },
    {
      ...shared,
      id: 'air heat through walls',
      title: 'Heat that leaves through the walls',
      unit: 'W',
      value: throughWalls,
      formula: 'Area of every wall times its loss times how much warmer the air behind it is.',
    },
    ...question.air.devices.map((device) => deviceFigure(run, device)),
  ];
}

/** Mean over the cells, Pa. */
export function insidePressure({ state, question }: Run): number {
  const cells = question.air.cells.count;
  let sum = 0;
  for (let cell = 1; cell <= cells; cell++) sum += state.solution.pressures[cell] ?? 0;
  return sum / cells;
}

function deviceFigure({ state, question }: Run, device: Device): Figure {
  const flow = device.streams.reduce((sum, { id }) => sum + flowOf(state, id), 0);
  const rated = question.ratings.flow(device);
  const gaps = device.streams.filter(
    ({ intake }) => intake.curtain !== undefined && intake.cell !== undefined,
  );
  const [narrow] = [...gaps].sort((a, b) => a.intake.gap - b.intake.gap);
  const blocked =
    device.streams.find(({ intake }) => intake.blocked) ?? device.outlets.find(({ port }) => port.blocked);
  return {
    id: `air through ${device.id}`,
    topic: 'air',
    title: `Air through ${device.label}`,
    part: device.part.id,
    unit: 'm³/h',
    value: flow * SECONDS_PER_HOUR,
    ...(blocked ? { missing: [`${device.label} stands against closed sheet`] } : {}),
    formula: 'Where the curve of its fans at their speed meets what is in the way.',
    inputs: [
      {
        name: 'free of everything, top speed',
        value: Math.round(rated * SECONDS_PER_HOUR),
        unit: 'm³/h',
        source: 'derived',
      },
      {
        name: 'speed',
        value: Math.round(100 * (state.shares.get(device.id) ?? 0)),
        unit: '%',
        source: 'derived',
      },
      ...(narrow
        ? [
            {
              name: 'free before its intake',
              value: Math.round(narrow.intake.gap * 10) / 10,
              unit: 'mm' as const,
              source: 'plan' as const,
            },
          ]
        : []),
    ],
  };
}
