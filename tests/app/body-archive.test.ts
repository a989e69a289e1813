import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { crc32 } from 'node:zlib';
import { strToU8, type Zippable, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { addBodies, sortBodies } from '../../src/app/services/archive-bodies.ts';
import { packBodies } from '../../src/app/services/pack-bodies.ts';
import { MOST_BODIES, unpackBodies } from '../../src/app/services/unpack-bodies.ts';
import type { KeptBody } from '../../src/app/store/index.ts';
import { serializeProject } from '../../src/core/project/index.ts';
import { words } from '../../src/language/english/app.ts';
import { wardrobe } from '../../src/language/english/wardrobe.ts';
import { createSpeakers, englishCore } from '../../src/language/index.ts';
import { projectForTests } from './fixtures/project-for-tests.ts';

const { both: say } = createSpeakers(englishCore);

function kept(id: string, name: string, at = 1_790_000_000_000): KeptBody {
  return { id, name, at, text: serializeProject({ ...projectForTests(), name }) };
}

const BODIES = [kept('a', 'Odile'), kept('b', 'Odile', 5), kept('c', 'Bram / "7", ω'), kept('d', '')];

/** An archive as ours, with whatever is wished in it; CRC-32 by Node's own. */
function archiveOf(files: Readonly<Record<string, string>>, more: object = {}): Uint8Array {
  const bodies = Object.entries(files).map(([file, text], i) => {
    const content = strToU8(text);
    const sum = crc32(content).toString(16).padStart(8, '0');
    return { file, id: `id ${i}`, name: file, at: i, bytes: content.length, crc32: sum };
  });
  const index = { format: 'loftseam-bodies', version: 1, bodies, ...more };
  const entries: Zippable = { 'bodies.json': strToU8(JSON.stringify(index)) };
  for (const [file, text] of Object.entries(files)) entries[file] = strToU8(text);
  return zipSync(entries);
}

function faultOf(archive: Uint8Array): string {
  const unpacked = unpackBodies(archive);
  return 'fault' in unpacked ? unpacked.fault.is : 'none';
}

/** Where only `list` and `putAll` are asked, as a browser would answer. */
function cabinet(here: readonly KeptBody[], unreadable: readonly unknown[] = []) {
  const added: KeptBody[] = [];
  return {
    added,
    list: async () => ({ bodies: [...here, ...added], cards: new Map(), unreadable }),
    putAll: async (bodies: readonly KeptBody[]) => void added.push(...bodies),
  };
}

const fileOf = (content: Uint8Array, name = 'bodies.zip') => new File([new Uint8Array(content)], name);
let count = 0;
const add = (content: Uint8Array, database: ReturnType<typeof cabinet>) =>
  addBodies(fileOf(content), database, wardrobe.archive, { words, say, newId: () => `new ${++count}` });

describe('an archive of bodies', () => {
  it('gives back every body as it was, byte for byte, and is the same each time', () => {
    expect(unpackBodies(packBodies(BODIES))).toEqual({ bodies: BODIES });
    expect(packBodies(BODIES)).toEqual(packBodies(BODIES));
    expect(unpackBodies(packBodies([]))).toEqual({ bodies: [] });
  });

  it('is a ZIP for Python’s zipfile, which checks every CRC, with project files under names of their own', () => {
    const folder = mkdtempSync(path.join(tmpdir(), 'bodies-'));
    try {
      writeFileSync(path.join(folder, 'all.zip'), packBodies(BODIES));
      const read = 'import zipfile; z = zipfile.ZipFile("all.zip"); print(z.testzip()); z.extractall("out")';
      expect(execFileSync('python3', ['-c', read], { cwd: folder, encoding: 'utf8' })).toBe('None\n');
      const files = ['odile', 'odile-2', 'bram-7-ω', 'body'].map((stem) => `${stem}.loftseam.json`);
      expect(files.map((file) => readFileSync(path.join(folder, 'out', file), 'utf8'))).toEqual(
        BODIES.map(({ text }) => text),
      );
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  it('can be packed anew by another program', () => {
    const folder = mkdtempSync(path.join(tmpdir(), 'bodies-'));
    try {
      writeFileSync(path.join(folder, 'all.zip'), packBodies(BODIES));
      const repack = [
        'import zipfile',
        'a = zipfile.ZipFile("all.zip"); b = zipfile.ZipFile("again.zip", "w", zipfile.ZIP_DEFLATED)',
        '[b.writestr(name, a.read(name)) for name in reversed(a.namelist())]; b.close()',
      ];
      execFileSync('python3', ['-c', repack.join('\n')], { cwd: folder });
      expect(unpackBodies(readFileSync(path.join(folder, 'again.zip')))).toEqual({ bodies: BODIES });
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});

describe('what is no archive of ours', () => {
  const good = packBodies(BODIES);
  const spoilt = (at: number) => Uint8Array.from(good, (byte, i) => (i === at ? byte ^ 0xff : byte));

  it.each<[string, Uint8Array, string]>([
    ['nothing', new Uint8Array(0), 'noArchive'],
    ['text', strToU8('{"format":"loftseam-project"}'), 'noArchive'],
    ['a ZIP of something else', zipSync({ 'letter.txt': strToU8('Dear Odile') }), 'notOurs'],
    ['another list', archiveOf({ a: '{}' }, { format: 'other' }), 'notOurs'],
    ['a newer list', archiveOf({ a: '{}' }, { version: 2 }), 'newer'],
    ['a list that is none', zipSync({ 'bodies.json': strToU8('[[[[') }), 'damaged'],
    ['a list nested without end', zipSync({ 'bodies.json': strToU8('['.repeat(1_500_000)) }), 'damaged'],
    ['a list of nothing', archiveOf({}, { bodies: [null] }), 'damaged'],
    ['a list without ids', archiveOf({}, { bodies: [{ file: 'a', name: '', at: 1 }] }), 'damaged'],
    [
      'a file that is not there',
      archiveOf({}, { bodies: [{ file: 'a', id: 'a', name: '', at: 1 }] }),
      'damaged',
    ],
    [
      'an inherited name',
      archiveOf({}, { bodies: [{ file: 'toString', id: 'a', name: '', at: 1 }] }),
      'damaged',
    ],
    ['a name above', archiveOf({ '../../etc/passwd': 'x' }), 'oddName'],
    ['a folder', archiveOf({ 'folder/a.json': 'x' }), 'oddName'],
    ['a name from the root', archiveOf({ '/a.json': 'x' }), 'oddName'],
    ['a drive', archiveOf({ 'C:a.json': 'x' }), 'oddName'],
    ['a folder of Windows', archiveOf({ 'a\\b.json': 'x' }), 'oddName'],
    ['a name with a line', archiveOf({ 'a\nb.json': 'x' }), 'oddName'],
    ['a file of 6 MB', archiveOf({ 'a.json': ' '.repeat(6_000_000) }), 'unpacksTooLarge'],
    ['cut in the middle', good.slice(0, good.length >> 1), 'damaged'],
    ['51 MB', new Uint8Array(51_000_000), 'tooLarge'],
  ])('is told: %s', (_, archive, fault) => {
    expect(faultOf(archive)).toBe(fault);
  });

  it('is told whichever byte of a body is spoilt', () => {
    // Past the list, whose length stands at byte 18 of its header (APPNOTE.TXT 4.3.7), up to the table of contents.
    const view = new DataView(good.buffer, good.byteOffset);
    const second = 30 + view.getUint16(26, true) + view.getUint16(28, true) + view.getUint32(18, true);
    expect(view.getUint32(second, true)).toBe(0x04034b50);
    const start = second + 30 + view.getUint16(second + 26, true);
    const end = start + view.getUint32(second + 18, true);
    for (let at = start; at < end; at += 7) expect(faultOf(spoilt(at)), `${at}`).not.toBe('none');
  });

  it('is told of thousands of files, and of a hundred megabytes in little room, before they are unpacked', () => {
    const many = Object.fromEntries(Array.from({ length: MOST_BODIES + 1 }, (_, i) => [`${i}.json`, '{}']));
    expect(faultOf(archiveOf(many))).toBe('tooMany');
    // Those that its list does not name too, and a list that names one file without end.
    expect(faultOf(archiveOf(many, { bodies: [] }))).toBe('tooMany');
    const named = Array.from({ length: MOST_BODIES + 1 }, (_, i) => ({
      file: 'a',
      id: `${i}`,
      name: '',
      at: i,
    }));
    expect(faultOf(archiveOf({}, { bodies: named }))).toBe('tooMany');
    const wide = Object.fromEntries(
      Array.from({ length: 25 }, (_, i) => [`${i}.json`, ' '.repeat(4_900_000)]),
    );
    const bomb = archiveOf(wide);
    expect(bomb.length).toBeLessThan(1_000_000);
    expect(faultOf(bomb)).toBe('unpacksTooLarge');
  });

  it('is not believed what it says of its own sizes', () => {
    const bomb = archiveOf({ 'a.json': ' '.repeat(6_000_000) });
    const view = new DataView(bomb.buffer, bomb.byteOffset);
    for (let at = 0; at < bomb.length - 4; at++) {
      // Uncompressed size, in the local header and in the table of contents.
      const sign = view.getUint32(at, true);
      if (sign === 0x04034b50) view.setUint32(at + 22, 10, true);
      if (sign === 0x02014b50) view.setUint32(at + 24, 10, true);
    }
    expect(faultOf(bomb)).toBe('unpacksTooLarge');
  });
});

describe('adding an archive', () => {
  it('adds all to an empty browser under the ids they had, and nothing the second time', async () => {
    const database = cabinet([]);
    const first = await add(packBodies(BODIES), database);
    expect(first).toEqual({ tone: 'plain', text: '4 bodies were added.', details: [] });
    expect(database.added).toEqual(BODIES);
    const again = await add(packBodies(BODIES), database);
    expect(again).toMatchObject({
      text: 'No body was new.',
      details: ['4 are here already, just the same.'],
    });
    expect(database.added).toHaveLength(4);
  });

  it('keeps the same body in another state apart, tells it, and does so once', async () => {
    const here = { ...BODIES[0], text: BODIES[0].text.replace('"Odile"', '"Odile, later"') };
    const database = cabinet([here]);
    const told = await add(packBodies([BODIES[0]]), database);
    expect(told.text).toBe('1 body was added.');
    expect(told.details).toEqual(['Odile is here already in another state: both are kept, each for itself.']);
    expect(database.added).toMatchObject([{ name: 'Odile', text: BODIES[0].text }]);
    expect(database.added[0].id).not.toBe('a');
    expect((await add(packBodies([BODIES[0]]), database)).text).toBe('No body was new.');
  });

  it('never takes the id of an entry that cannot be read, or one twice', () => {
    const twice = [kept('a', 'Odile'), kept('a', 'Bram'), kept('a', 'Odile')];
    let made = 0;
    const newId = () => `new ${++made}`;
    const sorted = sortBodies(twice, [], [], newId);
    expect(sorted.added.map(({ id, name }) => [id, name])).toEqual([
      ['a', 'Odile'],
      ['new 1', 'Bram'],
    ]);
    expect(sorted.known).toHaveLength(1);
    expect(sortBodies([kept('broken', 'Odile')], [], ['broken'], newId).added[0].id).toBe('new 2');
  });

  it('adds what can be read beside a body that cannot, and says which and why', async () => {
    const database = cabinet([]);
    const newer = BODIES[0].text.replace('"version": 1', '"version": 99');
    const told = await add(archiveOf({ 'new.json': newer, 'good.json': BODIES[1].text }), database);
    expect(told).toMatchObject({ tone: 'warning', text: '1 body was added.' });
    expect(told.details?.[0]).toMatch(/^new\.json could not be read as a body: .*99/);
    expect(database.added).toMatchObject([{ name: 'Odile', text: BODIES[1].text }]);
  });

  it('changes nothing when it is refused, and says why in words', async () => {
    const database = cabinet(BODIES);
    const told = await add(archiveOf({ '../a.json': 'x' }), database);
    expect(told.tone).toBe('warning');
    expect(told.text).toBe(
      'bodies.zip could not be opened: a file in it has a name that is not allowed there (../a.json). Nothing was changed.',
    );
    expect(database.added).toEqual([]);
  });
});
