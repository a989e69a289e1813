import type { PageCalls } from '../calls/index.ts';
import type { Demo } from './demos.ts';
import { loadProjectRoom } from './load-project-room.ts';

export interface DemoPictures {
  /** Points all over the demo's body, n × 3 mm. */
  pictureDemo(demo: Demo): Promise<Float64Array | null>;
}

/** Pictures of the demos, each made once. */
export function pictureDemos(worker: Pick<PageCalls, 'scatterBody'>): DemoPictures {
  const pointsById = new Map<string, Float64Array>();
  return {
    async pictureDemo(demo) {
      const known = pointsById.get(demo.id);
      if (known) return known;
      const { parseProject } = await loadProjectRoom();
      const read = parseProject(await demo.load());
      const points = read.ok ? await worker.scatterBody(read.value) : null;
      if (points) pointsById.set(demo.id, points);
      return points;
    },
  };
}
