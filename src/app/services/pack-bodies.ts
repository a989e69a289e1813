import { strToU8, zipSync } from 'fflate';
import { crc32 } from '../../core/base/index.ts';
import type { KeptBody } from '../store/index.ts';
import { fileStem } from './save-file.ts';

/** The list in an archive of bodies: which file is which body. */
export interface BodyIndex {
  readonly format: typeof INDEX_FORMAT;
  readonly version: typeof INDEX_VERSION;
  readonly bodies: readonly {
    readonly file: string;
    /** Under which it is kept; the same body has the same in every archive. */
    readonly id: string;
    readonly name: string;
    /** When it was last changed, milliseconds since 1970. */
    readonly at: number;
    readonly bytes: number;
    /** Of the file, eight hexadecimal digits. */
    readonly crc32: string;
  }[];
}

export const INDEX_NAME = 'bodies.json';
export const INDEX_FORMAT = 'loftseam-bodies';
export const INDEX_VERSION = 1;
const ENDING = '.loftseam.json';
/** Zip files hold local times without a zone; this one reads the same in every zone. */
const FIXED_TIME = '1980-01-01T12:00:00';

/** Every body as the project file it is, byte for byte, and a list of them, as one ZIP. No clock: same bodies, same bytes. */
export function packBodies(bodies: readonly KeptBody[]): Uint8Array<ArrayBuffer> {
  const nameFor = nameFiles();
  const files = bodies.map((body) => ({ body, file: nameFor(body.name), content: strToU8(body.text) }));
  const index: BodyIndex = {
    format: INDEX_FORMAT,
    version: INDEX_VERSION,
    bodies: files.map(({ body: { id, name, at }, file, content }) => ({
      ...{ file, id, name, at, bytes: content.length },
      crc32: checkSum(content),
    })),
  };
  const entries = files.map(({ file, content }) => [file, content] as const);
  const list = strToU8(`${JSON.stringify(index, null, 2)}\n`);
  return zipSync({ [INDEX_NAME]: list, ...Object.fromEntries(entries) }, { mtime: FIXED_TIME });
}

export const checkSum = (content: Uint8Array): string => crc32(content).toString(16).padStart(8, '0');

/** Names every file system takes, each once. */
function nameFiles(): (name: string) => string {
  const taken = new Set<string>();
  return (name) => {
    const stem = fileStem(name);
    let file = `${stem}${ENDING}`;
    for (let k = 2; taken.has(file); k++) file = `${stem}-${k}${ENDING}`;
    taken.add(file);
    return file;
  };
}
