import { afterEach, describe, expect, it, vi } from 'vitest';
import { findChromium } from './find-chromium.ts';

describe('findChromium', () => {
  afterEach(() => vi.unstubAllEnvs());

  it('takes the one it is told to take', async () => {
    vi.stubEnv('CHROMIUM_PATH', process.execPath);
    expect(await findChromium()).toBe(process.execPath);
  });

  it('fails when that one does not exist, instead of quietly taking another', async () => {
    vi.stubEnv('CHROMIUM_PATH', '/nowhere/chromium');
    await expect(findChromium()).rejects.toThrow('/nowhere/chromium');
  });

  it('finds one on this machine', async () => {
    vi.stubEnv('CHROMIUM_PATH', '');
    expect(await findChromium()).toMatch(/chrom/i);
  });
});
