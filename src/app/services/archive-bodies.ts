import type { Say } from '../../core/base/index.ts';
import type { WardrobeWords, Words } from '../../language/index.ts';
import type { BodyDatabase, KeptBody, Notice } from '../store/index.ts';
import { loadProjectRoom } from './load-project-room.ts';
import { packBodies } from './pack-bodies.ts';
import { saveFile } from './save-file.ts';
import { type ArchiveFault, LARGEST_ARCHIVE, unpackBodies } from './unpack-bodies.ts';

type ArchiveWords = WardrobeWords['archive'];

/** Hands over all bodies as one archive, or tells why not when it could not be opened again. */
export function saveBodies(bodies: readonly KeptBody[], words: ArchiveWords, today: string): Notice {
  const archive = packBodies(bodies);
  // What cannot be brought back is no copy.
  const checked = unpackBodies(archive);
  if ('fault' in checked) return { tone: 'warning', text: words.notSaved(tellFault(checked.fault, words)) };
  const name = `loftseam-bodies-${today}.zip`;
  saveFile(name, 'application/zip', archive);
  return { tone: 'plain', text: words.saved(bodies.length, name) };
}

/** Of a name that may be as long as it likes. */
const MOST_LETTERS = 80;

/** What of an archive is new, what is here already, and what cannot be read as a body. */
export interface SortedBodies {
  readonly added: readonly KeptBody[];
  readonly known: readonly KeptBody[];
  /** Those of `added` that another body here has the id of: the same one, in another state. */
  readonly apart: readonly KeptBody[];
}

/**
 * A body whose id is free is new. One whose id is taken is here already if a body here has just its text, else it is the same body in
 * another state, and gets an id of its own: nothing that is here is written over. `taken`: ids of entries that cannot be read.
 */
export function sortBodies(
  found: readonly KeptBody[],
  here: readonly KeptBody[],
  taken: readonly string[],
  newId: () => string,
): SortedBodies {
  const ids = new Set([...taken, ...here.map(({ id }) => id)]);
  const texts = new Set(here.map(({ text }) => text));
  const sorted = { added: [] as KeptBody[], known: [] as KeptBody[], apart: [] as KeptBody[] };
  for (const body of found) {
    const isTaken = ids.has(body.id);
    if (isTaken && texts.has(body.text)) {
      sorted.known.push(body);
      continue;
    }
    const own = isTaken ? { ...body, id: newId() } : body;
    if (isTaken) sorted.apart.push(own);
    sorted.added.push(own);
    ids.add(own.id);
    texts.add(own.text);
  }
  return sorted;
}

/** Adds what is new in an archive, all of it or nothing, and tells what came of it. */
export async function addBodies(
  file: File,
  database: Pick<BodyDatabase, 'list' | 'putAll'>,
  own: ArchiveWords,
  { words, say, newId }: { readonly words: Words; readonly say: Say; readonly newId: () => string },
): Promise<Notice> {
  const refused = (fault: ArchiveFault): Notice => ({
    tone: 'warning',
    text: own.notOpened(file.name, tellFault(fault, own)),
  });
  if (file.size > LARGEST_ARCHIVE) return refused({ is: 'tooLarge', megabytes: file.size / 1e6 });
  let content: Uint8Array;
  try {
    content = new Uint8Array(await file.arrayBuffer());
  } catch (error) {
    // Moved away, or taken from us, since it was chosen.
    const reason = error instanceof Error ? error.message : String(error);
    return { tone: 'warning', text: words.messages.notRead(file.name, reason) };
  }
  const unpacked = unpackBodies(content);
  if ('fault' in unpacked) return refused(unpacked.fault);
  const { readable, unreadable } = await readBodies(unpacked.bodies, say, own, words);
  const { bodies, unreadable: broken } = await database.list();
  const sorted = sortBodies(readable, bodies, broken.map(idOfEntry), newId);
  if (sorted.added.length > 0) await database.putAll(sorted.added);
  return {
    tone: unreadable.length > 0 ? 'warning' : 'plain',
    text: own.added(sorted.added.length),
    details: [
      ...(sorted.known.length > 0 ? [own.known(sorted.known.length)] : []),
      ...sorted.apart.map(({ name }) => own.apart(name || words.top.untitled)),
      ...unreadable,
    ],
  };
}

/** Bodies whose text is a project, under the name they have there; of the others what keeps them from being read. */
async function readBodies(
  bodies: readonly KeptBody[],
  say: Say,
  own: ArchiveWords,
  { messages, top }: Words,
) {
  const { parseProject } = await loadProjectRoom();
  const readable: KeptBody[] = [];
  const unreadable: string[] = [];
  for (const body of bodies) {
    const read = parseProject(body.text);
    if (read.ok) readable.push({ ...body, name: read.value.name });
    else {
      const reason = read.issues[0] ? say(read.issues[0].message) : messages.cannotRead;
      unreadable.push(own.unreadable(body.name.slice(0, MOST_LETTERS) || top.untitled, reason));
    }
    // The page has its turn in between.
    if ((readable.length + unreadable.length) % 20 === 0) await new Promise((go) => setTimeout(go));
  }
  return { readable, unreadable };
}

function idOfEntry(entry: unknown): string {
  const id = (entry as { id?: unknown } | null)?.id;
  return typeof id === 'string' ? id : '';
}

function tellFault(fault: ArchiveFault, { faults }: ArchiveWords): string {
  switch (fault.is) {
    case 'tooLarge':
      return faults.tooLarge(fault.megabytes.toFixed(1));
    case 'tooMany':
      return faults.tooMany(fault.most);
    case 'oddName':
    case 'damaged':
      return faults[fault.is](fault.file.slice(0, MOST_LETTERS));
    default:
      return faults[fault.is];
  }
}
