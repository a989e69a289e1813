import type { Drawing, DrawingItem } from '../drawing/index.ts';

/** The same picture smaller, lines as wide as before; as it is where it has letters, which must stay readable. */
export function shrinkDrawing(drawing: Drawing, scale: number): Drawing {
  const { width, height, layers } = drawing;
  if (layers.some(({ items }) => items.some(({ kind }) => kind === 'text'))) return drawing;
  const shrink = (item: DrawingItem): DrawingItem =>
    item.kind === 'path' ? { ...item, points: item.points.map((value) => value * scale) } : item;
  return {
    ...drawing,
    width: width * scale,
    height: height * scale,
    layers: layers.map((layer) => ({ ...layer, items: layer.items.map(shrink) })),
  };
}
