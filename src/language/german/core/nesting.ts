import type { NestingPhrases } from '../../../core/nesting/index.ts';
import type { Entries } from '../../catalogue.ts';

/** Teile auf Stoff, Pappe oder Platte. */
export const nesting: Entries<NestingPhrases> = {
  'nesting.item-not-finite': ({ item }) =>
    `Es lässt sich nichts auflegen: ${item} hat keinen Umriss, oder eine Zahl davon fehlt.`,
  'nesting.item-crosses-itself': ({ item }) =>
    `Es lässt sich nichts auflegen: Der Umriss von ${item} kreuzt oder berührt sich selbst.`,
  'nesting.item-without-turn': ({ item }) =>
    `${item} lässt sich nicht auflegen: Keine Richtung ist dafür erlaubt.`,
  'nesting.strip-without-width': ({ width }, { exactLength }) =>
    `Auf Stoff, der ${exactLength(width)} breit ist, lässt sich nichts auflegen: Gib eine Breite über 0 an.`,
  'nesting.gap-negative': ({ gap }, { exactLength }) =>
    `Mit ${exactLength(gap)} zwischen den Teilen lässt sich nichts auflegen: Gib 0 oder mehr an.`,
  'nesting.sheet-not-finite': ({ sheet }) =>
    `Es lässt sich nichts auflegen: Bogen ${sheet} hat keinen Umriss, oder eine Zahl davon oder von seinen Fehlern fehlt.`,
  'nesting.sheet-crosses-itself': ({ sheet }) =>
    `Auf Bogen ${sheet} lässt sich nichts auflegen: Sein Umriss kreuzt oder berührt sich selbst.`,
  'nesting.flaw-not-finite': ({ flaw }) =>
    `Es lässt sich nichts auflegen: Fehlerstelle ${flaw} hat keinen Umriss, oder eine Zahl davon fehlt.`,
  'nesting.item-too-wide': ({ item, needed, width }, { length }) =>
    `${item} ist breiter als der Stoff: In den erlaubten Richtungen braucht es ${length(needed)}, da sind ${length(width)}.`,
  'nesting.item-too-large': ({ item, length: long, height }, { length }) =>
    `${item} passt in den erlaubten Richtungen auf keinen Bogen: Es braucht ${length(long)} mal ${length(height)}.`,
  'nesting.no-room': ({ items, area }, { plain }) =>
    `Für ${items.join(', ')} fand sich kein Platz: Es fehlen mindestens ${plain(area / 100, 0)} cm², als weiterer Bogen.`,
};
