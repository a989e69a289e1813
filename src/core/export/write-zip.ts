import { strToU8, zipSync } from 'fflate';
import { assertInvariant, crc32 } from '../base/index.ts';

export interface ZipEntry {
  /** File name without folders. */
  readonly name: string;
  readonly type: string;
  readonly content: string | Uint8Array;
}

/** Zip files hold local times without a zone; this one reads the same in every zone. Noon on the first day they can name. */
const FIXED_TIME = '1980-01-01T12:00:00';

/**
 * Files in a ZIP archive with a `manifest.json` first: format, program, and name, type, bytes and CRC-32 of every file. No
 * clock: same files, same bytes. Throws on names with folders and on names used twice.
 */
export function writeZip(entries: readonly ZipEntry[], program: string): Uint8Array {
  const files: Record<string, Uint8Array | [Uint8Array, { level: 0 | 1 | 4 }]> = {};
  const list = entries.map(({ name, type, content }) => {
    assertInvariant(
      /^[^/\\]+$/.test(name) && name !== '..',
      'export',
      'files in an archive have plain names',
      name,
    );
    assertInvariant(
      !(name in files) && name !== 'manifest.json',
      'export',
      'names in an archive are used once',
      name,
    );
    const bytes = typeof content === 'string' ? strToU8(content) : content;
    files[name] = [bytes, { level: effortFor(name) }];
    return { name, type, bytes: bytes.length, crc32: crc32(bytes).toString(16).padStart(8, '0') };
  });
  const manifest = { format: 'loftseam-files', version: 1, program, files: list };
  const text = strToU8(`${JSON.stringify(manifest, null, 2)}\n`);
  return zipSync({ 'manifest.json': text, ...files }, { level: 6, mtime: FIXED_TIME });
}

/** What is packed already only costs time; large meshes gain little from more effort, and text little beyond the fourth step. */
function effortFor(name: string): 0 | 1 | 4 {
  if (name.endsWith('.pdf')) return 0;
  return /\.(stl|glb|obj)$/.test(name) ? 1 : 4;
}
