import {
  boundsOfItems,
  type Drawing,
  type DrawingItem,
  type DrawingPath,
  makeLayer,
  translateItem,
} from '../drawing/index.ts';
import { type LineWidth, STROKES } from './line-styles.ts';

/** Round the picture, mm of paper: half the widest line and a little. */
const MARGIN = 1;
const WIDTHS = Object.keys(STROKES) as LineWidth[];
/** Layers of a picture, the lowest first. */
export const LAYER_ORDER = ['fill', ...WIDTHS, 'mark', 'text'] as const;

/**
 * A picture as a drawing no larger than it is: what is `painted` in its order (tints, and what hides what was painted before), then
 * lines from the finest to the boldest in layers of their own, whose style they leave to the layer, then what among the lines is
 * filled, and letters over all.
 */
export function finishDrawing(
  title: string,
  painted: readonly DrawingItem[],
  lines: readonly DrawingItem[],
): Drawing {
  const bounds = boundsOfItems([...painted, ...lines]) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  const place = (items: readonly DrawingItem[]): DrawingItem[] => {
    return items.map((item) => translateItem(item, MARGIN - bounds.minX, MARGIN - bounds.minY));
  };
  const all = [...painted, ...lines];
  const paths = lines.filter((item) => item.kind === 'path');
  const layers = [
    makeLayer('fill', place(painted.filter(({ kind }) => kind === 'path'))),
    ...WIDTHS.map((width) => {
      const own = paths.filter((path) => isLineOf(path, width)).map(leaveToLayer);
      return makeLayer(width, place(own));
    }),
    makeLayer('mark', place(paths.filter((path) => !WIDTHS.some((width) => isLineOf(path, width))))),
    makeLayer('text', place(all.filter(({ kind }) => kind === 'text'))),
  ];
  return {
    width: bounds.maxX - bounds.minX + 2 * MARGIN,
    height: bounds.maxY - bounds.minY + 2 * MARGIN,
    title,
    layers: layers.filter(({ items }) => items.length > 0),
  };
}

function isLineOf({ style }: DrawingPath, width: LineWidth): boolean {
  return style?.strokeWidth === STROKES[width] && style.fill === undefined;
}

/** Its layer says colour and width; only the dashes are its own. */
function leaveToLayer({ style, ...path }: DrawingPath): DrawingPath {
  return style?.dash ? { ...path, style: { dash: style.dash } } : path;
}
