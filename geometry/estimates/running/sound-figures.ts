/** What is said about sound. */
import type { Plan } from '../../plan/plan-schema';
import type { Figure, Limit } from '../estimate';
import { circumstancesOf, type Profile } from '../profile';
import { wordForLevel } from '../sound/levels';
import type { Run } from './run';

/** Speeds closer than this share beat against one another: common practice, no source. */
const BEATING = 0.03;

export function soundFigures(run: Run, plan: Plan, profile: Profile): readonly Figure[] {
  const { sources, level, distance, question } = run;
  const { distanceStated } = circumstancesOf(plan, profile, question.values);
  const wish = plan.brief?.noiseWish;
  const limit: { limit?: Limit } =
    wish && wish.metres === distance
      ? { limit: { kind: 'at most', value: wish.decibels, from: 'brief' } }
      : {};
  const missing = sources.flatMap((source) => source.missing);
  return [
    {
      id: 'sound at the ear',
      topic: 'sound',
      title: `Sound at ${distance} m${level === undefined ? '' : `, reads as ${wordForLevel(level)}`}`,
      unit: 'dB',
      ...(level === undefined ? { because: 'nothing in the plan sounds' } : { value: level }),
      missing,
      formula:
        'Every source at its speed, added up as 10 log of the sum of 10^(L/10), less 20 log of the distance, and what the room adds.',
      inputs: [
        {
          name: 'distance of the ear',
          value: distance,
          unit: 'm',
          source: profile.earDistance !== undefined ? 'asked' : distanceStated ? 'brief' : 'assumed',
        },
        ...sources.flatMap((source) => source.inputs),
      ],
      ...limit,
    },
    ...sources.map(
      (source): Figure => ({
        id: `sound of ${source.id}`,
        topic: 'sound',
        title: `${source.label} at 1 m`,
        part: source.part.id,
        unit: 'dB',
        value: source.atOneMetre,
        missing: source.missing,
        formula:
          source.share === undefined
            ? 'As stated or usual for its kind, less what the panels take.'
            : 'Its level at top speed and the law of speed; less what the panels take when it is inside; more when its intake is starved.',
        inputs: [
          ...source.inputs,
          ...(source.share === undefined
            ? []
            : [
                {
                  name: 'speed',
                  value: Math.round(source.share * 100),
                  unit: '%' as const,
                  source: 'derived' as const,
                },
              ]),
        ],
      }),
    ),
  ];
}

/** Pairs of like fans that turn at nearly, not exactly, the same speed, or exactly alike: they may beat. */
export function beatingFans({ sources }: Run): readonly (readonly [string, string])[] {
  const fans = sources.filter(({ share, part }) => share !== undefined && part.kind === 'fan');
  return fans.flatMap((one, i) =>
    fans.slice(i + 1).flatMap((other) => {
      const alike = one.part.spec.model === other.part.spec.model;
      const near = Math.abs((one.share ?? 0) - (other.share ?? 0)) <= BEATING * (one.share ?? 0);
      return alike && near ? [[one.label, other.label] as const] : [];
    }),
  );
}
