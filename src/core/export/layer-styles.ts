import type { DrawingStyle } from '../drawing/index.ts';

/** How a layer looks when nothing else is said. */
interface LayerStyle extends DrawingStyle {
  readonly textColour?: string;
  /** Name a person switches the layer by. */
  readonly title?: string;
}

/** Strokes are hairlines to a machine and still seen on a screen that shows the sheet at real size. mm. */
const LAYER_STYLES: Readonly<Record<string, LayerStyle>> = {
  cut: { stroke: '#111111', strokeWidth: 0.3, title: 'Cut lines' },
  sew: { stroke: '#1f5fa8', strokeWidth: 0.25, dash: [4, 2], title: 'Sew lines' },
  mark: { stroke: '#5a6b5d', strokeWidth: 0.25, title: 'Marks' },
  text: { title: 'Lettering' },
  fill: { stroke: 'none', fill: '#d8d8d8', title: 'Areas' },
  join: { stroke: '#666666', strokeWidth: 0.18, textColour: '#555555', title: 'Joining marks' },
  page: { stroke: '#888888', strokeWidth: 0.2, textColour: '#888888', title: 'Page names and checks' },
};
const OTHER_STYLE: LayerStyle = { stroke: '#333333', strokeWidth: 0.25 };
const TEXT_COLOUR = '#222222';

export function styleOfLayer(name: string): DrawingStyle {
  const { textColour: _colour, title: _title, ...style } = LAYER_STYLES[name] ?? OTHER_STYLE;
  return Object.keys(style).length === 0 ? OTHER_STYLE : style;
}

export function textColourOfLayer(name: string): string {
  return LAYER_STYLES[name]?.textColour ?? TEXT_COLOUR;
}

export function titleOfLayer(name: string): string {
  return LAYER_STYLES[name]?.title ?? name;
}
