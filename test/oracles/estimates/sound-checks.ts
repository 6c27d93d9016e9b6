import {
  bladeTone,
  levelAtDistance,
  levelChangeBySpeed,
  levelFromPower,
  sumOfLevels,
} from '../../../geometry/estimates/sound/levels';
import { digit, type OutsideCheck } from './outside-check';

const sums: readonly (readonly [
  source: string,
  levels: readonly number[],
  printed: number,
  places: number,
])[] = [
  ['OSHA, decibel notation, appendix I:A-1', [85, 83, 88], 90.6, 1],
  ['a page on noise', [90, 90], 93, 0],
  ['an acoustics consultancy', [65, 65], 68, 0],
  ['university slides', [80, 80], 83, 0],
  ['an audio article', [24, 24], 27, 0],
  ['an audio article', [40, 60], 60, 0],
];

const alike: readonly (readonly [count: number, rise: number])[] = [
  [2, 3],
  [3, 4.8],
  [4, 6],
  [5, 7],
  [10, 10],
  [15, 11.8],
  [20, 13],
];

export function soundChecks(): readonly OutsideCheck[] {
  return [
    ...sums.map(
      ([source, levels, published, places]): OutsideCheck => ({
        source,
        what: `${levels.join(', ')} dB together`,
        unit: 'dB',
        published,
        ours: sumOfLevels(levels),
        within: digit(places),
      }),
    ),
    ...alike.map(
      ([count, published]): OutsideCheck => ({
        source: 'an engineering table',
        what: `${count} equal sources, more than one by`,
        unit: 'dB',
        published,
        ours: sumOfLevels(Array.from({ length: count }, () => 0)),
        within: digit(1),
      }),
    ),
    ...(
      [
        [[80, 85], 88.9],
        [[80, 80], 86],
      ] as const
    ).map(
      ([levels, published]): OutsideCheck => ({
        source: 'the same university slides, for like signals: another question',
        what: `${levels.join(', ')} dB`,
        unit: 'dB',
        published,
        ours: sumOfLevels(levels),
        within: 2,
        knownWrong: true,
      }),
    ),
    ...(
      [
        [50, 6.2],
        [55, 6.9],
        [60, 7.5],
      ] as const
    ).map(
      ([law, published]): OutsideCheck => ({
        source: 'fan makers, law of speed',
        what: `1200 to 1600 rpm by ${law} dB a decade`,
        unit: 'dB',
        published,
        ours: levelChangeBySpeed(1600 / 1200, law),
        within: digit(1),
      }),
    ),
    {
      source: 'fan makers, law of speed',
      what: '34 dB slowed to 80 %, 55 dB a decade',
      unit: 'dB',
      published: 28.7,
      ours: 34 + levelChangeBySpeed(0.8, 55),
      within: digit(1),
    },
    {
      source: 'inverse square law',
      what: '38 dB at 1 m, heard at 0.5 m',
      unit: 'dB',
      published: 44,
      ours: levelAtDistance(38, 1, 0.5),
      within: digit(1),
    },
    {
      source: 'half a sphere over a floor (ISO 3744)',
      what: 'pressure level at 1 m under power level',
      unit: 'dB',
      published: -8,
      ours: levelFromPower(0, 1),
      within: digit(1),
    },
    {
      source: 'blade-pass frequency',
      what: '1200 rpm, 7 blades',
      unit: 'Hz',
      published: 140,
      ours: bladeTone(1200, 7),
      within: 1e-9,
    },
  ];
}
