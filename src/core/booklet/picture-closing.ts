import type { Drawing } from '../drawing/index.ts';
import type { Form } from '../form/index.ts';
import { CAMERAS, cutLevel, drawBeside, drawForm, type SceneArrow } from '../picture/index.ts';
import type { Seam } from '../seams/index.ts';
import { drawFitted, drawFittedForm } from './draw-fitted.ts';
import { heightOfBase, middleOfOpening } from './places-of-form.ts';
import { panelsAnd } from './scene-parts.ts';
import type { Wish } from './wish.ts';

/** Steps in which the last seams of the shell are sewn, packed or laddered. */
const CLOSING_STEPS: readonly string[] = ['sew-closing', 'turn-out'];
/** How wide the shell to try on stands open, mm. */
const WIDE = 130;

/** The seams that close the shell, in the order of sewing. */
export function closingSeamsOf({ shell, making }: Form): Seam[] {
  const ids = (making?.steps ?? [])
    .filter(({ id }) => CLOSING_STEPS.includes(id))
    .flatMap(({ seams }) => seams.map(({ id }) => id));
  return shell.seams.filter(({ id }) => ids.includes(id));
}

/** Where the shell is closed, seen by the wearer. */
export function placeOfClosing(form: Form): 'behind' | 'right' | 'left' {
  let [x, y] = [0, 0];
  for (const { points } of closingSeamsOf(form)) {
    for (const v of points) {
      x += Math.cos(form.shell.chart[2 * v]);
      y += Math.sin(form.shell.chart[2 * v]);
    }
  }
  if (y < -Math.abs(x)) return 'behind';
  return x < 0 ? 'left' : 'right';
}

/** From where the closing line is seen. */
export function cameraOfClosing(form: Form): (typeof CAMERAS)[keyof typeof CAMERAS] {
  return { behind: CAMERAS.back, right: CAMERAS.side, left: CAMERAS.sideLeft }[placeOfClosing(form)];
}

/** The shell to try on: open along its closing line, arms through the armholes. */
export function pictureTrial(wish: Wish): Drawing {
  const { form, scenes } = wish;
  const ids = closingSeamsOf(form).map(({ id }) => id);
  const arrows = (['armholeRight', 'armholeLeft'] as const).flatMap((id): SceneArrow[] => {
    const place = middleOfOpening(form, id);
    if (!place) return [];
    const [x, y, z] = place;
    return [{ from: [0.45 * x, y, z + 15], to: [1.75 * x, y + 20, z - 35] }];
  });
  return drawFittedForm(wish, scenes.open(ids, WIDE), cameraOfClosing(form), {
    show: panelsAnd(),
    bold: ids,
    arrows,
  });
}

/** The last seam gaping, and beside it, from above, how it lies inside: everything packed in, or as it is laddered. */
export function pictureClosing(wish: Wish): Drawing {
  const { form, step, title, say, scenes } = wish;
  const ids = closingSeamsOf(form).map(({ id }) => id);
  const now = step.seams.filter(({ kind }) => kind === 'shell').map(({ id }) => id);
  const draw = (share: number): Drawing => {
    const camera = cameraOfClosing(form);
    return drawForm(
      scenes.open(ids),
      { ...camera, scale: share * camera.scale },
      {
        title,
        say,
        show: now.length > 0 ? panelsAnd() : panelsAnd('tie', 'sleeve'),
        bold: now.length > 0 ? now : ids,
        lettered: now.length > 0 ? now : ids,
        hasLevels: false,
      },
    );
  };
  if (now.length === 0 || !form.inside) return drawFitted(wish.room, draw);
  const place = placeOfClosing(form);
  // Sewn after all is turned right side out, it is laddered: nothing is rolled up.
  const roll = step.id === 'sew-closing' ? { roll: place === 'behind' ? ('middle' as const) : place } : {};
  const section = pictureSection(wish, { open: ids, lettered: ids, ...roll });
  return drawFitted(wish.room, (share) => drawBeside([draw(share), section], title));
}

/** The tie on the allowances of the last seam, from above, and the shell drawn out through its base. */
export function pictureTurning(wish: Wish): Drawing {
  const { form, title, say, scenes } = wish;
  const z = heightOfBase(form);
  const arrows = [-1, 1].map((side): SceneArrow => {
    return { from: [90 * side, 0, z + 40], to: [250 * side, 40, z + 110], bend: -0.6 * side };
  });
  const section = pictureSection(wish, {});
  return drawFitted(wish.room, (share) => {
    const camera = { ...CAMERAS.turned, scale: share * CAMERAS.turned.scale };
    const turned = drawForm(scenes.closed, camera, {
      title,
      say,
      show: panelsAnd(),
      hasLevels: false,
      arrows,
    });
    return drawBeside([section, turned], title);
  });
}

/** The form cut at a level: at its waist if none is given, else at its lowest. */
export function pictureSection(
  { form, title, say }: Wish,
  choices: Pick<Parameters<typeof cutLevel>[3], 'open' | 'lettered' | 'roll'>,
  levelId = 'waist',
): Drawing {
  const { levels } = form.shell;
  const level = levels.find(({ id }) => id === levelId) ?? levels[0];
  return cutLevel(form.shell, form.inside?.shape, level?.id ?? '', { title, say, ...choices });
}
