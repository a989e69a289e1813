import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';
import { contentSecurityPolicy } from './src/build/content-security-policy.ts';
import { listForOffline } from './src/build/list-for-offline.ts';
import { ONE_FILE_MODE, packOneFile } from './src/build/pack-one-file.ts';
import { listThirdParty } from './src/build/third-party-notices.ts';

/** Cross-origin isolation lets a running computation see "cancel" through shared memory. */
const headers = {
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Embedder-Policy': 'require-corp',
};

const thirdParty = listThirdParty();

export default defineConfig(({ mode }) => ({
  base: './',
  plugins: [
    react(),
    contentSecurityPolicy(),
    thirdParty.noteAndWrite(),
    mode === ONE_FILE_MODE ? packOneFile() : listForOffline(),
  ],
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
          // Words only; what of them nobody asks for is not taken along.
          { test: /src[\\/]language[\\/]/, sideEffects: false },
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
}));
