import { heightOfWaist } from '../core/assembly/index.ts';
import { type Say, verbatim, withUsual } from '../core/base/index.ts';
import { pictureStep } from '../core/booklet/index.ts';
import type { Drawing } from '../core/drawing/index.ts';
import type { Form } from '../core/form/index.ts';
import { INSIDE_OPTIONS, sewnGirthOfTestTube } from '../core/inside/index.ts';
import {
  CAMERAS,
  cutLevel,
  drawForm,
  drawStand,
  drawTestTube,
  type FormChoices,
  layFlat,
  makeScene,
  orderPanels,
  type SceneArrow,
  type Sheet,
  type SheetKind,
  type Showing,
  stackBoards,
} from '../core/picture/index.ts';

/** A picture and its name, which a file can have. */
export interface NamedPicture {
  readonly name: string;
  readonly drawing: Drawing;
}

const INNER: readonly SheetKind[] = ['web', 'tie', 'strap', 'throat', 'sleeve', 'pole'];
const OPEN = 110;
const TILT = (10 * Math.PI) / 180;

/** Everything the room `picture` can draw of a form, to look at. A few seconds. */
export function formPictures(form: Form, say: Say): NamedPicture[] {
  return [
    ...outsides(form, say),
    ...insides(form, say),
    ...flats(form),
    ...sections(form, say),
    ...others(form, say),
    ...steps(form, say),
  ];
}

/** Shows these kinds; the panels of a half may be ghosts or left out. */
function showing(kinds: readonly SheetKind[], back: Showing = 'solid'): (sheet: Sheet) => Showing {
  return ({ kind, half }) => {
    if (kind === 'panel') return half === 'back' ? back : 'solid';
    return kinds.includes(kind) ? 'solid' : 'none';
  };
}

function partsOf(form: Form) {
  return { shell: form.shell, ...(form.inside && { shape: form.inside.shape }), arms: form.body.arms };
}

function outsides(form: Form, say: Say): NamedPicture[] {
  const scene = makeScene(partsOf(form));
  const { seams } = form.shell;
  const idsOf = (line: RegExp): string[] =>
    seams.filter(({ lineId }) => line.test(lineId)).map(({ id }) => id);
  const draw = (
    name: string,
    camera: keyof typeof CAMERAS,
    lines: RegExp,
    more: Partial<FormChoices> = {},
  ): NamedPicture => {
    const ids = idsOf(lines).slice(0, 6);
    const choices = { title: name, say, show: showing([]), bold: ids, lettered: ids, ...more };
    return { name, drawing: drawForm(scene, CAMERAS[camera], choices) };
  };
  return [
    draw('outside-front', 'front', /^(centreFront|princessFront|front)/),
    draw('outside-back', 'back', /^(centreBack|princessBack)/),
    draw('outside-side', 'side', /^side$/),
    draw('outside-side-left', 'sideLeft', /^side$/),
    draw('outside-shoulders', 'front', /^shoulder/),
    draw('outside-neck', 'frontLeft', /^neckBase/),
    draw('plates', 'front', /^$/, { show: showing(['plate', 'pole']) }),
    draw('cushions', 'front', /^$/, { show: showing(['plate', 'pole', 'cushion']) }),
    draw('arms', 'front', /^$/, { show: showing(['plate', 'pole', 'arm']) }),
    draw('arms-back', 'back', /^$/, { show: showing(['plate', 'pole', 'arm']) }),
    draw('turned-filling', 'turned', /^$/, { filledTo: 60, arrows: [arrowIntoBase(form)] }),
    draw('turned-filled', 'turned', /^$/, { filledTo: -130, arrows: [arrowIntoBase(form)] }),
    draw('turn-out', 'turned', /^$/, { arrows: arrowsOutOfBase(form) }),
  ];
}

function baseOf({ body }: Form): number {
  const hip = body.levels.find(({ id }) => id === 'hip');
  return (hip?.z ?? -200) - 60;
}

function arrowIntoBase(form: Form): SceneArrow {
  const z = baseOf(form);
  return { from: [60, 40, z - 190], to: [60, 40, z + 10] };
}

function arrowsOutOfBase(form: Form): SceneArrow[] {
  const z = baseOf(form);
  return [-1, 1].map((side) => ({
    from: [90 * side, 0, z + 40],
    to: [270 * side, 60, z + 30],
    bend: 0.5 * side,
  }));
}

function insides(form: Form, say: Say): NamedPicture[] {
  const { seams } = form.shell;
  const backs = seams.filter(({ lineId }) => lineId === 'centreBack').map(({ id }) => id);
  const sides = seams.filter(({ lineId, id }) => lineId === 'side' && /Left/.test(id)).map(({ id }) => id);
  const closed = makeScene(partsOf(form));
  const open = makeScene(partsOf(form), { open: { seams: backs, gape: OPEN } });
  const openSide = makeScene(partsOf(form), { open: { seams: sides, gape: OPEN } });
  const draw = (
    name: string,
    scene: typeof open,
    camera: keyof typeof CAMERAS,
    choices: Partial<FormChoices>,
  ): NamedPicture => {
    return { name, drawing: drawForm(scene, CAMERAS[camera], { title: name, say, ...choices }) };
  };
  return [
    draw('open-back', open, 'back', { show: showing(INNER), bold: backs }),
    draw('open-back-empty', open, 'back', { show: showing([]), bold: backs }),
    draw('open-side', openSide, 'sideLeft', { show: showing(INNER), bold: sides }),
    draw('cut-away', closed, 'inside', { show: showing(INNER, 'ghost') }),
    draw('cut-away-webs', closed, 'inside', { show: showing(['web', 'sleeve', 'pole'], 'none') }),
    draw('cut-away-straps', closed, 'inside', {
      show: showing(['strap', 'tie', 'throat', 'sleeve'], 'ghost'),
    }),
    draw('front-inside', closed, 'inside', { show: showing([], 'none') }),
    draw('inner-parts', closed, 'inside', {
      show: ({ kind }) => (INNER.includes(kind) ? 'solid' : kind === 'panel' ? 'ghost' : 'none'),
    }),
  ];
}

function flats(form: Form): NamedPicture[] {
  const { shell, pieces, inside } = form;
  const lay = (
    name: string,
    ids: readonly string[],
    now: readonly string[],
    joined: readonly string[] = [],
  ): NamedPicture => {
    const own = orderPanels(shell, ids).flatMap((id) => pieces.filter((piece) => piece.id === id));
    return { name, drawing: layFlat(own, now, { title: name, joined }) };
  };
  const panelsOf = (half: 'front' | 'back'): string[] => {
    return makeScene({ shell })
      .sheets.filter((sheet) => sheet.half === half && !/neck/i.test(sheet.id))
      .map(({ id }) => id);
  };
  const single = shell.seams.filter(({ isLevel, panels }) => !isLevel && panels[0] !== panels[1]).slice(0, 3);
  const fronts = panelsOf('front');
  const backs = panelsOf('back');
  const frontSeams = shell.seams.filter(({ panels }) => panels.every((id) => fronts.includes(id)));
  const inner = inside?.pieces.filter(({ material }) => material === 'webs').slice(0, 6) ?? [];
  return [
    ...single.map(({ letter, panels }) => lay(`flat-${letter}`, panels, [letter])),
    lay(
      'flat-front',
      fronts,
      frontSeams.map(({ letter }) => letter),
    ),
    lay(
      'flat-front-joined',
      fronts,
      frontSeams.slice(1).map(({ letter }) => letter),
      frontSeams.slice(0, 1).map(({ letter }) => letter),
    ),
    lay(
      'flat-back',
      backs,
      shell.seams
        .filter(({ panels }) => panels.every((id) => backs.includes(id)))
        .map(({ letter }) => letter),
    ),
    lay('flat-lines', fronts, inside?.shape.panelLines.map(({ letter }) => letter) ?? []),
    { name: 'flat-inner', drawing: layFlat(inner, [], { title: 'flat-inner' }) },
  ];
}

function sections(form: Form, say: Say): NamedPicture[] {
  const shape = form.inside?.shape;
  const open = form.shell.seams.filter(({ lineId }) => lineId === 'centreBack').map(({ id }) => id);
  return form.shell.levels
    .flatMap(({ id }) => [
      { name: `section-${id}`, drawing: cutLevel(form.shell, shape, id, { title: id, say }) },
      {
        name: `section-${id}-open`,
        drawing: cutLevel(form.shell, shape, id, { title: id, say, open, roll: 'middle' }),
      },
    ])
    .slice(0, 6);
}

function others(form: Form, say: Say): NamedPicture[] {
  const { project, body, inside } = form;
  const options = withUsual(INSIDE_OPTIONS, project.inside);
  const tape = Object.entries(body.tapePaths).filter(([id]) => /^(bust|waist|hip)Girth$/.test(id));
  const taped = makeScene(partsOf(form), { tapes: tape.map(([id, points]) => ({ id, points })) });
  const tube = { girth: sewnGirthOfTestTube(options.clothThickness), height: 300, lines: [100, 150, 200] };
  const closing = inside?.pieces.find(({ id }) => id === 'test-tube')?.draft?.input.edges[1].letter ?? '';
  const boards = [
    'armhole-plate-right-cover',
    'armhole-plate-right-1',
    'armhole-plate-right-2',
    'arm-plate-right-cover',
    'arm-plate-right-1',
    'arm-plate-right-2',
  ];
  const layers = (ids: readonly string[]) =>
    ids.flatMap((id) => inside?.pieces.filter((piece) => piece.id === id) ?? []);
  const { stand } = inside ?? {};
  const floor = -heightOfWaist(project, body);
  return [
    {
      name: 'tape',
      drawing: drawForm(taped, CAMERAS.front, { title: 'tape', say, show: showing([]), hasLevels: false }),
    },
    { name: 'test-tube', drawing: drawTestTube(tube, closing, 'test-tube', say) },
    {
      name: 'boards-base',
      drawing: stackBoards(layers(['base-plate-cover', 'base-plate-1', 'base-plate-2']), 'base', say),
    },
    ...(body.arms.length > 0
      ? [{ name: 'boards-arm', drawing: stackBoards(layers(boards), 'arm', say) }]
      : []),
    ...(stand
      ? [
          {
            name: 'stand',
            drawing: drawStand(
              makeScene(partsOf(form), { stand: { floor, radius: options.legRadius, legs: options.legs } }),
              partsOf(form),
              {
                floor,
                mass: options.garmentMass,
                offset: options.garmentOffset,
                force: stand.pushForce,
                pushHeight: stand.pushHeight,
                tilt: TILT,
              },
              say(verbatim('stand')),
              say,
            ),
          },
        ]
      : []),
  ];
}

/** As the booklet shows them, in the order of the work. */
function steps(form: Form, say: Say): NamedPicture[] {
  return (form.making?.steps ?? []).map((step, k) => {
    const number = String(k + 1).padStart(2, '0');
    return { name: `step-${number}-${step.id}`, drawing: pictureStep(form, step, say) };
  });
}
