/** What is said when a command is not understood, a file cannot be had, or the program is at fault. */
export const refusals = {
  /** Of a command as a whole. */
  usage: {
    invalid: (option: string, value: string, why: string) =>
      `error: option '${option}' argument '${value}' is invalid. ${why}`,
    unknownOption: (option: string) => `error: unknown option '${option}'`,
    unknownCommand: (command: string) => `error: unknown command '${command}'`,
    missingArgument: (name: string) => `error: missing required argument '${name}'`,
    missingValue: (option: string) => `error: option '${option}' argument missing`,
    missingOption: (option: string) => `error: required option '${option}' not specified`,
    tooMany: (command: string, expected: number, got: number) =>
      `error: too many arguments for '${command}'. Expected ${expected} argument${expected === 1 ? '' : 's'} but got ${got}.`,
    alike: (names: readonly string[]) =>
      names.length === 1 ? `(Did you mean ${names[0]}?)` : `(Did you mean one of ${names.join(', ')}?)`,
  },
  /** Of the value after an option. */
  value: {
    perCent: (range: string) => `It must be a number of per cent, ${range}.`,
    whole: (range: string) => `It must be a whole number, ${range}.`,
    allowance: (range: string) =>
      `It must be a length of ${range} mm (an opening may also have 0); a number alone is millimetres.`,
    allowances: 'It must be name=length, with commas between.',
    grains: (range: string) => `It must be panel=degrees, ${range}, with commas between.`,
    length: 'It must be a length, 0 or more; a number alone is millimetres.',
    lengthAboveZero: 'It must be a length above 0; a number alone is millimetres.',
    scale: 'It must be a number above 0: 5 is 1 : 5.',
    projectedSquare: (range: string) =>
      `It must be five lengths with commas, each ${range} mm: upper, right, lower, left side and the diagonal from the upper left.`,
    mat: (known: string) => `It must be width and height in mm such as 600x400, or one of ${known}.`,
    colours: 'It must be layer=#rrggbb or layer=none, with commas between.',
    inside: 'It must be key=value, with commas between.',
    choice: (known: string) => `Allowed choices are ${known}.`,
    paper: (names: readonly string[], known: string) =>
      `There is no paper called “${names.join('”, “')}”. There are: ${known}.`,
    format: (names: readonly string[], known: string) =>
      `There is no format called “${names.join('”, “')}”. There are: ${known}.`,
    language: (name: string, known: string) => `There is no language called “${name}”. There are: ${known}.`,
  },
  files: {
    cannotRead: (file: string, why: string) => `Cannot read ${file}: ${why}.`,
    cannotWrite: (folder: string, why: string) =>
      `Cannot write into ${folder}: ${why}. Choose another folder with --out.`,
    noPoints: (file: string) =>
      `Cannot use ${file}: it must be a list of points, [[u, v], …], u in radians, v in mm from the base.`,
    isThere: (file: string) => `${file} is there already; add --replace to write over it.`,
    noDemo: (name: string, known: string) => `There is no demo called “${name}”. There are: ${known}.`,
    why: {
      isAbsent: 'it does not exist',
      isForbidden: 'you have no permission there',
      isReadOnly: 'it is on a read-only disk',
      isFull: 'the disk is full',
      isNoFolder: 'a file is in the place of a folder',
      isFolder: 'it is a folder',
    },
  },
  internal: (what: string) => `Something went wrong inside the program, not in what you typed:\n${what}`,
};
