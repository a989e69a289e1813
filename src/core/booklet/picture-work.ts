import { heightOfWaist } from '../assembly/index.ts';
import { withUsual } from '../base/index.ts';
import type { Drawing } from '../drawing/index.ts';
import { INSIDE_OPTIONS, sewnGirthOfTestTube } from '../inside/index.ts';
import type { Piece } from '../pattern/index.ts';
import {
  CAMERAS,
  drawBeside,
  drawClothSquare,
  drawFirstPage,
  drawSleeve,
  drawStand,
  drawTestTube,
  type FormChoices,
  orderPanels,
  type SceneArrow,
  type Sheet,
} from '../picture/index.ts';
import { drawFitted, drawFittedForm } from './draw-fitted.ts';
import { pictureClosing, pictureTrial, pictureTurning } from './picture-closing.ts';
import {
  pictureBinding,
  pictureBoards,
  pictureCare,
  pictureCovers,
  pictureCushions,
  pictureFillArms,
  pictureFilling,
  pictureLids,
  pictureMagnets,
  pictureSettingBase,
  pictureSupports,
} from './picture-setting.ts';
import { layFitted, pictureInnerBack, pictureInnerFront } from './picture-sewing.ts';
import { panelsAnd, scenePartsOf } from './scene-parts.ts';
import type { Draw, Wish } from './wish.ts';

/** Tilted by hand so far, radians: what the order of work asks for. */
const TILT = (10 * Math.PI) / 180;
/** More pieces side by side are wider than a page; and of those whose both faces are shown. */
const FEW = 5;
const BOTH_FACES = 2;

/** Pictures by a step's id; `fill-…` by how it begins. */
const BY_STEP: Readonly<Record<string, Draw | undefined>> = {
  use: drawOnStand,
  measure: drawTapes,
  cloth: drawCloth,
  'test-tube': drawTube,
  print: drawPage,
  trial: pictureTrial,
  cut: drawPanels,
  mark: drawFaces,
  'sew-sleeve': drawUnrolled,
  'sew-inner-front': pictureInnerFront,
  'sew-inner-back': pictureInnerBack,
  'sew-closing': pictureClosing,
  'turn-out': (wish) => (hasShellSeams(wish) ? pictureClosing(wish) : pictureTurning(wish)),
  boards: pictureBoards,
  magnets: pictureMagnets,
  covers: pictureCovers,
  bind: pictureBinding,
  'fill-arms': pictureFillArms,
  cushions: pictureCushions,
  supports: pictureSupports,
  pole: drawPole,
  rest: drawLevels,
  close: pictureSettingBase,
  lids: pictureLids,
  tapes: drawLevels,
  stand: drawOnStand,
  arms: (wish) => pictureForm(wish, { show: panelsAnd('plate', 'pole', 'arm') }),
  care: pictureCare,
};

/** Work by the step's id; undefined for ids that are not known here. */
export function pictureWork(wish: Wish): Drawing | undefined {
  const { id } = wish.step;
  const draw = BY_STEP[id] ?? (id.startsWith('fill-') ? pictureFilling : undefined);
  return draw?.(wish);
}

/** The form as it stands, the shell alone unless the choices say more. */
export function pictureForm(
  wish: Wish,
  choices: Partial<FormChoices> = {},
  camera: keyof typeof CAMERAS = 'front',
): Drawing {
  return drawFittedForm(wish, wish.scenes.closed, CAMERAS[camera], { show: panelsAnd(), ...choices });
}

function hasShellSeams({ step }: Wish): boolean {
  return step.seams.some(({ kind }) => kind === 'shell');
}

/** What a check of the step asks to be measured, mm. */
function lengthOf({ step }: Wish, check: string): number | undefined {
  return step.checks.find(({ id }) => id === check)?.value;
}

function drawCloth(wish: Wish): Drawing {
  const side = lengthOf(wish, 'square');
  return side === undefined ? pictureForm(wish) : drawClothSquare(side, wish.title, wish.say);
}

function drawPage(wish: Wish): Drawing {
  const [across, up, square] = ['bar-across', 'bar-up', 'square'].map((id) => lengthOf(wish, id));
  if (across === undefined || up === undefined || square === undefined) return pictureForm(wish);
  return drawFirstPage({ across, up, square }, wish.title, wish.say);
}

function drawTube(wish: Wish): Drawing {
  const { form, title, say } = wish;
  const tube = form.inside?.pieces.find(({ id }) => id === 'test-tube');
  const closing = tube?.draft?.input.edges.find(({ id }) => id === 'test-tube-closing')?.letter;
  if (!tube || closing === undefined) return pictureForm(wish);
  const lines = tube.levelLines.map(({ points }) => points[1]);
  const girth = sewnGirthOfTestTube(form.project.inside.clothThickness);
  return drawTestTube({ girth, height: lines[0] + lines[lines.length - 1], lines }, closing, title, say);
}

/** The girths of all levels that were taken. */
function drawTapes(wish: Wish): Drawing {
  const { form, scenes } = wish;
  const girths = Object.entries(form.body.tapePaths).filter(
    ([id]) => id.endsWith('Girth') && !/Arm|elbow|wrist/.test(id),
  );
  const scene = scenes.closedWith({ tapes: girths.map(([id, points]) => ({ id, points })) });
  return drawFittedForm(wish, scene, CAMERAS.front, { show: panelsAnd(), hasLevels: false });
}

/** The levels at which the filled form is measured. */
function drawLevels(wish: Wish): Drawing {
  return pictureForm(wish, { show: panelsAnd('plate'), bold: wish.form.body.levels.map(({ id }) => id) });
}

/** Panels of the step in their order, those of the neck last. */
function panelsOf({ form: { shell, pieces }, step }: Wish): Piece[] {
  const ids = shell.panels.map(({ id }) => id).filter((id) => step.pieces.some((piece) => piece.id === id));
  const isHigh = (id: string): boolean => !pieces.some((piece) => piece.id === id && hasWaist(piece));
  const ordered = orderPanels(shell, ids).toSorted((a, b) => Number(isHigh(a)) - Number(isHigh(b)));
  return ordered.flatMap((id) => pieces.filter((piece) => piece.id === id));
}

function hasWaist({ levelLines }: { readonly levelLines: readonly { readonly id: string }[] }): boolean {
  return levelLines.some(({ id }) => id === 'waist');
}

/** Panels right side up, all the same way up: of twins the right ones. */
function drawPanels(wish: Wish): Drawing {
  const own = panelsOf(wish).filter(({ side }) => side !== 'left');
  return layFitted(wish, own.slice(0, FEW), [], { isRightSideUp: true });
}

/** Two panels from their wrong side, and the same from their right side. */
function drawFaces(wish: Wish): Drawing {
  const own = panelsOf(wish).slice(0, BOTH_FACES);
  const wrong = layFitted(wish, own, []);
  return drawBeside([wrong, layFitted(wish, own.toReversed(), [], { isRightSideUp: true })], wish.title);
}

function drawUnrolled(wish: Wish): Drawing {
  const sleeve = wish.form.inside?.pieces.find(({ id }) => id === 'pole-sleeve');
  return sleeve ? drawSleeve(sleeve, wish.title, wish.say) : pictureForm(wish);
}

/** Pole and sleeve inside, seen through the back. */
function drawPole(wish: Wish): Drawing {
  const pole = wish.form.inside?.shape.pole;
  const upwards: SceneArrow[] = pole
    ? [{ from: [0, pole.y, pole.zBottom - 150], to: [0, pole.y, pole.zBottom - 45] }]
    : [];
  const inner: readonly Sheet['kind'][] = ['sleeve', 'pole', 'tie', 'web', 'support'];
  return pictureForm(
    wish,
    {
      show: ({ kind, half, id }) => {
        if (kind === 'panel') return half === 'back' ? 'ghost' : 'solid';
        return inner.includes(kind) || id === 'plate-neck' ? 'solid' : 'none';
      },
      arrows: upwards,
    },
    'inside',
  );
}

function drawOnStand(wish: Wish): Drawing {
  const { form, title, say, scenes } = wish;
  const { project, body, inside } = form;
  if (!inside) return pictureForm(wish);
  const { legs, legRadius, garmentMass, garmentOffset } = withUsual(INSIDE_OPTIONS, project.inside);
  const { pushForce, pushHeight } = inside.stand;
  const floor = -heightOfWaist(project, body);
  const scene = scenes.closedWith({ stand: { floor, radius: legRadius, legs } });
  const trial = {
    ...{ floor, mass: garmentMass, offset: garmentOffset },
    ...{ force: pushForce, pushHeight, tilt: TILT },
  };
  const drawing = scenes.drawn('stand', () =>
    drawFitted(wish.room, (share) => drawStand(scene, scenePartsOf(form), trial, title, say, share)),
  );
  return { ...drawing, title };
}
