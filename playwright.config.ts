import { defineConfig } from '@playwright/test';
import { chromiumFlags, findChromium } from './tests/find-chromium.ts';

const port = 4717;

export default defineConfig({
  testDir: 'tests/e2e',
  // A folder of its own: Playwright empties it at the start, and the unit report must outlive that.
  outputDir: 'test-results/e2e',
  timeout: 120_000,
  expect: { timeout: 30_000 },
  fullyParallel: false,
  // Drawing is in software: two pages at once only slow each other down.
  workers: 1,
  forbidOnly: true,
  // Beside everything else a page can be kept waiting for minutes. What needed a second try is named with the counts.
  retries: 1,
  reporter: [['list'], ['json', { outputFile: 'test-results/e2e.json' }]],
  use: {
    baseURL: `http://127.0.0.1:${port}`,
    browserName: 'chromium',
    viewport: { width: 1280, height: 800 },
    launchOptions: { executablePath: await findChromium(), args: chromiumFlags },
    // Recording slows every test down: ask for it when looking for a cause.
    trace: process.env.TRACE ? 'retain-on-failure' : 'off',
  },
  webServer: {
    command: `npm run build && npx vite preview --host 127.0.0.1 --port ${port} --strictPort`,
    url: `http://127.0.0.1:${port}/`,
    timeout: 180_000,
    reuseExistingServer: false,
  },
});
