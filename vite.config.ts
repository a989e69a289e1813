import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';
import { listThirdParty } from './src/build/third-party-notices.ts';

/** Built pages load nothing from anywhere else. While developing, Vite's own inline scripts must pass too. */
const POLICY =
  "default-src 'self'; img-src 'self' blob: data:; font-src 'self'; worker-src 'self' blob:; object-src 'none'; base-uri 'none'; form-action 'none'";
const DEV_POLICY = `${POLICY}; script-src 'self' 'unsafe-inline'; style-src 'self' 'unsafe-inline'; connect-src 'self' ws:`;

function contentSecurityPolicy(): Plugin {
  let isServing = false;
  return {
    name: 'content-security-policy',
    configResolved: (config) => {
      isServing = config.command === 'serve' && !config.isProduction;
    },
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: isServing ? DEV_POLICY : POLICY },
        injectTo: 'head-prepend',
      },
    ],
  };
}

/** Puts every built file on the list of the worker that serves the program offline. */
function offlineWorker(): Plugin {
  const source = 'src/app/offline-worker.js';
  return {
    name: 'offline-worker',
    apply: 'build',
    enforce: 'post',
    generateBundle(_options, bundle) {
      const files = ['./', 'mark.svg', 'app.webmanifest', ...Object.keys(bundle).sort()];
      const text = readFileSync(source, 'utf8');
      const state = createHash('sha256').update(text);
      for (const item of Object.values(bundle)) state.update(item.type === 'chunk' ? item.code : item.source);
      const head = `const STATE = '${state.digest('hex').slice(0, 12)}';\nconst FILES = ${JSON.stringify(files)};\n`;
      this.emitFile({ type: 'asset', fileName: 'offline-worker.js', source: head + text });
    },
  };
}

/** Cross-origin isolation lets a running computation see "cancel" through shared memory. */
const headers = {
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Embedder-Policy': 'require-corp',
};

const thirdParty = listThirdParty();

export default defineConfig({
  base: './',
  plugins: [react(), contentSecurityPolicy(), thirdParty.noteAndWrite(), offlineWorker()],
  worker: { format: 'es', plugins: () => [thirdParty.note()] },
  // The rooms loaded late are named too, so that the first start finds every package and does not reload the page.
  optimizeDeps: { entries: ['index.html', 'src/app/scene/index.ts', 'src/app/worker/form-worker.ts'] },
  server: { headers },
  preview: { headers },
  build: {
    target: ['chrome123', 'firefox128', 'safari17.5'],
    modulePreload: { polyfill: false },
    // three.js is one large chunk, loaded after the first picture of the page.
    chunkSizeWarningLimit: 1100,
    rolldownOptions: {
      // English is in the table of languages as every other, and there at once all the same.
      checks: { ineffectiveDynamicImport: false },
      // Do nothing but define, without saying so: only who cuts cloth needs them, and the first screen does not.
      treeshake: {
        moduleSideEffects: [
          { test: /node_modules[\\/](clipper2-ts|robust-predicates)[\\/]/, sideEffects: false },
          // The core keeps no state in a module; what sets zod up must not be passed over.
          { test: /src[\\/]core[\\/](?!project[\\/]zod-without-code)/, sideEffects: false },
        ],
      },
      output: {
        // Words of a language are told apart by its name.
        chunkFileNames: ({ facadeModuleId }) => {
          const [, language, part] = /\/language\/(\w+)\/(\w+)\.ts$/.exec(facadeModuleId ?? '') ?? [];
          return language ? `assets/${language}-${part}-[hash].js` : 'assets/[name]-[hash].js';
        },
        codeSplitting: {
          groups: [
            // React first: the larger group would take what both need, and the page would wait for it.
            {
              name: 'react',
              priority: 2,
              test: /node_modules[\\/](react|react-dom|scheduler|zustand|zundo|use-sync-external-store)[\\/]/,
            },
            {
              name: 'three',
              priority: 1,
              test: /node_modules[\\/](three|@react-three|its-fine|suspend-react)[\\/]/,
            },
          ],
        },
      },
    },
  },
  test: {
    include: ['tests/**/*.test.ts'],
    reporters: ['default', ['json', { outputFile: 'test-results/unit.json' }]],
    // Whole forms are made in some tests, on slow machines too, and beside a browser that goes first: no measure of speed.
    testTimeout: 900_000,
    hookTimeout: 900_000,
    // Tests only compute: every core has one to do, and what one file loaded and warmed up serves the next.
    maxWorkers: '100%',
    isolate: false,
  },
});
