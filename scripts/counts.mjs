import { existsSync, readFileSync } from 'node:fs';

/** @typedef {{ passed: number, failed: number, note?: string }} Count */

/** @param {boolean} ok @returns {Count} */
export const countCheck = (ok) => (ok ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 });

/** @param {boolean} ok @param {string} file @returns {Count} */
export function countVitest(ok, file) {
  const report = read(file);
  if (!report) return noReport;
  /** @type {{ status: string, assertionResults: unknown[] }[]} */
  const files = report.testResults;
  // A file that could not be loaded has no failed test to be counted.
  const unloaded = files.filter((f) => f.status === 'failed' && !f.assertionResults.length).length;
  return settle(ok, report.numPassedTests, report.numFailedTests + unloaded);
}

/** @param {boolean} ok @param {string} file @returns {Count} */
export function countPlaywright(ok, file) {
  const report = read(file);
  if (!report) return noReport;
  const { expected, unexpected, flaky } = report.stats;
  return settle(ok, expected, unexpected + flaky);
}

const noReport = { passed: 0, failed: 1, note: 'wrote no report, which counts as one failure' };

/** @param {string} file */
const read = (file) => (existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined);

/** @param {boolean} ok @param {number} passed @param {number} failed @returns {Count} */
function settle(ok, passed, failed) {
  if (passed + failed === 0) {
    return { passed, failed: 1, note: 'ran no test, which counts as one failure' };
  }
  if (!ok && failed === 0) {
    return { passed, failed: 1, note: 'ended with an error outside its tests' };
  }
  return { passed, failed };
}
