import type { Say } from '../../core/base/index.ts';
import type { Words } from '../../language/index.ts';
import { type BodyDatabase, type KeptBodies, type KeptBody, newBodyId } from '../store/index.ts';
import { loadProjectRoom } from './load-project-room.ts';

/** The bodies kept in this browser; every call may be refused, with a reason. */
export interface BodyService {
  list(): Promise<KeptBodies>;
  put(body: KeptBody): Promise<void>;
  duplicate(body: KeptBody): Promise<void>;
  rename(body: KeptBody, name: string): Promise<void>;
  remove(id: string): Promise<void>;
}

export function tendBodies(
  database: Promise<BodyDatabase>,
  speech: () => { readonly words: Words; readonly say: Say },
): BodyService {
  /** The name stands in the file too. */
  const rename = async (body: KeptBody, name: string) => {
    const { parseProject, serializeProject } = await loadProjectRoom();
    const read = parseProject(body.text);
    if (!read.ok)
      throw new Error(
        read.issues[0] ? speech().say(read.issues[0].message) : speech().words.messages.cannotRead,
      );
    await (await database).put({ ...body, name, text: serializeProject({ ...read.value, name }) });
  };
  return {
    list: async () => (await database).list(),
    put: async (body) => (await database).put(body),
    duplicate: (body) =>
      rename({ ...body, id: newBodyId(), at: Date.now() }, speech().words.bodies.copyOf(body.name)),
    rename,
    remove: async (id) => (await database).remove(id),
  };
}
