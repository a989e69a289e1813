import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { DOMParser } from '@xmldom/xmldom';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { askPoppler } from '../rasterise-pdf.ts';
import { loftseam, loftseamAnew } from './run-loftseam.ts';

const straight = path.join(import.meta.dirname, '../../shared/demos/straight.loftseam.json');

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'loftseam-'));
});
afterAll(() => rm(folder, { recursive: true }));

/** A binary STL read back: volume by the divergence theorem; every edge run through once each way. */
function readStl(bytes: Buffer): { readonly volume: number; readonly isWatertight: boolean } {
  const edges = new Map<string, number>();
  let volume = 0;
  for (let facet = 0; facet < bytes.readUInt32LE(80); facet++) {
    const real = (k: number) => bytes.readFloatLE(84 + 50 * facet + 12 + 4 * k);
    const [a, b, c] = [0, 3, 6].map((k) => [real(k), real(k + 1), real(k + 2)]);
    volume +=
      (a[0] * (b[1] * c[2] - b[2] * c[1]) +
        a[1] * (b[2] * c[0] - b[0] * c[2]) +
        a[2] * (b[0] * c[1] - b[1] * c[0])) /
      6;
    for (const [from, to] of [
      [a, b],
      [b, c],
      [c, a],
    ]) {
      const [here, back] = [`${from} ${to}`, `${to} ${from}`];
      edges.set(here, (edges.get(here) ?? 0) + 1);
      edges.set(back, (edges.get(back) ?? 0) - 1);
    }
  }
  return { volume, isWatertight: [...edges.values()].every((count) => count === 0) };
}

const coarse = ['--triangles', '2000'];

describe('loftseam make with formats', () => {
  it('writes every format, and an archive that holds them', async () => {
    const out = path.join(folder, 'all');
    const formats = 'svg,pdf,dxf,glb,stl,obj,csv,json,zip';
    const args = ['make', straight, '--out', out, ...coarse, '--paper', 'a4,Letter', '--formats', formats];
    const { code, err } = await loftseam(...args, '--allowance', '10');
    expect(code, err).toBe(0);
    const names = (await readdir(out)).sort();
    expect(names).toEqual(
      [
        ...['body.glb', 'body.obj', 'body.stl', 'form.zip', 'model-1-to-5.stl', 'panels.dxf', 'panels.obj'],
        ...['model-1-to-5-hollow.stl', 'panels.glb', 'panels.stl'],
        ...['card.svg', 'foam.svg', 'test-tube.svg', 'webs.svg'],
        ...['panels.svg', 'print-a4.pdf', 'print-letter.pdf', 'report.json', 'seams.csv', 'tapes.csv'],
      ].sort(),
    );
    const inside = unzipSync(await readFile(path.join(out, 'form.zip')));
    expect(Object.keys(inside).sort()).toEqual(
      ['manifest.json', ...names.filter((name) => name !== 'form.zip')].sort(),
    );
    expect(Buffer.compare(inside['print-a4.pdf'], await readFile(path.join(out, 'print-a4.pdf')))).toBe(0);
    // ISO 216 and ANSI Y14.1 in points.
    const sizeOf = async (file: string) => askPoppler('pdfinfo', await readFile(path.join(out, file)));
    expect(await sizeOf('print-a4.pdf')).toMatch(/Page size:\s+595\.276 x 841\.89 pts \(A4\)/);
    expect(await sizeOf('print-letter.pdf')).toMatch(/Page size:\s+612 x 792 pts \(letter\)/);

    const again = path.join(folder, 'again');
    await loftseamAnew(
      'make',
      straight,
      '--out',
      again,
      ...coarse,
      '--paper',
      'a4,letter',
      '--formats',
      formats,
      '-a',
      '10',
    );
    const zips = await Promise.all([out, again].map((place) => readFile(path.join(place, 'form.zip'))));
    expect(Buffer.compare(zips[0], zips[1])).toBe(0);
  });

  it('takes notches, allowances, knives and models as asked, from the file and over it', async () => {
    const project = JSON.parse(await readFile(straight, 'utf8'));
    project.cutting = {
      mat: { width: 600, height: 400 },
      kerf: 0.2,
      paper: 'letter',
      strokeText: true,
      divides: true,
    };
    project.cloth = { ...project.cloth, allowanceByKind: { opening: 14 } };
    const file = path.join(folder, 'own.loftseam.json');
    await writeFile(file, JSON.stringify(project));
    const out = path.join(folder, 'own');
    const wishes = [
      '--formats',
      'cutter,labels,svg,stl,json',
      '--notches',
      't',
      '--allowance-for',
      'webs=8,shell=12',
    ];
    const { code, err } = await loftseam(
      'make',
      file,
      '--out',
      out,
      ...coarse,
      ...wishes,
      '--model-scale',
      '8',
      '--blade-offset',
      '0.5',
    );
    expect(code, err).toBe(0);
    const names = await readdir(out);
    for (const name of ['labels-letter.pdf', 'model-1-to-8-hollow.stl', 'cutter-shell-A1.svg'])
      expect(names).toContain(name);
    const panels = await readFile(path.join(out, 'panels.svg'), 'utf8');
    expect(panels).toContain('/bar"');
    expect(panels).toContain('Allowance 12 mm');
    expect(panels).toMatch(/base[^<]*: 14 mm/);
    expect(await readFile(path.join(out, 'webs.svg'), 'utf8')).toContain('Allowance 8 mm');
    const [solid, hollow] = await Promise.all(
      ['model-1-to-8.stl', 'model-1-to-8-hollow.stl'].map(async (name) =>
        readStl(await readFile(path.join(out, name))),
      ),
    );
    expect(solid.isWatertight && hollow.isWatertight).toBe(true);
    const { body } = JSON.parse(await readFile(path.join(out, 'report.json'), 'utf8'));
    expect(Math.abs(solid.volume / ((body.volumeL * 1e6) / 8 ** 3) - 1)).toBeLessThan(1e-4);
    // A shell 1.6 mm thick: more than the cloth's area alone (neck and armholes are closed too), less by the inner bend.
    const thin = hollow.volume / ((body.area / 8 ** 2) * 1.6);
    expect(thin).toBeGreaterThan(0.85);
    expect(thin).toBeLessThan(1.15);
    // Single strokes: no text, and the mat's own size.
    const sheet = await readFile(path.join(out, 'cutter-shell-A1.svg'), 'utf8');
    expect(sheet).not.toContain('<text');
    expect(sheet).toContain('width="600mm" height="400mm"');
  });

  it('carries odd names through every format: markup, right to left, 200 letters', async () => {
    const project = JSON.parse(await readFile(straight, 'utf8'));
    project.name = `</text><script>&"'שלום ${'long '.repeat(34)}`.slice(0, 200);
    const file = path.join(folder, 'odd.loftseam.json');
    await writeFile(file, JSON.stringify(project));
    const out = path.join(folder, 'odd');
    const { code, err } = await loftseam(
      'make',
      file,
      '--out',
      out,
      ...coarse,
      '--formats',
      'svg,pdf,labels,cutter,dxf',
      '--stroke-text',
    );
    expect(code, err).toBe(0);
    expect(err).toMatch(/letters of single strokes lack “ש”/);
    const names = (await readdir(out)).filter((name) => name.endsWith('.svg'));
    for (const name of names) {
      const parser = new DOMParser({
        onError: (level, message) => {
          throw new Error(`${name}: ${level} ${message}`);
        },
      });
      const root = parser.parseFromString(await readFile(path.join(out, name), 'utf8'), 'image/svg+xml');
      expect(root.getElementsByTagName('script').length).toBe(0);
    }
    expect(names.length).toBeGreaterThan(8);
    expect(askPoppler('pdftotext', await readFile(path.join(out, 'print-a4.pdf')))).toContain('<script>');
  });

  it('refuses what cannot be, naming field and limit, and writes nothing', async () => {
    const cases: [string[], RegExp][] = [
      [['--formats', 'svg,docx'], /no format called “docx”/],
      [['--paper', 'a4', '--margin', '90'], /margin.*9 cm.*at least 6 cm/i],
      [['--formats', 'cutter', '--kerf', '9'], /kerf of 0\.9 cm.*0 to 0\.3 cm/i],
      [['--formats', 'cutter', '--blade-offset', '5'], /blade offset of 0\.5 cm.*0 to 0\.2 cm/i],
      [['--formats', 'gauges', '--gauge-clearance', '12'], /clearance of 1\.2 cm: give 0 cm.* to 1 cm/],
      [['--gauges', 'knee'], /no gauge called “knee”.*waist.*profile/],
      [['--formats', 'stl', '--wall', '12'], /Walls of 1\.2 cm.*0\.04 cm to 0\.4 cm/],
      [['--allowance-for', 'seam=1'], /allowance of 0\.1 cm.*0\.3 cm to 5 cm/i],
      [['--allowance', '2'], /3 to 50 mm/],
      [['--paper', 'a4', '--margin', '-3'], /--margin.*0 or more/],
      [['--notches', 'star'], /Allowed choices are slit, t, outward/],
      [['--allowance', '45'], /allowances folded in would cover it/],
      [['--only', 'nobody'], /no piece called “nobody”/],
    ];
    for (const [wishes, message] of cases) {
      const out = path.join(folder, `refused-${wishes.join('')}`.replaceAll('/', ''));
      const { code, err } = await loftseam('make', straight, '--out', out, ...coarse, ...wishes);
      expect(code, wishes.join(' ')).not.toBe(0);
      expect(err.replaceAll(/\s+/g, ' '), wishes.join(' ')).toMatch(message);
      await expect(readdir(out), wishes.join(' ')).rejects.toThrow();
    }
  });

  it('writes only the pieces asked for', async () => {
    const out = path.join(folder, 'one');
    const { code } = await loftseam(
      'make',
      straight,
      '--out',
      out,
      ...coarse,
      '-f',
      'svg,dxf',
      '--only',
      'centreFrontLeft',
    );
    expect(code).toBe(0);
    const svg = await readFile(path.join(out, 'panels.svg'), 'utf8');
    expect(svg).toContain('id="centreFrontLeft/cut"');
    expect(svg).not.toContain('id="centreFrontRight/cut"');
    expect(await readFile(path.join(out, 'panels.dxf'), 'latin1')).toMatch(/CENTRE_FRONT_LEFT/);
  });

  it('writes sheets for a cutting machine, divided over its mat', async () => {
    const out = path.join(folder, 'cutter');
    const args = [
      '-f',
      'cutter',
      '--divide',
      '--mat',
      '305x400',
      '--kerf',
      '0.2',
      '--colours',
      'cut=#00ff00,sew=none',
    ];
    const { code, err } = await loftseam(
      'make',
      straight,
      '--out',
      out,
      ...coarse,
      ...args,
      '--only',
      'centreFrontLeft',
    );
    expect(code, err).toBe(0);
    const names = (await readdir(out)).sort();
    expect(names).toEqual(['cutter-shell-A1.svg', 'cutter-shell-A2.svg']);
    const svg = await readFile(path.join(out, names[0]), 'utf8');
    expect(svg).toContain('width="305mm" height="400mm"');
    expect(svg).toMatch(/id="cut"[^>]*stroke="#00ff00"/);
    expect(svg).not.toContain('id="sew"');
  });

  it.each([
    [['--mat', 'huge'], 'width and height in mm'],
    [['--colours', 'cut=red'], 'layer=#rrggbb'],
    [['--formats', 'svg,tiff'], 'There is no format called “tiff”'],
    [['--paper', 'foolscap'], 'There is no paper called “foolscap”'],
    [['--margin', 'wide'], 'must be a length'],
  ])('does not understand %o', async (args, words) => {
    const { code, err } = await loftseam('make', straight, ...args);
    expect(code).toBe(2);
    expect(err).toContain(words);
  });

  it.each([
    [['--only', 'sleeve'], 'unknown-piece'],
    [['--paper', 'a4', '--margin', '90'], 'paper-too-small'],
  ])('says what is wrong with %o', async (args, code) => {
    const made = await loftseam('make', straight, '--out', path.join(folder, 'none'), ...coarse, ...args);
    expect(made.code).toBe(2);
    expect(made.err).toContain(code);
  });
});

describe('loftseam print-correct', () => {
  it('tells the correction', async () => {
    const { code, out } = await loftseam('print-correct', '--measured-x', '198.5', '--measured-y', '200.2');
    expect(code).toBe(0);
    expect(out).toContain('+0.76 % across the page, -0.10 % up the page');
  });

  it('writes pages that say what they are corrected for', async () => {
    const out = path.join(folder, 'corrected');
    const args = ['--measured-x', '178.9', '--measured-y', '200.2', '--out', out];
    const { code } = await loftseam('print-correct', straight, ...args);
    expect(code).toBe(0);
    const text = askPoppler('pdftotext', await readFile(path.join(out, 'print-a4-corrected.pdf')));
    expect(text).toContain('Corrected for one printer: 0.61 % across, -0.10 % up the page.');
  });

  it('refuses what is scaling to fit', async () => {
    const { code, err } = await loftseam('print-correct', '--measured-x', '188.2', '--measured-y', '170');
    expect(code).toBe(2);
    expect(err).toContain('print-far-off');
  });
});
