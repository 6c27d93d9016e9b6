// Reads the two test runners' JSON reports and counts what really happened.

/** @typedef {{ passed: number, failed: number, skipped: number, notes: string[] }} TestCount */

/**
 * @param {unknown} value
 * @returns {Record<string, unknown>}
 */
function asRecord(value) {
  return value !== null && typeof value === 'object' ? /** @type {Record<string, unknown>} */ (value) : {};
}

/**
 * @param {unknown} value
 * @returns {unknown[]}
 */
function asList(value) {
  return Array.isArray(value) ? value : [];
}

/**
 * Counts Vitest's report. A test file that could not be loaded holds no test, so it counts as one failure.
 *
 * @param {unknown} report the parsed JSON
 * @returns {TestCount}
 */
export function countUnitTests(report) {
  const count = { passed: 0, failed: 0, skipped: 0, notes: /** @type {string[]} */ ([]) };
  for (const file of asList(asRecord(report).testResults).map(asRecord)) {
    const statuses = asList(file.assertionResults).map((result) => asRecord(result).status);
    const failed = statuses.filter((status) => status === 'failed').length;
    count.passed += statuses.filter((status) => status === 'passed').length;
    count.failed += failed;
    count.skipped += statuses.filter((status) => status !== 'passed' && status !== 'failed').length;
    if (file.status === 'failed' && failed === 0) {
      count.failed += 1;
      count.notes.push(`${file.name} failed outside its tests`);
    }
  }
  return count;
}

/**
 * Counts Playwright's report. A test that passed only when tried again counts as passed and is noted; an error
 * outside the tests (a file that could not be loaded, a server that did not start) counts as one failure each.
 *
 * @param {unknown} report the parsed JSON
 * @returns {TestCount}
 */
export function countBrowserTests(report) {
  const stats = asRecord(asRecord(report).stats);
  const errors = asList(asRecord(report).errors);
  /** @param {string} name */
  const number = (name) => (typeof stats[name] === 'number' ? stats[name] : 0);
  const notes = errors.map((error) => String(asRecord(error).message ?? 'an error outside the tests'));
  if (number('flaky') > 0) notes.push(`${number('flaky')} passed only when tried again`);
  return {
    passed: number('expected') + number('flaky'),
    failed: number('unexpected') + errors.length,
    skipped: number('skipped'),
    notes,
  };
}

/**
 * Puts a runner's exit code and its report together: a runner that ran no test, or that says it failed while its
 * report shows no failure, counts as one failure.
 *
 * @param {string} runner its name, for the note
 * @param {number} exitCode
 * @param {TestCount | undefined} count undefined when there was no readable report
 * @returns {TestCount}
 */
export function settleCount(runner, exitCode, count) {
  if (!count) return { passed: 0, failed: 1, skipped: 0, notes: [`${runner} left no readable report`] };
  if (count.failed > 0) return count;
  if (count.passed === 0) return { ...count, failed: 1, notes: [...count.notes, `${runner} ran no test`] };
  if (exitCode === 0) return count;
  const note = `${runner} exited with code ${exitCode} although no test failed`;
  return { ...count, failed: 1, notes: [...count.notes, note] };
}

/**
 * @param {TestCount[]} counts
 * @returns {string} the closing line that machines read
 */
export function closingLine(counts) {
  const sum = { passed: 0, failed: 0, skipped: 0 };
  for (const count of counts) {
    sum.passed += count.passed;
    sum.failed += count.failed;
    sum.skipped += count.skipped;
  }
  const skipped = sum.skipped > 0 ? `, ${sum.skipped} skipped` : '';
  return `${sum.passed} passed, ${sum.failed} failed${skipped}`;
}
