import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { unzipSync } from 'fflate';
import { expect, it } from 'vitest';
import { InvariantError } from '../../src/core/base/index.ts';
import { writeCsv, writeZip } from '../../src/core/export/index.ts';

it('CSV: quotes, commas and line ends as RFC 4180 has them; no text is a formula', () => {
  const text = writeCsv([
    ['plain', 'a,b', 'say "x"', 'two\nlines', ''],
    ['=1+1', '-5', -5, 1.23456, Number.NaN],
  ]);
  expect(text).toBe('\u{FEFF}plain,"a,b","say ""x""","two\nlines",\r\n\'=1+1,\'-5,-5,1.235,\r\n');
});

const FILES = [
  { name: 'a.txt', type: 'text/plain', content: 'Größe' },
  { name: 'b.bin', type: 'application/octet-stream', content: Uint8Array.of(0, 1, 2, 255) },
];

it('ZIP: the manifest tells true sizes and checksums; nothing depends on the zone', () => {
  const zip = writeZip(FILES, 'Loftseam');
  const files = unzipSync(zip);
  expect(Object.keys(files)).toEqual(['manifest.json', 'a.txt', 'b.bin']);
  const manifest = JSON.parse(new TextDecoder().decode(files['manifest.json']));
  expect(manifest.files.map(({ name }: { name: string }) => name)).toEqual(['a.txt', 'b.bin']);
  expect(manifest.files[0].bytes).toBe(7);
  expect(writeZip(FILES, 'Loftseam')).toEqual(zip);
  const zone = process.env.TZ;
  process.env.TZ = 'Pacific/Auckland';
  const elsewhere = writeZip(FILES, 'Loftseam');
  process.env.TZ = zone ?? 'UTC';
  expect(elsewhere).toEqual(zip);
});

it('ZIP: Python reads it and finds no fault', () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'zip-'));
  try {
    const file = path.join(folder, 'all.zip');
    writeFileSync(file, writeZip(FILES, 'Loftseam'));
    expect(execFileSync('python3', ['-m', 'zipfile', '-t', file], { encoding: 'utf8' })).toContain(
      'Done testing',
    );
  } finally {
    rmSync(folder, { recursive: true });
  }
});

it('ZIP: the checksum is the one of ISO 3309 (check value of “123456789”: CBF43926)', () => {
  const zip = writeZip([{ name: 'n', type: 't', content: '123456789' }], 'p');
  expect(new TextDecoder().decode(unzipSync(zip)['manifest.json'])).toContain('"cbf43926"');
});

it('ZIP: refuses folders in names and names used twice', () => {
  expect(() => writeZip([{ ...FILES[0], name: '../a' }], 'p')).toThrow(InvariantError);
  expect(() => writeZip([FILES[0], FILES[0]], 'p')).toThrow(InvariantError);
});
