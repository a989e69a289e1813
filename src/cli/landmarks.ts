/**
 * npm run landmarks -- FILE.csv [--part tuned|held|all] [--measures five|nine] [--rough] [--means]
 * Fits the people of a landmark survey from tapes taken over their landmarks, and prints how far the fitted bodies' landmarks
 * lie from theirs: bias ± standard deviation, mm. `--means` prints the women's mean tapes and places instead, as
 * shared/survey/landmarks.json holds them. The columns are told in shared/survey/SOURCE.md ("Landmarks").
 */
import path from 'node:path';
import { Command } from 'commander';
import { seededRandom } from '../core/base/index.ts';
import { fitBody } from '../core/body/index.ts';
import {
  type LandmarkRow,
  measuresOfLandmarks,
  placesOfLandmarks,
  readLandmarkRows,
  wallOfLandmarks,
} from './landmark-columns.ts';
import { placesOfBody } from './places-of-body.ts';

const program = new Command('landmarks')
  .argument('<file>', 'CSV of landmarks in space, see shared/survey/SOURCE.md')
  .option('--part <part>', 'tuned, held (every third woman, never tuned on) or all', 'all')
  .option('--measures <list>', 'five, or nine', 'nine')
  .option('--every <n>', 'take every n-th person', '1')
  .option(
    '--wall <ids>',
    'also readings off a wall, each with an error of 5 mm: ids with commas between, or all',
  )
  .option('--rough', 'bodies as while dragging, without the fair trunk')
  .option('--means', 'print means of tapes and places, fit nothing')
  .parse();
const options = program.opts<{
  part: string;
  measures: string;
  every: string;
  wall?: string;
  rough?: true;
  means?: true;
}>();
const file = program.args[0];
const rows = readLandmarkRows(file)
  .filter((_, i) => options.part === 'all' || (i % 3 === 2) === (options.part === 'held'))
  .filter((_, i) => i % Number(options.every) === 0);

/** About the armhole: where a scan finds the fold and where a form has its armhole are two things. */
const OF_ARMHOLE = /^armpit/;

/** What only a wall or a picture shows. */
const IN_Y = ['napeY', 'neckSideY', 'neckFrontY', 'bladesY', 'bustY', 'bellyY'];

if (options.means) {
  process.stdout.write(`${JSON.stringify(meansOf(rows), null, 2)}\n`);
  process.exit();
}
process.stdout.write(
  `# ${path.basename(file)}: ${rows.length} women (${options.part}), ${options.measures} measures\n`,
);
/** What a reading off the wall errs by, mm (common practice, no source). */
const WALL_ERROR = 5;
const random = seededRandom(1);
const errors = new Map<string, number[]>();
let refused = 0;
let conflicts = 0;
for (const row of rows) compareWithBody(row);
printTable();

function compareWithBody(row: LandmarkRow): void {
  const result = fitBody(
    {
      figure: 'bust',
      measures: { ...measuresOfLandmarks(row, options.measures === 'five'), ...wallOf(row) },
    },
    undefined,
    { fair: !options.rough },
  );
  if (!result.ok) {
    refused++;
    return;
  }
  if (result.value.tapes.some((t) => t.status === 'conflict')) conflicts++;
  const fitted = placesOfBody(result.value);
  for (const [id, place] of Object.entries(placesOfLandmarks(row))) {
    if (fitted[id] === undefined || !Number.isFinite(place)) continue;
    errors.set(id, [...(errors.get(id) ?? []), fitted[id] - place]);
  }
}

function wallOf(row: LandmarkRow): Record<string, number> {
  if (options.wall === undefined) return {};
  const asked = options.wall.split(',');
  const read = Object.entries(wallOfLandmarks(row, () => WALL_ERROR * gaussian()));
  return Object.fromEntries(read.filter(([id]) => options.wall === 'all' || asked.includes(id)));
}

/** Of mean 0 and deviation 1 (Box and Muller 1958). */
function gaussian(): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

function printTable(): void {
  const biases: number[] = [];
  const ofY: number[] = [];
  for (const [id, values] of errors) {
    const mean = values.reduce((a, b) => a + b, 0) / values.length;
    const sd = Math.sqrt(values.reduce((a, b) => a + (b - mean) ** 2, 0) / (values.length - 1));
    const isExtra = /^(hipFront|midriff|bladesZ|bellyZ)/.test(id);
    if (IN_Y.includes(id)) ofY.push(sd);
    const isArm = OF_ARMHOLE.test(id);
    if (!isArm && !isExtra) biases.push(Math.abs(mean));
    const note = isArm ? '(armhole)' : isExtra ? '(not counted)' : '';
    process.stdout.write(
      `  ${id.padEnd(15)} ${mean.toFixed(1).padStart(6)} ± ${sd.toFixed(1).padStart(4)}  ${note}\n`,
    );
  }
  const y = Math.sqrt(ofY.reduce((a, b) => a + b * b, 0) / ofY.length);
  process.stdout.write(`standard deviation over ${IN_Y.join(', ')} (root mean square) ${y.toFixed(1)}\n`);
  const mean = biases.reduce((a, b) => a + b, 0) / biases.length;
  process.stdout.write(
    `mean absolute bias ${mean.toFixed(2)} mm, worst ${Math.max(...biases).toFixed(1)}; refused ${refused}, tapes in conflict ${conflicts}\n`,
  );
}

function meansOf(women: readonly LandmarkRow[]): Record<string, unknown> {
  const mean = (of: (row: LandmarkRow) => Record<string, number>): Record<string, number> => {
    const all = women.map(of);
    const ids = Object.keys(all[0]);
    const entries = ids.map((id) => {
      const known = all.map((one) => one[id]).filter(Number.isFinite);
      return [id, Math.round((10 * known.reduce((a, b) => a + b, 0)) / known.length) / 10];
    });
    return Object.fromEntries(entries);
  };
  return {
    women: women.length,
    measures: mean((row) => measuresOfLandmarks(row)),
    places: mean(placesOfLandmarks),
  };
}
