import { type Phrase, verbatim } from '../base/index.ts';
import { nameOfBodyPlace } from '../body/index.ts';
import { readLineKey } from './line-keys.ts';
import { readPanelKey } from './panel-key.ts';
import { phrase } from './phrases.ts';

/** A seam line's name, from its words in the saved file: of a line of ours, or the maker's own. */
export function nameOfLine(name: string): Phrase {
  const meant = readLineKey(name);
  if (!meant) return verbatim(name);
  if (meant.kind === 'line') return phrase(`line.${meant.line}`);
  if (meant.kind === 'own') return phrase('line.own', { number: meant.number });
  if (meant.kind === 'level') {
    return phrase('line.along-level', { level: meant.level, isFrontOnly: meant.isFrontOnly });
  }
  const panel = readPanelKey(meant.panelKey);
  return panel ? phrase('line.middle', { panel: phrase('panel.place', panel) }) : verbatim(name);
}

/** What points snap to: a landmark, level or line of the body, by its id. */
export function nameOfPlace(id: string): Phrase {
  return nameOfBodyPlace(id) ?? nameOfLine(id.replace(/([A-Z])/g, ' $1').toLowerCase());
}
