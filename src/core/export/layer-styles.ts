import { type Phrase, verbatim } from '../base/index.ts';
import type { DrawingStyle } from '../drawing/index.ts';
import { PICTURE_LAYERS } from '../picture/index.ts';
import { type LayerId, phrase } from './phrases.ts';

/** How a layer looks when nothing else is said. */
interface LayerStyle extends DrawingStyle {
  readonly textColour?: string;
}

/** Strokes are hairlines to a machine and still seen on a screen that shows the sheet at real size. mm. */
const STYLES: Readonly<Record<LayerId, LayerStyle>> = {
  cut: { stroke: '#111111', strokeWidth: 0.3 },
  sew: { stroke: '#1f5fa8', strokeWidth: 0.25, dash: [4, 2] },
  mark: { stroke: '#5a6b5d', strokeWidth: 0.25 },
  text: {},
  fill: { stroke: 'none', fill: '#d8d8d8' },
  join: { stroke: '#666666', strokeWidth: 0.18, textColour: '#555555' },
  page: { stroke: '#888888', strokeWidth: 0.2, textColour: '#888888' },
  ...PICTURE_LAYERS,
};
const LAYER_STYLES: Readonly<Record<string, LayerStyle>> = STYLES;
const OTHER_STYLE: LayerStyle = { stroke: '#333333', strokeWidth: 0.25 };
const TEXT_COLOUR = '#222222';

export function styleOfLayer(name: string): DrawingStyle {
  const { textColour: _colour, ...style } = LAYER_STYLES[name] ?? OTHER_STYLE;
  return Object.keys(style).length === 0 ? OTHER_STYLE : style;
}

export function textColourOfLayer(name: string): string {
  return LAYER_STYLES[name]?.textColour ?? TEXT_COLOUR;
}

/** Name a person switches the layer by. */
export function titleOfLayer(name: string): Phrase {
  return isKnown(name) ? phrase(`layer.${name}`) : verbatim(name);
}

function isKnown(name: string): name is LayerId {
  return name in STYLES;
}
