/*
 * Prints README.md beside this file: published stacks, and samples of the solved scene, beside what the kernel says.
 * npx tsx test/oracles/stack-up/report.ts > test/oracles/stack-up/README.md
 */
import { createRequire } from 'node:module';
import { combineTerms } from '../../../geometry/solver/stack-up/combine';
import { stackUpBetween } from '../../../geometry/solver/stack-up/face-stack-up';
import { probabilityBelow } from '../../../geometry/solver/stack-up/normal-distribution';
import type { StackUp } from '../../../geometry/solver/stack-up/stack-up';
import { stackUpOf } from '../../../geometry/solver/stack-up/stack-ups';
import { generalTolerance } from '../../../geometry/standards/general-tolerances';
import { type ExamplePlan, examplePlan } from '../../solver/stack-up/example-plans';
import {
  discoveryOf,
  fastClearance,
  normals,
  seeded,
  solvedClearance,
  valuesAt,
} from '../../solver/stack-up/sampling';
import { silentProcessor } from '../../solver/stack-up/silent-processor';
import { kinked, watched } from '../../solver/stack-up/watched-clearances';

/** A CommonJS package, of which Node sees no names. */
const { jStat }: typeof import('jstat') = createRequire(import.meta.url)('jstat');

const MILLION = 1_000_000;
const SOLVED = 50;

type Row = readonly (string | number)[];

function table(head: Row, rows: readonly Row[]): string {
  const line = (row: Row) => `| ${row.join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

const difference = (ours: number, theirs: number): string => {
  const by = Math.abs(ours - theirs);
  return by === 0 ? '0' : by < 1e-4 ? by.toExponential(1) : by.toFixed(4);
};

/** Each figure as its document prints it, to the digits it prints. */
function publishedRows(): readonly Row[] {
  const lid = stackUpBetween(
    silentProcessor(),
    { part: 'board', box: 'circuit board', face: '+z' },
    { part: 'cooler', box: 'base', face: '-z' },
  );
  const block = (plusMinus: number) => ({ sensitivity: 1, plusMinus, sigmas: 3 }) as const;
  const blocks = [block(0.005), block(0.003), block(0.002)];
  const gap = combineTerms([...blocks, block(0.005)]);
  const guide = 'LGA1155 thermal/mechanical guide, table 5-2';
  const blocksOf = 'tutorial: three blocks in a housing';
  const compared: readonly (readonly [string, string, number, number])[] = [
    [guide, 'board to lid, from a placed scene, mm', 7.781, lid.nominal],
    [guide, 'its ±, root sum of squares, mm', 0.335, lid.rss],
    [blocksOf, '± of the gap at worst, mm', 0.015, gap.worst],
    [blocksOf, '± of the gap, root sum of squares, mm', 0.00794, gap.rss],
    [blocksOf, '± of the blocks alone, mm', 0.00616, combineTerms(blocks).rss],
    ['Abramowitz and Stegun, table 26.1', 'P(z < 1)', 0.8413447461, probabilityBelow(1, 0, 1)],
    ['Abramowitz and Stegun, table 26.1', 'P(z < -3)', 0.001349898, probabilityBelow(-3, 0, 1)],
    ...isoRows,
  ];
  return compared.map(([source, what, printed, ours]) => [
    source,
    what,
    printed,
    Number(ours.toPrecision(8)),
    difference(ours, printed),
  ]);
}

/** ISO 2768-1:1989, table 1: a size within each row, and the deviations printed there for classes m and c. */
const isoRows = (
  [
    [2, 0.1, 0.2],
    [5, 0.1, 0.3],
    [20, 0.2, 0.5],
    [100, 0.3, 0.8],
    [300, 0.5, 1.2],
    [700, 0.8, 2],
    [1500, 1.2, 3],
  ] as const
).flatMap(([size, m, c]): readonly (readonly [string, string, number, number])[] => [
  ['ISO 2768-1:1989, table 1', `class m, ${size} mm`, m, generalTolerance('m', size) ?? Number.NaN],
  ['ISO 2768-1:1989, table 1', `class c, ${size} mm`, c, generalTolerance('c', size) ?? Number.NaN],
]);

function largestNormalError(): string {
  let largest = 0;
  for (let step = -8000; step <= 8000; step++) {
    const reference: number = jStat.normal.cdf(step / 1000, 0, 1);
    largest = Math.max(largest, Math.abs(probabilityBelow(step / 1000, 0, 1) - reference));
  }
  return largest.toExponential(1);
}

function found(name: ExamplePlan, id: string): StackUp {
  const stack = stackUpOf(examplePlan(name), id);
  if (!stack) throw new RangeError(id);
  return stack;
}

const range = ([least, most]: readonly [number, number]) => `${least.toFixed(3)} to ${most.toFixed(3)}`;

/** A million normal samples for the spread, a million that favour the ends of the bands for the worst case. */
function sampledRow([name, id]: readonly [ExamplePlan, string]): Row {
  const plan = examplePlan(name);
  const stack = found(name, id);
  const discovery = discoveryOf(plan, id);
  const fast = fastClearance(discovery);
  const { variations } = discovery;
  const offsets = new Float64Array(variations.length);
  const uniform = seeded(2);
  let [lowest, highest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let sample = 0; sample < MILLION; sample++) {
    for (let k = 0; k < offsets.length; k++) {
      const u = uniform();
      offsets[k] = u < 0.25 ? -1 : u > 0.75 ? 1 : 4 * (u - 0.5);
    }
    const gap = fast(offsets);
    lowest = Math.min(lowest, gap);
    highest = Math.max(highest, gap);
  }
  const normal = normals(seeded(3));
  let [sum, squares, below] = [0, 0, 0];
  for (let sample = 0; sample < MILLION; sample++) {
    variations.forEach(({ dimension: { sigmas } }, k) => {
      offsets[k] = normal() / sigmas;
    });
    const off = fast(offsets) - stack.nominal;
    sum += off;
    squares += off * off;
    if (off + stack.nominal < stack.wanted) below++;
  }
  const sigma = Math.sqrt(squares / MILLION - (sum / MILLION) ** 2);
  return [
    `${name}: ${id}`,
    variations.length,
    range(stack.worstCase),
    range([lowest, highest]),
    stack.sigma.toFixed(4),
    `${((stack.sigma / sigma - 1) * 100).toFixed(2)} %`,
    difference(stack.probabilityBelowWanted, below / MILLION),
    solvedError(name, id),
  ];
}

/** Largest difference to the plan with the values written into its sheets, built, placed and solved from the beginning. */
function solvedError(name: ExamplePlan, id: string): string {
  const plan = examplePlan(name);
  const discovery = discoveryOf(plan, id);
  const fast = fastClearance(discovery);
  const uniform = seeded(1);
  let largest = 0;
  for (let sample = 0; sample < SOLVED; sample++) {
    const offsets = Float64Array.from(discovery.variations, () => 2 * uniform() - 1);
    const solved = solvedClearance(plan, id, valuesAt(plan, discovery, offsets)) ?? Number.NaN;
    largest = Math.max(largest, Math.abs(fast(offsets) - solved));
  }
  return largest.toExponential(1);
}

/** Where faces take over from one another only the bounds hold: solved anew, mostly at the ends of the bands. */
function kinkedRow([name, id]: readonly [ExamplePlan, string]): Row {
  const plan = examplePlan(name);
  const stack = found(name, id);
  const discovery = discoveryOf(plan, id);
  const uniform = seeded(4);
  let [lowest, highest, passed] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0];
  for (let sample = 0; sample < 4 * SOLVED; sample++) {
    const offsets = Float64Array.from(discovery.variations, () => {
      const u = uniform();
      return u < 0.4 ? -1 : u > 0.6 ? 1 : 10 * (u - 0.5);
    });
    const gap = solvedClearance(plan, id, valuesAt(plan, discovery, offsets));
    if (gap === undefined) passed++;
    else {
      lowest = Math.min(lowest, gap);
      highest = Math.max(highest, gap);
    }
  }
  const kinds = [...new Set(stack.kinks.map(({ kind }) => kind))].join(', ');
  return [`${name}: ${id}`, kinds, range(stack.worstCase), range([lowest, highest]), passed];
}

console.log(`# Checks of the stack-ups

Printed by \`npx tsx test/oracles/stack-up/report.ts\`; the same comparisons run as tests in \`test/solver/stack-up\`.

## Published figures

${table(['source', 'figure', 'printed', 'here', 'difference'], publishedRows())}

The normal distribution differs from a second library's (jstat) by at most ${largestNormalError()} over eight sigmas either way.

## Sampled clearances that are one sum

A million seeded samples each, in millimetres. The bounds hold every sample; sigma and the chance of falling under the
wanted gap are compared with a million normal samples; the last column is the largest difference to ${SOLVED} plans with the
sampled values written into their sheets, built, placed and solved from the beginning.

${table(
  [
    'clearance',
    'dimensions',
    'worst case',
    'sampled',
    'sigma',
    'off',
    'chance off by',
    'solved anew, off by',
  ],
  watched.map(sampledRow),
)}

## Clearances in which faces take over

The screen says so. ${4 * SOLVED} plans each, solved from the beginning, most of them at the ends of the bands.

${table(['clearance', 'said', 'worst case', 'solved', 'nothing in front'], kinked.map(kinkedRow))}`);
