import type { Result } from '../../core/base/index.ts';
import type { SeamLine } from '../../core/seams/index.ts';
import type { PageCalls } from '../calls/index.ts';
import type { AppStore } from '../store/index.ts';

export interface SeamTrial {
  /** Whether these seam lines can be cut and unrolled; null when asked again meanwhile. */
  trySeams(lines: readonly SeamLine[]): Promise<Result<unknown> | null>;
}

export function trySeams(store: AppStore, worker: Pick<PageCalls, 'previewSeams'>): SeamTrial {
  return {
    async trySeams(lines) {
      const { project } = store.getState();
      if (!project) return null;
      return worker.previewSeams({ ...project, seams: { ...project.seams, lines } }, {});
    },
  };
}
