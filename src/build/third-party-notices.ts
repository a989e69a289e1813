import path from 'node:path';
import type { Plugin, Rolldown } from 'vite';
import { type Notice, noticeOfPackage } from './notice-of-package.ts';

export const NOTICES_FILE = 'THIRD-PARTY-NOTICES.txt';

const root = path.resolve(import.meta.dirname, '../..');

type Bundle = Rolldown.OutputBundle;

/** What is not ours in one or several bundles. */
export interface ThirdParty {
  /** For every bundle: notes the packages whose code or files went into it. Changes nothing. */
  readonly note: () => Plugin;
  /** For the last bundle: notes too, and writes the notices of all beside it. */
  readonly noteAndWrite: () => Plugin;
  /** The notices of all noted so far. Throws as `noticeOfPackage` does. */
  readonly notices: () => string;
}

/** Keeps a list of the packages that are really in the bundles, as the bundler itself tells them. */
export function listThirdParty(): ThirdParty {
  const filesByFolder = new Map<string, Set<string>>();
  const noteFile = (file: string) => {
    const folder = folderOfPackage(file);
    if (folder === undefined) return;
    const files = filesByFolder.get(folder) ?? new Set();
    filesByFolder.set(folder, files);
    if (path.isAbsolute(file)) files.add(file);
  };
  const notices = () =>
    wordNotices([...filesByFolder].map(([folder, files]) => noticeOfPackage(folder, [...files])));
  const noteBundle = (bundle: Bundle) => {
    for (const item of Object.values(bundle)) {
      const files = item.type === 'asset' ? item.originalFileNames : modulesOf(item.modules);
      for (const file of files) noteFile(file.split('?')[0]);
    }
  };
  return {
    note: () => ({
      name: 'note-third-party',
      generateBundle: (_options, bundle) => noteBundle(bundle),
    }),
    noteAndWrite: () => ({
      name: 'write-third-party-notices',
      generateBundle(_options, bundle) {
        noteBundle(bundle);
        this.emitFile({ type: 'asset', fileName: NOTICES_FILE, source: notices() });
      },
    }),
    notices,
  };
}

function modulesOf(modules: Readonly<Record<string, { readonly renderedLength: number }>>): string[] {
  return Object.keys(modules).filter((id) => modules[id].renderedLength > 0);
}

/** The folder of the package a module belongs to; undefined for our own. Throws when nobody can be told. */
function folderOfPackage(id: string): string | undefined {
  const file = id.replace(/^\0/, '');
  const inPackage = /^.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+/.exec(path.resolve(root, file));
  if (inPackage) return inPackage[0];
  // What the bundlers themselves put in: `vite/preload-helper.js`, `rolldown/runtime.js`, `rolldown_dynamic_import_helper.js`.
  const tool = /^(vite|rolldown)[/_]/.exec(file);
  if (tool) return path.join(root, 'node_modules', tool[1]);
  if (id.startsWith('\0')) throw new Error(`Nobody can be told whose ${file} is.`);
  return undefined;
}

function wordNotices(notices: readonly Notice[]): string {
  const sorted = [...notices].sort((a, b) => (`${a.name} ${a.version}` < `${b.name} ${b.version}` ? -1 : 1));
  const list = sorted.map(({ name, version, licence }) => `- ${name} ${version}, ${licence}`);
  const texts = sorted.map(
    ({ name, version, licence, text }) =>
      `${'='.repeat(80)}\n${name} ${version}\nLicence: ${licence}\n${'-'.repeat(80)}\n\n${text.replaceAll('\r\n', '\n')}\n`,
  );
  return `Third-party notices\n\nWork of others that is given on with Loftseam, and its licences:\n\n${list.join('\n')}\n\n${texts.join('\n')}`;
}
