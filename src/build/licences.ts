/**
 * SPDX ids of the licences under which code and fonts may be given on with the program. All of them ask for their notice
 * at most, and that is given.
 */
export const LICENCES_TO_SHIP: readonly string[] = [
  ...['0BSD', 'Apache-2.0', 'BlueOak-1.0.0', 'BSD-2-Clause', 'BSD-3-Clause', 'BSL-1.0', 'CC0-1.0'],
  ...['ISC', 'MIT', 'Unlicense', 'Zlib'],
  // Of fonts: to be embedded freely, not to be sold by themselves.
  ...['Bitstream-Vera', 'OFL-1.1'],
];

/** Licences of packages whose `package.json` points to a file instead of naming one, as read there. */
const READ_IN_FILE: Readonly<Record<string, string>> = {
  // Bitstream Vera, Arev in the same words under another name, and changes in the public domain.
  'dejavu-fonts-ttf': 'Bitstream-Vera',
};

/** The licence of a package as an SPDX expression; `stated` is what its `package.json` says. */
export function licenceOf(name: string, stated: string | undefined): string {
  return READ_IN_FILE[name] ?? stated ?? 'none stated';
}

/** True when the SPDX expression can be met by the licences allowed: one side of every OR, both of every AND. */
export function isAllowed(expression: string, allowed: readonly string[]): boolean {
  return expression
    .replace(/[()]/g, ' ')
    .split(/\bAND\b/)
    .every((part) => part.split(/\bOR\b/).some((id) => allowed.includes(id.trim())));
}
