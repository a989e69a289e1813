import type { AppStore } from '../store/index.ts';
import { saveFile } from './save-file.ts';

export interface ProblemReports {
  /** What someone who mends this program needs to know, saved as a file; nothing is sent. */
  saveProblemReport(): void;
}

export function reportProblems(store: AppStore, canDrawInSpace: boolean): ProblemReports {
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
      saveFile('loftseam-problem.json', 'application/json', JSON.stringify(report, null, 2));
    },
  };
}
