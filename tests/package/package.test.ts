import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import SvgPath from 'svg-path-commander';
import ts from 'typescript';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { coreRooms } from '../check-walls.ts';
import { findUnnoticed, packageOfFile } from './find-unnoticed.ts';
import { runProgram } from './run-program.ts';

const top = path.resolve(import.meta.dirname, '../..');
const font = path.join(top, 'node_modules/dejavu-fonts-ttf/ttf/DejaVuSans.ttf');

let folder = '';
let installed = '';
/** Packed once, and installed as anybody would: in an empty folder. Off line, so that nothing else can come along. */
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'loftseam-'));
  installed = path.join(folder, 'node_modules/loftseam');
  runProgram(top, 'npm', 'pack', '--pack-destination', folder);
  const [tarball] = readdirSync(folder);
  runProgram(folder, 'npm', 'install', '--offline', '--no-audit', '--no-fund', `./${tarball}`);
}, 300_000);
afterAll(() => rmSync(folder, { recursive: true }));

/** Modules of the package's JavaScript below `place`, with their texts. */
function scriptsIn(place: string): { readonly file: string; readonly text: string }[] {
  return readdirSync(path.join(installed, place), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.js'))
    .map((file) => ({ file, text: readFileSync(path.join(installed, place, file), 'utf8') }));
}

/** What panels.svg draws at a level, all round, in mm; lengths by a library of its own. */
function measureLevel(svg: string, level: string): number {
  const paths = [...svg.matchAll(new RegExp(`<path id="[^"]+/level/${level}" d="([^"]+)"`, 'g'))];
  return paths.reduce((sum, [, d]) => sum + new SvgPath(d).getTotalLength(), 0);
}

/**
 * Girths asked for, on the panels. Level lines run over the edges of triangles: as a polygon of 24 sides and more round
 * a circle they fall short by (π/24)²/6 = 0.3 %; half a per cent for a trunk, which is no circle.
 */
function expectGirths(svg: string, girths: Readonly<Record<string, number>>): void {
  for (const [level, girth] of Object.entries(girths)) {
    expect(measureLevel(svg, level), level).toBeGreaterThan(girth * 0.995);
    expect(measureLevel(svg, level), level).toBeLessThan(girth * 1.005);
  }
}

describe('the installed package', () => {
  it('is alone in the folder: it needs no other package', () => {
    expect(readdirSync(path.join(folder, 'node_modules')).filter((name) => !name.startsWith('.'))).toEqual([
      'loftseam',
    ]);
  });

  it('holds what is needed to run it, and neither sources, tests, surveys nor pictures', () => {
    expect(readdirSync(installed).sort()).toEqual(['LICENSE', 'README.md', 'lib', 'package.json', 'shared']);
    expect(readdirSync(path.join(installed, 'shared'))).toEqual(['demos']);
    expect(readFileSync(path.join(installed, 'lib/cli/DejaVuSans.ttf')).equals(readFileSync(font))).toBe(
      true,
    );
  });

  it('makes a form on the command line', () => {
    expect(runProgram(folder, 'npx', 'loftseam', '--help')).toContain('print-correct');
    expect(runProgram(folder, 'npx', 'loftseam', '--help', '--language', 'de')).toContain('Aufruf: loftseam');
    runProgram(folder, 'npx', 'loftseam', 'demo', 'average');
    const { measures } = JSON.parse(readFileSync(path.join(folder, 'average.loftseam.json'), 'utf8')).body;
    // As unrolled: cut for the filling, girths on the panels are others than on the body.
    const args = ['--out', 'x', '--triangles', '2000', '--formats', 'svg,pdf', '--inside', 'recut=false'];
    runProgram(folder, 'npx', 'loftseam', 'make', 'average.loftseam.json', ...args);
    const svg = readFileSync(path.join(folder, 'x/panels.svg'), 'utf8');
    expectGirths(svg, { waist: measures.waistGirth, hip: measures.hipGirth, bust: measures.bustGirth });
    // ISO 32000-1, 7.5.2: the first line of a PDF.
    expect(readFileSync(path.join(folder, 'x/print-a4.pdf'), 'latin1')).toMatch(/^%PDF-1\.\d/);
  });

  it('offers every room of the core, and the languages', () => {
    const rooms = [...coreRooms, 'language'].map((room) => `loftseam/${room}`);
    const script = `for (const room of ${JSON.stringify(rooms)})
      if (Object.keys(await import(room)).length === 0) throw new Error(room);`;
    runProgram(folder, process.execPath, '--input-type=module', '--eval', script);
  });

  it('says in each language what the core has to say', () => {
    const script = `import { parseProject } from 'loftseam';
      import { createSpeaker, LANGUAGES, loadCatalogue } from 'loftseam/language';
      const { issues } = parseProject('{');
      for (const language of LANGUAGES) console.log(createSpeaker(await loadCatalogue(language))(issues[0].message));`;
    const said = runProgram(folder, process.execPath, '--input-type=module', '--eval', script).trim();
    const [english, german] = said.split('\n');
    expect(english).toMatch(/\bis\b/);
    expect(german).toMatch(/\bist\b|\bkein/);
  });

  it('holds the words of the command line once, and none of the app', () => {
    const scripts = scriptsIn('lib');
    const holding = (words: string) => scripts.filter(({ text }) => text.includes(words)).length;
    // From the help, and from the app's table of tapes.
    expect(['Rückgabewerte: 0', 'Exit codes: 0', 'Gespiegelt, falls'].map(holding)).toEqual([1, 1, 0]);
  });

  it('has a core that asks for nothing of Node or the net, so that it runs in a page', () => {
    const scripts = ['lib/core', 'lib/language', 'lib/chunks'].flatMap(scriptsIn);
    expect(scripts.length).toBeGreaterThan(coreRooms.length);
    const asked = scripts.flatMap(({ file, text }) =>
      [...text.matchAll(/^(?:import|export)\b[^"]*"([^"]+)";$|\bimport\("([^"]+)"\)/gm)]
        .map(([, still, late]) => still ?? late)
        .filter((specifier) => !specifier.startsWith('.'))
        .map((specifier) => `${file}: ${specifier}`),
    );
    expect(asked).toEqual([]);
  });
});

describe('the page for library users', () => {
  const readme = () => readFileSync(path.join(installed, 'README.md'), 'utf8');
  const lines = () => /^### Use it as a library$[\s\S]*?^```js\n([\s\S]*?)^```$/m.exec(readme())?.[1] ?? '';

  it('comes from measures to SVG in twenty lines', () => {
    expect(lines().trimEnd().split('\n').length).toBeLessThanOrEqual(20);
    const place = path.join(folder, 'page');
    mkdirSync(place);
    writeFileSync(path.join(place, 'page.mjs'), lines());
    runProgram(place, process.execPath, 'page.mjs');
    // The measures that stand in the page's lines.
    expectGirths(readFileSync(path.join(place, 'panels.svg'), 'utf8'), { waist: 765, hip: 1010, bust: 940 });
  });

  it.each([
    ['nodenext', { module: ts.ModuleKind.NodeNext, moduleResolution: ts.ModuleResolutionKind.NodeNext }],
    ['bundler', { module: ts.ModuleKind.ESNext, moduleResolution: ts.ModuleResolutionKind.Bundler }],
  ])('has types for a compiler that resolves as %s', (name, resolution) => {
    const place = path.join(folder, `types-${name}`);
    mkdirSync(path.join(place, 'node_modules/@types'), { recursive: true });
    symlinkSync(path.join(top, 'node_modules/@types/node'), path.join(place, 'node_modules/@types/node'));
    const rooms = [...coreRooms, 'language'].map(
      (room) => `export type * as ${room} from 'loftseam/${room}';`,
    );
    const files = {
      'page.mts': lines(),
      'rooms.mts': rooms.join('\n'),
      // A compiler that found `any` everywhere would be content with this.
      'wrong.mts': "import { makeForm } from 'loftseam';\nmakeForm('a body', {} as never);\n",
    };
    for (const [file, text] of Object.entries(files)) writeFileSync(path.join(place, file), text);
    expect(checkTypes(place, Object.keys(files), resolution)).toEqual([
      "wrong.mts: Argument of type 'string' is not assignable to parameter of type 'Project'.",
    ]);
  });
});

/** What the compiler finds in the files of a folder and in the package's declarations, with the strictest of usual settings. */
function checkTypes(place: string, files: readonly string[], resolution: ts.CompilerOptions): string[] {
  const options = {
    strict: true,
    noEmit: true,
    target: ts.ScriptTarget.ES2022,
    exactOptionalPropertyTypes: true,
  };
  const program = ts.createProgram(
    files.map((file) => path.join(place, file)),
    {
      ...options,
      ...resolution,
      lib: ['lib.es2023.d.ts'],
      types: [path.join(place, 'node_modules/@types/node')],
    },
  );
  const own = program.getSourceFiles().filter(({ fileName }) => fileName.startsWith(folder));
  expect(own.filter(({ fileName }) => fileName.endsWith('.d.ts')).length).toBeGreaterThan(coreRooms.length);
  return own
    .flatMap((file) => [...program.getSyntacticDiagnostics(file), ...program.getSemanticDiagnostics(file)])
    .concat(program.getOptionsDiagnostics(), program.getGlobalDiagnostics())
    .map(({ file, messageText }) => {
      const where = file === undefined ? '' : `${path.relative(place, file.fileName)}: `;
      return where + ts.flattenDiagnosticMessageText(messageText, ' ');
    });
}

describe('the notices in the package', () => {
  it('name all that is in it, with its licences', () => {
    const notices = readFileSync(path.join(installed, 'lib/THIRD-PARTY-NOTICES.txt'), 'utf8');
    // The bundler writes before each module where it is from.
    const origins = scriptsIn('lib').flatMap(({ text }) => text.match(/^\/\/ \S*node_modules\S+$/gm) ?? []);
    const names = new Set(origins.map((origin) => packageOfFile(origin)!));
    expect([...names]).toEqual(expect.arrayContaining(['commander', 'fontkit', 'zod', 'clipper2-ts']));
    expect(findUnnoticed(notices, [...names, 'dejavu-fonts-ttf', 'rolldown'])).toEqual([]);
  });

  it('name nothing that is for the page or for building only', () => {
    const notices = readFileSync(path.join(installed, 'lib/THIRD-PARTY-NOTICES.txt'), 'utf8');
    for (const name of ['react', 'three', 'comlink', 'zustand', 'vite', 'typescript', 'tsx'])
      expect(notices).not.toMatch(new RegExp(`^- ${name} `, 'm'));
  });
});
