import type { Drawing } from '../drawing/index.ts';
import type { Form, WorkStep } from '../form/index.ts';
import { normalise } from '../math/index.ts';
import { measureVertexNormals } from '../mesh/index.ts';
import type { Piece } from '../pattern/index.ts';
import {
  CAMERAS,
  type Camera,
  drawBeside,
  drawForm,
  type FlatChoices,
  layFlat,
  lettersOnPiece,
  orderPanels,
  type Sheet,
} from '../picture/index.ts';
import type { Seam } from '../seams/index.ts';
import { drawFitted, drawFittedForm } from './draw-fitted.ts';
import { cameraOfClosing, closingSeamsOf, pictureSection, placeOfClosing } from './picture-closing.ts';
import type { Wish } from './wish.ts';

/** Of pieces laid flat. */
const FLAT_SCALE = 0.1;
/** More panels side by side are wider than a page. */
const MOST_FLAT = 6;
/** From behind and far above: all round the neck is seen, its front through the open back. */
const ABOVE: Camera = { ...CAMERAS.back, elevation: (38 * Math.PI) / 180 };

/** A seam whose cloth faces the side less than this lies on the front or the back. */
const ASIDE = 0.7;

/** A view beside flat pieces, which only reminds of how the parts will stand. */
const SMALLER = 0.65;

/** Views from outside, tried in this order. */
const VIEWS = ['front', 'back', 'frontLeft', 'backLeft', 'side', 'sideLeft'] as const;

/**
 * Seams of the shell: as flat pieces while all still lies flat, laced where they were sewn before, else on the form in space, seen from
 * where they are seen best, from both sides if they are the sides. What is not sewn yet gapes.
 */
export function pictureShellSeams(wish: Wish): Drawing {
  const { form, step, title, say, scenes } = wish;
  const { shell } = form;
  const now = shell.seams.filter(({ id }) => step.seams.some((seam) => seam.id === id));
  const panels = [...new Set(now.flatMap((seam) => seam.panels))];
  if (panels.length <= MOST_FLAT && step.seams.every(({ isFlat }) => isFlat) && !isOnTop(step)) {
    return pictureFlat(wish, now, panels);
  }
  const ids = now.map(({ id }) => id);
  const closing = closingSeamsOf(form).map(({ id }) => id);
  const isClosed = ids.some((id) => closing.includes(id));
  const scene = scenes.open(closing);
  const draw = (camera: Camera): Drawing => {
    const shown = isSide(step) ? ids.filter((id) => facesCamera(form, id, camera)) : ids;
    return drawForm(scene, camera, {
      title,
      say,
      show: (sheet) => (sheet.kind === 'panel' && isThere(sheet, wish) ? 'solid' : 'none'),
      bold: shown,
      lettered: shown,
      hasLevels: !isSide(step),
    });
  };
  const cameras = isClosed ? [cameraOfClosing(form)] : camerasFor(form, step, now);
  return drawFitted(wish.room, (share) => {
    const drawings = cameras.map((camera) => draw({ ...camera, scale: share * camera.scale }));
    return drawings.length === 1 ? drawings[0] : drawBeside(drawings, title);
  });
}

/** Shoulders and neck: pieces laid flat would have to be brought together from far apart. */
function isOnTop({ id }: WorkStep): boolean {
  return id === 'sew-neck' || id === 'sew-shoulder';
}

function isSide({ id }: WorkStep): boolean {
  return id === 'sew-side';
}

/** Whether a seam lies on the side of the body that is seen. */
function facesCamera({ shell: { seams, chart } }: Form, id: string, { azimuth }: Camera): boolean {
  const points = seams.find((seam) => seam.id === id)?.points ?? [];
  // Chart angles run from the wearer's right to the front, azimuths from the front to the right.
  return Array.from(points).reduce((sum, v) => sum + Math.sin(chart[2 * v] + azimuth), 0) > 0;
}

/** A panel is in the picture once a seam of it is sewn. */
function isThere({ id }: Sheet, { form, step }: Wish): boolean {
  const sewn = sewnBefore(form, step);
  return form.shell.seams.some((seam) => {
    return seam.panels.includes(id) && (sewn.has(seam.id) || step.seams.some((one) => one.id === seam.id));
  });
}

/** One view, for both sides two. */
function camerasFor(form: Form, step: WorkStep, now: readonly Seam[]): Camera[] {
  const isRight = ({ points }: Seam): boolean => Math.cos(form.shell.chart[2 * points[0]]) > 0;
  const sides = [now.filter(isRight), now.filter((seam) => !isRight(seam))];
  if (isSide(step) && sides.every(({ length }) => length > 0)) {
    const [right, left] = sides;
    return [CAMERAS[sideViewOf(form, right, 'side')], CAMERAS[sideViewOf(form, left, 'sideLeft')]];
  }
  if (placeOfClosing(form) === 'behind' && isOnTop(step)) return [ABOVE];
  return [CAMERAS[bestViewOf(form, now)]];
}

function pictureFlat(wish: Wish, now: readonly Seam[], panels: readonly string[]): Drawing {
  const { form, step } = wish;
  const { shell, pieces } = form;
  const own = orderPanels(shell, panels).flatMap((id) => pieces.filter((piece) => piece.id === id));
  const sewn = sewnBefore(form, step);
  const joined = shell.seams.filter((seam) => {
    return sewn.has(seam.id) && seam.panels.every((id) => panels.includes(id));
  });
  return layFitted(wish, own, lettersOf(now), { joined: lettersOf(joined) });
}

/** Pieces laid flat, in one row as long as they can be that large. */
export function layFitted(
  { title, room }: Wish,
  pieces: readonly Piece[],
  now: readonly string[],
  choices: Omit<FlatChoices, 'title' | 'scale' | 'width'> = {},
): Drawing {
  return drawFitted(room, (share) =>
    layFlat(pieces, now, { title, ...choices, scale: share * FLAT_SCALE, width: Infinity }),
  );
}

/** Ids of the seams of all earlier steps. */
function sewnBefore({ making }: Form, step: WorkStep): Set<string> {
  const steps = making?.steps ?? [];
  const count = steps.findIndex(({ id }) => id === step.id);
  return new Set(steps.slice(0, Math.max(0, count)).flatMap(({ seams }) => seams.map(({ id }) => id)));
}

function lettersOf(seams: readonly Seam[]): string[] {
  return seams.map(({ letter }) => letter);
}

/** From where the cloth along these seams faces the viewer most. */
function bestViewOf(form: Form, seams: readonly Seam[]): (typeof VIEWS)[number] {
  const facingsIn = facingsOf(form, seams);
  // Seams on both sides of the form cannot all be seen: the view in which the most are, and then the most of them.
  const rank = (view: (typeof VIEWS)[number]): number => {
    const facings = facingsIn(CAMERAS[view]);
    return facings.filter((facing) => facing > 0.2).length + Math.max(...facings) / 10;
  };
  return VIEWS.reduce((best, view) => (rank(view) > rank(best) + 1e-9 ? view : best), VIEWS[0]);
}

/** The side, unless these seams lie too far round it to the front or the back. */
function sideViewOf(form: Form, seams: readonly Seam[], side: 'side' | 'sideLeft'): (typeof VIEWS)[number] {
  const isSeen = facingsOf(form, seams)(CAMERAS[side]).every((facing) => facing > ASIDE);
  return isSeen ? side : bestViewOf(form, seams);
}

/** How much the cloth along each seam faces a camera: cosines, looked at from above. */
function facingsOf({ shell: { mesh } }: Form, seams: readonly Seam[]): (camera: Camera) => number[] {
  const normals = measureVertexNormals(mesh);
  const sums = seams.map(({ points }) =>
    points.reduce(([x, y], v) => [x + normals[3 * v], y + normals[3 * v + 1]], [0, 0]),
  );
  return ({ azimuth }) =>
    sums.map(([x, y]) => {
      const [nx, ny] = normalise([x, y, 1e-6]);
      return nx * Math.sin(azimuth) + ny * Math.cos(azimuth);
    });
}

/**
 * Seams of inner parts: those of the step in place. Sewn to one half of the shell they are seen from the other, which is a ghost;
 * sewn among themselves they stand alone within the form's outline.
 */
export function pictureInnerSeams(wish: Wish, share = 1, hasLevels = true): Drawing {
  const { form, step, scenes } = wish;
  const braces = new Set(step.pieces.map(({ id }) => id));
  const onto = halfOf(form, step);
  const isOwn = ({ id, kind }: Sheet): boolean => braces.has(id) || kind === 'sleeve';
  const camera = onto === 'back' ? CAMERAS.front : CAMERAS.inside;
  return drawFittedForm(
    wish,
    scenes.closed,
    { ...camera, scale: share * camera.scale },
    {
      hasLevels,
      show: (sheet) => {
        if (sheet.kind !== 'panel') return isOwn(sheet) ? 'solid' : 'none';
        return sheet.half === onto ? 'solid' : 'ghost';
      },
    },
  );
}

/** Tie and webs onto the front: the panels they are sewn to flat with their lines, lettered, and beside it how they stand in the form. */
export function pictureInnerFront(wish: Wish): Drawing {
  const { form, step, title, scenes } = wish;
  const { shell, pieces } = form;
  const letters = [...new Set(step.seams.map(({ letter }) => letter))];
  const isFront = ({ kind, half }: Sheet): boolean => kind === 'panel' && half === 'front';
  const ofFront = scenes.closed.sheets.filter(isFront).map(({ id }) => id);
  const sewn = sewnBefore(form, step);
  const joined = shell.seams.filter(({ id, panels }) => {
    return sewn.has(id) && panels.every((panel) => ofFront.includes(panel));
  });
  const own = orderPanels(shell, ofFront)
    .flatMap((id) => pieces.filter((piece) => piece.id === id))
    .filter((piece) => lettersOnPiece(piece).some((letter) => letters.includes(letter)));
  if (own.length === 0 || own.length > MOST_FLAT) return pictureInnerSeams(wish);
  return drawFitted(wish.room, (share) => {
    const flat = layFlat(own, letters, {
      title,
      joined: lettersOf(joined),
      scale: FLAT_SCALE * share,
      width: Infinity,
      isBare: true,
    });
    return drawBeside([flat, pictureInnerSeams(wish, SMALLER * share, false)], title);
  });
}

/** Webs and straps onto the back, and beside them the same from above, at the lowest strap, the last seam still open. */
export function pictureInnerBack(wish: Wish): Drawing {
  const { form, title } = wish;
  const open = closingSeamsOf(form).map(({ id }) => id);
  const section = pictureSection(wish, { open, lettered: open }, levelOfStrap(wish));
  return drawFitted(wish.room, (share) =>
    drawBeside([pictureInnerSeams(wish, share, false), section], title),
  );
}

/** The level next to the lowest strap of the step; none without a strap. */
function levelOfStrap({ form, step }: Wish): string | undefined {
  const own = new Set(step.pieces.map(({ id }) => id));
  const heights = (form.inside?.shape.braces ?? [])
    .filter(({ id, kind }) => kind === 'strap' && own.has(id))
    .map(({ rungs }) => rungs[0].z);
  if (heights.length === 0) return undefined;
  const lowest = Math.min(...heights);
  const far = ({ z }: { readonly z: number }): number => Math.abs(z - lowest);
  return form.body.levels.toSorted((a, b) => far(a) - far(b))[0]?.id;
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
