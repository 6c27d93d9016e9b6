/**
 * Every figure published elsewhere or derived in writing beforehand, against the function that the estimates use.
 * `README.md` beside it is the same list with the differences.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { airChecks } from './air-checks';
import { balances } from './balances';
import { compareSolvers } from './general-solver';
import { massChecks } from './mass-checks';
import { networkChecks } from './network-checks';
import { agrees, type OutsideCheck } from './outside-check';
import { powerChecks } from './power-checks';
import { soundChecks } from './sound-checks';
import { tradeChecks, tradeHolds } from './trade-checks';

const groups: readonly (readonly [name: string, checks: readonly OutsideCheck[]])[] = [
  ['air and heat', airChecks()],
  ['air network', networkChecks()],
  ['sound', soundChecks()],
  ['power', powerChecks()],
  ['mass', massChecks()],
];

describe.each(groups)('%s', (_, checks) => {
  it.each(checks)('$source: $what, $published $unit', (check) => {
    expect(agrees(check), `${check.ours} against ${check.published} within ${check.within}`).toBe(true);
  });
});

it.each(tradeChecks())('common practice, no source: $what', (check) => {
  expect(tradeHolds(check), `${check.low} to ${check.high} against ${check.practice}`).toBe(true);
});

it('agrees with a general least-squares solver on seeded networks', () => {
  const { compared, worst } = compareSolvers();
  expect(compared).toBeGreaterThan(20);
  expect(worst).toBeLessThan(1e-3);
});

it('balances mass, heat and energy to 1e-9 in every example plan at every load', () => {
  for (const { mass, heat, energy, settled } of balances()) {
    expect(settled).toBe(true);
    expect(Math.max(mass, heat, energy)).toBeLessThan(1e-9);
  }
});

it('is written down: the README names every check', () => {
  const readme = readFileSync(new URL('./README.md', import.meta.url), 'utf8');
  for (const [, checks] of groups) for (const { what } of checks) expect(readme).toContain(what);
});
