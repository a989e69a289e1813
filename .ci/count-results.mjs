// Adds up the reports of both test runners and prints `N passed, N failed`. A missing report, a runner that ran
// nothing, and a skipped test each count as failed: a check that did not run has not passed. What failed is named above the counts,
// where it is found without reading the whole; so is a browser test that passed at its second try only, to be looked into.
import { readFileSync } from 'node:fs';
import { relative } from 'node:path';
import { stripVTControlCharacters } from 'node:util';

const counts = { passed: 0, failed: 0 };
const named = [];

const unit = read('test-results/unit.json');
if (unit) {
  add('unit', unit.numPassedTests, unit.numFailedTests, unit.numPendingTests + unit.numTodoTests);
  // A file that could not even be loaded has no tests to fail.
  if (!unit.success && unit.numFailedTests === 0) counts.failed++;
  for (const { name: file, status, message, assertionResults } of unit.testResults) {
    const failed = assertionResults.filter((test) => test.status !== 'passed');
    for (const test of failed) name(file, test.fullName, test.failureMessages?.[0] ?? test.status);
    if (status === 'failed' && failed.length === 0) name(file, 'as a whole', message);
  }
}
const e2e = read('test-results/e2e.json');
if (e2e) {
  const { expected, unexpected, flaky, skipped } = e2e.stats;
  add('e2e', expected + flaky, unexpected + e2e.errors.length, skipped);
  for (const spec of e2e.suites.flatMap(specsOf)) {
    const error = spec.tests[0]?.results.find((result) => result.error)?.error;
    if (error) name(spec.file, spec.title, error.message ?? '', spec.ok ? 'SECOND TRY' : 'FAILED');
  }
}
for (const line of named) console.log(line);
console.log(`${counts.passed} passed, ${counts.failed} failed`);
process.exitCode = counts.failed > 0 ? 1 : 0;

function add(runner, passed, failed, skipped) {
  if (skipped > 0) console.log(`${runner}: ${skipped} skipped, counted as failed`);
  if (passed === 0) console.log(`${runner}: nothing ran, counted as failed`);
  counts.passed += passed;
  counts.failed += failed + skipped + (passed === 0 ? 1 : 0);
}

function specsOf({ specs = [], suites = [] }) {
  return [...specs, ...suites.flatMap(specsOf)];
}

/** One line of it: of the rest of what it says the report has all. */
function name(file, test, message, how = 'FAILED') {
  const [said = ''] = stripVTControlCharacters(message).split('\n');
  named.push(`${how} ${relative('.', file)}: ${test}: ${said.slice(0, 300)}`);
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
