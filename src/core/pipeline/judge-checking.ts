import type { CheckingEntry } from '../project/index.ts';
import { type Correction, findTieChange, judgeStuffing } from '../simulate/index.ts';
import { sectionOfLevel } from './section-of-level.ts';
import { fillZones, levelTargets } from './stuffing-of-form.ts';
import type { Form } from './types.ts';

/**
 * What one entry of the checking log says about the form, and what to do. Empty when all is well, and for drafts. Cost: a
 * dozen balances of a row for every level whose shape is off, some milliseconds each.
 */
export function judgeChecking(form: Form, entry: Pick<CheckingEntry, 'state' | 'levels'>): Correction[] {
  return judgeStuffing(entry.levels, entry.state, {
    targets: levelTargets(form),
    zones: fillZones(form),
    lettersAcross: lettersAcross(form),
    allowance: form.project.cloth.allowance ?? 10,
    clothThickness: form.project.inside.clothThickness ?? 0.6,
    findChange: (levelId, depthChange) => {
      const section = sectionOfLevel(form, levelId);
      const change = section && findTieChange(section, depthChange);
      if (!section || !change) return { change: null, ties: [] };
      const ties = section.shares.flatMap((share, k) =>
        share > 0 ? [{ name: section.names[k], change: share * change.change }] : [],
      );
      return { change, ties };
    },
  });
}

/** Letters of the seams that cross each level: those with a point on its loop that do not run along it. */
function lettersAcross(form: Form): Record<string, string[]> {
  return Object.fromEntries(
    form.shell.levels.map(({ id, vertices }) => {
      const loop = new Set(vertices);
      const across = form.shell.seams.filter(
        ({ points, isLevel }) => !isLevel && points.some((point) => loop.has(point)),
      );
      return [id, lettersOnce(form, across)];
    }),
  );
}

/** Where a level seam divides an upright line, both parts meet on the level: the lower one stands for both. */
function lettersOnce(form: Form, seams: Form['shell']['seams']): string[] {
  const seen = new Set<string>();
  return seams.flatMap(({ lineId, points, letter }) => {
    const x = form.shell.mesh.positions[3 * points[points.length >> 1]];
    const key = `${lineId}/${Math.abs(x) < 1 ? 'centre' : x > 0 ? 'right' : 'left'}`;
    if (seen.has(key)) return [];
    seen.add(key);
    return [letter];
  });
}
