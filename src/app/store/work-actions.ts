import type { Issue } from '../../core/base/index.ts';
import type { Form } from '../../core/form/index.ts';
import type { Project } from '../../core/project/index.ts';
import type { ChoiceOutlines, LayoutSketch } from '../calls/index.ts';
import type { AppStore } from './create-app-store.ts';
import { isSameForm } from './selectors.ts';
import type { Quality, ShownGuess, ShownUncertainty, Work } from './types.ts';

export interface WorkActions {
  showWork(work: Work | null): void;
  receiveForm(form: Form, project: Project, quality: Quality): void;
  receiveFailure(issues: readonly Issue[], project: Project): void;
  receiveSketch(body: Project['body'], layoutId: string, sketch: LayoutSketch | null): void;
  receiveShapePictures(body: Project['body'], category: string, outlines: ChoiceOutlines | null): void;
  receiveUncertainty(uncertainty: ShownUncertainty): void;
  receiveGuess(guess: ShownGuess): void;
  markStopped(): void;
}

/** What the worker reports. Results for a project that is no longer the latest are kept only while nothing newer is there. */
export function createWorkActions(store: AppStore): WorkActions {
  return {
    showWork: (work) => store.setState(work ? { work, isStopped: false } : { work }),
    receiveForm(form, project, quality) {
      const { formOf, formQuality, project: present } = store.getState();
      if (formOf === project && formQuality === 'full' && quality === 'quick') return;
      // Something may have been ticked while it was made: it is still the form of what is there.
      const isPresent = present !== null && present !== project && isSameForm(present, project);
      const of = isPresent
        ? { form: { ...form, project: present }, formOf: present }
        : { form, formOf: project };
      store.setState({ ...of, formQuality: quality, failure: null });
    },
    receiveFailure(failure, project) {
      if (store.getState().project === project) store.setState({ failure });
    },
    receiveSketch: (body, layoutId, sketch) =>
      store.setState(({ sketches }) => {
        const known = sketches?.body === body ? sketches.layouts : {};
        return { sketches: { body, layouts: { ...known, [layoutId]: sketch } } };
      }),
    receiveShapePictures: (body, category, outlines) =>
      store.setState(({ shapePictures }) => {
        const known = shapePictures?.body === body ? shapePictures.outlines : {};
        return { shapePictures: { body, outlines: { ...known, [category]: outlines } } };
      }),
    receiveUncertainty: (uncertainty) => store.setState({ uncertainty }),
    receiveGuess: (guess) => store.setState({ guess }),
    markStopped: () => store.setState({ work: null, isStopped: true }),
  };
}
