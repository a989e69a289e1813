import { existsSync } from 'node:fs';
import { chromium } from '@playwright/test';

/** Flags under which a headless browser draws WebGL in software and asks the network for nothing of its own. */
export const chromiumFlags = [
  '--no-sandbox',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  // Some distributions ask for the opposite: without a graphics card that takes three times the processor time.
  '--disable-gpu-rasterization',
];

/**
 * Path of a Chromium to test with: `$CHROMIUM_PATH`, /usr/bin/chromium, Playwright's own, then the one packed in a
 * dependency. Throws when there is none: a browser test that cannot run has failed.
 */
export async function findChromium(): Promise<string> {
  const given = process.env.CHROMIUM_PATH;
  if (given) {
    if (existsSync(given)) return given;
    throw new Error(`CHROMIUM_PATH names ${given}, which does not exist`);
  }
  for (const path of ['/usr/bin/chromium', chromium.executablePath()])
    if (path && existsSync(path)) return path;
  const packed = await unpackChromium();
  if (packed !== undefined) return packed;
  throw new Error('No Chromium found: install one (apt-get install chromium) or set CHROMIUM_PATH.');
}

async function unpackChromium(): Promise<string | undefined> {
  try {
    const { default: packed } = await import('@sparticuz/chromium');
    const path = await packed.executablePath();
    return existsSync(path) ? path : undefined;
  } catch {
    return undefined;
  }
}
