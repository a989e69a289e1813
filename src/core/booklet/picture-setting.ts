import type { Drawing } from '../drawing/index.ts';
import type { Piece } from '../pattern/index.ts';
import {
  CAMERAS,
  drawBoundPlate,
  drawCoveredBase,
  drawLacedPlate,
  type SceneArrow,
  stackBoards,
} from '../picture/index.ts';
import { drawFittedForm } from './draw-fitted.ts';
import { heightOfBase, middleOfOpening } from './places-of-form.ts';
import { panelsAnd } from './scene-parts.ts';
import type { Wish } from './wish.ts';

/** Boards of the base, pulled apart. */
export function pictureBoards(wish: Wish): Drawing {
  return pictureStack(wish, ['base-plate-2', 'base-plate-1', 'base-plate-cover']);
}

/** Plates that meet, with the poles of their magnets. */
export function pictureMagnets(wish: Wish): Drawing {
  const layers = ['armhole-plate-right-2', 'armhole-plate-right-1', 'arm-plate-right-1', 'arm-plate-right-2'];
  return pictureStack(wish, layers);
}

/** A covered plate from the side that is laced: that of the neck, whose only hole is the pole's. */
export function pictureCovers(wish: Wish): Drawing {
  const [board] = piecesOf(wish, ['neck-plate-1', 'base-plate-1']);
  return board ? drawLacedPlate(board, wish.title) : pictureShell(wish);
}

/** A plate without a cover from outside: that of an armhole, which is seen. */
export function pictureBinding(wish: Wish): Drawing {
  const [board] = piecesOf(wish, ['armhole-plate-right-1', 'neck-plate-1', 'base-plate-1']);
  return board ? drawBoundPlate(board, wish.title) : pictureShell(wish);
}

/** In the end: covers off, and the magnets of two plates apart; without magnets the form from behind. */
export function pictureCare(wish: Wish): Drawing {
  const layers = [
    'armhole-plate-right-cover',
    'armhole-plate-right-1',
    'arm-plate-right-1',
    'arm-plate-right-cover',
  ];
  return piecesOf(wish, layers).length === layers.length
    ? pictureStack(wish, layers)
    : pictureShell(wish, CAMERAS.back);
}

function pictureStack(wish: Wish, ids: readonly string[]): Drawing {
  const own = piecesOf(wish, ids);
  return own.length > 0 ? stackBoards(own, wish.title, wish.say) : pictureShell(wish);
}

function piecesOf({ form }: Wish, ids: readonly string[]): Piece[] {
  return ids.flatMap((id) => form.inside?.pieces.filter((piece) => piece.id === id) ?? []);
}

function pictureShell(wish: Wish, camera: (typeof CAMERAS)[keyof typeof CAMERAS] = CAMERAS.front) {
  return drawFittedForm(wish, wish.scenes.closed, camera, { show: panelsAnd('plate', 'pole') });
}

/** Both arms as they hang, open at the top, the lower half filled. */
export function pictureFillArms(wish: Wish): Drawing {
  const { form, scenes } = wish;
  const arrows = (['armholeRight', 'armholeLeft'] as const).flatMap((id): SceneArrow[] => {
    const place = middleOfOpening(form, id);
    if (!place) return [];
    const [x, y, z] = place;
    return [{ from: [0.5 * x, y, z + 110], to: [1.12 * x, y, z - 20] }];
  });
  const heights = form.body.arms.flatMap(({ points }) => [...points.filter((_, i) => i % 3 === 2)]);
  const middle = (Math.min(...heights) + Math.max(...heights)) / 2;
  return drawFittedForm(wish, scenes.closed, CAMERAS.front, {
    show: ({ kind }) => (kind === 'arm' ? 'solid' : 'none'),
    filledBelow: middle,
    arrows,
  });
}

export function pictureCushions(wish: Wish): Drawing {
  return drawFittedForm(wish, wish.scenes.closed, CAMERAS.front, {
    show: panelsAnd('cushion'),
    hasLevels: false,
  });
}

/** Supports under the shoulders and the plates at their ends, seen through the front. */
export function pictureSupports(wish: Wish): Drawing {
  return drawFittedForm(wish, wish.scenes.closed, CAMERAS.front, {
    show: ({ kind, half, id }) => {
      if (kind === 'panel') return half === 'front' ? 'ghost' : 'solid';
      return kind === 'support' || kind === 'sleeve' || id.startsWith('plate-armhole') ? 'solid' : 'none';
    },
    hasLevels: false,
  });
}

/** On its shoulders, filled from there to the level that ends the step's id, or all the way. */
export function pictureFilling(wish: Wish): Drawing {
  const { form, step, scenes } = wish;
  const lowest = form.body.levels[0];
  const level = form.body.levels.find(({ id }) => step.id.endsWith(`-${id}`));
  const base = heightOfBase(form);
  const into: SceneArrow = { from: [70, 30, base - 150], to: [70, 30, (base + lowest.z) / 2] };
  return drawFittedForm(wish, scenes.closed, CAMERAS.turned, {
    show: panelsAnd(),
    filledTo: (level ?? { z: base }).z,
    arrows: [into],
  });
}

/** The base plate pressed down round the pole, the form on its shoulders. */
export function pictureSettingBase(wish: Wish): Drawing {
  const { form, scenes } = wish;
  const base = heightOfBase(form);
  const arrows = [-1, 1].map((side): SceneArrow => {
    return { from: [85 * side, 0, base - 150], to: [85 * side, 0, base - 15] };
  });
  return drawFittedForm(wish, scenes.closed, CAMERAS.turned, {
    show: panelsAnd('plate', 'pole'),
    arrows,
  });
}

/** The base from below, its filling holes closed by lids. */
export function pictureLids(wish: Wish): Drawing {
  const [board] = piecesOf(wish, ['base-plate-1']);
  const { inside } = wish.form;
  if (!board || !inside) return pictureShell(wish, CAMERAS.turned);
  const lids = inside.pieces.filter(({ id }) => id.startsWith('lid-'));
  return drawCoveredBase(board, lids, inside.shape.pole.radius, wish.title);
}
