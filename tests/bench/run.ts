/**
 * npm run bench [-- word]: times every case whose name contains the word. One warm-up, the median of five runs, a
 * checksum outside the clock. Each result is a line in tests/bench/<processor>.csv; a case more than 10 % slower than
 * the last committed line of the same processor is flagged and the command ends with 1.
 */
import { execFileSync } from 'node:child_process';
import { appendFileSync, existsSync, readdirSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import path from 'node:path';
import type { BenchCase } from './types.ts';

const flaggedAbove = 1.1;
const defaultRuns = 5;
const header = 'commit,case,median ms,fastest ms,slowest ms,checksum,resident MB';

const folder = import.meta.dirname;
const processor = (cpus()[0]?.model ?? 'unknown')
  .toLowerCase()
  .replace(/[^a-z0-9]+/g, '-')
  .replace(/^-|-$/g, '');
const historyFile = path.join(folder, `${processor}.csv`);
const wanted = process.argv[2] ?? '';

const before = lastCommitted(historyFile);
const commit = git('rev-parse', '--short', 'HEAD').trim();
if (!existsSync(historyFile)) writeFileSync(historyFile, `${header}\n`);

let slower = 0;
for (const bench of await loadCases()) {
  if (!bench.name.includes(wanted)) continue;
  for (const line of await time(bench)) if (record(line)) slower++;
}
process.exitCode = slower > 0 ? 1 : 0;

interface Line {
  readonly name: string;
  /** Sorted, ms. */
  readonly times: readonly number[];
  readonly checksum: string;
  readonly residentMb: number;
}

/** Appends to the history and prints; true when slower than the last committed line. */
function record({ name, times, checksum, residentMb }: Line): boolean {
  const median = times[Math.floor(times.length / 2)];
  const cells = [median, times[0], times[times.length - 1]].map((ms) => ms.toFixed(2));
  appendFileSync(historyFile, `${[commit, name, ...cells, checksum, residentMb.toFixed(0)].join(',')}\n`);
  const past = before.get(name);
  const isSlower = past !== undefined && median > past.median * flaggedAbove;
  const change = past === undefined ? 'new' : `${((median / past.median - 1) * 100).toFixed(1)} %`;
  const other = past !== undefined && past.checksum !== checksum ? '  other result' : '';
  console.log(`${isSlower ? 'SLOWER ' : '       '}${name}  ${cells[0]} ms  ${change}${other}`);
  return isSlower;
}

async function loadCases(): Promise<BenchCase[]> {
  const files = readdirSync(folder)
    .filter((file) => /^cases-.*\.ts$/.test(file))
    .sort();
  const modules = await Promise.all(files.map((file) => import(path.join(folder, file))));
  return modules.flatMap((module) => module.default as BenchCase[]);
}

/** One line for the case, and one for each of its parts. Resident memory is the highest seen after a run. */
async function time(bench: BenchCase): Promise<Line[]> {
  const prepared = bench.prepare?.() as never;
  await bench.run(prepared);
  const times: number[] = [];
  const parts = new Map<string, number[]>();
  let checksum = 0;
  let residentMb = 0;
  for (let i = 0; i < (bench.runs ?? defaultRuns); i++) {
    const start = performance.now();
    const result = await bench.run(prepared);
    times.push(performance.now() - start);
    residentMb = Math.max(residentMb, process.memoryUsage().rss / 2 ** 20);
    checksum = typeof result === 'number' ? result : result.checksum;
    if (typeof result === 'number') continue;
    for (const [part, ms] of Object.entries(result.partsMs))
      parts.set(part, [...(parts.get(part) ?? []), ms]);
  }
  const shared = { checksum: checksum.toPrecision(9), residentMb };
  const inOrder = (list: readonly number[]) => list.toSorted((a, b) => a - b);
  return [
    { name: bench.name, times: inOrder(times), ...shared },
    ...[...parts].map(([part, list]) => ({ name: `${bench.name}:${part}`, times: inOrder(list), ...shared })),
  ];
}

/** Newest committed line of every case. */
function lastCommitted(file: string): Map<string, { median: number; checksum: string }> {
  const lines = new Map<string, { median: number; checksum: string }>();
  for (const line of git('show', `HEAD:./${path.basename(file)}`)
    .split('\n')
    .slice(1)) {
    const [, name, median, , , checksum] = line.split(',');
    if (name) lines.set(name, { median: Number(median), checksum });
  }
  return lines;
}

function git(...args: string[]): string {
  try {
    return execFileSync('git', args, { cwd: folder, encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
  } catch {
    return '';
  }
}
