/**
 * npm run nest-table [-- FOLDER] [--seconds N] [--instance NAME] [--seed N]
 * Lays every instance of a folder (`shared/nesting`) on its strip and prints how long it came out, how dense, and how near to the
 * shortest length known, where that is known. Files have the form { name, stripWidth, pieces: [{ count, rotations, outline }] },
 * rotations in degrees. Seconds are of the processor: a short run tells how many places are tried in them, and so the budget, which
 * is what the app asks for and makes plans repeat; the run is stopped when the time is up. Ends with 1 when one cannot be laid.
 */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { Command } from 'commander';
import { checkPlan, type NestItem, type NestPlan, type NestProblem, nest } from '../core/nesting/index.ts';
import { formatTable } from './format-table.ts';

const command = new Command('nest-table')
  .argument('[folder]', 'of instances', path.join(import.meta.dirname, '../../shared/nesting'))
  .option('--seconds <n>', 'of the processor, for each instance', '60')
  .option('--instance <name>', 'only instances whose name contains it', '')
  .option('--seed <n>', 'of chance', '1')
  .parse();
const options = command.opts<{ seconds: string; instance: string; seed: string }>();
const [folder] = command.processedArgs as [string];

/** Shortest lengths known: the table of `shared/nesting/SOURCE.md`. */
const SHORTEST: Readonly<Record<string, number>> = {
  albano: 9692.056,
  dagli: 56.087,
  fu: 30.843,
  jakobs1: 10.98,
  jakobs2: 22,
  mao: 1696.802,
  marques: 75.176,
  shapes0: 57.012,
  shapes1: 52.002,
  shirts: 59.393,
  swim: 5541.653,
  trousers: 235.172,
};

interface Instance {
  readonly name: string;
  readonly stripWidth: number;
  readonly pieces: readonly {
    readonly count: number;
    readonly rotations: readonly number[];
    readonly outline: readonly (readonly [number, number])[];
  }[];
}

function problemOf({ stripWidth, pieces }: Instance): NestProblem {
  const items = pieces.flatMap(({ count, rotations, outline }, k) =>
    Array.from({ length: count }, (_, n): NestItem => {
      const turns = rotations.map((degrees) => ({ angle: (degrees * Math.PI) / 180, mirrored: false }));
      return { id: `${k + 1}.${n + 1}`, outline: Float64Array.from(outline.flat()), turns };
    }),
  );
  return { items, gap: 0, width: stripWidth, budget: 1e9, seed: Number(options.seed) };
}

interface Run {
  readonly plan: NestPlan | undefined;
  readonly first: number;
  readonly seconds: number;
  readonly evaluations: number;
}

/** Lays within seconds of the processor. */
function layWithin(problem: NestProblem, most: number): Run {
  const begin = process.cpuUsage();
  const spent = (): number => {
    const { user, system } = process.cpuUsage(begin);
    return (user + system) / 1e6;
  };
  let plan: NestPlan | undefined;
  let first = Number.NaN;
  let share = 0;
  for (const progress of nest(problem)) {
    if (!plan && progress.plan) first = spent();
    plan = progress.plan ?? plan;
    share = progress.share;
    if (spent() > most) break;
  }
  return { plan, first, seconds: spent(), evaluations: share * problem.budget };
}

const seconds = Number(options.seconds);
const rows: string[][] = [];
const files = readdirSync(folder).filter((file) => file.endsWith('.json') && file.includes(options.instance));
for (const file of files.sort()) {
  const instance = JSON.parse(readFileSync(path.join(folder, file), 'utf8')) as Instance;
  const problem = problemOf(instance);
  const probe = layWithin(problem, Math.min(2, seconds / 4));
  const pace = probe.evaluations / probe.seconds;
  const budget = Math.max(1000, Math.round(pace * seconds));
  const { plan, first, seconds: taken, evaluations } = layWithin({ ...problem, budget }, seconds);
  if (!plan) {
    process.exitCode = 1;
    rows.push([instance.name, 'not laid', ...Array<string>(7).fill('')]);
    continue;
  }
  const { overlap, outside } = checkPlan(problem, plan);
  const shortest = SHORTEST[instance.name];
  rows.push([
    instance.name,
    String(problem.items.length),
    plan.length.toPrecision(6),
    (100 * plan.density).toFixed(2),
    shortest ? ((100 * shortest) / plan.length).toFixed(2) : '',
    `${overlap.toPrecision(2)}, ${outside.toPrecision(2)}`,
    first.toFixed(2),
    taken.toFixed(1),
    (evaluations / 1e6).toFixed(2),
  ]);
}

const right = 'right' as const;
const columns = [
  { title: 'instance' },
  { title: 'pieces', align: right },
  { title: 'length', align: right },
  { title: 'density %', align: right },
  { title: '% of shortest', align: right },
  { title: 'overlap, outside', align: right },
  { title: 'first plan s', align: right },
  { title: 's', align: right },
  { title: 'million places', align: right },
];
process.stdout.write(`${formatTable(columns, rows)}\n`);
