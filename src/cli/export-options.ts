import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import path from 'node:path';
import { type Command, Option } from 'commander';
import { EXPORT_FORMATS, type ExportOptions } from '../core/files/index.ts';
import { PRINT_OPTIONS, type PrintOptions, type ProjectedSquare } from '../core/sheet/index.ts';
import type { Reader } from './create-reader.ts';
import {
  matIds,
  paperIds,
  readChoice,
  readColours,
  readFormats,
  reading,
  readMargin,
  readMat,
  readPapers,
  readProjectedSquare,
  readScale,
} from './read-arguments.ts';

/** Options of every command that writes files of a form. */
export interface PaperOptions {
  readonly paper?: readonly string[];
  readonly margin?: number;
  readonly butt?: boolean;
  readonly twinsApart?: boolean;
  readonly drawAll?: boolean;
  readonly booklet?: PrintOptions['booklet'];
  readonly only?: readonly string[];
}

export interface FormatOptions extends PaperOptions {
  readonly formats?: readonly string[];
  readonly projectedSquare?: ProjectedSquare;
  readonly darkGround?: boolean;
  readonly mat?: { readonly width: number; readonly height: number };
  readonly kerf?: number;
  readonly bladeOffset?: number;
  readonly overcut?: number;
  readonly strokeText?: boolean;
  readonly divide?: boolean;
  readonly colours?: Readonly<Record<string, string>>;
  readonly modelScale?: number;
  readonly wall?: number;
  readonly gauges?: readonly string[];
  readonly gaugeClearance?: number;
}

/** Written when nothing else is asked for. */
const usualFormats = ['svg', 'json', 'glb'];

/** Options about paper and pieces. */
export function addPaperOptions(command: Command, reader: Reader): void {
  const { make: words, values } = reader.words.help;
  command
    .option(`-p, --paper <${values.ids}>`, words.paper(paperIds.join(', ')), reading(readPapers, reader))
    .option(`--margin <${values.length}>`, words.margin, reading(readMargin, reader))
    .option('--butt', words.butt)
    .option('--twins-apart', words.twinsApart)
    .option('--draw-all', words.drawAll)
    .option(`--only <${values.ids}...>`, words.only);
}

/** How the booklet's pages lie on paper. */
export function addBookletOption(command: Command, reader: Reader): void {
  const { make: words, values } = reader.words.help;
  const { choices } = PRINT_OPTIONS.booklet;
  command.addOption(
    new Option(`--booklet <${values.size}>`, words.booklet)
      .choices(choices)
      .argParser(reading(readChoice(choices), reader)),
  );
}

/** Options for the page that is projected. */
export function addProjectorOptions(command: Command, reader: Reader): void {
  const { make: words, values } = reader.words.help;
  command
    .option(
      `--projected-square <${values.list}>`,
      words.projectedSquare,
      reading(readProjectedSquare, reader),
    )
    .option('--dark-ground', words.darkGround);
}

/** Options for sheets that go to a cutting machine. */
export function addCutterOptions(command: Command, reader: Reader): void {
  const { make: words, values } = reader.words.help;
  command
    .option(`--mat <${values.size}>`, words.mat(matIds), reading(readMat, reader))
    .option(`--kerf <${values.length}>`, words.kerf, reading(readMargin, reader))
    .option(`--blade-offset <${values.length}>`, words.bladeOffset, reading(readMargin, reader))
    .option(`--overcut <${values.length}>`, words.overcut, reading(readMargin, reader))
    .option('--stroke-text', words.strokeText)
    .option('--divide', words.divide)
    .option(`--colours <${values.list}>`, words.colours, reading(readColours, reader));
}

/** Options for the model of a 3D printer. */
export function addModelOptions(command: Command, reader: Reader): void {
  const { make: words, values } = reader.words.help;
  command
    .option(`--model-scale <${values.number}>`, words.modelScale, reading(readScale, reader))
    .option(`--wall <${values.length}>`, words.wall, reading(readMargin, reader));
}

/** Options for gauges to hold against the filled form. */
export function addGaugeOptions(command: Command, reader: Reader): void {
  const { make: words, values } = reader.words.help;
  command
    .option(`--gauges <${values.ids}>`, words.gauges, (text) => text.split(',').map((id) => id.trim()))
    .option(`--gauge-clearance <${values.length}>`, words.gaugeClearance, reading(readMargin, reader));
}

/** The option that names the kinds of files. */
export function addFormatOption(command: Command, reader: Reader): void {
  const { make: words, values } = reader.words.help;
  const about = words.formats(EXPORT_FORMATS.join(', '), usualFormats.join(','));
  command.option(`-f, --formats <${values.list}>`, about, reading(readFormats, reader));
}

/** What to hand to `exportForm`: what the project says, over it the options, and the letters for the PDF read from disk. */
export async function exportOptionsOf(
  options: FormatOptions,
  date: string,
  saved: Pick<ExportOptions, 'papers' | 'print' | 'projector' | 'cutter'>,
  { say }: Reader,
  correction?: PrintOptions['correction'],
): Promise<ExportOptions> {
  const { gauges, gaugeClearance: clearance } = options;
  const asked = [...(options.paper ? ['pdf'] : []), ...(options.booklet ? ['booklet'] : [])];
  const formats = options.formats ?? [...usualFormats, ...asked];
  return {
    say,
    formats: gauges && !formats.includes('gauges') ? [...formats, 'gauges'] : formats,
    ...saved,
    ...(options.paper ? { papers: options.paper } : {}),
    ...(options.only ? { only: options.only.flatMap((ids) => ids.split(',')) } : {}),
    print: { ...printOptionsOf(options, saved), ...(correction ? { correction } : {}) },
    projector: {
      ...saved.projector,
      ...(options.projectedSquare ? { projectedSquare: options.projectedSquare } : {}),
      ...(options.darkGround ? { ground: 'dark' as const } : {}),
    },
    cutter: {
      ...saved.cutter,
      ...(options.mat ? { mat: options.mat } : {}),
      ...(options.kerf === undefined ? {} : { kerf: options.kerf }),
      ...(options.bladeOffset === undefined ? {} : { bladeOffset: options.bladeOffset }),
      ...(options.overcut === undefined ? {} : { overcut: options.overcut }),
      ...(options.strokeText ? { strokeText: true } : {}),
      ...(options.divide ? { divides: true } : {}),
      ...(options.colours ? { colours: { ...saved.cutter?.colours, ...options.colours } } : {}),
    },
    model: {
      ...(options.modelScale === undefined ? {} : { scale: options.modelScale }),
      ...(options.wall === undefined ? {} : { wall: options.wall }),
    },
    gauges: {
      ...(gauges ? { levels: gauges } : {}),
      ...(clearance === undefined ? {} : { clearance }),
    },
    date,
    font: { name: 'DejaVuSans', bytes: await readFile(findFont()) },
  };
}

/** How the pieces go to paper: what the project says, over it the options. */
export function printOptionsOf(
  { margin, butt, twinsApart, drawAll, booklet }: PaperOptions,
  saved: Pick<ExportOptions, 'print'>,
): NonNullable<ExportOptions['print']> {
  return {
    ...saved.print,
    ...(margin === undefined ? {} : { margin }),
    ...(butt ? { joint: 'butt' as const } : {}),
    ...(twinsApart ? { twins: 'apart' as const } : {}),
    ...(drawAll ? { plain: 'drawn' as const } : {}),
    ...(booklet ? { booklet } : {}),
  };
}

/** Beside the program in the package; else in the package of the font. */
function findFont(): string {
  const beside = path.join(import.meta.dirname, 'DejaVuSans.ttf');
  if (existsSync(beside)) return beside;
  return createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf');
}
