import type { ShellNumber, StaticsPhrases } from '../../../core/statics/index.ts';
import type { Entries } from '../../catalogue.ts';

const NUMBERS: Readonly<Record<ShellNumber, string>> = {
  pressure: 'der Druck der Füllung in N/mm²',
  warp: 'die Steifigkeit des Stoffs längs der Kette in N/mm',
  weft: 'die Steifigkeit des Stoffs längs des Schusses in N/mm',
  shear: 'die Schubsteifigkeit des Stoffs in N/mm',
  poisson: 'der Anteil, um den sich gezogener Stoff einschnürt,',
  pushed: 'der Anteil der Steifigkeit, den geschobener Stoff behält,',
  'strand-stiffness': 'die Steifigkeit eines Strangs von Steg oder Band in N/mm',
  'strip-stiffness': 'die Steifigkeit einer Naht in N/mm',
  'strand-length': 'die Länge eines Strangs von Steg oder Band in mm',
  'strip-length': 'die Länge eines Nahtstücks in mm',
  tolerance: 'die Kraft, die übrig bleiben darf,',
};

/** A filled shell in balance. */
export const statics: Entries<StaticsPhrases> = {
  'statics.number': ({ name, value, least, most, place }, { exact }) =>
    `Die gefüllte Form lässt sich nicht vorhersagen: ${NUMBERS[name]} ist ${exact(value)} an Stelle ${place}; erlaubt ist ${exact(least)} bis ${exact(most)}.`,
  'statics.flat-rest': ({ triangle }) =>
    `Die gefüllte Form lässt sich nicht vorhersagen: Dreieck ${triangle} der zugeschnittenen Teile hat keine Fläche oder liegt verkehrt herum.`,
  'statics.not-closed': ({ edges }) =>
    `Die gefüllte Form lässt sich nicht vorhersagen: Die Hülle ist an ${edges} Kanten offen oder verkehrt herum genäht.`,
  'statics.no-volume': ({ volume }, { plain }) =>
    `Die gefüllte Form lässt sich nicht vorhersagen: Die Hülle beginnt mit einem Rauminhalt von ${plain(volume / 1e6, 3)} l, flach oder umgestülpt.`,
  'statics.idle-link': ({ link }) =>
    `Strang ${link} kann nie straff werden: Seine Enden können sich nicht voneinander entfernen. Lass ihn weg oder binde ihn an etwas anderes.`,
  'statics.slack-cloth': ({ share, most }, { percent }) =>
    `${percent(share, 0)} des Stoffs hängen schlaff, mehr als ${percent(most, 0)}: Die Füllung drückt ihn nicht heraus, und seine Gestalt ist dort nicht vorhergesagt.`,
  'statics.slack-strands': ({ loose, of }) =>
    `${loose} von ${of} Strängen der Stege und Bänder hängen schlaff und halten nichts.`,
  'statics.stalled': ({ steps, force }, { exact }) =>
    `Die gefüllte Form fand in ${steps} Schritten kein Gleichgewicht: Es bleibt eine Kraft von ${exact(Number(force.toPrecision(2)))} N. Die letzte brauchbare Gestalt bleibt stehen.`,
  'statics.everted':
    'Die Hülle würde sich beim Füllen umstülpen. Die letzte brauchbare Gestalt bleibt stehen.',
  'statics.stopped':
    'Die Vorhersage der gefüllten Form wurde angehalten. Die letzte brauchbare Gestalt bleibt stehen.',
};
