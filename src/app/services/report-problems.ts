import type { Actions, AppStore } from '../store/index.ts';
import { handOver } from './save-file.ts';

export interface ProblemReports {
  /** What someone who mends this program needs to know, saved as a file; nothing is sent. */
  saveProblemReport(): void;
}

export function reportProblems(
  store: AppStore,
  actions: Pick<Actions, 'mention'>,
  canDrawInSpace: boolean,
): ProblemReports {
  return {
    saveProblemReport() {
      const { project, stage, step, form, failure, formQuality } = store.getState();
      const report = {
        format: 'loftseam-problem',
        browser: navigator.userAgent,
        screen: [window.innerWidth, window.innerHeight, window.devicePixelRatio],
        canDrawInSpace,
        stage,
        step,
        formQuality,
        failure,
        issues: form?.report.issues ?? [],
        timingsMs: form?.report.timingsMs ?? {},
        // The name may be a person's: it is not needed to find a fault.
        project: project && { ...project, name: '' },
      };
      const text = JSON.stringify(report, null, 2);
      handOver(actions, store.getState(), ['loftseam-problem.json', 'application/json', text]);
    },
  };
}
