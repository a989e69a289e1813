import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

const nodeModules = path.resolve(import.meta.dirname, '../../node_modules');

/** Name of the package a file is of, undefined for files of none. */
export function packageOfFile(file: string): string | undefined {
  return /^.*node_modules[\\/]((?:@[^\\/]+[\\/])?[^\\/]+)/.exec(file)?.[1].replaceAll('\\', '/');
}

/**
 * What the notices lack of each package named: its line, or its licence word for word as the package carries it. Where it
 * carries none, the two sentences every MIT licence has (opensource.org/license/mit) and its author must be there.
 */
export function findUnnoticed(notices: string, names: Iterable<string>): string[] {
  const faults: string[] = [];
  for (const name of names) {
    const folder = path.join(nodeModules, name);
    const { version, author } = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8'));
    const own = notices.split(/^={80}$/m).find((part) => part.startsWith(`\n${name} ${version}\n`));
    if (own === undefined) {
      faults.push(`${name} ${version} is not named`);
      continue;
    }
    const [licence] = readdirSync(folder).filter((file) => /^licen[cs]e/i.test(file));
    const wanted =
      licence === undefined
        ? [author.name ?? author, 'Permission is hereby granted', 'The above copyright notice']
        : // The bundler's file goes on to what its own workings hold.
          [readFileSync(path.join(folder, licence), 'utf8').split('\n# Licenses of bundled')[0]];
    for (const text of wanted)
      if (!own.includes(text.replaceAll('\r\n', '\n').trim()))
        faults.push(`${name} lacks ${text.slice(0, 60)}…`);
  }
  return faults;
}
