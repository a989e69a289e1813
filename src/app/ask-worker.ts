import { keepPictures } from './keep-pictures.ts';
import { type Actions, type AppStore, isSameForm, reaches, stageOf } from './store/index.ts';
import type { Follower } from './worker/index.ts';

/** Asks the worker for the form and what else the stage looked at needs, whenever the store changes. */
export function askWorker(store: AppStore, actions: Actions, worker: Follower): void {
  keepForm(store, actions, worker);
  keepPictures(store, actions, worker);
  keepUncertainty(store, actions, worker);
  keepControlPoints(store, actions, worker);
  followPulls(store, actions, worker);
}

/** The form follows the project, as far as the stage looked at needs it. */
function keepForm(store: AppStore, actions: Actions, worker: Follower): void {
  store.subscribe((now, before) => {
    if (!now.project) return;
    if (now.project === before.project) {
      // Pieces are lettered in the language they were made in.
      if (now.language !== before.language) return worker.request(now.project);
      const lacksSome = now.form !== null && !reaches(now.form, stageOf(now.stage).draftTo);
      if (now.stage === before.stage) return;
      if (lacksSome) worker.request(now.project);
      else worker.noticeStage();
      return;
    }
    // Ticks and readings leave the form as it is.
    const isMade = now.form !== null && now.formQuality === 'full' && now.formOf === before.project;
    if (isMade && before.project && isSameForm(now.project, before.project))
      actions.receiveForm({ ...now.form, project: now.project }, now.project, 'full');
    else worker.request(now.project);
  });
}

/** How well the shape is known, where it is told or shown, once the body has settled. */
function keepUncertainty(store: AppStore, actions: Actions, worker: Follower): void {
  let asked: unknown = null;
  store.subscribe(({ stage, project, formOf, formQuality, uncertainty }) => {
    if ((stage !== 'tape' && stage !== 'body') || !project) return;
    if (formOf !== project || formQuality !== 'full') return;
    const { body } = project;
    if (uncertainty?.body === body || asked === body) return;
    asked = body;
    void worker.uncertaintyOfBody(project).then((told) => {
      if (told) actions.receiveUncertainty({ body, ...told });
      else if (asked === body) asked = null;
    });
  });
}

/** Points to pull are found once the seams are looked at and the form has settled. */
function keepControlPoints(store: AppStore, actions: Actions, worker: Follower): void {
  let asked: unknown = null;
  store.subscribe(({ stage, project, formOf, formQuality, seamWork }) => {
    if (stage !== 'seams' || !project || formOf !== project || formQuality !== 'full') return;
    if (seamWork.base === project || asked === project) return;
    asked = project;
    void worker.previewSeams(project, {}).then((made) => {
      if (made && !made.ok) return;
      asked = null;
      if (!made) return;
      if (store.getState().project === project) actions.receiveControlPoints(made.value, project);
    });
  });
}

/** Answers every pull of a seam; one that a newer pull overtook is left without answer. */
function followPulls(store: AppStore, actions: Actions, worker: Follower): void {
  store.subscribe((now, before) => {
    const { pull, base } = now.seamWork;
    if (!pull || !base || pull === before.seamWork.pull) return;
    const { isLast: _last, ...edit } = pull;
    void worker.previewSeams(base, { edit }).then((made) => {
      if (!made) return;
      if (made.ok) actions.receivePull(made.value, pull);
      else
        actions.refusePull(made.issues.map(({ message }) => store.getState().say(message)).join(' '), pull);
    });
  });
}
