import { heightOfWaist } from '../assembly/index.ts';
import { type Say, withUsual } from '../base/index.ts';
import type { Drawing } from '../drawing/index.ts';
import type { Form, WorkStep } from '../form/index.ts';
import { INSIDE_OPTIONS, sewnGirthOfTestTube } from '../inside/index.ts';
import {
  CAMERAS,
  drawForm,
  drawStand,
  drawTestTube,
  type FormChoices,
  layFlat,
  makeScene,
  orderPanels,
  type SceneArrow,
  stackBoards,
} from '../picture/index.ts';
import { panelsAnd, scenePartsOf } from './scene-parts.ts';

/** What every picture of the work is drawn from. */
interface Wish {
  readonly form: Form;
  readonly step: WorkStep;
  readonly title: string;
  readonly say: Say;
}

type Draw = (wish: Wish) => Drawing;

/** Tilted by hand so far, radians: what the order of work asks for. */
const TILT = (10 * Math.PI) / 180;
/** More pieces side by side are wider than a page. */
const FEW = 5;

/** Pictures by how a step's id begins; the first that fits. */
const BY_STEP: readonly (readonly [start: string, draw: Draw])[] = [
  ['test-tube', drawTube],
  ['measure', drawTapes],
  ['cut', drawPanels],
  ['mark', drawPanels],
  ['boards', drawBoards],
  ['magnets', drawMagnets],
  ['plates', (wish) => drawOutside(wish, { show: panelsAnd('plate') })],
  ['pole', drawPole],
  ['fill-', drawFilling],
  ['rest', drawLevels],
  ['close', (wish) => drawOutside(wish, { show: panelsAnd('plate', 'pole') }, 'turned')],
  ['tapes', drawLevels],
  ['stand', drawOnStand],
  ['arms', (wish) => drawOutside(wish, { show: panelsAnd('plate', 'pole', 'arm') })],
];

/** Work beside sewing: by the step's id, or the form as it stands for ids that are not known. */
export function pictureWork(wish: Wish): Drawing {
  const [, draw] = BY_STEP.find(([start]) => wish.step.id.startsWith(start)) ?? [];
  return (draw ?? drawOutside)(wish);
}

function drawOutside(
  { form, title, say }: Wish,
  choices: Partial<FormChoices> = {},
  camera: keyof typeof CAMERAS = 'front',
): Drawing {
  return drawForm(makeScene(scenePartsOf(form)), CAMERAS[camera], {
    title,
    say,
    show: panelsAnd(),
    ...choices,
  });
}

function drawTube(wish: Wish): Drawing {
  const { form, title, say } = wish;
  const tube = form.inside?.pieces.find(({ id }) => id === 'test-tube');
  const closing = tube?.draft?.input.edges.find(({ id }) => id === 'test-tube-closing')?.letter;
  if (!tube || closing === undefined) return drawOutside(wish);
  const lines = tube.levelLines.map(({ points }) => points[1]);
  const girth = sewnGirthOfTestTube(form.project.inside.clothThickness);
  return drawTestTube({ girth, height: lines[0] + lines[lines.length - 1], lines }, closing, title, say);
}

/** The girths of all levels that were taken. */
function drawTapes({ form, title, say }: Wish): Drawing {
  const girths = Object.entries(form.body.tapePaths).filter(
    ([id]) => id.endsWith('Girth') && !/Arm|elbow|wrist/.test(id),
  );
  const scene = makeScene(scenePartsOf(form), { tapes: girths.map(([id, points]) => ({ id, points })) });
  return drawForm(scene, CAMERAS.front, { title, say, show: panelsAnd(), hasLevels: false });
}

/** The levels at which the filled form is measured. */
function drawLevels(wish: Wish): Drawing {
  return drawOutside(wish, { show: panelsAnd('plate'), bold: wish.form.body.levels.map(({ id }) => id) });
}

/** The panels of the step right side up, or the first few of the shell. */
function drawPanels({ form: { shell, pieces }, step, title }: Wish): Drawing {
  const ids = shell.panels.map(({ id }) => id).filter((id) => step.pieces.some((piece) => piece.id === id));
  const own = orderPanels(shell, ids).flatMap((id) => pieces.filter((piece) => piece.id === id));
  return layFlat(own.slice(0, FEW), [], { title, isRightSideUp: true });
}

function drawBoards(wish: Wish): Drawing {
  return drawStack(wish, ['base-plate-2', 'base-plate-1', 'base-plate-cover']);
}

function drawMagnets(wish: Wish): Drawing {
  const layers = ['armhole-plate-right-2', 'armhole-plate-right-1', 'arm-plate-right-1', 'arm-plate-right-2'];
  return drawStack(wish, layers);
}

function drawStack(wish: Wish, ids: readonly string[]): Drawing {
  const { form, title, say } = wish;
  const own = ids.flatMap((id) => form.inside?.pieces.filter((piece) => piece.id === id) ?? []);
  return own.length > 0 ? stackBoards(own, title, say) : drawOutside(wish);
}

/** Pole and sleeve inside, seen through the back. */
function drawPole(wish: Wish): Drawing {
  return drawOutside(
    wish,
    {
      show: (sheet) => {
        if (sheet.kind === 'panel') return sheet.half === 'back' ? 'ghost' : 'solid';
        const isShown = ['sleeve', 'pole', 'tie', 'web'].includes(sheet.kind) || sheet.id === 'plate-base';
        return isShown ? 'solid' : 'none';
      },
    },
    'inside',
  );
}

/** On its shoulders, filled from there to the level that ends the step's id, or all the way. */
function drawFilling(wish: Wish): Drawing {
  const { form, step } = wish;
  const lowest = form.body.levels[0];
  const level = form.body.levels.find(({ id }) => step.id.endsWith(`-${id}`));
  const base = heightOfBase(form);
  return drawOutside(
    wish,
    { filledTo: (level ?? { z: base }).z, arrows: [intoBase(base, lowest.z)] },
    'turned',
  );
}

function heightOfBase({ shell: { mesh, openings } }: Form): number {
  const loop = openings.find(({ id }) => id === 'base')?.vertices ?? [];
  return Math.min(...Array.from(loop, (v) => mesh.positions[3 * v + 2]));
}

/** Beside the pole, from under the base to the hip. mm. */
function intoBase(base: number, hip: number): SceneArrow {
  return { from: [70, 30, base - 150], to: [70, 30, (base + hip) / 2] };
}

function drawOnStand(wish: Wish): Drawing {
  const { form, title, say } = wish;
  const { project, body, inside } = form;
  if (!inside) return drawOutside(wish);
  const { legs, legRadius, garmentMass, garmentOffset } = withUsual(INSIDE_OPTIONS, project.inside);
  const { pushForce, pushHeight } = inside.stand;
  const trial = {
    ...{ floor: -heightOfWaist(project, body), legs, legRadius, mass: garmentMass, offset: garmentOffset },
    ...{ force: pushForce, pushHeight, tilt: TILT },
  };
  return drawStand(scenePartsOf(form), trial, title, say);
}
