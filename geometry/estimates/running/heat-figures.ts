/** What is said about temperatures. */

import type { Plan } from '../../plan/plan-schema';
import type { EstimateInput, Figure } from '../estimate';
import { intakeRise } from '../heat/heat-in-place';
import type { PartTemperature } from '../heat/temperatures';
import { circumstancesOf, type Profile } from '../profile';
import type { Run } from './run';

export function heatFigures(run: Run, plan: Plan, profile: Profile): readonly Figure[] {
  const { question, state, temperatures } = run;
  const { room, roomStated } = circumstancesOf(plan, profile, question.values);
  const roomInput: EstimateInput = {
    name: 'room',
    value: room,
    unit: '°C',
    source: profile.room !== undefined ? 'asked' : roomStated ? 'brief' : 'assumed',
  };
  return [
    ...temperatures.map((row) => temperatureFigure(row, roomInput)),
    ...question.air.devices
      .filter(({ kind }) => kind !== 'case fan')
      .map(
        (device): Figure => ({
          id: `heat intake of ${device.id}`,
          topic: 'heat',
          title: `Air at the intake of ${device.label}`,
          part: device.part.id,
          unit: '°C',
          value: room + intakeRise(state, device),
          formula: 'Room, and what every part upstream has added, mixed by the flows.',
          inputs: [roomInput],
        }),
      ),
  ];
}

function temperatureFigure(row: PartTemperature, room: EstimateInput): Figure {
  const { part, celsius, because, air, watts, resistance, limit, limitFrom, missing, formula } = row;
  const round = (value: number, digits: number) => Number(value.toFixed(digits));
  return {
    id: `heat of ${part.id}`,
    topic: 'heat',
    title: `${part.label}, temperature`,
    part: part.id,
    unit: '°C',
    ...(celsius === undefined ? { because: because ?? 'nothing is known' } : { value: celsius }),
    missing,
    formula,
    inputs: [
      room,
      { name: `${part.label}, heat at this load`, value: round(watts, 0), unit: 'W', source: 'derived' },
      ...(air === undefined
        ? []
        : [{ name: 'air it takes', value: round(air, 1), unit: '°C' as const, source: 'derived' as const }]),
      ...(resistance === undefined
        ? []
        : [
            {
              name: 'resistance to that air',
              value: round(resistance, 3),
              unit: 'K/W' as const,
              source: 'derived' as const,
            },
          ]),
    ],
    limit: { kind: 'at most', value: limit, from: limitFrom },
  };
}
