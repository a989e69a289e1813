import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';

const SOURCE = 'src/app/offline-worker.js';

/** Puts every built file on the list of the worker that serves the program offline. */
export function listForOffline(): Plugin {
  return {
    name: 'list-for-offline',
    apply: 'build',
    enforce: 'post',
    generateBundle(_options, bundle) {
      const files = ['./', 'mark.svg', 'app.webmanifest', ...Object.keys(bundle).sort()];
      const text = readFileSync(SOURCE, 'utf8');
      const state = createHash('sha256').update(text);
      for (const item of Object.values(bundle)) state.update(item.type === 'chunk' ? item.code : item.source);
      const head = `const STATE = '${state.digest('hex').slice(0, 12)}';\nconst FILES = ${JSON.stringify(files)};\n`;
      this.emitFile({ type: 'asset', fileName: 'offline-worker.js', source: head + text });
    },
  };
}
