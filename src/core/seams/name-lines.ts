import { type Phrase, plain } from '../base/index.ts';
import { nameOfBodyPlace } from '../body/index.ts';

/** A seam line's name: of a layout's line, or the maker's own. */
export function nameOfLine(name: string): Phrase {
  return plain(name);
}

/** What points snap to: a landmark, level or line of the body, by its id. */
export function nameOfPlace(id: string): Phrase {
  return nameOfBodyPlace(id) ?? nameOfLine(id.replace(/([A-Z])/g, ' $1').toLowerCase());
}
