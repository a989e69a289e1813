import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { coreRooms, findBreaches, findLongFunctions, placeOf } from './check-walls.ts';
import { parseModule, readModules } from './read-imports.ts';

const top = path.resolve(import.meta.dirname, '..');
const modules = readModules(top, 'src');
const maxFileLines = 400;
const maxFunctionLines = 80;
/** Functions that may be longer, each with its reason. */
const longFunctions = new Map([
  [
    'src/core/flatten/dirichlet-energy.ts addDirichlet',
    'kernel: one pass over the triangles with all their terms at hand; calls and arrays for them would cost more than the sums',
  ],
  [
    'src/core/math/factor-front.ts factorPanel',
    'kernel: a block of columns factored with its sums kept in local numbers',
  ],
]);

const builtPlaces = [
  ...coreRooms.map((room) => `core/${room}`),
  ...['core', 'build', 'cli', 'language', 'app', 'app/calls', 'app/store', 'app/worker', 'app/services'],
  ...['app/scene', 'app/views'],
];

describe('the walls between the rooms', () => {
  it.each(builtPlaces)('sees modules in %s', (place) => {
    expect(modules.filter((m) => placeOf(m.file) === place).length).toBeGreaterThan(0);
  });

  it('sees no core room it does not know', () => {
    const rooms = readdirSync(path.join(top, 'src/core'), { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map((entry) => entry.name);
    expect(rooms.filter((room) => !(coreRooms as readonly string[]).includes(room))).toEqual([]);
  });

  it('sees imports between rooms at all', () => {
    const between = modules.flatMap((m) =>
      m.imports.filter((i) => i.target && placeOf(i.target) !== placeOf(m.file)),
    );
    expect(between.length).toBeGreaterThan(30);
  });

  it('are not breached', () => {
    expect(findBreaches(modules)).toEqual([]);
  });

  it('keep files short', () => {
    const longFiles = modules
      .filter((m) => m.source.getLineStarts().length > maxFileLines + 1)
      .map((m) => `${m.file} ${m.source.getLineStarts().length} lines`);
    expect(longFiles).toEqual([]);
  });

  it('keep style sheets short', () => {
    const styles = readdirSync(path.join(top, 'src/app'), { recursive: true, encoding: 'utf8' }).filter(
      (file) => file.endsWith('.css'),
    );
    expect(styles.length).toBeGreaterThan(5);
    const linesOf = (file: string): number =>
      readFileSync(path.join(top, 'src/app', file), 'utf8')
        .trimEnd()
        .split('\n').length;
    expect(styles.filter((file) => linesOf(file) > maxFileLines)).toEqual([]);
  });

  it('keep functions short, but for those named', () => {
    const long = findLongFunctions(modules, maxFunctionLines);
    const nameOf = (found: string): string => found.replace(/^(\S+):\d+ (\S+) .*$/, '$1 $2');
    expect(long.filter((found) => !longFunctions.has(nameOf(found)))).toEqual([]);
    // A name whose function became short is to be taken off.
    expect([...longFunctions.keys()].filter((name) => !long.map(nameOf).includes(name))).toEqual([]);
  });

  it('are the ones the contributors read about', () => {
    const guide = readFileSync(path.join(top, 'DEVELOPERS.md'), 'utf8');
    const rows = [...guide.matchAll(/^\| *(\d+) *\| *`(\w+)`/gm)].map((m) => `${m[1]} ${m[2]}`);
    expect(rows).toEqual(coreRooms.map((room, rank) => `${rank} ${room}`));
  });

  it('let no test or source read outside the project', () => {
    const all = [...modules, ...readModules(top, 'tests')];
    const outside = all.flatMap((m) =>
      m.imports.filter((i) => i.target?.startsWith('..')).map((i) => `${m.file}:${i.line} ${i.specifier}`),
    );
    expect(outside).toEqual([]);
  });
});

describe('the check of the walls', () => {
  const breach = (file: string, text: string) => findBreaches([parseModule(file, text)]);

  it.each([
    ['an upward import', 'src/core/mesh/a.ts', "import { x } from '../seams/index.ts';"],
    ['an upward type import', 'src/core/mesh/a.ts', "import type { X } from '../body/index.ts';"],
    ['an upward type in passing', 'src/core/mesh/a.ts', "type X = import('../body/index.ts').Body;"],
    ['an upward re-export', 'src/core/math/a.ts', "export * from '../mesh/index.ts';"],
    ['a way round the index', 'src/core/seams/a.ts', "import { x } from '../mesh/mesh.ts';"],
    ['a missing extension', 'src/core/seams/a.ts', "import { x } from './b';"],
    ['core reaching for the app', 'src/core/pipeline/a.ts', "import { x } from '../../app/store/store.ts';"],
    ['core reading files', 'src/core/export/a.ts', "import { readFileSync } from 'node:fs';"],
    ['core loading three', 'src/core/mesh/a.ts', "import { Mesh } from 'three';"],
    ['a package in the wrong room', 'src/core/mesh/a.ts', "import { z } from 'zod';"],
    ['the store knowing React', 'src/app/store/a.ts', "import { useState } from 'react';"],
    ['views loading three', 'src/app/views/a.tsx', "import { Color } from 'three';"],
    [
      'views running the pipeline',
      'src/app/views/a.tsx',
      "import { x } from '../../core/pipeline/index.ts';",
    ],
    [
      'the store running the pipeline',
      'src/app/store/a.ts',
      "import { x } from '../../core/pipeline/index.ts';",
    ],
    ['views calling the worker', 'src/app/views/a.tsx', "import type { X } from '../worker/index.ts';"],
    ['views running the services', 'src/app/views/a.tsx', "import { x } from '../services/index.ts';"],
    ['calls knowing who asks', 'src/app/calls/a.ts', "import type { X } from '../store/index.ts';"],
    ['calls running the pipeline', 'src/app/calls/a.ts', "import { x } from '../../core/form/index.ts';"],
    ['services running the worker', 'src/app/services/a.ts', "import { x } from '../worker/index.ts';"],
    ['views calling the scene', 'src/app/views/a.tsx', "import { x } from '../scene/scene.tsx';"],
    ['the command line calling the app', 'src/cli/a.ts', "import { x } from '../app/store/store.ts';"],
    ['a way out of the project', 'src/cli/a.ts', "import x from '../../../shared/a.json';"],
    ['a room using the library', 'src/core/mesh/a.ts', "import { x } from '../index.ts';"],
    ['the app using the library', 'src/app/worker/a.ts', "import { x } from '../../core/index.ts';"],
    ['the library loading a package', 'src/core/index.ts', "export { z } from 'zod';"],
    ['the build calling the core', 'src/build/a.ts', "import { x } from '../core/mesh/index.ts';"],
    ['the command line calling the build', 'src/cli/a.ts', "import { x } from '../build/a.ts';"],
    ['a late import', 'src/core/mesh/a.ts', "export const f = () => import('../seams/index.ts');"],
    ['a clock', 'src/core/mesh/a.ts', 'export const t = () => Date.now();'],
    ['a better clock', 'src/core/mesh/a.ts', 'export const t = () => performance.now();'],
    ['chance', 'src/core/mesh/a.ts', 'export const r = () => Math.random();'],
    ['the console', 'src/core/mesh/a.ts', "export const s = () => console.log('x');"],
    ['the page', 'src/core/mesh/a.ts', 'export const d = () => document.title;'],
    ['the process', 'src/core/mesh/a.ts', 'export const p = () => process.env;'],
    ['the network', 'src/core/mesh/a.ts', "export const n = () => fetch('x');"],
    ['a back door to globals', 'src/core/mesh/a.ts', 'export const g = () => globalThis;'],
    ['module state', 'src/core/mesh/a.ts', 'let count = 0; export const f = () => ++count;'],
    [
      'module scratch',
      'src/core/mesh/a.ts',
      'const scratch = new Float64Array(3); export const f = () => scratch;',
    ],
    ['a module cache', 'src/core/mesh/a.ts', 'const cache = new Map(); export const f = () => cache;'],
  ])('sees %s', (_, file, text) => {
    expect(breach(file, text)).toHaveLength(1);
  });

  it.each([
    ['a downward import', 'src/core/seams/a.ts', "import type { Mesh } from '../mesh/index.ts';"],
    ['a neighbour in the room', 'src/core/seams/a.ts', "import { x } from './b.ts';"],
    [
      'the store naming a type',
      'src/app/store/a.ts',
      "import type { F } from '../../core/pipeline/index.ts';",
    ],
    [
      'views naming the types of services',
      'src/app/views/a.tsx',
      "import type { S } from '../services/index.ts';",
    ],
    [
      'the store naming what a call answers',
      'src/app/store/a.ts',
      "import type { W } from '../calls/index.ts';",
    ],
    ['the library naming a room', 'src/core/index.ts', "export { x } from './mesh/index.ts';"],
    ['the build reading files', 'src/build/a.ts', "import { readFileSync } from 'node:fs';"],
    ['shared data', 'src/cli/a.ts', "import x from '../../shared/demos/a.json';"],
    [
      'the worker running the pipeline',
      'src/app/worker/a.ts',
      "import { x } from '../../core/pipeline/index.ts';",
    ],
    [
      'a property that shares a name',
      'src/core/mesh/a.ts',
      'export const f = (o: { self: number }) => o.self;',
    ],
    [
      'a parameter that shares a name',
      'src/core/mesh/a.ts',
      'export const f = (location: number) => location + 1;',
    ],
    ['a table', 'src/core/mesh/a.ts', "export const table = new Map([['a', 1]]);"],
    ['a local variable', 'src/core/mesh/a.ts', 'export function f() { let n = 0; n++; return n; }'],
  ])('allows %s', (_, file, text) => {
    expect(breach(file, text)).toEqual([]);
  });

  const breaches = (files: Readonly<Record<string, string>>) =>
    findBreaches(Object.entries(files).map(([file, text]) => parseModule(file, text)));

  it.each([
    [
      'of two files',
      {
        'src/cli/a.ts': "import { b } from './b.ts';",
        'src/cli/b.ts': "import { a } from './a.ts';",
      },
      'src/cli/a.ts imports src/cli/b.ts imports src/cli/a.ts: a circle',
    ],
    [
      'of types only',
      {
        'src/core/mesh/a.ts': "import type { B } from './b.ts';",
        'src/core/mesh/b.ts': "export type C = import('./c.ts').C;",
        'src/core/mesh/c.ts': "export type { A } from './a.ts';",
      },
      'src/core/mesh/a.ts imports src/core/mesh/b.ts imports src/core/mesh/c.ts imports src/core/mesh/a.ts: a circle',
    ],
    [
      'that the first file only leads to',
      {
        'src/app/views/a.tsx': "import { b } from './b.tsx';",
        'src/app/views/b.tsx': "import { c } from './c.tsx';",
        'src/app/views/c.tsx': "import { b } from './b.tsx';",
      },
      'src/app/views/b.tsx imports src/app/views/c.tsx imports src/app/views/b.tsx: a circle',
    ],
    [
      'of one file',
      { 'src/cli/a.ts': "import { a } from './a.ts';" },
      'src/cli/a.ts imports src/cli/a.ts: a circle',
    ],
  ])('sees a circle %s', (_, files, circle) => {
    expect(breaches(files)).toEqual([circle]);
  });

  it('allows two ways to one file', () => {
    const diamond = {
      'src/cli/a.ts': "import { b } from './b.ts';\nimport { c } from './c.ts';",
      'src/cli/b.ts': "import { d } from './d.ts';",
      'src/cli/c.ts': "import type { D } from './d.ts';",
      'src/cli/d.ts': 'export const d = 1;',
    };
    expect(breaches(diamond)).toEqual([]);
  });

  it('counts the lines of a function', () => {
    const text = `export function long() {\n${'  f();\n'.repeat(10)}}\n`;
    expect(findLongFunctions([parseModule('src/app/views/a.tsx', text)], 11)).toEqual([
      'src/app/views/a.tsx:1 long 12 lines',
    ]);
    expect(findLongFunctions([parseModule('src/app/views/a.tsx', text)], 12)).toEqual([]);
  });
});
