import { withUsual } from '../../core/base/index.ts';
import { INSIDE_OPTIONS } from '../../core/inside/index.ts';
import type { LastStage } from '../../core/pipeline/index.ts';
import type { Project } from '../../core/project/index.ts';
import {
  type MakeWish,
  type PageCalls,
  pageCallNames,
  type Quality,
  rulesOf,
  type StoppableCallName,
  type Voice,
} from '../calls/index.ts';
import { createWorkerClient, type WorkerClient } from './create-worker-client.ts';
import { type FillHandlers, type Filling, fillWhenQuiet } from './fill-when-quiet.ts';
import FormWorker from './form-worker.ts?worker';
import { FILLED, QUICK_TRIANGLES, SHAPE, WHOLE } from './make-wishes.ts';

export interface FollowHandlers extends FillHandlers {
  /** How much of a rough form is looked at now: the less, the sooner it comes. */
  upTo(): LastStage;
  /** In which language what is made is lettered. */
  voice(): Voice;
}

/** Both workers: the forms of the project followed, and every other call, carried to the worker it belongs to. */
export interface Follower extends PageCalls {
  /**
   * Makes a rough form now, a full one after a pause, and the same cut for its filling after a longer one; a newer request
   * takes the place of an older one.
   */
  request(project: Project): void;
  /** Stops everything under way. */
  stop(): void;
  /** Something else is looked at now. */
  noticeStage(): void;
  /** Brings one call to an early answer. */
  stopCall(name: StoppableCallName): void;
}

interface Clients {
  readonly quick: WorkerClient;
  readonly full: WorkerClient;
}

const PAUSE_MS = 120;

/**
 * Two workers: one answers quickly while the person types, the other makes the full form once they pause. The full
 * one is interrupted by every newer request, the quick one finishes and then takes the latest. Once the full form is shown and
 * all is answered that the views asked for, it is filled, which takes some seconds: whatever is asked meanwhile goes first, and
 * the filling begins anew after it.
 */
export function followProject(
  handlers: FollowHandlers,
  clients: Clients = createClients(handlers.voice),
): Follower {
  const { quick, full } = clients;
  let wanted: Project | null = null;
  let askedAt = 0;
  let isQuickBusy = false;
  let fullTimer: ReturnType<typeof setTimeout> | undefined;

  const runQuick = async (project: Project) => {
    isQuickBusy = true;
    handlers.onWork({ quality: 'quick', fraction: 0, what: null });
    const wish = { targetTriangles: QUICK_TRIANGLES, upTo: handlers.upTo() };
    const made = await quick.makeForm(project, wish, () => {});
    isQuickBusy = false;
    if (wanted === null) return;
    if (made?.ok) handlers.onForm(made.value, project, 'quick');
    if (wanted !== project) return void runQuick(wanted);
    // The full form is tried all the same: a rough one starts from the body before, and may fail where it does not.
    if (made && !made.ok) handlers.onFailure(made.issues, project);
    fullTimer = setTimeout(() => void runFull(project), Math.max(0, askedAt + PAUSE_MS - performance.now()));
  };

  /** The full shape is there long before its pieces. False when it was stopped. */
  const showShape = async (project: Project) => {
    const made = await full.makeForm(project, SHAPE, () => {});
    if (wanted !== project || !made) return false;
    if (made.ok) handlers.onForm(made.value, project, 'quick');
    return true;
  };

  const runFull = async (project: Project) => {
    handlers.onWork({ quality: 'full', fraction: 0, what: null });
    if (handlers.upTo() === 'seams' && !(await showShape(project))) return;
    const made = await makeTelling(project, WHOLE);
    if (wanted !== project || !made) return;
    if (made.ok) handlers.onForm(made.value, project, 'full');
    else handlers.onFailure(made.issues, project);
    handlers.onWork(null);
    if (!made.ok || !withUsual(INSIDE_OPTIONS, project.inside).recut) return;
    filling.plan(project);
  };

  const makeTelling = async (project: Project, wish: MakeWish) => {
    // What is told of the progress comes by a way of its own, and may come after the end.
    let isMaking = true;
    const made = await full.makeForm(project, wish, (fraction, _stage, what) => {
      if (isMaking && wanted === project && fraction < 1)
        handlers.onWork({ quality: 'full', fraction, what });
    });
    isMaking = false;
    return made;
  };

  const filling = fillWhenQuiet(handlers, full, (project) => makeTelling(project, FILLED));
  const rest = () => {
    clearTimeout(fullTimer);
    filling.drop();
    full.stop();
  };

  return {
    ...routeCalls(clients, filling),
    request(project) {
      wanted = project;
      askedAt = performance.now();
      rest();
      if (!isQuickBusy) void runQuick(project);
    },
    stop() {
      wanted = null;
      rest();
      quick.stop();
    },
    noticeStage: filling.reconsider,
    stopCall: (name) => clientOf(name, clients).stopCall(name),
  };
}

type AnyAsk = (...args: unknown[]) => Promise<unknown>;

function routeCalls(clients: Clients, filling: Filling): PageCalls {
  const routed = pageCallNames.map((name) => {
    const client = clientOf(name, clients);
    const ask = client[name] as AnyAsk;
    const askFirst: AnyAsk = (...args) => filling.letPass(name, () => ask(...args));
    return [name, client === clients.full ? askFirst : ask];
  });
  return Object.fromEntries(routed);
}

function clientOf(name: keyof PageCalls, { quick, full }: Clients): WorkerClient {
  return rulesOf(name).worker === 'quick' ? quick : full;
}

function createClients(voice: () => Voice): Clients {
  const start = (name: Quality) => () => new FormWorker({ name });
  return { quick: createWorkerClient(start('quick'), voice), full: createWorkerClient(start('full'), voice) };
}
