import { describe, expect, test } from 'vitest';
import { closingLine, countBrowserTests, countUnitTests, settleCount } from '../../.ci/count-tests.mjs';
import { whyInstall } from '../../.ci/install-if-needed.mjs';

const none = { notes: [], skipped: 0 };

describe('the count of tests', () => {
  test('counts a test file that could not be loaded as a failure', () => {
    const report = {
      testResults: [
        { name: 'a', status: 'passed', assertionResults: [{ status: 'passed' }, { status: 'skipped' }] },
        { name: 'b', status: 'failed', assertionResults: [{ status: 'passed' }, { status: 'failed' }] },
        { name: 'c', status: 'failed', assertionResults: [] },
      ],
    };
    expect(countUnitTests(report)).toEqual({
      passed: 2,
      failed: 2,
      skipped: 1,
      notes: ['c failed outside its tests'],
    });
  });

  test('notes a browser test that passed at a second try, and counts an error outside the tests as a failure', () => {
    const report = {
      stats: { expected: 5, unexpected: 1, flaky: 1, skipped: 2 },
      errors: [{ message: 'no server' }],
    };
    expect(countBrowserTests(report)).toEqual({
      passed: 6,
      failed: 2,
      skipped: 2,
      notes: ['no server', '1 passed only when tried again'],
    });
  });

  test('a runner that ran nothing, left no report or failed without saying why has failed', () => {
    expect(settleCount('R', 0, { ...none, passed: 0, failed: 0 }).failed).toBe(1);
    expect(settleCount('R', 0, undefined).failed).toBe(1);
    expect(settleCount('R', 1, { ...none, passed: 3, failed: 0 }).failed).toBe(1);
    expect(settleCount('R', 0, { ...none, passed: 3, failed: 0 }).failed).toBe(0);
    expect(settleCount('R', 1, { ...none, passed: 3, failed: 2 }).failed).toBe(2);
  });

  test('closes with one plain line', () => {
    const counts = [
      { ...none, passed: 3, failed: 0 },
      { ...none, passed: 4, failed: 1 },
    ];
    expect(closingLine(counts)).toBe('7 passed, 1 failed');
    expect(closingLine([{ passed: 1, failed: 0, skipped: 2, notes: [] }])).toBe(
      '1 passed, 0 failed, 2 skipped',
    );
  });
});

describe('installing', () => {
  const locked = {
    '': {},
    'node_modules/a': { version: '1.0.0', integrity: 'x' },
    'node_modules/for-another-machine': { version: '1.0.0', optional: true },
  };
  test('is needed when what is there is not what is locked', () => {
    const a = { version: '1.0.0', integrity: 'x' };
    expect(whyInstall(locked, { 'node_modules/a': a })).toBeUndefined();
    expect(whyInstall(locked, undefined)).toMatch(/nothing is installed/);
    expect(whyInstall(locked, {})).toMatch(/a is missing/);
    expect(whyInstall(locked, { 'node_modules/a': { ...a, version: '2.0.0' } })).toMatch(/a is 2.0.0/);
    expect(whyInstall(locked, { 'node_modules/a': { ...a, integrity: 'y' } })).toBeDefined();
    expect(whyInstall(locked, { 'node_modules/a': a, 'node_modules/b': a })).toMatch(
      /b is installed but not/,
    );
  });
});
