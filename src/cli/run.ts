import { Command, CommanderError, InvalidArgumentError, Option } from 'commander';
import { parseLength } from '../core/base/index.ts';
import { ALLOWANCE_LIMITS, GRAIN_TURN, NOTCH_SHAPES, PATTERN_OPTIONS } from '../core/pattern/index.ts';
import { adviseCommand } from './advise-command.ts';
import { checkCommand } from './check-command.ts';
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

/** Where a command talks to; `process` has this shape. */
export interface CommandStreams {
  readonly stdout: { write(text: string): unknown };
  readonly stderr: { write(text: string): unknown; readonly isTTY?: boolean; readonly columns?: number };
}

interface Limits {
  readonly min: number;
  readonly max: number;
}

/** What the command line alone asks for. */
const triangleLimits = { min: 500, max: 200_000 } as const;
const strainLimits = { min: 0.2, max: 20 } as const;
const panelLimits = { min: 4, max: 60 } as const;
const zoneLimits = { min: 1, max: 20 } as const;
/** A turned grain is given in degrees here. */
const grainDegrees = { min: degreesOf(GRAIN_TURN.min), max: degreesOf(GRAIN_TURN.max) };

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

function buildProgram(streams: CommandStreams, end: (exitCode: number) => void): Command {
  const program = new Command('loftseam')
    .description('From body measurements to flat panels for a sewn, stuffed dress form.')
    .exitOverride()
    .configureOutput({
      writeOut: (text) => streams.stdout.write(text),
      writeErr: (text) => streams.stderr.write(text),
    })
    .showHelpAfterError('Add --help to see what is understood.')
    .addHelpText('after', exitCodeHelp);
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
  program
    .command('compare')
    .description('show what differs between two bodies, or one body then and now')
    .argument('<before>', 'saved project (*.loftseam.json)')
    .argument('<after>', 'saved project (*.loftseam.json)')
    .option('--map <file>', 'also draw the distances, as a picture: FILE.svg')
    .action(async (before, after, options) => end(await compareCommand(before, after, options, streams)));
  program
    .command('advise')
    .description(
      'try out which seam to move or add where the cloth is asked for more than it takes; changes nothing',
    )
    .argument('<file>', 'saved project (*.loftseam.json)')
    .option('-z, --zones <n>', 'how many places, the worst first', readZones, 3)
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
  program
    .command('region')
    .description('unroll a region drawn on the body as one flat piece, with its strain')
    .argument('<file>', 'saved project (*.loftseam.json)')
    .argument('<loop>', 'points in order: [[u, v], …], u in radians round the body, v in mm')
    .option('-o, --out <file>', 'also draw the piece in true size: FILE.svg')
    .action(async (file, loop, options) => end(await regionCommand(file, loop, options, streams)));
  program
    .command('demo')
    .description('write a demo project to start from; without a name, list them')
    .argument('[name]', 'which one')
    .option('-o, --out <folder>', 'where to write', '.')
    .option('--replace', 'write over a file of the same name')
    .action(async (name, options) => end(await demoCommand(name, options, streams)));
  for (const command of program.commands) command.addHelpText('after', exitCodeHelp);
  return program;
}

function readPercent(text: string): number {
  const percent = Number(text);
  if (isWithin(percent, strainLimits)) return percent;
  throw new InvalidArgumentError(`It must be a number of per cent, ${limitsInWords(strainLimits)}.`);
}

function readPanels(text: string): number {
  return readWhole(text, panelLimits);
}

function readZones(text: string): number {
  return readWhole(text, zoneLimits);
}

function readWhole(text: string, limits: Limits): number {
  const count = Number(text);
  if (Number.isInteger(count) && isWithin(count, limits)) return count;
  throw new InvalidArgumentError(`It must be a whole number, ${limitsInWords(limits)}.`);
}

function readTriangles(text: string): number {
  const count = Number(text);
  if (/^\d+$/.test(text) && isWithin(count, triangleLimits)) return count;
  throw new InvalidArgumentError(`It must be a whole number, ${limitsInWords(triangleLimits)}.`);
}

/** The allowance of everything that has none of its own, seams among it. */
function readSeamAllowance(text: string): number {
  return readAllowance(text, ALLOWANCE_LIMITS.smallest);
}

function readAllowance(text: string, min: number = PATTERN_OPTIONS.allowance.min): number {
  const { max } = PATTERN_OPTIONS.allowance;
  const length = parseLength(text, 'mm');
  if (length.ok && isWithin(length.value, { min, max })) return length.value;
  throw new InvalidArgumentError(
    `It must be a length of ${limitsInWords({ min: ALLOWANCE_LIMITS.smallest, max })} mm (an opening may also have 0); a number alone is millimetres.`,
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

function degreesOf(radians: number): number {
  return (radians * 180) / Math.PI;
}

function readGrains(text: string): Record<string, number> {
  return Object.fromEntries(
    text.split(',').map((part) => {
      const pair = /^\s*(\w+)\s*=\s*([+-]?\d+(?:\.\d+)?)\s*$/.exec(part);
      const radians = (Number(pair?.[2]) * Math.PI) / 180;
      if (!pair || !isWithin(radians, GRAIN_TURN))
        throw new InvalidArgumentError(
          `It must be panel=degrees, ${limitsInWords(grainDegrees)}, with commas between.`,
        );
      return [pair[1], radians] as const;
    }),
  );
}

function readLength(text: string): number {
  const length = parseLength(text, 'mm');
  if (length.ok && length.value > 0) return length.value;
  throw new InvalidArgumentError('It must be a length above 0; a number alone is millimetres.');
}

function isWithin(value: number, { min, max }: Limits): boolean {
  return value >= min && value <= max;
}

function limitsInWords({ min, max }: Limits): string {
  return `${min} to ${max}`;
}
