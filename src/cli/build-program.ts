import { type Command, Option } from 'commander';
import { NOTCH_SHAPES } from '../core/pattern/index.ts';
import type { Pipeline } from '../core/pipeline/index.ts';
import { LANGUAGES } from '../language/index.ts';
import { adviseCommand } from './advise-command.ts';
import { checkCommand } from './check-command.ts';
import type { CommandStreams } from './command-streams.ts';
import { compareCommand } from './compare-command.ts';
import { coreCommand } from './core-command.ts';
import type { Reader } from './create-reader.ts';
import { demoCommand } from './demo-command.ts';
import {
  addBookletOption,
  addCutterOptions,
  addFormatOption,
  addGaugeOptions,
  addModelOptions,
  addPaperOptions,
  addProjectorOptions,
} from './export-options.ts';
import { addInsideOption } from './inside-options.ts';
import { layCommand } from './lay-command.ts';
import { makeCommand } from './make-command.ts';
import { planCommand, stuffingCommand } from './plan-command.ts';
import { printCorrectCommand } from './print-correct-command.ts';
import { proposeCommand } from './propose-command.ts';
import {
  knownLanguages,
  limitsInWords,
  readAllowances,
  readChoice,
  readGrains,
  reading,
  readLanguage,
  readLength,
  readPanels,
  readPercent,
  readSeamAllowance,
  readTriangles,
  readZones,
  triangleLimits,
} from './read-arguments.ts';
import { refitCommand } from './refit-command.ts';
import { regionCommand } from './region-command.ts';
import { SpeakingCommand } from './speaking-command.ts';

/** Who a command talks to, what makes its forms, and whom it tells its exit code. */
interface Setting {
  readonly streams: CommandStreams;
  readonly reader: Reader;
  readonly pipeline: Pipeline;
  readonly end: (exitCode: number) => void;
}

/** All commands with their options, explained to one reader. Throws `CommanderError` when run with what it does not understand. */
export function buildProgram(setting: Setting): Command {
  const { streams, reader } = setting;
  const { help } = reader.words;
  const program = new SpeakingCommand('loftseam', reader.words)
    .description(help.program)
    .helpCommand(`help [${help.command}]`, help.help)
    .exitOverride()
    .configureOutput({
      writeOut: (text) => streams.stdout.write(text),
      writeErr: (text) => streams.stderr.write(text),
    })
    .addOption(
      new Option(`--language <${LANGUAGES.join('|')}>`, help.language(knownLanguages)).argParser(
        reading(readLanguage, reader),
      ),
    );
  addMake(program, setting);
  addPrintCorrect(program, setting);
  addLooking(program, setting);
  addPlan(program, setting);
  addCompare(program, setting);
  addRefit(program, setting);
  addAdvise(program, setting);
  addPropose(program, setting);
  addRegion(program, setting);
  addDemo(program, setting);
  for (const command of [program, ...program.commands]) command.addHelpText('after', `\n${help.exitCodes}`);
  return program;
}

function addMake(program: Command, { streams, reader, pipeline, end }: Setting): void {
  const { make: words, values, out, project, layout } = reader.words.help;
  const make = program
    .command('make')
    .description(words.about)
    .argument(`<${values.file}>`, project)
    .option(`-o, --out <${values.folder}>`, out, 'out')
    .option(
      `-t, --triangles <${values.number}>`,
      words.triangles(limitsInWords(triangleLimits, reader)),
      reading(readTriangles, reader),
    )
    .option(`-a, --allowance <${values.length}>`, words.allowance, reading(readSeamAllowance, reader))
    .option(`--allowance-for <${values.list}>`, words.allowanceFor, reading(readAllowances, reader))
    .addOption(
      new Option(`--notches <${values.shape}>`, words.notches)
        .choices(NOTCH_SHAPES)
        .argParser(reading(readChoice(NOTCH_SHAPES), reader)),
    )
    .option(`-l, --layout <${values.id}>`, layout)
    .option(`--grain <${values.list}>`, words.grain, reading(readGrains, reader))
    .option('--trial-shell', words.trialShell)
    .action(async (file, options) => end(await makeCommand(file, options, streams, reader, pipeline)));
  addInsideOption(make, reader);
  addFormatOption(make, reader);
  addPaperOptions(make, reader);
  addBookletOption(make, reader);
  addProjectorOptions(make, reader);
  addCutterOptions(make, reader);
  addModelOptions(make, reader);
  addGaugeOptions(make, reader);
}

function addPrintCorrect(program: Command, { streams, reader, pipeline, end }: Setting): void {
  const { printCorrect: words, values, out } = reader.words.help;
  const correct = program
    .command('print-correct')
    .description(words.about)
    .argument(`[${values.file}]`, words.file)
    .requiredOption(`--measured-x <${values.length}>`, words.measuredX, reading(readLength, reader))
    .requiredOption(`--measured-y <${values.length}>`, words.measuredY, reading(readLength, reader))
    .option(`--bar <${values.length}>`, words.bar, reading(readLength, reader))
    .option(`-o, --out <${values.folder}>`, out, 'out')
    .action(async (file, options) =>
      end(await printCorrectCommand(file, options, streams, reader, pipeline)),
    );
  addPaperOptions(correct, reader);
}

/** What only looks at a project, and has no options of its own. */
function addLooking(program: Command, { streams, reader, pipeline, end }: Setting): void {
  const { help } = reader.words;
  const looking = [
    { name: 'check', about: help.check.about, run: checkCommand },
    { name: 'lay', about: help.lay.about, run: layCommand },
    { name: 'stuffing', about: help.stuffing.about, run: stuffingCommand },
  ];
  for (const { name, about, run } of looking) {
    program
      .command(name)
      .description(about)
      .argument(`<${help.values.file}>`, help.project)
      .action(async (file) => end(await run(file, streams, reader, pipeline)));
  }
}

function addPlan(program: Command, { streams, reader, pipeline, end }: Setting): void {
  const { plan: words, values, project } = reader.words.help;
  const plan = program
    .command('plan')
    .description(words.about)
    .argument(`<${values.file}>`, project)
    .action(async (file, options) => end(await planCommand(file, options, streams, reader, pipeline)));
  addPaperOptions(plan, reader);
}

function addCompare(program: Command, { streams, reader, pipeline, end }: Setting): void {
  const { compare: words, values, project } = reader.words.help;
  program
    .command('compare')
    .description(words.about)
    .argument(`<${values.before}>`, project)
    .argument(`<${values.after}>`, project)
    .option(`--map <${values.file}>`, words.map)
    .action(async (before, after, options) =>
      end(await compareCommand(before, after, options, streams, reader, pipeline)),
    );
}

/** A form that stands, for another body; and one core for several. */
function addRefit(program: Command, { streams, reader, pipeline, end }: Setting): void {
  const { refit, core, make, values, project, out } = reader.words.help;
  const refitting = program
    .command('refit')
    .description(refit.about)
    .argument(`<${values.before}>`, project)
    .argument(`<${values.after}>`, project)
    .action(async (before, after, options) =>
      end(await refitCommand(before, after, options, streams, reader, pipeline)),
    );
  const sharing = program
    .command('core')
    .description(core.about)
    .argument(`<${values.file}...>`, project)
    .action(async (files, options) => end(await coreCommand(files, options, streams, reader, pipeline)));
  for (const command of [refitting, sharing]) {
    command
      .option(`-o, --out <${values.folder}>`, out, 'out')
      .option(`-w, --wadding <${values.length}>`, refit.wadding, reading(readLength, reader))
      .option(
        `-t, --triangles <${values.number}>`,
        make.triangles(limitsInWords(triangleLimits, reader)),
        reading(readTriangles, reader),
      );
    addPaperOptions(command, reader);
  }
}

function addAdvise(program: Command, { streams, reader, pipeline, end }: Setting): void {
  const { advise: words, values, project, layout } = reader.words.help;
  program
    .command('advise')
    .description(words.about)
    .argument(`<${values.file}>`, project)
    .option(`-z, --zones <${values.number}>`, words.zones, reading(readZones, reader), 3)
    .option(`-l, --layout <${values.id}>`, layout)
    .action(async (file, options) => end(await adviseCommand(file, options, streams, reader, pipeline)));
}

function addPropose(program: Command, { streams, reader, pipeline, end }: Setting): void {
  const { propose: words, values, project, layout } = reader.words.help;
  program
    .command('propose')
    .description(words.about)
    .argument(`<${values.file}>`, project)
    .option(`-s, --strain <${values.percent}>`, words.strain, reading(readPercent, reader), 2)
    .option(`-p, --panels <${values.number}>`, words.panels, reading(readPanels, reader))
    .option(`-l, --layout <${values.id}>`, layout)
    .option(`-o, --out <${values.file}>`, words.out)
    .action(async (file, { panels, ...options }) => {
      const most = panels === undefined ? {} : { mostPanels: panels };
      end(await proposeCommand(file, { ...options, ...most }, streams, reader, pipeline));
    });
}

function addRegion(program: Command, { streams, reader, pipeline, end }: Setting): void {
  const { region: words, values, project } = reader.words.help;
  program
    .command('region')
    .description(words.about)
    .argument(`<${values.file}>`, project)
    .argument(`<${values.loop}>`, words.loop)
    .option(`-o, --out <${values.file}>`, words.out)
    .action(async (file, loop, options) =>
      end(await regionCommand(file, loop, options, streams, reader, pipeline)),
    );
}

function addDemo(program: Command, { streams, reader, end }: Setting): void {
  const { demo: words, values } = reader.words.help;
  program
    .command('demo')
    .description(words.about)
    .argument(`[${values.name}]`, words.name)
    .option(`-o, --out <${values.folder}>`, words.out, '.')
    .option('--replace', words.replace)
    .action(async (name, options) => end(await demoCommand(name, options, streams, reader)));
}
