/** For each kind, the ways its sides can be given together. */
import type { PartKind } from '../parts/part-spec';
import { supplyFormSchema } from '../parts/patterns';
import { boardFormFactors } from '../standards/board-form-factors';
import { supplyForms } from '../standards/supply-forms';
import type { BoxFill, BoxRule, Measured } from './box';
import { arrangeCooler } from './kinds/cooler-box';
import { fanSizes, m2Lengths } from './kinds/fan-sizes';
import { isPlausible } from './plausible';
import type { Side } from './sides';
import type { Atom } from './words/atoms';

/** One side of a thing: the field it fills (none for a side no field asks for) and what it can be. */
interface Role {
  readonly path: string | undefined;
  readonly can: (value: number) => boolean;
}

const sized: readonly Atom[] = [
  'size',
  'outer',
  'max',
  'length',
  'width',
  'height',
  'depth',
  'thickness',
  'type',
  'form',
];

function rule(
  sides: 2 | 3,
  also: readonly Atom[],
  arrange: BoxRule['arrange'],
  all: readonly Atom[] = [],
  nothing = 'not the sides of such a part, whichever way round',
): BoxRule {
  return { sides, all, also: [...sized, ...also], because: '', nothing, arrange };
}

const BY_SIZE = 'the only way round that such a part can be';

/** By size alone: letters differ from maker to maker, the part does not. */
function bySize(roles: readonly Role[]): BoxRule['arrange'] {
  return (set) => permutations(set, roles).map((fills) => ({ fills, because: BY_SIZE }));
}

/** By letters where they name the roles; they must agree with what the part can be. */
function byLetters(
  named: Readonly<Partial<Record<NonNullable<Side>, string>>>,
  roles: readonly Role[],
): BoxRule['arrange'] {
  return (set, sides) => {
    const possible = permutations(set, roles);
    const lettered = sides.flatMap((side, index): readonly BoxFill[] => {
      const path = side && named[side];
      const measured = set[index];
      return path && measured ? [{ path, measured }] : [];
    });
    const areNamed =
      lettered.length === roles.length && new Set(lettered.map(({ path }) => path)).size === roles.length;
    if (!areNamed) return possible.map((fills) => ({ fills, because: BY_SIZE }));
    const agrees = possible.some((fills) =>
      fills.every(({ path, measured }) =>
        lettered.some((one) => one.path === path && one.measured.value === measured.value),
      ),
    );
    if (agrees) return [{ fills: lettered, because: 'by the letters of the sides' }];
    return possible.map((fills) => ({
      fills,
      because: BY_SIZE,
      ask: 'The letters of the sides do not fit such a part. Which side is which?',
    }));
  };
}

function permutations(set: readonly Measured[], roles: readonly Role[]): readonly (readonly BoxFill[])[] {
  const orders = set.length === 2 ? PAIRS : TRIPLES;
  return orders.flatMap((order) => {
    const fits = roles.every((role, index) => role.can(set[order[index] ?? 0]?.value ?? Number.NaN));
    if (!fits) return [];
    return [
      roles.flatMap((role, index): readonly BoxFill[] => {
        const measured = set[order[index] ?? 0];
        return role.path !== undefined && measured ? [{ path: role.path, measured }] : [];
      }),
    ];
  });
}

const PAIRS = [
  [0, 1],
  [1, 0],
];
const TRIPLES = [
  [0, 1, 2],
  [0, 2, 1],
  [1, 0, 2],
  [1, 2, 0],
  [2, 0, 1],
  [2, 1, 0],
];

function role(kind: PartKind, path: string): Role {
  return { path, can: (value) => isPlausible(kind, path, value) };
}

function near(among: readonly number[], within: number): (value: number) => boolean {
  return (value) => among.some((one) => Math.abs(one - value) <= within);
}

const between = (least: number, most: number) => (value: number) => value >= least && value <= most;

/** Sheets round the published outlines to the millimetre or to a tenth of an inch. */
const OUTLINE_SLACK_MM = 2;
const outlines = supplyFormSchema.options.map((form) => supplyForms[form]);
const supplySides = byLetters({ width: 'width', height: 'height', depth: 'depth', length: 'depth' }, [
  {
    path: 'width',
    can: near(
      outlines.map(({ width }) => width.value),
      OUTLINE_SLACK_MM,
    ),
  },
  {
    path: 'height',
    can: near(
      outlines.map(({ height }) => height.value),
      OUTLINE_SLACK_MM,
    ),
  },
  role('supply', 'depth'),
]);

function fanFrame(paths: { readonly size: string; readonly thickness: string }): BoxRule['arrange'] {
  return (set) => {
    const order = set.toSorted((a, b) => b.value - a.value);
    const [first, second, third] = order;
    const thickness = third ?? second;
    if (!first || !thickness || (third && first.value !== second?.value)) return [];
    if (!fanSizes.includes(first.value) || !between(8, 55)(thickness.value)) return [];
    return [
      {
        fills: [
          { path: paths.size, measured: first },
          { path: paths.thickness, measured: thickness },
        ],
        because: 'a square frame and its thickness',
      },
    ];
  };
}

const ownFrame = fanFrame({ size: 'size', thickness: 'thickness' });
const coolerFrame = fanFrame({ size: 'fan.size', thickness: 'fan.thickness' });

/** A square says nothing about which side is which, and need not. */
function square(kind: PartKind): BoxRule['arrange'] {
  const roles = [role(kind, 'width'), role(kind, 'depth')];
  return (set) => permutations(set, roles).map((fills) => ({ fills, because: 'both sides of the outline' }));
}

/** A board as large as its form goes the way round its form does. */
const boardOutline: BoxRule['arrange'] = (set, sides, clause, context) => {
  const answers = square('board')(set, sides, clause, context);
  const form = Object.entries(boardFormFactors).find(([name]) => name === context.form)?.[1];
  if (!form) return answers;
  const isWhole = near([form.alongX.value], OUTLINE_SLACK_MM);
  const isAcross = near([form.alongY.value], OUTLINE_SLACK_MM);
  const asPublished = answers.filter(
    ({ fills: [width, depth] }) =>
      isWhole(width?.measured.value ?? 0) && isAcross(depth?.measured.value ?? 0),
  );
  return asPublished.length > 0
    ? asPublished
        .slice(0, 1)
        .map((one) => ({ ...one, because: `the way round of the published outline of ${context.form}` }))
    : answers;
};

/** Cooler hole patterns by their millimetres; the names are those of the specs. */
const patterns: readonly (readonly [number, number, string])[] = [
  [75, 75, 'square-75'],
  [78, 78, 'square-78'],
  [80, 80, 'square-80'],
  [54, 90, 'rectangle-54x90'],
];

function holePattern(fill: (name: string, measured: Measured) => BoxFill): BoxRule['arrange'] {
  return (set) => {
    const [low, high] = set.toSorted((a, b) => a.value - b.value);
    const found = patterns.find(([a, b]) => low?.value === a && high?.value === b);
    return found && low ? [{ fills: [fill(found[2], low)], because: 'hole pattern by its millimetres' }] : [];
  };
}

const drive = [
  role('drive', 'length'),
  { path: undefined, can: near([69.85, 101.6], 0.6) },
  { path: 'height', can: between(4, 43) },
];
const boxedDrive: BoxRule['arrange'] = (set) =>
  permutations(set, [{ path: 'length', can: between(95, 150) }, ...drive.slice(1)]).map((fills) => ({
    fills,
    because: BY_SIZE,
  }));

/** 22 wide and of a known length: a module, of which only the length is asked for. */
const m2Module: BoxRule['arrange'] = (set) => {
  const isModule = set.some(({ value }) => Math.abs(value - 22) <= 0.2);
  const long = set.find(({ value }) => m2Lengths.some((length) => Math.abs(length - value) <= 0.2));
  if (!isModule || !long) return [];
  return [
    {
      fills: [{ path: 'length', measured: long, value: Math.round(long.value) }],
      because: 'length of an M.2 module',
    },
  ];
};

export const boxRules: Readonly<Record<PartKind, readonly BoxRule[]>> = {
  card: [
    rule(3, ['slot'], bySize([role('card', 'length'), role('card', 'height'), role('card', 'thickness')])),
  ],
  cooler: [
    rule(3, ['fan', 'with fan'], coolerFrame, ['fan']),
    rule(2, ['fan', 'with fan'], coolerFrame, ['fan']),
    rule(3, ['heatsink', 'block', 'pump', 'with fan', 'without fan'], arrangeCooler),
    rule(
      2,
      ['hole pattern'],
      holePattern((name, measured) => ({ path: `patterns.${name}`, measured, value: true })),
      ['hole pattern'],
    ),
  ],
  supply: [rule(3, ['without plugs'], supplySides)],
  fan: [rule(3, [], ownFrame), rule(2, [], ownFrame)],
  radiator: [
    rule(
      3,
      ['without fan'],
      byLetters(
        { length: 'length', width: 'width', thickness: 'thickness', height: 'thickness', depth: 'thickness' },
        [role('radiator', 'length'), { path: 'width', can: between(80, 150) }, role('radiator', 'thickness')],
      ),
    ),
  ],
  board: [rule(2, [], boardOutline)],
  memory: [
    rule(
      3,
      ['with sink'],
      bySize([
        { path: undefined, can: between(60, 140) },
        { path: 'height', can: between(17, 59) },
        role('memory', 'thickness'),
      ]),
    ),
  ],
  drive: [rule(3, [], (...given) => [...boxedDrive(...given), ...m2Module(...given)])],
  processor: [
    rule(
      2,
      ['hole pattern', 'cooler'],
      holePattern((name, measured) => ({ path: 'socket', measured, value: name })),
      ['hole pattern'],
    ),
    rule(2, ['package', 'enclosure'], square('processor')),
  ],
  enclosure: [
    rule(
      3,
      [],
      (set, sides) => {
        const paths = {
          width: 'limits.outerWidth',
          height: 'limits.outerHeight',
          depth: 'limits.outerLength',
          length: 'limits.outerLength',
        };
        const fills = sides.flatMap((side, index): readonly BoxFill[] => {
          const path = side && side !== 'thickness' ? paths[side] : undefined;
          const measured = set[index];
          return path && measured && isPlausible('enclosure', path, measured.value)
            ? [{ path, measured }]
            : [];
        });
        return new Set(fills.map(({ path }) => path)).size === 3
          ? [{ fills, because: 'outer size, by the letters of its sides' }]
          : [];
      },
      [],
      'the sides are not named, and an enclosure can stand any way round',
    ),
  ],
  adapter: [],
};
