import { strFromU8, Unzip, UnzipInflate } from 'fflate';
import type { KeptBody } from '../store/index.ts';
import { type BodyIndex, checkSum, INDEX_FORMAT, INDEX_NAME, INDEX_VERSION } from './pack-bodies.ts';

/** What keeps an archive from being opened, so that nothing of it is taken. */
export type ArchiveFault =
  | { readonly is: 'tooLarge'; readonly megabytes: number }
  | { readonly is: 'unpacksTooLarge' }
  | { readonly is: 'tooMany'; readonly most: number }
  | { readonly is: 'noArchive' }
  | { readonly is: 'notOurs' }
  | { readonly is: 'newer' }
  /** A name that would lead out of a folder, or stands there twice. */
  | { readonly is: 'oddName'; readonly file: string }
  | { readonly is: 'damaged'; readonly file: string };

/** Thousands of project files are smaller. */
export const LARGEST_ARCHIVE = 50_000_000;
const LARGEST_UNPACKED = 100_000_000;
/** As of a project file opened by itself. */
const LARGEST_BODY = 5_000_000;
export const MOST_BODIES = 2_000;
const LARGEST_INDEX = 2_000_000;
const LONGEST_ID = 100;
/** Unpacked at once: a thousand times as much may come out. */
const PORTION = 1 << 14;

/**
 * The bodies of an archive, in its order, their texts as they were packed and not yet read as projects. All of it is judged before
 * anything is given back: names without folders, sizes before they are unpacked, and every file against its length and CRC-32
 * in the list.
 */
export function unpackBodies(
  archive: Uint8Array,
): { readonly bodies: readonly KeptBody[] } | { readonly fault: ArchiveFault } {
  try {
    const files = unpack(archive);
    return { bodies: readIndex(files.get(INDEX_NAME)).map((entry) => readBody(entry, files)) };
  } catch (error) {
    return { fault: error instanceof Refusal ? error.fault : { is: 'noArchive' } };
  }
}

class Refusal extends Error {
  readonly fault: ArchiveFault;

  constructor(fault: ArchiveFault) {
    super(fault.is);
    this.fault = fault;
  }
}

function refuse(fault: ArchiveFault): never {
  throw new Refusal(fault);
}

type Files = ReadonlyMap<string, Uint8Array>;

/**
 * Unpacks a little at a time and counts what comes out, so that no file takes more room or time than it may, whatever the archive
 * says of it.
 */
function unpack(archive: Uint8Array): Files {
  if (archive.length > LARGEST_ARCHIVE) refuse({ is: 'tooLarge', megabytes: archive.length / 1e6 });
  const partsByName = new Map<string, Uint8Array[]>();
  let total = 0;
  const unzip = new Unzip((file) => {
    if (partsByName.has(file.name) || !isPlainName(file.name)) refuse({ is: 'oddName', file: file.name });
    if (partsByName.size > MOST_BODIES) refuse({ is: 'tooMany', most: MOST_BODIES });
    const parts: Uint8Array[] = [];
    partsByName.set(file.name, parts);
    let size = 0;
    file.ondata = (error, part) => {
      if (error instanceof Refusal) throw error;
      if (error) refuse({ is: 'damaged', file: file.name });
      size += part.length;
      total += part.length;
      if (size > LARGEST_BODY || total > LARGEST_UNPACKED) refuse({ is: 'unpacksTooLarge' });
      parts.push(part);
    };
    file.start();
  });
  unzip.register(UnzipInflate);
  for (let at = 0; at < archive.length; at += PORTION)
    unzip.push(archive.subarray(at, at + PORTION), at + PORTION >= archive.length);
  if (partsByName.size === 0) refuse({ is: 'noArchive' });
  return new Map([...partsByName].map(([name, parts]) => [name, joined(parts)]));
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Of one file beside the others: no folders, drives, or signs that no name has. */
function isPlainName(name: string): boolean {
  return /^[^/\\:\p{Cc}]+$/u.test(name) && !/^\.+$/.test(name) && name.length <= 200;
}

type IndexEntry = BodyIndex['bodies'][number];

function readIndex(content: Uint8Array | undefined): readonly IndexEntry[] {
  if (!content || content.length > LARGEST_INDEX) refuse({ is: 'notOurs' });
  let index: Partial<Record<keyof BodyIndex, unknown>> | null;
  try {
    index = JSON.parse(strFromU8(content));
  } catch {
    return refuse({ is: 'damaged', file: INDEX_NAME });
  }
  if (index?.format !== INDEX_FORMAT) refuse({ is: 'notOurs' });
  if (typeof index.version === 'number' && index.version > INDEX_VERSION) refuse({ is: 'newer' });
  const { bodies } = index;
  if (!Array.isArray(bodies) || !bodies.every(isIndexEntry)) refuse({ is: 'damaged', file: INDEX_NAME });
  if (bodies.length > MOST_BODIES) refuse({ is: 'tooMany', most: MOST_BODIES });
  return bodies;
}

function isIndexEntry(value: unknown): value is IndexEntry {
  const entry = value as Partial<IndexEntry> | null;
  return (
    typeof entry?.file === 'string' &&
    typeof entry.id === 'string' &&
    entry.id !== '' &&
    entry.id.length <= LONGEST_ID &&
    typeof entry.name === 'string' &&
    typeof entry.at === 'number' &&
    // No date goes beyond (ECMA-262, 21.4.1.1).
    Math.abs(entry.at) <= 8.64e15
  );
}

function readBody({ file, id, name, at, bytes, crc32 }: IndexEntry, files: Files): KeptBody {
  const content = files.get(file);
  if (!content || content.length !== bytes || checkSum(content) !== crc32) refuse({ is: 'damaged', file });
  return { id, name: name.slice(0, 200), at, text: new TextDecoder().decode(content) };
}
