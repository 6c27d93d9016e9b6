/** The room every fan has before its intake, against the gap at which the way round its rim is no narrower than it. */
import { breathingGapOfBlades } from '../../standards/fan-breathing';
import { SECONDS_PER_HOUR } from '../air/air-laws';
import { flowOf } from '../heat/heat-in-place';
import type { Run } from './run';

export interface BreathingSpace {
  readonly stream: string;
  readonly part: string;
  readonly label: string;
  /** Mean free distance before the blades, mm, looked for no further than `seen`. */
  readonly gap: number;
  readonly seen: number;
  /** Gap of equal area: (D^2 - d^2) / 4D of blades and hub, mm. */
  readonly wanted: number;
  /** Stands against closed sheet. */
  readonly blocked: boolean;
  /** m3/h through this fan. */
  readonly flow: number;
}

/** Fans that draw from inside the machine or stand against sheet, the narrowest first; the room has room enough. */
export function breathingSpaces({ question, state }: Run): readonly BreathingSpace[] {
  return question.air.devices
    .flatMap((device) =>
      device.streams.flatMap(({ id, fans, intake }, index): BreathingSpace[] => {
        const [first] = fans;
        if (!first || (intake.cell === undefined && !intake.blocked)) return [];
        const several = device.streams.length > 1;
        return [
          {
            stream: id,
            part: device.part.id,
            label: several ? `${device.label}, fan ${index + 1}` : device.label,
            gap: intake.gap,
            seen: intake.wanted,
            wanted: breathingGapOfBlades(first.size),
            blocked: intake.blocked,
            flow: flowOf(state, id) * SECONDS_PER_HOUR,
          },
        ];
      }),
    )
    .sort((a, b) => a.gap - a.wanted - (b.gap - b.wanted));
}
