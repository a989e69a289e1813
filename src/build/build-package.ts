import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { build, type InlineConfig, type Plugin } from 'vite';
import { listThirdParty, NOTICES_FILE } from './third-party-notices.ts';
import { writeDeclarations } from './write-declarations.ts';

/**
 * Writes `lib`, what `npm pack` packs: core and languages as modules with types, the command line over them, and the notices. The
 * packages they use are bundled: who installs Loftseam installs nothing else, and runs what was tested.
 */

const root = path.resolve(import.meta.dirname, '../..');
const out = path.join(root, 'lib');
const core = path.join(root, 'src/core');

/** By name in the package: the core as a whole, each of its rooms, and what says their phrases. */
const libraryEntries: Readonly<Record<string, string>> = Object.fromEntries(
  ['.', ...readdirSync(core), '../language']
    .map((room) => path.join(core, room, 'index.ts'))
    .filter((file) => existsSync(file))
    .map((file) => [path.relative(path.join(root, 'src'), file).replace(/\.ts$/, ''), file]),
);

const thirdParty = listThirdParty();

// The library is for any place: packages are taken as for a page, where they ask for nothing of Node.
await build(
  bundle(libraryEntries, {
    target: 'webworker',
    chunks: 'chunks/[name]-[hash].js',
    plugins: [thirdParty.note()],
  }),
);
await build(
  bundle(
    { 'cli/main': path.join(root, 'src/cli/main.ts') },
    {
      target: 'node',
      chunks: 'cli/[name]-[hash].js',
      plugins: [loadBuiltLibrary(), packFont(), thirdParty.note()],
    },
  ),
);
writeDeclarations(Object.values(libraryEntries), out);
writeFileSync(path.join(out, NOTICES_FILE), thirdParty.notices());

function bundle(
  input: Readonly<Record<string, string>>,
  how: { readonly target: 'node' | 'webworker'; readonly chunks: string; readonly plugins: Plugin[] },
): InlineConfig {
  return {
    root,
    configFile: false,
    publicDir: false,
    logLevel: 'warn',
    plugins: how.plugins,
    ssr: { target: how.target, noExternal: true },
    build: {
      ssr: true,
      ssrEmitAssets: true,
      outDir: out,
      emptyOutDir: how.target === 'webworker',
      target: 'es2022',
      minify: false,
      rolldownOptions: {
        input: { ...input },
        external: /^node:/,
        // English is in the table of languages as every other, and there at once all the same.
        checks: { ineffectiveDynamicImport: false },
        output: { entryFileNames: '[name].js', chunkFileNames: how.chunks },
        // Every module starts with a comment that says where it is from.
        experimental: { attachDebugInfo: 'simple' },
      },
    },
  };
}

/** The command line loads the library that stands beside it. */
function loadBuiltLibrary(): Plugin {
  const nameByFile = new Map(Object.entries(libraryEntries).map(([name, file]) => [file, name]));
  return {
    name: 'load-built-library',
    enforce: 'pre',
    resolveId(source, importer) {
      const name = importer && nameByFile.get(path.resolve(path.dirname(importer), source));
      return name === undefined ? null : { id: `../${name}.js`, external: true };
    },
  };
}

/** The letters for the PDF, where the command line looks for them first. */
function packFont(): Plugin {
  const font = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf');
  return {
    name: 'pack-font',
    buildStart() {
      this.emitFile({
        type: 'asset',
        fileName: 'cli/DejaVuSans.ttf',
        originalFileName: font,
        source: readFileSync(font),
      });
    },
  };
}
