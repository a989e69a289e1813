import type { Project, ProjectPerson } from '../../core/project/index.ts';
import type { WardrobeWords } from '../../language/index.ts';
import type { PageCalls } from '../calls/index.ts';
import type {
  Actions,
  AppStore,
  BodyDatabase,
  CardPicture,
  KeptBodies,
  KeptBody,
  Notice,
  WholeBody,
} from '../store/index.ts';
import { addBodies, saveBodies } from './archive-bodies.ts';
import { loadProjectRoom } from './load-project-room.ts';

/** What a body is called: its name, on every sheet, and whose it is. */
export interface BodyNames {
  readonly name: string;
  readonly person?: ProjectPerson;
}

/** The bodies kept in this browser; every call may be refused, with a reason. */
export interface BodyService {
  list(): Promise<KeptBodies>;
  duplicate(body: KeptBody): Promise<void>;
  /** Adds a body of the same person to begin from this one, with nothing ticked or read yet; `label` sets it apart. */
  beginVersion(body: KeptBody, label: string): Promise<void>;
  rename(body: KeptBody, names: BodyNames): Promise<void>;
  /** What was taken away, to be put back; null when it was not there. */
  remove(id: string): Promise<WholeBody | null>;
  putBack(whole: WholeBody): Promise<void>;
  /** Points all over the body, n × 3 mm; null when it has none. */
  scatter(body: KeptBody): Promise<Float64Array | null>;
  /** For a body that has no picture yet. */
  putPicture(id: string, picture: CardPicture): Promise<void>;
  /** Hands over all bodies as one archive, and tells it. */
  saveAll(): Promise<Notice>;
  /** Adds what an archive holds and is not here yet; tells what came of it. Never changes what is here. */
  openArchive(file: File): Promise<Notice>;
}

/** What tending bodies takes from elsewhere; the page loads this late, and what else it has stays where it is. */
export interface TendingNeeds {
  /** Refuses with a reason in the words of the page. */
  readonly opened: () => Promise<BodyDatabase>;
  readonly store: AppStore;
  readonly actions: Pick<Actions, 'nameBody'>;
  readonly worker: Pick<PageCalls, 'scatterBody'>;
  readonly words: WardrobeWords;
  readonly newId: () => string;
  /** As 2026-03-04. */
  readonly today: () => string;
}

export function tendBodies(needs: TendingNeeds): BodyService {
  const { opened, store, actions, worker, words: own, newId, today } = needs;
  const words = () => store.getState().words;
  const { read, named } = filesOfBodies(store);
  const rename = async (body: KeptBody, names: BodyNames) => {
    // The open one is renamed like any other change of it, to be undone.
    if (store.getState().bodyId === body.id) actions.nameBody(names);
    await (await opened()).put(await named(body, await read(body), names));
  };
  return {
    list: async () => (await opened()).list(),
    async duplicate(body) {
      const project = await read(body);
      const copy = { ...body, id: newId(), at: Date.now() };
      await (await opened()).put(
        await named(copy, project, copyOf(namesOf(project), words().messages.copyOf)),
      );
    },
    async beginVersion(body, label) {
      const { making: _done, checking: _read, ...project } = await read(body);
      const person = project.person?.name || project.name || words().top.untitled;
      const version = await named({ ...body, id: newId(), at: Date.now() }, project, {
        name: own.versionOf(person, label).slice(0, LONGEST_NAME),
        person: { name: person, label: label.slice(0, LONGEST_NAME) },
      });
      await (await opened()).put(version);
      if (!project.person) await rename(body, { name: project.name, person: { name: person } });
    },
    rename,
    remove: async (id) => (await opened()).take(id),
    putBack: async (whole) => (await opened()).putBack(whole),
    scatter: async (body) => worker.scatterBody(await read(body)),
    async putPicture(id, picture) {
      const cabinet = await opened();
      const { bodies, cards } = await cabinet.list();
      // Taken away, or given a better one of its form, meanwhile.
      if (!bodies.some((body) => body.id === id) || cards.get(id)?.picture) return;
      await cabinet.putCard({ id, picture, steps: cards.get(id)?.steps ?? null });
    },
    async saveAll() {
      return saveBodies((await (await opened()).list()).bodies, own.archive, today());
    },
    openArchive: async (file) => addBodies(file, await opened(), own.archive, { ...store.getState(), newId }),
  };
}

const LONGEST_NAME = 200;

/** The files of kept bodies, read and written anew. */
function filesOfBodies(store: AppStore) {
  const read = async (body: KeptBody): Promise<Project> => {
    const { project, bodyId, say, words } = store.getState();
    // What is open may be ahead of what is kept of it.
    if (project && bodyId === body.id) return project;
    const { parseProject } = await loadProjectRoom();
    const found = parseProject(body.text);
    if (found.ok) return found.value;
    throw new Error(found.issues[0] ? say(found.issues[0].message) : words.messages.cannotRead);
  };
  /** The names stand in the file too. */
  const named = async (body: KeptBody, project: Project, names: BodyNames): Promise<KeptBody> => {
    const { serializeProject } = await loadProjectRoom();
    const { person: _before, ...others } = project;
    return { ...body, name: names.name, text: serializeProject({ ...others, ...names }) };
  };
  return { read, named };
}

function namesOf({ name, person }: Project): BodyNames {
  return person ? { name, person } : { name };
}

/** Two bodies of a person are told apart by their labels, others by their names. */
function copyOf({ name, person }: BodyNames, copy: (name: string) => string): BodyNames {
  const short = (text: string) => copy(text).slice(0, LONGEST_NAME);
  if (!person) return { name: short(name) };
  return {
    name: short(name),
    person: person.label ? { ...person, label: short(person.label) } : person,
  };
}
