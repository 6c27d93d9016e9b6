import { type Disagreement, examinePairs, type OracleReport } from './examine-pairs';

/*
 * Prints the oracle report as Markdown: `npx tsx test/oracles/space/report.ts > test/oracles/space/README.md`.
 * The same seed gives the same text.
 */

const SEED = 20261;
const PAIRS = 100_000;
const LISTED = 25;

function summary(report: OracleReport): string[] {
  const lines = [
    '| pairs | apart | touching | overlapping | worst gap error | worst depth error | worst volume error |',
    '| --- | --- | --- | --- | --- | --- | --- |',
  ];
  for (const [kind, c] of Object.entries(report.classes)) {
    const errors = [c.worstGap, c.worstDepth, c.worstVolume].map((error) => error.toExponential(0));
    lines.push(`| ${kind} | ${c.apart} | ${c.touching} | ${c.overlapping} | ${errors.join(' | ')} |`);
  }
  return lines;
}

function listing(entries: readonly Disagreement[]): string[] {
  const show = (value: number | undefined) => (value === undefined ? 'no answer' : value.toFixed(6));
  return [
    '| pair | kind | kernel | rapier | third opinion | by | sides with |',
    '| --- | --- | --- | --- | --- | --- | --- |',
    ...entries.map(
      (e) =>
        `| ${e.pair} | ${e.kind} | ${show(e.kernel)} | ${show(e.theirs)} | ${show(e.third)} | ${e.thirdLibrary} | ${e.settled ? 'kernel' : 'nobody'} |`,
    ),
  ];
}

const report = await examinePairs(SEED, PAIRS);
const difference = (e: Disagreement) => (e.theirs === undefined ? Infinity : Math.abs(e.theirs - e.kernel));
const settled = report.rapier.filter((entry) => entry.settled).length;
const beyond = (limit: number) => report.rapier.filter((entry) => difference(entry) > limit).length;
const silent = report.rapier.filter((entry) => entry.theirs === undefined).length;

console.log(
  [
    '# What other libraries say about two boxes',
    '',
    `Seed ${report.seed}, ${report.count} pairs of random boxes (half extents 0.5 to 60 mm): four in ten in any orientation,`,
    'two along the axes, two mixed, two exactly touching. Printed by `npx tsx test/oracles/space/report.ts`;',
    'the test beside it asserts the same counts.',
    '',
    '## Exact libraries',
    '',
    'Gap and overlap volume against manifold-3d, penetration depth against cannon-es. Errors are relative to the',
    'value, or to 1 mm (1 mm3) below that; 1e-9 is allowed. A gap under the contact tolerance (1e-6 mm) is touching.',
    '',
    ...summary(report),
    '',
    `Disagreements: ${report.exact.length}.`,
    '',
    "## Sign by three's OBB",
    '',
    `Wrong signs outside touching pairs: ${report.threeSigns}.`,
    '',
    '## Second opinion: rapier',
    '',
    'Single precision, so answers within 1e-3 mm plus 1e-5 of the value count as equal. Where it differs, the',
    'exact library for that question decides.',
    '',
    `Differing: ${report.rapier.length} (${beyond(0.01)} by more than 0.01 mm, ${beyond(0.1)} by more than 0.1 mm, ${silent} without an answer).`,
    `Settled for the kernel: ${settled}. Settled for rapier or by nobody: ${report.rapier.length - settled}.`,
    '',
    `The ${LISTED} largest differences; ${'`--all`'} prints every one.`,
    '',
    ...listing(
      process.argv.includes('--all')
        ? report.rapier
        : [...report.rapier].sort((p, q) => difference(q) - difference(p)).slice(0, LISTED),
    ),
  ].join('\n'),
);
