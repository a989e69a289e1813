import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { isAllowed, LICENCES_TO_SHIP, licenceOf } from './licences.ts';

/** What must be said of a package that is given on. */
export interface Notice {
  readonly name: string;
  readonly version: string;
  /** SPDX expression. */
  readonly licence: string;
  /** The licence in full, as the package carries it. */
  readonly text: string;
}

interface Manifest {
  readonly name: string;
  readonly version: string;
  readonly license?: string;
  readonly author?: string | { readonly name: string };
}

/**
 * The notice of the package in `folder`; `files` are those of its files that are given on. Throws when its licence is
 * not one to ship, or its text cannot be had.
 */
export function noticeOfPackage(folder: string, files: readonly string[]): Notice {
  const manifest = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8')) as Manifest;
  const { name, version } = manifest;
  const licence = licenceOf(name, manifest.license);
  if (!isAllowed(licence, LICENCES_TO_SHIP))
    throw new Error(`${name} is under “${licence}”, which is not among the licences to ship.`);
  const carried = readdirSync(folder)
    .filter((file) => /^(licen[cs]e|copying|unlicense|notice)(\.\w+)?$/i.test(file))
    .sort()
    .map((file) => withoutForeignParts(readFileSync(path.join(folder, file), 'utf8')));
  const texts = carried.length > 0 ? carried : [usualText(manifest, licence), ...headersOf(files)];
  return { name, version, licence, text: texts.map((text) => text.trim()).join('\n\n') };
}

/** The bundler tells in the same file of what its own workings hold; of these nothing is given on. */
function withoutForeignParts(text: string): string {
  return text.split(/^# Licenses of bundled dependencies/m)[0];
}

/** Some packages name their licence and carry no text of it. */
function usualText({ name, author }: Manifest, licence: string): string {
  const holder = typeof author === 'string' ? author : author?.name;
  if (licence !== 'MIT' || holder === undefined)
    throw new Error(`${name} carries no text of its licence “${licence}”.`);
  return `(The package carries no text of its licence; this is the usual one.)\n\nCopyright (c) ${holder}\n\n${MIT}`;
}

/** What files say of rights at their head, each saying once. */
function headersOf(files: readonly string[]): string[] {
  const heads = files.map((file) => /^\s*\/\*[\s\S]*?\*\//.exec(readFileSync(file, 'utf8'))?.[0] ?? '');
  return [...new Set(heads.filter((head) => /copyright/i.test(head)))].sort();
}

/** Of the Open Source Initiative, opensource.org/license/mit. */
const MIT = `Permission is hereby granted, free of charge, to any person obtaining a copy
of this software and associated documentation files (the "Software"), to deal
in the Software without restriction, including without limitation the rights
to use, copy, modify, merge, publish, distribute, sublicense, and/or sell
copies of the Software, and to permit persons to whom the Software is
furnished to do so, subject to the following conditions:

The above copyright notice and this permission notice shall be included in all
copies or substantial portions of the Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR
IMPLIED, INCLUDING BUT NOT LIMITED TO THE WARRANTIES OF MERCHANTABILITY,
FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE
AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER
LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM,
OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE
SOFTWARE.`;
