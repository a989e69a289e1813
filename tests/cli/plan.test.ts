import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loftseam } from './run-loftseam.ts';

const demo = path.join(import.meta.dirname, '../../shared/demos/straight.loftseam.json');
let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'loftseam-'));
});
afterAll(() => rm(folder, { recursive: true }));

describe('loftseam plan', () => {
  it('prints every step once, in order, ticked where done', async () => {
    const project = JSON.parse(await readFile(demo, 'utf8'));
    const file = path.join(folder, 'begun.loftseam.json');
    await writeFile(file, JSON.stringify({ ...project, making: { done: ['use'] } }));
    const { code, out } = await loftseam('plan', file);
    expect(code).toBe(0);
    const numbers = [...out.matchAll(/^\[([ x])\] (\d+)\. /gm)];
    expect(numbers.map((match) => Number(match[2]))).toEqual(numbers.map((_, i) => i + 1));
    expect(numbers.length).toBeGreaterThan(20);
    expect(numbers.map((match) => match[1]).join('')).toMatch(/^x +$/);
    // A step is only ever after earlier ones.
    for (const [, number, after] of out.matchAll(/^\[.\] (\d+)\. .*\(after ([\d, ]+)\)$/gm)) {
      for (const need of after.split(', ')) expect(Number(need)).toBeLessThan(Number(number));
    }
    expect(out).toContain('seam A ');
    expect(out).toContain('CAUTION: Close rotary and craft knives');
  });
});

describe('loftseam stuffing', () => {
  it('judges the log of the file', async () => {
    const project = JSON.parse(await readFile(demo, 'utf8'));
    const waist = project.body.measures.waistGirth;
    const entry = {
      date: '2026-03-14',
      state: 'filled',
      levels: { waist: { girth: waist + 12 } },
      fillMass: 2,
    };
    const file = path.join(folder, 'log.loftseam.json');
    await writeFile(file, JSON.stringify({ ...project, checking: { entries: [entry] } }));
    const { code, out } = await loftseam('stuffing', file);
    expect(code).toBe(0);
    expect(out).toContain('2026-03-14, filled, 2.00 kg of filling');
    expect(out).toMatch(/Waist: 1\.2 cm .*too large all round/);
    expect(out).toContain('Do not tighten the seam.');
  });

  it('says so when nothing was measured, and names a spoilt log', async () => {
    expect((await loftseam('stuffing', demo)).out).toContain('Nothing measured yet');
    const project = JSON.parse(await readFile(demo, 'utf8'));
    const file = path.join(folder, 'spoilt.loftseam.json');
    await writeFile(file, JSON.stringify({ ...project, checking: { entries: [{ date: 'x' }] } }));
    const { code, err } = await loftseam('stuffing', file);
    expect(code).toBe(1);
    expect(err).toContain('checking.entries.0');
  });
});
