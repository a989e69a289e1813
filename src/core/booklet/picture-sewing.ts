import type { Say } from '../base/index.ts';
import type { Drawing } from '../drawing/index.ts';
import type { Form, WorkStep } from '../form/index.ts';
import { normalise } from '../math/index.ts';
import { measureVertexNormals } from '../mesh/index.ts';
import { CAMERAS, drawForm, layFlat, makeScene, orderPanels, type Sheet } from '../picture/index.ts';
import type { Seam } from '../seams/index.ts';
import { panelsAnd, scenePartsOf } from './scene-parts.ts';

/** More panels side by side are wider than a page. */
const MOST_FLAT = 6;
/** How far the edges of a seam that closes the form are drawn apart, mm. */
const GAPE = 70;

/** Views from outside, tried in this order. */
const VIEWS = ['front', 'back', 'frontLeft', 'backLeft', 'side', 'sideLeft'] as const;

/**
 * Seams of the shell: as flat pieces while all still lies flat, laced where `sewn` before (ids of seams), else on the form in space,
 * seen from where they are seen best; what closes the form gapes.
 */
export function pictureShellSeams(
  form: Form,
  step: WorkStep,
  sewn: ReadonlySet<string>,
  title: string,
  say: Say,
): Drawing {
  const { shell, pieces } = form;
  const now = shell.seams.filter(({ id }) => step.seams.some((seam) => seam.id === id));
  const panels = [...new Set(now.flatMap((seam) => seam.panels))];
  if (panels.length <= MOST_FLAT && step.seams.every(({ isFlat }) => isFlat)) {
    const own = orderPanels(shell, panels).flatMap((id) => pieces.filter((piece) => piece.id === id));
    const joined = shell.seams.filter((seam) => {
      return sewn.has(seam.id) && seam.panels.every((id) => panels.includes(id));
    });
    return layFlat(own, lettersOf(now), { title, joined: lettersOf(joined) });
  }
  const ids = now.map(({ id }) => id);
  const closes = now.length === 1 && step.seams.some(({ closesRing }) => closesRing);
  const scene = makeScene(scenePartsOf(form), closes ? { open: { seams: ids, gape: GAPE } } : {});
  return drawForm(scene, CAMERAS[bestViewOf(form, now)], {
    title,
    say,
    show: panelsAnd(),
    bold: ids,
    lettered: ids,
  });
}

function lettersOf(seams: readonly Seam[]): string[] {
  return seams.map(({ letter }) => letter);
}

/** From where the cloth along these seams faces the viewer most. */
function bestViewOf({ shell: { mesh } }: Form, seams: readonly Seam[]): (typeof VIEWS)[number] {
  const normals = measureVertexNormals(mesh);
  const sums = seams.map(({ points }) =>
    points.reduce(([x, y], v) => [x + normals[3 * v], y + normals[3 * v + 1]], [0, 0]),
  );
  // Seams on both sides of the form cannot all be seen: the view in which the most are, and then the most of them.
  const rank = (view: (typeof VIEWS)[number]): number => {
    const { azimuth } = CAMERAS[view];
    const facings = sums.map(([x, y]) => {
      const [nx, ny] = normalise([x, y, 1e-6]);
      return nx * Math.sin(azimuth) + ny * Math.cos(azimuth);
    });
    return facings.filter((facing) => facing > 0.2).length + Math.max(...facings) / 10;
  };
  return VIEWS.reduce((best, view) => (rank(view) > rank(best) + 1e-9 ? view : best), VIEWS[0]);
}

/**
 * Seams of inner parts: those of the step in place. Sewn to one half of the shell they are seen from the other, which is a ghost;
 * sewn among themselves they stand alone within the form's outline.
 */
export function pictureInnerSeams(form: Form, step: WorkStep, title: string, say: Say): Drawing {
  const braces = new Set(step.pieces.map(({ id }) => id));
  const onto = halfOf(form, step);
  const isOwn = ({ id, kind }: Sheet): boolean => braces.has(id) || kind === 'sleeve';
  const scene = makeScene(scenePartsOf(form));
  const camera = onto === 'back' ? CAMERAS.front : CAMERAS.inside;
  return drawForm(scene, camera, {
    title,
    say,
    show: (sheet) => {
      if (sheet.kind !== 'panel') return isOwn(sheet) ? 'solid' : 'none';
      return sheet.half === onto ? 'solid' : 'ghost';
    },
  });
}

/** The half of the shell whose panels or seams the step's parts are sewn to; null for what is sewn to no panel. */
function halfOf({ shell, inside }: Form, { seams }: WorkStep): 'front' | 'back' | null {
  const letters = new Set(seams.map(({ letter }) => letter));
  const angles = [
    ...shell.seams
      .filter(({ letter }) => letters.has(letter))
      .map(({ points }) => shell.chart[2 * points[0]]),
    ...(inside?.shape.panelLines ?? [])
      .filter(({ letter }) => letters.has(letter))
      .map(({ chart }) => chart[0]),
  ];
  if (angles.length === 0) return null;
  return angles.reduce((sum, angle) => sum + Math.sin(angle), 0) >= 0 ? 'front' : 'back';
}
