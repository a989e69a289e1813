import { INCH_ALLOWANCES } from '../../core/pattern/index.ts';
import type { Project } from '../../core/project/index.ts';
import type { Actions, AppStore } from '../store/index.ts';
import type { Demo } from './demos.ts';
import { loadProjectRoom } from './load-project-room.ts';

export interface Opening {
  openDemo(demo: Demo): Promise<void>;
  /** Begins a body nothing is known of. */
  newBody(): void;
  /** `fileName` is for messages; `bodyId`: the maker's body that is opened, absent for a new one. */
  openText(text: string, fileName: string, bodyId?: string): Promise<void>;
}

/** Opens another body; tells why when its file cannot be read. */
export function openProjects(store: AppStore, actions: Pick<Actions, 'openProject' | 'tell'>): Opening {
  const say = () => store.getState().words;
  const open = async (
    text: string,
    fileName: string,
    step: string,
    kept: { id?: string; isDemo?: boolean } = {},
  ) => {
    const { parseProject } = await loadProjectRoom();
    const read = parseProject(text);
    if (read.ok) {
      actions.openProject(read.value, step, kept);
      actions.tell(null);
      return;
    }
    actions.tell({
      tone: 'warning',
      text: say().messages.notOpened(fileName),
      details: read.issues.map((issue) => {
        const message = store.getState().say(issue.message);
        return issue.path ? `${issue.path}: ${message}` : message;
      }),
    });
  };
  return {
    openDemo: async (demo) => open(await demo.load(), demo.id, say().steps.openDemo, { isDemo: true }),
    newBody() {
      const displayUnits = store.getState().project?.displayUnits ?? 'cm';
      actions.openProject(emptyProject(displayUnits), say().steps.newBody, { isDemo: true });
      // The body seen so far is another person's.
      store.setState({
        ...{ form: null, formOf: null, formQuality: null, guess: null, ghost: null },
        stage: 'tape',
      });
    },
    openText: (text, fileName, id) => open(text, fileName, say().steps.open(fileName), id ? { id } : {}),
  };
}

function emptyProject(displayUnits: Project['displayUnits']): Project {
  return {
    format: 'loftseam-project',
    version: 1,
    name: '',
    displayUnits,
    body: { figure: 'bust', measures: {} },
    seams: {},
    cloth: displayUnits === 'in' ? { allowance: INCH_ALLOWANCES[0] } : {},
    inside: {},
    cutting: {},
  };
}
