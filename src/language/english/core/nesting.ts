import type { NestingPhrases } from '../../../core/nesting/index.ts';
import type { Entries } from '../../catalogue.ts';

/** Pieces laid on cloth, card or board. */
export const nesting: Entries<NestingPhrases> = {
  'nesting.item-not-finite': ({ item }) =>
    `Nothing can be laid: ${item} has no outline, or a number of it is missing.`,
  'nesting.item-crosses-itself': ({ item }) =>
    `Nothing can be laid: the outline of ${item} crosses itself or touches itself.`,
  'nesting.item-without-turn': ({ item }) => `${item} cannot be laid: it may not lie in any direction.`,
  'nesting.strip-without-width': ({ width }, { exactLength }) =>
    `Nothing can be laid on cloth ${exactLength(width)} wide: give a width above 0.`,
  'nesting.gap-negative': ({ gap }, { exactLength }) =>
    `Nothing can be laid with ${exactLength(gap)} between pieces: give 0 or more.`,
  'nesting.sheet-not-finite': ({ sheet }) =>
    `Nothing can be laid: sheet ${sheet} has no outline, or a number of it or of its flaws is missing.`,
  'nesting.sheet-crosses-itself': ({ sheet }) =>
    `Nothing can be laid on sheet ${sheet}: its outline crosses itself or touches itself.`,
  'nesting.flaw-not-finite': ({ flaw }) =>
    `Nothing can be laid: flaw ${flaw} has no outline, or a number of it is missing.`,
  'nesting.item-too-wide': ({ item, needed, width }, { length }) =>
    `${item} is wider than the cloth: it needs ${length(needed)} in the directions it may lie, and there are ${length(width)}.`,
  'nesting.item-too-large': ({ item, length: long, height }, { length }) =>
    `${item} fits no sheet in the directions it may lie: it needs ${length(long)} by ${length(height)}.`,
  'nesting.no-room': ({ items, area }, { plain }) =>
    `No room was found for ${items.join(', ')}: at least ${plain(area / 100, 0)} cm² more are needed, as a further sheet.`,
};
