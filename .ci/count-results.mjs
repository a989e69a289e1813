// Adds up the reports of both test runners and prints `N passed, N failed`. A missing report, a runner that ran
// nothing, and a skipped test each count as failed: a check that did not run has not passed.
import { readFileSync } from 'node:fs';

const counts = { passed: 0, failed: 0 };

const unit = read('test-results/unit.json');
if (unit) {
  add('unit', unit.numPassedTests, unit.numFailedTests, unit.numPendingTests + unit.numTodoTests);
  // A file that could not even be loaded has no tests to fail.
  if (!unit.success && unit.numFailedTests === 0) counts.failed++;
}
const e2e = read('test-results/e2e.json');
if (e2e) {
  const { expected, unexpected, flaky, skipped } = e2e.stats;
  add('e2e', expected, unexpected + flaky + e2e.errors.length, skipped);
}
console.log(`${counts.passed} passed, ${counts.failed} failed`);
process.exitCode = counts.failed > 0 ? 1 : 0;

function add(runner, passed, failed, skipped) {
  if (skipped > 0) console.log(`${runner}: ${skipped} skipped, counted as failed`);
  if (passed === 0) console.log(`${runner}: nothing ran, counted as failed`);
  counts.passed += passed;
  counts.failed += failed + skipped + (passed === 0 ? 1 : 0);
}

function read(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch (error) {
    console.log(`no test report at ${path}, counted as failed: ${error.message}`);
    counts.failed++;
    return undefined;
  }
}
