import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isAllowed, LICENCES_TO_SHIP, licenceOf } from '../../src/build/licences.ts';
import { noticeOfPackage } from '../../src/build/notice-of-package.ts';
import { findUnnoticed, packageOfFile } from './find-unnoticed.ts';
import { runProgram } from './run-program.ts';

const top = path.resolve(import.meta.dirname, '../..');

/** Of tools too, of which nothing is given on: MPL-2.0 asks something only of who passes on its own files. */
const LICENCES_OF_TOOLS = [...LICENCES_TO_SHIP, 'MPL-2.0'];

interface LockFile {
  readonly packages: Readonly<Record<string, { readonly license?: string; readonly link?: boolean }>>;
}

describe('licences of dependencies', () => {
  const lock = JSON.parse(readFileSync(path.join(top, 'package-lock.json'), 'utf8')) as LockFile;
  const locked = Object.entries(lock.packages)
    .filter(([place]) => place !== '')
    .map(([place, { license }]) => ({ name: packageOfFile(place)!, license }));

  it('are all on the list', () => {
    expect(locked.length).toBeGreaterThan(100);
    const outside = locked
      .map(({ name, license }) => `${name}: ${licenceOf(name, license)}`)
      .filter((line) => !isAllowed(line.split(': ')[1], LICENCES_OF_TOOLS));
    expect(outside).toEqual([]);
  });

  it('stand in the lock file as in the packages themselves', () => {
    const present = new Set(readdirSync(path.join(top, 'node_modules')));
    const differing = locked
      .filter(({ name, license }) => {
        if (!present.has(name)) return false;
        const manifest = JSON.parse(
          readFileSync(path.join(top, 'node_modules', name, 'package.json'), 'utf8'),
        );
        return typeof manifest.license === 'string' && manifest.license !== license;
      })
      .map(({ name }) => name);
    expect(differing).toEqual([]);
  });

  it('are read where the package only points to a file', () => {
    // The name and the words of the licence at spdx.org/licenses/Bitstream-Vera.
    const text = readFileSync(path.join(top, 'node_modules/dejavu-fonts-ttf/LICENSE'), 'utf8').replace(
      /\s+/g,
      ' ',
    );
    expect(licenceOf('dejavu-fonts-ttf', 'SEE LICENSE IN LICENSE')).toBe('Bitstream-Vera');
    expect(text).toContain('Bitstream Vera is a trademark of Bitstream, Inc.');
    expect(text).toContain('no copy of one or more of the Font Software typefaces may be sold by itself');
  });
});

describe('isAllowed', () => {
  // SPDX specification 2.3, annex D: OR is a choice, AND asks for both; brackets and the like by hand.
  it.each([
    ['MIT', true],
    ['GPL-3.0-only', false],
    ['MIT OR GPL-3.0-only', true],
    ['(GPL-3.0-only OR MIT)', true],
    ['MIT AND GPL-3.0-only', false],
    ['MIT AND ISC', true],
    ['SEE LICENSE IN LICENSE', false],
    ['UNLICENSED', false],
    ['none stated', false],
    ['', false],
  ])('says of %j: %s', (expression, allowed) => {
    expect(isAllowed(expression, ['MIT', 'ISC'])).toBe(allowed);
  });
});

describe('noticeOfPackage', () => {
  it('refuses to ship what is for tools only', () => {
    expect(() => noticeOfPackage(path.join(top, 'node_modules/axe-core'), [])).toThrow(/axe-core.*MPL-2\.0/);
  });

  it('gives what a file says of rights at its head, where the package carries no licence', () => {
    const file = path.join(top, 'node_modules/brotli/dec/decode.js');
    const { text } = noticeOfPackage(path.join(top, 'node_modules/brotli'), [file]);
    expect(text).toContain('Copyright 2013 Google Inc. All Rights Reserved.');
    expect(text).toContain('Copyright (c) Devon Govett');
  });
});

describe('findUnnoticed', () => {
  it('misses what is not named, and what is named without its licence', () => {
    const version = JSON.parse(readFileSync(path.join(top, 'node_modules/zod/package.json'), 'utf8')).version;
    expect(findUnnoticed('', ['zod'])).toEqual([`zod ${version} is not named`]);
    const bare = `${'='.repeat(80)}\nzod ${version}\nLicence: MIT\n`;
    expect(findUnnoticed(bare, ['zod'])).toEqual([expect.stringMatching(/^zod lacks MIT License/)]);
  });
});

describe('the notices in the app', () => {
  let out = '';
  beforeAll(() => {
    out = mkdtempSync(path.join(tmpdir(), 'loftseam-'));
    const vite = path.join(top, 'node_modules/vite/bin/vite.js');
    const args = ['build', '--sourcemap', '--outDir', out, '--logLevel', 'warn'];
    runProgram(top, process.execPath, vite, ...args);
  }, 300_000);
  afterAll(() => rmSync(out, { recursive: true }));

  it('name all that is in it, workers and the font too, with their licences', () => {
    const notices = readFileSync(path.join(out, 'THIRD-PARTY-NOTICES.txt'), 'utf8');
    const assets = path.join(out, 'assets');
    const sources = readdirSync(assets)
      .filter((file) => file.endsWith('.map'))
      .flatMap((file) => JSON.parse(readFileSync(path.join(assets, file), 'utf8')).sources as string[]);
    const inMaps = sources.flatMap((source) => packageOfFile(source) ?? []);
    expect(inMaps).toEqual(expect.arrayContaining(['react', 'three', 'comlink', 'clipper2-ts']));
    // Maps know nothing of fonts, nor of what the bundlers put in themselves.
    expect(readdirSync(assets).some((file) => file.endsWith('.ttf'))).toBe(true);
    const names = new Set([...inMaps, 'dejavu-fonts-ttf', 'rolldown', 'vite']);
    expect(findUnnoticed(notices, names)).toEqual([]);
    const named = [...notices.matchAll(/^- (\S+) \d/gm)].map(([, name]) => name);
    expect(named.sort()).toEqual([...names].sort());
  });

  it('are put by with the app, to be read without a network', () => {
    expect(readFileSync(path.join(out, 'offline-worker.js'), 'utf8')).toContain('THIRD-PARTY-NOTICES.txt');
  });
});
