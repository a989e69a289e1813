import { Command, type ErrorOptions } from 'commander';
import type { CommandWords } from '../language/english/command.ts';

/** A command that explains itself, and tells what it does not understand, in the reader's words. */
export class SpeakingCommand extends Command {
  constructor(
    name: string | undefined,
    private readonly spoken: CommandWords,
  ) {
    super(name);
    const { headings, options, command, choices, usual } = spoken.help;
    const titles: Readonly<Record<string, string>> = {
      'Usage:': headings.usage,
      'Arguments:': headings.arguments,
      'Options:': headings.options,
      'Global Options:': headings.everyCommand,
      'Commands:': headings.commands,
    };
    const inWords = (usage: string) =>
      usage.replace('[options]', `[${options}]`).replace('[command]', `[${command}]`);
    this.configureHelp({
      showGlobalOptions: true,
      styleTitle: (title) => titles[title] ?? title,
      styleUsage: inWords,
      styleSubcommandTerm: inWords,
      optionDescription: ({ description, argChoices, defaultValue }) => {
        const extra = [
          ...(argChoices ? [choices(argChoices.map((choice) => JSON.stringify(choice)).join(', '))] : []),
          ...(defaultValue === undefined ? [] : [usual(JSON.stringify(defaultValue))]),
        ];
        return extra.length > 0 ? `${description} (${extra.join(', ')})` : description;
      },
    });
    this.helpOption('-h, --help', spoken.help.help);
    this.showHelpAfterError(spoken.help.more);
  }

  /** Commands below this one speak as it does. */
  override createCommand(name?: string): Command {
    return new SpeakingCommand(name, this.spoken);
  }

  override error(message: string, options: ErrorOptions = {}): never {
    return super.error(wordFault(options.code, message, this.spoken.refusals.usage), options);
  }
}

const ALIKE = /\n\(Did you mean (?:one of )?(.*)\?\)$/;

/** A fault of usage by its code; what it is about stands between quotes in the parser's own message. */
function wordFault(
  code: string | undefined,
  message: string,
  words: CommandWords['refusals']['usage'],
): string {
  const alike = ALIKE.exec(message)?.[1]?.split(', ');
  const said = message.replace(ALIKE, '');
  const subject = said.slice(said.indexOf("'") + 1, said.lastIndexOf("'"));
  const withAlike = (fault: string) => (alike ? `${fault}\n${words.alike(alike)}` : fault);
  switch (code) {
    case 'commander.unknownOption':
      return withAlike(words.unknownOption(subject));
    case 'commander.unknownCommand':
      return withAlike(words.unknownCommand(subject));
    case 'commander.missingArgument':
      return words.missingArgument(subject);
    case 'commander.optionMissingArgument':
      return words.missingValue(subject);
    case 'commander.missingMandatoryOptionValue':
      return words.missingOption(subject);
    case 'commander.excessArguments': {
      const [expected, got] = said.match(/\d+(?= argument)|\d+(?=\.$)/g) ?? [];
      return words.tooMany(subject, Number(expected), Number(got));
    }
    case 'commander.invalidArgument': {
      const [, option, value, why] =
        /^error: option '(.*?)' argument '(.*?)' is invalid\. (.*)$/s.exec(message) ?? [];
      return option === undefined ? message : words.invalid(option, value, why);
    }
    default:
      return message;
  }
}
