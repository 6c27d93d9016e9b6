import { writeValue } from '../../../geometry/estimates/banded';
import { estimatePlan } from '../../../geometry/estimates/estimate-plan';
import { strongestAssumptions } from '../../../geometry/estimates/sensitivity';
import { examplePlan } from '../../estimates/example-plan';
import { airChecks } from './air-checks';
import { balances } from './balances';
import { compareSolvers } from './general-solver';
import { massChecks } from './mass-checks';
import { networkChecks } from './network-checks';
import { agrees, type OutsideCheck } from './outside-check';
import { powerChecks } from './power-checks';
import { soundChecks } from './sound-checks';
import { tradeChecks, tradeHolds } from './trade-checks';

/*
 * Prints the outside checks as Markdown: `npx tsx test/oracles/estimates/report.ts > test/oracles/estimates/README.md`.
 * The same code gives the same text.
 */

function number(value: number): string {
  if (Number.isInteger(value)) return String(value);
  const text = value.toPrecision(5);
  return text.includes('e') ? text : String(Number(text));
}

function table(checks: readonly OutsideCheck[]): string[] {
  return [
    '| source | what | published | ours | difference | allowed | |',
    '| --- | --- | ---: | ---: | ---: | ---: | --- |',
    ...checks.map((check) => {
      const { source, what, unit, published, ours, within, knownWrong } = check;
      const difference = ours - published;
      const small = Math.abs(difference) < 1e-12 ? '0' : difference.toExponential(1);
      const verdict = agrees(check) ? (knownWrong ? 'differs, as it must' : 'agrees') : 'FAILS';
      const allowed = knownWrong ? `more than ${number(within)}` : number(within);
      return `| ${source} | ${what} | ${number(published)} ${unit} | ${number(ours)} ${unit} | ${small} | ${allowed} | ${verdict} |`;
    }),
    '',
  ];
}

function tradeTable(): string[] {
  return [
    '| what | common practice | ours | band | |',
    '| --- | ---: | ---: | ---: | --- |',
    ...tradeChecks().map((check) => {
      const { what, unit, practice, ours, low, high } = check;
      const band = `${low.toFixed(0)} to ${high.toFixed(0)} ${unit}`;
      return `| ${what} | ${practice} ${unit} | ${ours.toFixed(1)} ${unit} | ${band} | ${tradeHolds(check) ? check.holds : 'FAILS'} |`;
    }),
    '',
  ];
}

function balanceTable(): string[] {
  return [
    '| plan | load | mass | heat | energy |',
    '| --- | --- | ---: | ---: | ---: |',
    ...balances().map(
      ({ plan, load, mass, heat, energy }) =>
        `| ${plan} | ${load} | ${mass.toExponential(0)} | ${heat.toExponential(0)} | ${energy.toExponential(0)} |`,
    ),
    '',
  ];
}

function sensitivityTable(): string[] {
  const { plan, scene } = examplePlan('demo');
  const { topics } = estimatePlan(plan, scene, { load: 'game' });
  const shown = [
    'power sustained',
    'power wall',
    'air drawn in',
    'heat of processor',
    'heat of card',
    'heat of drive',
  ];
  const all = Object.values(topics).flatMap(({ estimates }) => estimates);
  const picked = all.filter(({ id }) => shown.includes(id) || id === 'sound at the ear' || id === 'mass');
  return [
    '| figure | middle | band | strongest assumption | at its lowest | at its highest | share of the band |',
    '| --- | ---: | ---: | --- | ---: | ---: | ---: |',
    ...strongestAssumptions(picked).map(({ estimate, title, unit, effect, share }) => {
      const {
        value = Number.NaN,
        low = Number.NaN,
        high = Number.NaN,
      } = picked.find(({ id }) => id === estimate) ?? {};
      const said = (one: number) => `${writeValue(one, unit)} ${unit}`;
      return `| ${title} | ${said(value)} | ${writeValue(low, unit)} to ${said(high)} | ${effect.words} | ${said(effect.atLow)} | ${said(effect.atHigh)} | ${Math.round(share * 100)} % |`;
    }),
    '',
  ];
}

const groups: readonly (readonly [title: string, checks: readonly OutsideCheck[]])[] = [
  ['Air and heat', airChecks()],
  ['Air network', networkChecks()],
  ['Sound', soundChecks()],
  ['Power', powerChecks()],
  ['Mass', massChecks()],
];
const every = groups.flatMap(([, checks]) => checks);
const failing = every.filter((check) => !agrees(check)).length;
const { compared, worst, largest } = compareSolvers();

console.log(
  [
    '# What the estimates are checked against',
    '',
    'Figures published elsewhere, or worked out in writing from a named law, against the function that the estimates use.',
    'Printed by `npx tsx test/oracles/estimates/report.ts`; the test beside it asserts every row.',
    '',
    `${every.length} checks, ${failing} failing. Allowed is half of the last printed digit, or what the source grants.`,
    '',
    ...groups.flatMap(([title, checks]) => [`## ${title}`, '', ...table(checks)]),
    '## Air network against a general solver',
    '',
    `Seeded networks of three to six nodes with two fans, solved as node balances by ml-levenberg-marquardt: ${compared} compared, largest difference of a pressure ${worst.toExponential(0)} Pa, of pressures up to ${largest.toFixed(0)} Pa.`,
    '',
    '## Common practice, no source',
    '',
    'The demo enclosure with the machine that builders speak of (`commonPracticePlan` in `test/estimates/example-plan.ts`).',
    'No constant was chosen to meet these rows; the processor’s middle lies below what practice says, inside the band.',
    '',
    ...tradeTable(),
    '## Balance of every solve',
    '',
    'Worst node as a share of what flows; heat put in against heat that leaves, as a share.',
    '',
    ...balanceTable(),
    '## Which assumption matters most',
    '',
    'The demo plan in games: the strongest assumption of each figure, and what it does alone.',
    '',
    ...sensitivityTable(),
  ].join('\n'),
);
