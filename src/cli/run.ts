import { Command, CommanderError, InvalidArgumentError, Option } from 'commander';
import { parseLength } from '../core/base/index.ts';
import { ALLOWANCE_LIMITS, ALLOWANCES_IN_WORDS, NOTCH_SHAPES } from '../core/pattern/index.ts';
import { allowanceLimits, grainLimits } from '../core/project/index.ts';
import { adviseCommand } from './advise-command.ts';
import { checkCommand } from './check-command.ts';
import type { CommandStreams } from './command-streams.ts';
import { compareCommand } from './compare-command.ts';
import { demoCommand } from './demo-command.ts';
import { CommandFailure, exitCodes } from './exit-codes.ts';
import { addCutterOptions, addFormatOption, addModelOptions, addPaperOptions } from './export-options.ts';
import { addInsideOption } from './inside-options.ts';
import { makeCommand } from './make-command.ts';
import { planCommand, stuffingCommand } from './plan-command.ts';
import { printCorrectCommand } from './print-correct-command.ts';
import { proposeCommand } from './propose-command.ts';
import { regionCommand } from './region-command.ts';

const triangleLimits = { min: 500, max: 200_000 } as const;

const exitCodeHelp = `
Exit codes: 0 fine, 1 errors in the project, 2 command not understood, 3 cannot read or write, 4 internal fault.`;

/** Runs one command and returns its exit code. Results go to stdout; progress, warnings and errors to stderr. */
export async function run(args: readonly string[], streams: CommandStreams): Promise<number> {
  let exitCode: number = exitCodes.fine;
  const program = buildProgram(streams, (code) => {
    exitCode = code;
  });
  try {
    await program.parseAsync([...args], { from: 'user' });
    return exitCode;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? exitCodes.fine : exitCodes.usage;
    if (error instanceof CommandFailure) {
      streams.stderr.write(`${error.message}\n`);
      return error.exitCode;
    }
    const reason = error instanceof Error ? (error.stack ?? error.message) : String(error);
    streams.stderr.write(`Something went wrong inside the program, not in what you typed:\n${reason}\n`);
    return exitCodes.internal;
  }
}

type End = (exitCode: number) => void;

function buildProgram(streams: CommandStreams, end: End): Command {
  const program = new Command('loftseam')
    .description('From body measurements to flat panels for a sewn, stuffed dress form.')
    .exitOverride()
    .configureOutput({
      writeOut: (text) => streams.stdout.write(text),
      writeErr: (text) => streams.stderr.write(text),
    })
    .showHelpAfterError('Add --help to see what is understood.')
    .addHelpText('after', exitCodeHelp);
  addMake(program, streams, end);
  addPrintCorrect(program, streams, end);
  addReadings(program, streams, end);
  addCompare(program, streams, end);
  addSeamSearch(program, streams, end);
  addRegion(program, streams, end);
  addDemo(program, streams, end);
  for (const command of program.commands) command.addHelpText('after', exitCodeHelp);
  return program;
}

function addMake(program: Command, streams: CommandStreams, end: End): void {
  const make = program
    .command('make')
    .description(
      'make the form: panels to cut (panels.svg), what was measured (report.json), the body (body.glb)',
    )
    .argument('<file>', 'saved project (*.loftseam.json)')
    .option('-o, --out <folder>', 'where to write; made if missing', 'out')
    .option(
      '-t, --triangles <n>',
      `fineness of the whole shell, ${limitsInWords(triangleLimits)}`,
      readTriangles,
    )
    .option(
      '-a, --allowance <length>',
      'seam allowance instead of the saved one: 10, "1 cm", "3/8 in"',
      readSeamAllowance,
    )
    .option(
      '--allowance-for <list>',
      'other allowances: opening=15,webs=8,base=20 (kind of edge, material, or seam id)',
      readAllowances,
    )
    .addOption(
      new Option('--notches <shape>', 'how notches show at the cut edge, instead of the saved way').choices(
        NOTCH_SHAPES,
      ),
    )
    .option('-l, --layout <id>', 'seam layout instead of the saved one')
    .option(
      '--grain <list>',
      'grain of single panels: sideFrontRight=15,… degrees from upright, counter-clockwise',
      readGrains,
    )
    .action(async (file, options) => end(await makeCommand(file, options, streams)));
  addModelOptions(addCutterOptions(addPaperOptions(addFormatOption(addInsideOption(make)))));
}

function addPrintCorrect(program: Command, streams: CommandStreams, end: End): void {
  const correct = program
    .command('print-correct')
    .description('write the pages again for a printer that does not print to size')
    .argument('[file]', 'saved project (*.loftseam.json); without it, only tell the correction')
    .requiredOption(
      '--measured-x <length>',
      'what the bar across the first page measures on paper',
      readLength,
    )
    .requiredOption('--measured-y <length>', 'what the bar up the first page measures on paper', readLength)
    .option(
      '--bar <length>',
      'what both should measure; as a rule the printed bar they are nearest to',
      readLength,
    )
    .option('-o, --out <folder>', 'where to write; made if missing', 'out')
    .action(async (file, options) => end(await printCorrectCommand(file, options, streams)));
  addPaperOptions(correct);
}

/** Commands that only tell: check, plan, stuffing. */
function addReadings(program: Command, streams: CommandStreams, end: End): void {
  program
    .command('check')
    .description('check a project and show every tape: asked for, and found on the body')
    .argument('<file>', 'saved project (*.loftseam.json)')
    .action(async (file) => end(await checkCommand(file, streams)));
  program
    .command('plan')
    .description('show the order of work: steps, pieces, seams by letter, what to check')
    .argument('<file>', 'saved project (*.loftseam.json)')
    .action(async (file) => end(await planCommand(file, streams)));
  program
    .command('stuffing')
    .description('show what the filled form is to measure, and judge what its log says was measured')
    .argument('<file>', 'saved project (*.loftseam.json)')
    .action(async (file) => end(await stuffingCommand(file, streams)));
}

function addCompare(program: Command, streams: CommandStreams, end: End): void {
  program
    .command('compare')
    .description('show what differs between two bodies, or one body then and now')
    .argument('<before>', 'saved project (*.loftseam.json)')
    .argument('<after>', 'saved project (*.loftseam.json)')
    .option('--map <file>', 'also draw the distances, as a picture: FILE.svg')
    .action(async (before, after, options) => end(await compareCommand(before, after, options, streams)));
}

/** Commands that try seams out: advise, propose. */
function addSeamSearch(program: Command, streams: CommandStreams, end: End): void {
  program
    .command('advise')
    .description(
      'try out which seam to move or add where the cloth is asked for more than it takes; changes nothing',
    )
    .argument('<file>', 'saved project (*.loftseam.json)')
    .option('-z, --zones <n>', 'how many places, the worst first', readCount, 3)
    .option('-l, --layout <id>', 'seam layout instead of the saved one')
    .action(async (file, options) => end(await adviseCommand(file, options, streams)));
  program
    .command('propose')
    .description(
      'propose seam lines for the whole form: moved, then added one by one, with the strain before and after',
    )
    .argument('<file>', 'saved project (*.loftseam.json)')
    .option(
      '-s, --strain <percent>',
      'stop when 95 of 100 parts of the cloth are strained less',
      readPercent,
      2,
    )
    .option('-p, --panels <n>', 'no more panels than this, the neck band among them', readPanels)
    .option('-l, --layout <id>', 'seam layout instead of the saved one')
    .option('-o, --out <file>', 'write the project with these lines to another file')
    .action(async (file, { panels, ...options }) =>
      end(
        await proposeCommand(
          file,
          { ...options, ...(panels === undefined ? {} : { mostPanels: panels }) },
          streams,
        ),
      ),
    );
}

function addRegion(program: Command, streams: CommandStreams, end: End): void {
  program
    .command('region')
    .description('unroll a region drawn on the body as one flat piece, with its strain')
    .argument('<file>', 'saved project (*.loftseam.json)')
    .argument('<loop>', 'points in order: [[u, v], …], u in radians round the body, v in mm')
    .option('-o, --out <file>', 'also draw the piece in true size: FILE.svg')
    .action(async (file, loop, options) => end(await regionCommand(file, loop, options, streams)));
}

function addDemo(program: Command, streams: CommandStreams, end: End): void {
  program
    .command('demo')
    .description('write a demo project to start from; without a name, list them')
    .argument('[name]', 'which one')
    .option('-o, --out <folder>', 'where to write', '.')
    .option('--replace', 'write over a file of the same name')
    .action(async (name, options) => end(await demoCommand(name, options, streams)));
}

function readPercent(text: string): number {
  const percent = Number(text);
  if (percent >= 0.2 && percent <= 20) return percent;
  throw new InvalidArgumentError('It must be a number of per cent, 0.2 to 20.');
}

function readPanels(text: string): number {
  const count = Number(text);
  if (Number.isInteger(count) && count >= 4 && count <= 60) return count;
  throw new InvalidArgumentError('It must be a whole number, 4 to 60.');
}

function readCount(text: string): number {
  const count = Number(text);
  if (Number.isInteger(count) && count >= 1 && count <= 20) return count;
  throw new InvalidArgumentError('It must be a whole number, 1 to 20.');
}

function readTriangles(text: string): number {
  const { min, max } = triangleLimits;
  const count = Number(text);
  if (/^\d+$/.test(text) && count >= min && count <= max) return count;
  throw new InvalidArgumentError(`It must be a whole number, ${limitsInWords(triangleLimits)}.`);
}

/** The allowance of everything that has none of its own, seams among it. */
function readSeamAllowance(text: string): number {
  return readAllowance(text, ALLOWANCE_LIMITS.smallest);
}

function readAllowance(text: string, min: number = allowanceLimits.min): number {
  const { max } = allowanceLimits;
  const length = parseLength(text, 'mm');
  if (length.ok && length.value >= min && length.value <= max) return length.value;
  throw new InvalidArgumentError(
    `It must be a length of ${ALLOWANCES_IN_WORDS}; a number alone is millimetres.`,
  );
}

function readAllowances(text: string): Record<string, number> {
  const allowances: Record<string, number> = {};
  for (const part of text.split(',')) {
    const pair = /^\s*([^=]+?)\s*=\s*(.+)$/.exec(part);
    if (!pair) throw new InvalidArgumentError('It must be name=length, with commas between.');
    allowances[pair[1]] = readAllowance(pair[2]);
  }
  return allowances;
}

function readGrains(text: string): Record<string, number> {
  return Object.fromEntries(
    text.split(',').map((part) => {
      const pair = /^\s*(\w+)\s*=\s*([+-]?\d+(?:\.\d+)?)\s*$/.exec(part);
      const radians = (Number(pair?.[2]) * Math.PI) / 180;
      if (!pair || Math.abs(radians) > grainLimits.max)
        throw new InvalidArgumentError('It must be panel=degrees, -90 to 90, with commas between.');
      return [pair[1], radians] as const;
    }),
  );
}

function readLength(text: string): number {
  const length = parseLength(text, 'mm');
  if (length.ok && length.value > 0) return length.value;
  throw new InvalidArgumentError('It must be a length above 0; a number alone is millimetres.');
}

function limitsInWords({ min, max }: { readonly min: number; readonly max: number }): string {
  return `${min} to ${max}`;
}
