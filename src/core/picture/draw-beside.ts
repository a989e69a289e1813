import { type Drawing, type DrawingLayer, makeLayer, translateItem } from '../drawing/index.ts';
import { LAYER_ORDER } from './finish-drawing.ts';

/** Between two pictures, mm of paper. */
const APART = 6;

/** Pictures side by side in the given order, each in the middle of the height, as one. mm of paper. */
export function drawBeside(drawings: readonly Drawing[], title: string): Drawing {
  const height = Math.max(...drawings.map((drawing) => drawing.height));
  let left = 0;
  const placed = drawings.flatMap(({ layers, width, height: own }) => {
    const [dx, dy] = [left, (height - own) / 2];
    left += width + APART;
    return layers.map((layer) => ({
      ...layer,
      items: layer.items.map((item) => translateItem(item, dx, dy)),
    }));
  });
  return { width: left - APART, height, title, layers: joinLayers(placed) };
}

/** Layers of one name as one, so that no fill lies over another picture's lines. */
function joinLayers(layers: readonly DrawingLayer[]): DrawingLayer[] {
  return LAYER_ORDER.map((name) => {
    return makeLayer(
      name,
      layers.filter((layer) => layer.name === name).flatMap(({ items }) => items),
    );
  }).filter(({ items }) => items.length > 0);
}
