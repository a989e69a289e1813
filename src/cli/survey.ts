/**
 * npm run survey -- FILE.csv [--every N]
 * Runs the people of a public body survey through the body fit and prints three tables: tapes met, widths and depths
 * against the calipers, mistakes found. Which figure: by the file's name (women / men), or --figure bust|chest.
 */
import path from 'node:path';
import { Command } from 'commander';
import { type Body, type BodyInput, type Figure, findMistakes, fitBody } from '../core/body/index.ts';
import { measuresOfRow, readSurveyRows } from './survey-columns.ts';

const program = new Command('survey')
  .argument('<file>', 'CSV with the survey’s columns, see shared/survey/SOURCE.md')
  .option('--every <n>', 'take every n-th person', '1')
  .option('--figure <figure>', 'bust or chest; default by the file’s name')
  .parse();
const file = program.args[0];
const options = program.opts<{ every: string; figure?: string }>();
const figure: Figure =
  (options.figure ?? (/women/.test(file) ? 'bust' : 'chest')) === 'bust' ? 'bust' : 'chest';
const step = Math.max(1, Number(options.every));
const people = readSurveyRows(file).filter((_, i) => i % step === 0);

process.stdout.write(`# ${path.basename(file)}: ${people.length} people, figure “${figure}”\n`);
printFit();
printBoxes();
printMistakes();

function printFit(): void {
  let met = 0;
  let conflict = 0;
  let refused = 0;
  let crashed = 0;
  let worst = 0;
  const codes = new Map<string, number>();
  const start = performance.now();
  for (const row of people) {
    const result = fitOrCrash({ figure, measures: measuresOfRow(row, figure) });
    if (!result) {
      crashed++;
      continue;
    }
    for (const { code } of result.issues) codes.set(code, (codes.get(code) ?? 0) + 1);
    if (!result.ok) refused++;
    else if (result.value.tapes.some((t) => t.status === 'conflict')) conflict++;
    else {
      met++;
      for (const t of result.value.tapes)
        if (t.status === 'met') worst = Math.max(worst, Math.abs(t.got - t.target));
    }
  }
  const each = (performance.now() - start) / people.length;
  process.stdout.write(
    `\nFit. every tape met: ${met} (${percent(met)}), worst ${worst.toFixed(3)} mm; named conflict: ${conflict}; ` +
      `refused with a message: ${refused}; crashed: ${crashed}; ${each.toFixed(0)} ms each\n`,
  );
  for (const [code, count] of [...codes].sort((a, b) => b[1] - a[1])) {
    process.stdout.write(`  ${code.padEnd(22)} ${count}\n`);
  }
}

/** A throw is a defect of ours, never of the person measured: counted, not hidden. */
function fitOrCrash(input: BodyInput): ReturnType<typeof fitBody> | undefined {
  try {
    return fitBody(input, undefined, { fair: true });
  } catch {
    return undefined;
  }
}

function percent(count: number): string {
  return `${((100 * count) / people.length).toFixed(1)} %`;
}

/** Widths and depths foretold from tapes alone, and with the section choice set from the true depth / width. */
function printBoxes(): void {
  const levels = [
    { level: 'hip', width: 'hipbreadth', depth: 'buttockdepth' },
    { level: 'highHip', width: 'waistbreadth', depth: 'waistdepth' },
    { level: 'bust', width: 'chestbreadth', depth: 'chestdepth' },
  ] as const;
  process.stdout.write('\nAgainst the calipers, mm: bias ± SD (highHip = navel level)\n');
  process.stdout.write(
    '  level    without choice: width     depth      | true ratio chosen: width   depth\n',
  );
  for (const { level, width, depth } of levels) {
    const errors: [number, number, number, number][] = [];
    for (const row of people) {
      const measures = measuresOfRow(row, figure);
      const plain = fitBody({ figure, measures }, undefined, { fair: true });
      if (!plain.ok) continue;
      const [w, d] = sizeAt(plain.value, level);
      const trueRatio = row[depth] / row[width];
      const offset = trueRatio - expectedRatio(measures, level);
      const shape = { [`${level}Section`]: offset };
      const chosen = fitBody({ figure, measures, shape }, plain.value, { fair: true });
      if (!chosen.ok) continue;
      const [cw, cd] = sizeAt(chosen.value, level);
      errors.push([w - row[width], d - row[depth], cw - row[width], cd - row[depth]]);
    }
    const text = [0, 1, 2, 3].map((k) => summary(errors.map((e) => e[k])));
    process.stdout.write(
      `  ${level.padEnd(8)} ${text[0]}  ${text[1]}  | ${text[2]}  ${text[3]}   (${errors.length} people)\n`,
    );
  }
}

type BoxLevel = 'hip' | 'highHip' | 'bust';

/** The ratio that a choice of 0 would aim at: read back by asking for the measured ratio’s estimate. */
function expectedRatio(measures: BodyInput['measures'], level: BoxLevel): number {
  const body = fitBody({ figure, measures, shape: { [`${level}Section`]: 0 } }, undefined, { fair: true });
  if (!body.ok) return Number.NaN;
  const [w, d] = sizeAt(body.value, level);
  return d / w;
}

function sizeAt(body: Body, level: BoxLevel): readonly [width: number, depth: number] {
  const row = body.sections[level];
  return [row.width, row.depth];
}

function summary(values: readonly number[]): string {
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  const sd = Math.sqrt(values.reduce((a, b) => a + (b - mean) ** 2, 0) / (values.length - 1));
  return `${mean.toFixed(1).padStart(6)} ± ${sd.toFixed(1).padStart(4)}`;
}

/** Mistakes put into true lists, one at a time, and how often they are told; and told of lists as they are. */
function printMistakes(): void {
  const ids = Object.keys(measuresOfRow(people[0], figure));
  let alarms = 0;
  const clean = people.map((row) => measuresOfRow(row, figure));
  for (const measures of clean) if (isTold({ figure, measures })) alarms++;
  process.stdout.write(`\nMistakes. told of true lists (false alarms): ${alarms} (${percent(alarms)})\n`);
  process.stdout.write(
    '  measure           +40 mm told / named   −40 mm told / named   two digits exchanged told\n',
  );
  for (const id of ids) {
    const cells = [40, -40].map((error) => {
      const found = clean.map((m) => findMistakes({ figure, measures: { ...m, [id]: m[id] + error } }));
      const told = found.filter((f) => f.length > 0).length;
      const named = found.filter((f) => f.some((issue) => issue.path === `measures.${id}`)).length;
      return `${percent(told)} / ${percent(named)}`.padEnd(21);
    });
    const swapped = clean
      .map((m) => ({ ...m, [id]: exchangeDigits(m[id]) }))
      .filter((m, i) => Math.abs(m[id] - clean[i][id]) >= 30);
    const told = swapped.filter((measures) => isTold({ figure, measures })).length;
    const share = swapped.length
      ? `${((100 * told) / swapped.length).toFixed(0)} % of ${swapped.length}`
      : 'none';
    process.stdout.write(`  ${id.padEnd(17)} ${cells.join(' ')} ${share}\n`);
  }
  const exchanged = clean.filter((m) =>
    isTold({ figure, measures: { ...m, waistGirth: m.hipGirth, hipGirth: m.waistGirth } }),
  ).length;
  process.stdout.write(`  waist and hip exchanged: told ${percent(exchanged)}\n`);
}

function isTold(input: BodyInput): boolean {
  return findMistakes(input).length > 0;
}

/** The first two digits exchanged, as in 765 for 675. */
function exchangeDigits(value: number): number {
  const digits = String(Math.round(value));
  return Number(digits[1] + digits[0] + digits.slice(2));
}
