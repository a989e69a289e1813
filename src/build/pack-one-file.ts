import { readFileSync } from 'node:fs';
import type { Plugin, Rolldown, UserConfig } from 'vite';
import { policyOfOneFile } from './content-security-policy.ts';
import { NOTICES_FILE } from './third-party-notices.ts';

/** `vite build --mode one-file` packs the program into one page that opens from disk; every other mode builds the site. */
export const ONE_FILE_MODE = 'one-file';
export const ONE_FILE_NAME = 'loftseam.html';

/** The element the page finds the notices in, which lie beside it on a site. */
const NOTICES_ID = 'third-party-notices';

type Bundle = Rolldown.OutputBundle;

/**
 * Packs everything into one page beside the site. A page from disk may load neither parts nor modules for workers: the
 * program is one script, each worker a classic one inside it, letters and pictures stand in the text.
 */
export function packOneFile(): Plugin {
  return {
    name: 'pack-one-file',
    enforce: 'pre',
    config: () => settings,
    resolveId: {
      filter: { id: /\?worker$/ },
      handler(source, importer, options) {
        return this.resolve(`${source}&inline`, importer, options);
      },
    },
    generateBundle: {
      // After the page and the notices are there.
      order: 'post',
      handler(_options, bundle) {
        const page = pageOf(bundle);
        for (const file of Object.keys(bundle)) delete bundle[file];
        this.emitFile({ type: 'asset', fileName: ONE_FILE_NAME, source: page });
      },
    },
  };
}

const settings: UserConfig = {
  worker: { format: 'iife', rolldownOptions: { output: { codeSplitting: false } } },
  build: {
    // The site lies there already.
    emptyOutDir: false,
    copyPublicDir: false,
    assetsInlineLimit: Number.POSITIVE_INFINITY,
    cssCodeSplit: false,
    chunkSizeWarningLimit: Number.POSITIVE_INFINITY,
    reportCompressedSize: false,
    rolldownOptions: { output: { codeSplitting: false } },
  },
};

/** The built page with all it asked for inside it. Throws when something would still lie beside it. */
function pageOf(bundle: Bundle): string {
  const script = asScript(codeOf(bundle));
  const style = textOf(bundle, /\.css$/);
  const notices = asElementText(textOf(bundle, new RegExp(`^${NOTICES_FILE}$`)));
  const icon = `data:image/svg+xml,${encodeURIComponent(readFileSync('public/mark.svg', 'utf8'))}`;
  const changes: readonly (readonly [RegExp, string])[] = [
    [/(?<=<meta http-equiv="Content-Security-Policy" content=")[^"]*/, policyOfOneFile(script, style)],
    [/(?<=<link rel="icon" href=")[^"]*/, icon],
    [/\s*<link rel="manifest"[^>]*>/, ''],
    [/<link rel="stylesheet"[^>]*>/, `<style>${style}</style>`],
    [/\s*<script type="module"[^>]*><\/script>/, ''],
    [
      /(?=<\/body>)/,
      `<script type="text/plain" id="${NOTICES_ID}">${notices}</script>\n<script type="module">${script}</script>\n`,
    ],
  ];
  return changes.reduce(
    (page, [found, put]) => {
      if (!found.test(page)) throw new Error(`The built page has no ${found}.`);
      // What is put in holds signs that would mean something in a replacement.
      return page.replace(found, () => put);
    },
    textOf(bundle, /^index\.html$/),
  );
}

function codeOf(bundle: Bundle): string {
  const chunks = Object.values(bundle).filter((item) => item.type === 'chunk');
  if (chunks.length !== 1) throw new Error(`The program is in ${chunks.length} scripts instead of one.`);
  return chunks[0].code.trim();
}

function textOf(bundle: Bundle, name: RegExp): string {
  const found = Object.values(bundle).filter((item) => item.type === 'asset' && name.test(item.fileName));
  if (found.length !== 1) throw new Error(`${found.length} files are called ${name} instead of one.`);
  return String((found[0] as Rolldown.OutputAsset).source);
}

/** A program as it may stand in a page: of the reader's own words it holds none, which in its strings means the same. */
function asScript(code: string): string {
  return asElementText(code.replace(/<(?=\/?script)/gi, '\\x3C'));
}

/** Throws at what the reader of the page would change, so that the policy refuses it, or take for the end of the text. */
function asElementText(text: string): string {
  const bad = /<\/?script|\r|\0/i.exec(text);
  if (!bad) return text;
  throw new Error(`${JSON.stringify(text.slice(bad.index - 40, bad.index + 40))} cannot stand in a page.`);
}
