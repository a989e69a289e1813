// Adds up the reports of both test runners and prints `N passed, N failed`. Fails when a report is missing, when
// nothing ran, or when a test was skipped: a check that did not run has not passed.
import { readFileSync } from 'node:fs';

const unit = read('test-results/unit.json');
const e2e = read('test-results/e2e.json');

const passed = unit.numPassedTests + e2e.stats.expected;
const failed =
  unit.numFailedTests +
  (unit.success ? 0 : Number(unit.numFailedTests === 0)) +
  e2e.stats.unexpected +
  e2e.stats.flaky +
  (e2e.errors?.length ?? 0);
const skipped = unit.numPendingTests + unit.numTodoTests + e2e.stats.skipped;
if (skipped > 0) console.log(`${skipped} skipped, counted as failed`);
if (unit.numPassedTests === 0 || e2e.stats.expected === 0) console.log('one of the runners ran nothing');
console.log(`${passed} passed, ${failed + skipped} failed`);
process.exitCode = failed + skipped > 0 || unit.numPassedTests === 0 || e2e.stats.expected === 0 ? 1 : 0;

function read(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch (error) {
    console.log(`no test report at ${path}: ${error.message}`);
    console.log('0 passed, 1 failed');
    process.exit(1);
  }
}
