import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { DOMParser } from '@xmldom/xmldom';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { loftseam, loftseamAnew } from './run-loftseam.ts';

const demos = path.join(import.meta.dirname, '../../shared/demos');
const straight = path.join(demos, 'straight.loftseam.json');

let folder = '';
beforeEach(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'loftseam-'));
});
afterEach(() => rm(folder, { recursive: true }));

async function spoiltProject(
  change: (file: { body: { measures: Record<string, unknown> } }) => void,
  layout: string,
): Promise<string> {
  const project = JSON.parse(await readFile(straight, 'utf8'));
  change(project);
  project.seams.layout = layout;
  const file = path.join(folder, 'spoilt.loftseam.json');
  await writeFile(file, JSON.stringify(project));
  return file;
}

describe('loftseam make', () => {
  it('writes the panels, the report and the body', async () => {
    const { code, out, err } = await loftseam(
      'make',
      straight,
      '--out',
      path.join(folder, 'out'),
      '--triangles',
      '2000',
    );
    expect(err).toContain('panels: Unrolling the panels');
    expect(code).toBe(0);
    expect(await readdir(path.join(folder, 'out'))).toEqual([
      ...[
        'body.glb',
        'card.svg',
        'foam.svg',
        'panels.glb',
        'panels.svg',
        'report.json',
        'test-tube.svg',
        'webs.svg',
      ],
    ]);
    const report = JSON.parse(await readFile(path.join(folder, 'out/report.json'), 'utf8'));
    expect(report).toMatchObject({ format: 'loftseam-report', version: 1 });
    expect(report.tapes.length).toBeGreaterThan(5);
    expect(Object.keys(report.timingsMs)).toContain('panels');
    const svg = await readFile(path.join(folder, 'out/panels.svg'), 'utf8');
    expect(new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement?.tagName).toBe('svg');
    // The first four bytes of binary glTF, in the standard's section 4.4.2.
    expect((await readFile(path.join(folder, 'out/body.glb'))).subarray(0, 4).toString()).toBe('glTF');
    expect(out).toContain('panels.svg');
    expect(out).toMatch(/partners differ by at most 0\.0\d+ mm/);
  });

  it('takes a seam allowance with its unit', async () => {
    const { code } = await loftseam('make', straight, '-o', folder, '-t', '2000', '--allowance', '3/8 in');
    expect(code).toBe(0);
    // Said as typed, and in millimetres: 3/8 in = 9.525 mm exactly.
    expect(await readFile(path.join(folder, 'panels.svg'), 'utf8')).toMatch(/Allowance 3\/8 in \(9\.5 mm\)/);
  });

  it('refuses what it does not understand with the limits', async () => {
    const triangles = await loftseam('make', straight, '--triangles', 'many');
    expect(triangles.code).toBe(2);
    expect(triangles.err).toContain('500 to 200000');
    const allowance = await loftseam('make', straight, '--allowance', '80');
    expect(allowance.code).toBe(2);
    expect(allowance.err).toContain('3 to 50 mm (an opening may also have 0)');
    expect((await loftseam('make')).code).toBe(2);
    expect((await loftseam('sew', straight)).code).toBe(2);
    expect((await loftseam()).code).toBe(2);
  });

  it('turns the grain of a panel by degrees, and tells it', async () => {
    // Filled or not, the grain is told alike.
    const options = ['-o', folder, '-t', '2000', '--inside', 'recut=false'];
    const make = (grain: string) => loftseam('make', straight, ...options, '--grain', grain);
    const { code, out } = await make('centreFrontRight=15');
    expect(code).toBe(0);
    expect(out).toMatch(/^centreFrontRight .* \+15 +[+-]?\d+$/m);
    expect(await make('centreFrontRight=95')).toMatchObject({ code: 2 });
  });

  it('names the layouts there are', async () => {
    const { code, err } = await loftseam('make', straight, '--out', folder, '--layout', 'nothing');
    expect(code).toBe(1);
    expect(err).toContain('upright8');
    expect(await readdir(folder)).toEqual([]);
  });

  it('says which file cannot be read or written', async () => {
    const absent = await loftseam('make', path.join(folder, 'absent.json'));
    expect(absent.code).toBe(3);
    expect(absent.err).toMatch(/Cannot read .*absent\.json: it does not exist/);
    await writeFile(path.join(folder, 'taken'), '');
    const taken = await loftseam(
      'make',
      straight,
      '--out',
      path.join(folder, 'taken'),
      '--triangles',
      '2000',
    );
    expect(taken.code).toBe(3);
    expect(taken.err).toContain('Cannot write into');
  });
});

describe('loftseam check', () => {
  it('shows every tape as typed and on the body', async () => {
    const { code, out } = await loftseam('check', straight);
    expect(code).toBe(0);
    expect(out).toMatch(/^bustGirth +girth +87\.0 cm +87\.0 cm +[+-]?0\.0\d +met$/m);
    expect(out).toContain('estimated');
  });

  it('ends with 1 and names every field at fault', async () => {
    const file = await spoiltProject(({ body }) => {
      delete body.measures.hipGirth;
      body.measures.waistGirth = 76;
    }, 'nothing');
    const { code, out } = await loftseam('check', file);
    expect(code).toBe(1);
    expect(out).toContain('ERROR    body.measures.hipGirth');
    expect(out).toContain('ERROR    body.measures.waistGirth');
    expect(out).toContain('ERROR    seams.layout');
  });

  it('ends with 1 on a file that is no project, and points at the place', async () => {
    const file = path.join(folder, 'broken.json');
    await writeFile(file, '{\n  "format": "loftseam-project",\n  "version": 1,,\n}');
    const { code, err } = await loftseam('check', file);
    expect(code).toBe(1);
    expect(err).toContain('line 3, column 16');
  });
});

describe('loftseam demo', () => {
  it('lists the demos with who they are', async () => {
    const { code, out } = await loftseam('demo');
    expect(code).toBe(0);
    for (const file of await readdir(demos)) expect(out).toContain(file.replace('.loftseam.json', ''));
    expect(out).toContain('Tamsin Rooke');
  });

  it('writes one, and does not write over it unless told', async () => {
    expect((await loftseam('demo', 'straight', '--out', folder)).code).toBe(0);
    const file = path.join(folder, 'straight.loftseam.json');
    expect(await readFile(file, 'utf8')).toBe(await readFile(straight, 'utf8'));
    await writeFile(file, 'mine');
    const again = await loftseam('demo', 'straight', '--out', folder);
    expect(again.code).toBe(3);
    expect(again.err).toContain('--replace');
    expect(await readFile(file, 'utf8')).toBe('mine');
    expect((await loftseam('demo', 'straight', '--out', folder, '--replace')).code).toBe(0);
    expect(await readFile(file, 'utf8')).toBe(await readFile(straight, 'utf8'));
  });

  it('names the demos when there is none of that name', async () => {
    const { code, err } = await loftseam('demo', 'nobody');
    expect(code).toBe(2);
    expect(err).toContain('average');
  });
});

describe('--help', () => {
  it.each([[], ['make'], ['check'], ['demo']])('says what to type for “%s”', async (...command) => {
    const { code, out } = await loftseam(...command, '--help');
    expect(code).toBe(0);
    expect(out).toContain('Usage: loftseam');
    expect(out).toContain('Exit codes: 0 fine, 1 errors in the project');
  });
});

describe('loftseam region', () => {
  it('writes a region in true size and tells its strain', async () => {
    const loop = path.join(folder, 'loop.json');
    const out = path.join(folder, 'region.svg');
    await writeFile(loop, '[[1.0, -150], [1.6, -150], [1.6, -50], [1.0, -50]]');
    const { code, out: told } = await loftseam('region', straight, loop, '--out', out);
    expect(code).toBe(0);
    expect(told).toMatch(/95 % of the cloth is strained less than [01]\.\d\d %/);
    const svg = new DOMParser().parseFromString(await readFile(out, 'utf8'), 'image/svg+xml');
    expect(svg.documentElement?.getAttribute('width')).toMatch(/mm$/);
    expect(svg.getElementById('region/sew')).not.toBeNull();
  });

  it.each([
    ['[[1, -150], [2, -50], [2, -150], [1, -50]]', 1, 'crosses itself'],
    ['[[1, -150], [2, -150], [2, 5000]]', 1, 'leaves the body'],
    ['[[-0.5, 150], [0.5, 150], [0.5, 380], [-0.5, 380]]', 1, 'armhole'],
    ['{"points": []}', 1, 'a list of points'],
  ])('refuses %s', async (text, expected, word) => {
    const loop = path.join(folder, 'loop.json');
    await writeFile(loop, text);
    const { code, err } = await loftseam('region', straight, loop);
    expect(code).toBe(expected);
    expect(err).toContain(word);
  });
});

describe('loftseam advise', () => {
  it('tells what was tried out, with figures before and after', async () => {
    const { code, out } = await loftseamAnew('advise', straight, '--layout', 'upright8', '--zones', '1');
    expect(code).toBe(0);
    expect(out).toMatch(/takes \d/);
    expect(out).toMatch(/strain there falls from [\d.]+ % to [\d.]+ %|Neither moving/);
    expect((await loftseam('advise', straight, '--zones', '0')).code).toBe(2);
  });
});

describe('loftseam propose', () => {
  it('lists steps with falling strain and writes the lines only to the file asked for', async () => {
    const target = path.join(folder, 'better.loftseam.json');
    const args = ['--strain', '1.5', '--panels', '9', '--layout', 'upright8', '--out', target];
    const { code, out } = await loftseam('propose', straight, ...args);
    expect(code).toBe(0);
    const p95 = [...out.matchAll(/^(?:as it is|after step \d) +([\d.]+)/gm)].map((row) => Number(row[1]));
    expect(p95.length).toBeGreaterThan(1);
    expect(p95[1]).toBeLessThan(p95[0]);
    expect(out).toContain(`below 1.5 %, is ${p95[p95.length - 1] <= 1.5 ? '' : 'not '}reached`);
    const written = JSON.parse(await readFile(target, 'utf8'));
    expect(written.seams.lines.length).toBeGreaterThan(5);
    expect((await loftseam('propose', straight, '--strain', '-1')).code).toBe(2);
  });
});
