import type { Equilibrium } from '../statics/index.ts';
import { measureBoards } from './measure-boards.ts';
import { measureDistances } from './measure-distances.ts';
import { measurePulls } from './measure-pulls.ts';
import { measureSeamLoads } from './measure-seam-loads.ts';
import { sizeOfLevel } from './size-of-level.ts';
import type { FilledMeasures, FilledShell } from './types.ts';

/**
 * How the filled form compares with the body it was asked to be, and what its parts carry. All sizes are over the cloth: as a
 * tape and a pair of set squares find them along the marked level lines, from the outside of all that lies over the shell; the
 * body's are taken on the same lines of the same mesh, so that its chords do not count. mm, N. O(size).
 */
export function measureFilled(filled: FilledShell, balance: Equilibrium): FilledMeasures {
  const { shell } = filled.given;
  const { positions } = balance;
  const { placeAt, ...distances } = measureDistances(filled, positions);
  const { ofPoints } = distances.distance;
  return {
    levels: shell.levels.map(({ id, name, vertices }) => ({
      id,
      name,
      asked: sizeOfLevel(shell.mesh.positions, vertices, 0),
      found: sizeOfLevel(positions, vertices, filled.outside),
      worst: placeAt(vertices.reduce((a, b) => (Math.abs(ofPoints[b]) > Math.abs(ofPoints[a]) ? b : a))),
    })),
    ...distances,
    pulls: measurePulls(filled, balance),
    seams: measureSeamLoads(filled, balance),
    boards: measureBoards(shell, positions),
  };
}
