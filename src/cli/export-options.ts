import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { type Command, InvalidArgumentError } from 'commander';
import { parseLength } from '../core/base/index.ts';
import { EXPORT_FORMATS, type ExportOptions } from '../core/files/index.ts';
import { MATS, PAPERS, type PrintOptions } from '../core/sheet/index.ts';
import { englishSpeaker } from './english-speaker.ts';

/** Options of every command that writes files of a form. */
export interface PaperOptions {
  readonly paper?: readonly string[];
  readonly margin?: number;
  readonly butt?: boolean;
  readonly only?: readonly string[];
}

export interface FormatOptions extends PaperOptions {
  readonly formats?: readonly string[];
  readonly mat?: { readonly width: number; readonly height: number };
  readonly kerf?: number;
  readonly bladeOffset?: number;
  readonly overcut?: number;
  readonly strokeText?: boolean;
  readonly colours?: Readonly<Record<string, string>>;
  readonly modelScale?: number;
  readonly wall?: number;
}

/** Written when nothing else is asked for. */
const usualFormats = ['svg', 'json', 'glb'];
const paperIds = PAPERS.map(({ id }) => id);

/** Options about paper and pieces. */
export function addPaperOptions(command: Command): Command {
  return command
    .option('-p, --paper <ids>', `paper to print on: ${paperIds.join(', ')}; several with commas`, (text) =>
      readList(text, paperIds, 'paper'),
    )
    .option('--margin <length>', 'margin of the paper that stays empty: 10, "1/2 in"', readMargin)
    .option('--butt', 'cut pages and put them edge to edge instead of laying them over each other')
    .option('--only <ids...>', 'only these pieces (their ids are in the table of panels)');
}

/** Options for sheets that go to a cutting machine. */
export function addCutterOptions(command: Command): Command {
  return command
    .option(
      '--mat <size>',
      `mat of the cutting machine for --formats cutter: ${MATS.map(({ id }) => id).join(', ')} or 600x400 in mm`,
      readMat,
    )
    .option('--kerf <length>', 'width of the cut, by half of which lines are moved', readMargin)
    .option('--blade-offset <length>', 'from the axis of a dragged knife to its tip', readMargin)
    .option(
      '--overcut <length>',
      'how far a dragged knife goes on past the start of a closed cut',
      readMargin,
    )
    .option('--stroke-text', 'letters of single strokes, for a pen')
    .option('--colours <list>', 'colours by layer, for example cut=#ff0000,sew=none', readColours);
}

/** Options for the model of a 3D printer. */
export function addModelOptions(command: Command): Command {
  return command
    .option('--model-scale <n>', 'scale of the model for --formats stl: 5 is 1 : 5', readScale)
    .option('--wall <length>', 'walls of the hollow model', readMargin);
}

/** The option that names the kinds of files. */
export function addFormatOption(command: Command): Command {
  return command.option(
    '-f, --formats <list>',
    `files to write, with commas: ${EXPORT_FORMATS.join(', ')}; as a rule ${usualFormats.join(',')}, with --paper also pdf`,
    (text) => readList(text, EXPORT_FORMATS, 'format'),
  );
}

/** What to hand to `exportForm`: what the project says, over it the options, and the letters for the PDF read from disk. */
export async function exportOptionsOf(
  options: FormatOptions,
  date: string,
  saved: Pick<ExportOptions, 'papers' | 'print' | 'cutter'>,
  correction?: PrintOptions['correction'],
): Promise<ExportOptions> {
  const formats = options.formats ?? (options.paper ? [...usualFormats, 'pdf'] : usualFormats);
  const file = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf');
  return {
    say: englishSpeaker.say,
    formats,
    ...saved,
    ...(options.paper ? { papers: options.paper } : {}),
    ...(options.only ? { only: options.only.flatMap((ids) => ids.split(',')) } : {}),
    print: {
      ...saved.print,
      ...(options.margin === undefined ? {} : { margin: options.margin }),
      ...(options.butt ? { joint: 'butt' as const } : {}),
      ...(correction ? { correction } : {}),
    },
    cutter: {
      ...saved.cutter,
      ...(options.mat ? { mat: options.mat } : {}),
      ...(options.kerf === undefined ? {} : { kerf: options.kerf }),
      ...(options.bladeOffset === undefined ? {} : { bladeOffset: options.bladeOffset }),
      ...(options.overcut === undefined ? {} : { overcut: options.overcut }),
      ...(options.strokeText ? { strokeText: true } : {}),
      ...(options.colours ? { colours: { ...saved.cutter?.colours, ...options.colours } } : {}),
    },
    model: {
      ...(options.modelScale === undefined ? {} : { scale: options.modelScale }),
      ...(options.wall === undefined ? {} : { wall: options.wall }),
    },
    date,
    font: { name: 'DejaVuSans', bytes: await readFile(file) },
  };
}

function readList(text: string, known: readonly string[], word: string): string[] {
  const names = text
    .toLowerCase()
    .split(',')
    .map((name) => name.trim());
  const unknown = names.filter((name) => !known.includes(name));
  if (unknown.length === 0) return [...new Set(names)];
  throw new InvalidArgumentError(
    `There is no ${word} called “${unknown.join('”, “')}”. There are: ${known.join(', ')}.`,
  );
}

function readScale(text: string): number {
  const scale = Number(text.replace(/^1\s*:\s*/, ''));
  if (Number.isFinite(scale) && scale > 0) return scale;
  throw new InvalidArgumentError('It must be a number above 0: 5 is 1 : 5.');
}

function readMat(text: string): { width: number; height: number } {
  const mat = MATS.find(({ id }) => id === text.toLowerCase());
  if (mat) return { width: mat.width, height: mat.height ?? mat.width };
  const size = /^(\d+(?:\.\d+)?)[x×](\d+(?:\.\d+)?)$/i.exec(text);
  if (size) return { width: Number(size[1]), height: Number(size[2]) };
  throw new InvalidArgumentError(
    `It must be width and height in mm such as 600x400, or one of ${MATS.map(({ id }) => id).join(', ')}.`,
  );
}

function readColours(text: string): Record<string, string> {
  const colours: Record<string, string> = {};
  for (const part of text.split(',')) {
    const pair = /^\s*([a-z]+)\s*=\s*(#[0-9a-f]{6}|none)\s*$/i.exec(part);
    if (!pair) throw new InvalidArgumentError('It must be layer=#rrggbb or layer=none, with commas between.');
    colours[pair[1].toLowerCase()] = pair[2].toLowerCase();
  }
  return colours;
}

function readMargin(text: string): number {
  const length = parseLength(text, 'mm');
  if (length.ok && length.value >= 0) return length.value;
  throw new InvalidArgumentError('It must be a length, 0 or more; a number alone is millimetres.');
}
